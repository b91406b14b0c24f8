import { unequalFifths } from '../../src/rules/unequal-fifths.ts';
import { testRule } from '../support/rules.ts';

testRule(unequalFifths, {
  failing: [
    {
      name: 'with the bass, a fault',
      text: `key: C major
metre: 2/4
S: F5 G5 |
A: G4 G4 |
T: D4 C4 |
B: B2 C3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'SB',
          notes: 'S:F5 G5 B:B2 C3',
          severity: 'fault',
          says: 'Soprano and bass go in the same direction from a diminished to a perfect fifth: F5–B2 to G5–C3.',
        },
      ],
    },
    {
      name: 'between upper voices, a query',
      text: `key: C major
metre: 2/4
S: F4 G4 |
A: B3 C4 |
T: G3 G3 |
B: G2 E3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'SA',
          notes: 'S:F4 G4 A:B3 C4',
          severity: 'query',
          says: 'Soprano and alto go in the same direction from a diminished to a perfect fifth: F4–B3 to G4–C4.',
        },
      ],
    },
    {
      name: 'over a bass that climbs in tenths, a remark',
      text: `key: C major
metre: 3/4
S: E4 F4 G4 |
A: G3 B3 C4 |
T: C4 G3 G3 |
B: C3 D3 E3 |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'SA',
          notes: 'S:F4 G4 A:B3 C4',
          severity: 'remark',
          says: 'Soprano and alto go in the same direction from a diminished to a perfect fifth: F4–B3 to G4–C4.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'from perfect to diminished',
      text: `key: C major
metre: 2/4
S: G4 F4 |
A: C4 B3 |
T: E3 G3 |
B: C3 D3 |`,
    },
    {
      name: 'the diminished fifth closes to a third',
      text: `key: C major
metre: 2/4
S: F5 E5 |
A: G4 G4 |
T: D4 C4 |
B: B2 C3 |`,
    },
    {
      name: 'an augmented fourth opens to a sixth',
      text: `key: C major
metre: 2/4
S: B4 C5 |
A: F4 E4 |
T: D4 G4 |
B: G3 C3 |`,
    },
  ],
});
