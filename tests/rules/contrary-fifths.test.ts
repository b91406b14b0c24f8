import { contraryFifths } from '../../src/rules/contrary-fifths.ts';
import { testRule } from '../support/rules.ts';

testRule(contraryFifths, {
  failing: [
    {
      name: 'outer voices from a twelfth to a fifth',
      text: `key: C major
metre: 2/4
S: G4 D4 |
A: E4 B3 |
T: C4 G3 |
B: C3 G3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'SB',
          notes: 'S:G4 D4 B:C3 G3',
          severity: 'fault',
          says: 'Soprano and bass move in fifths by contrary motion: G4–C3 to D4–G3.',
        },
      ],
    },
    {
      name: 'tenor and bass: a query',
      text: `key: C major
metre: 2/4
S: E4 D4 |
A: C4 B3 |
T: G3 D4 |
B: C3 G2 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'TB',
          notes: 'T:G3 D4 B:C3 G2',
          severity: 'query',
          says: 'Tenor and bass move in fifths by contrary motion: G3–C3 to D4–G2.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'from a twelfth to an octave',
      text: `key: C major
metre: 2/4
S: G4 G4 |
A: E4 D4 |
T: C4 B3 |
B: C3 G3 |`,
    },
    {
      name: 'parallel fifths are not contrary ones',
      text: `key: C major
metre: 2/4
S: C5 C5 |
A: E4 E4 |
T: G3 A3 |
B: C3 D3 |`,
    },
    {
      name: 'a fifth and then a diminished twelfth',
      text: `key: C major
metre: 2/4
S: G4 F4 |
A: E4 D4 |
T: C4 G3 |
B: C3 B2 |`,
    },
  ],
});
