import { noCadence } from '../../src/rules/no-cadence.ts';
import { testRule } from '../support/rules.ts';

testRule(noCadence, {
  failing: [
    {
      name: 'an end that was inferred from a note no longer than others',
      text: `key: G major
metre: 4/4
S: G4 F#4 G4 A4 | B4 C5 A4 B4 | B4 C5 D5 B4 | C5 A4 B4*2 | D5 C5 B4 A4 | G4 E4 F#4 G4 | A4 B4 C5 A4 | G4 F#4 G4*2 |
A: D4 D4 D4 F#4 | G4 G4 E4 D4 | G4 A4 A4 G4 | G4 F#4 G4*2 | G4 F#4 G4 F#4 | D4 C4 C4 B3 | F#4 G4 G4 F#4 | D4 D4 D4*2 |
T: B3 A3 B3 D4 | D4 E4 C4 G3 | D4 D4 D4 D4 | E4 D4 D4*2 | B3 D4 D4 D4 | B3 G3 A3 G3 | D4 D4 E4 D4 | B3 C4 B3*2 |
B: G3 D3 G3 D3 | G3 C3 A2 G2 | G3 F#3 F#3 G3 | C3 D3 G2*2 | G3 A3 B3 D3 | G3 C3 D3 E3 | D3 G3 C3 D3 | G3 D3 G2*2 |`,
      expect: [
        {
          bar: '2',
          beat: '3',
          voices: 'SB',
          notes: 'S:A4 B4 B:A2 G2',
          severity: 'remark',
          says: 'A phrase seems to end at bar 2, beat 4 with ii–I, which is no cadence.',
        },
      ],
    },
    {
      name: 'a phrase stops on the submediant after the supertonic',
      text: `key: C major
metre: 4/4
S: E4 F4 F4 E4! | E4 D4 C4*2! |
A: C4 C4 D4 C4! | C4 B3 G3*2! |
T: G3 A3 A3 A3! | G3 G3 E3*2! |
B: C3 F3 D3 A2! | G2 G2 C3*2! |`,
      expect: [
        {
          bar: '1',
          beat: '3',
          voices: 'SB',
          notes: 'S:F4 E4 B:D3 A2',
          severity: 'query',
          says: 'The phrase ends at bar 1, beat 4 with ii–vi, which is no cadence.',
        },
      ],
    },
    {
      name: 'a half close whose seventh degree is not raised, which has a rule of its own: a remark',
      text: `key: A minor
metre: 4/4
S: A4 B4 C5 B4! | A4 G#4 A4*2! |
A: E4 E4 E4 E4! | E4 E4 E4*2! |
T: C4 G#3 A3 G3! | A3 B3 C4*2! |
B: A3 E3 A2 E3! | C3 E3 A2*2! |`,
      expect: [
        {
          bar: '1',
          beat: '3',
          voices: 'SB',
          notes: 'S:C5 B4 B:A2 E3',
          severity: 'remark',
          says: 'with i–v, which is no cadence',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'a phrase stops on the dominant',
      text: `key: C major
metre: 4/4
S: E4 F4 E4 D4! | E4 F4 D4 C4! |
A: C4 C4 C4 B3! | C4 C4 B3 G3! |
T: G3 A3 G3 G3! | G3 A3 G3 E3! |
B: C3 F3 C3 G2! | C3 F3 G3 C3! |`,
    },
    {
      name: 'the phrase end is still to be harmonised',
      text: `key: C major
metre: 4/4
S: E4 F4 E4 D4! | E4 F4 D4 C4! |
A: C4 C4 ? ? | C4 C4 B3 G3! |
T: G3 A3 ? ? | G3 A3 G3 E3! |
B: C3 F3 ? ? | C3 F3 G3 C3! |`,
    },
  ],
});
