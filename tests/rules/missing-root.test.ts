import { missingRoot } from '../../src/rules/missing-root.ts';
import { testRule } from '../support/rules.ts';

testRule(missingRoot, {
  failing: [
    {
      name: 'the dominant with its third and fifth only, the fifth in the bass',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 G4 F#4 | D4*4! |
T: D4 E4 D4 A3 | B3*4! |
B: G3 C3 D3 A2 | G2*4! |`,
      expect: [
        {
          bar: '1',
          beat: '4',
          voices: 'SATB',
          notes: 'S:A4 A:F#4 T:A3 B:A2',
          severity: 'query',
          says: 'A4 in the soprano, F#4 in the alto, A3 in the tenor and A2 in the bass.',
        },
      ],
    },
    {
      name: 'the leading note chord without its fifth',
      text: `key: C major
metre: 4/4
S: E4 D4 E4 D4 | C4*4! |
A: C4 B3 C4 B3 | G3*4! |
T: G3 B3 G3 G3 | E3*4! |
B: C3 D3 G3 G2 | C3*4! |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'SATB',
          notes: 'S:D4 A:B3 T:B3 B:D3',
          severity: 'query',
          says: 'D4 in the soprano, B3 in the alto, B3 in the tenor and D3 in the bass.',
        },
      ],
    },
    {
      name: 'a first inversion with three thirds and one root',
      text: `key: G major
metre: 4/4
S: B4 D5 E5 D5 | B4*4! |
A: G4 F#4 E4 A4 | G4*4! |
T: D4 A3 C4 D4 | D4*4! |
B: G3 D3 E3 F#3 | G3*4! |`,
      expect: [
        {
          bar: '1',
          beat: '3',
          voices: 'SATB',
          notes: 'S:E5 A:E4 T:C4 B:E3',
          severity: 'remark',
          says: 'With only C and E this chord may have lost its root:',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'the last chord without its fifth, root and third being there',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 G4 F#4 | G4*4! |
T: D4 E4 D4 C4 | B3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
    },
    {
      name: 'a beat of the alto not written yet',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 G4 ? | D4*4! |
T: D4 E4 D4 A3 | B3*4! |
B: G3 C3 D3 A2 | G2*4! |`,
    },
    {
      name: 'I6 without its fifth',
      text: `key: C major
metre: 4/4
S: C5 D5 C5 D5 | D5*2 C5*2! |
A: G4 F4 E4 A4 | G4*2 E4*2! |
T: E4 B3 C4 D4 | B3*2 C4*2! |
B: C3 D3 E3 F3 | G3*2 C3*2! |`,
    },
    {
      name: 'the mediant of a minor key over its root, without its fifth',
      text: `key: C minor
metre: 4/4
S: Bb4 C5 Eb5 D5 | C5*4! |
A: D4 Eb4 G4 F4 | G4*4! |
T: Bb3 Ab3 G3 B3 | Eb4*4! |
B: G3 F3 Eb3 G3 | C3*4! |`,
    },
  ],
});
