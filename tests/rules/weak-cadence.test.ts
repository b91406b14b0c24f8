import { weakCadence } from '../../src/rules/weak-cadence.ts';
import { testRule } from '../support/rules.ts';

testRule(weakCadence, {
  failing: [
    {
      name: 'the last chord over its third',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 G4 F#4 | G4*4! |
T: D4 E4 D4 C4 | D4*4! |
B: G3 C3 D3 D3 | B2*4! |`,
      expect: [
        {
          bar: '1',
          beat: '4',
          voices: 'SB',
          notes: 'S:A4 G4 B:D3 B2',
          severity: 'fault',
          says: 'The last phrase ends with a perfect cadence, weakened because its last chord is in first inversion.',
        },
      ],
    },
    {
      name: 'the dominant over its third',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 G4 D4 | D4*4! |
T: D4 E4 D4 C4 | B3*4! |
B: G3 C3 D3 F#3 | G3*4! |`,
      expect: [
        {
          bar: '1',
          beat: '4',
          voices: 'SB',
          notes: 'S:A4 G4 B:F#3 G3',
          severity: 'fault',
          says: 'The last phrase ends with a perfect cadence, weakened because the chord before its last is in first inversion.',
        },
      ],
    },
    {
      name: 'the piece stops on the dominant',
      text: `key: C major
metre: 4/4
S: E4 F4 E4 D4 | D4*4! |
A: C4 C4 C4 C4 | B3*4! |
T: G3 A3 G3 A3 | G3*4! |
B: C3 F3 C3 F3 | G3*4! |`,
      expect: [
        {
          bar: '1',
          beat: '4',
          voices: 'SB',
          notes: 'S:D4 D4 B:F3 G3',
          severity: 'fault',
          says: 'The last phrase ends with an imperfect cadence, which does not sound like an end.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'the last chord stands alone: what leads to it is still to be written',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4 A4 A4 A4 | G4*4! |
A: G4 G4 G4 F#4 | ?*4 | D4*4! |
T: D4 E4 D4 C4 | ?*4 | B3*4! |
B: G3 C3 D3 D3 | ?*4 | G2*4! |`,
    },
    {
      name: 'perfect, in root position',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 G4 F#4 | D4*4! |
T: D4 E4 D4 C4 | B3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
    },
    {
      name: 'the end is not written yet',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | ?*4 |
A: G4 G4 ? ? | ?*4 |
T: D4 E4 ? ? | ?*4 |
B: G3 C3 ? ? | ?*4 |`,
    },
  ],
});
