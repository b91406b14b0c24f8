import { diminishedLeap } from '../../src/rules/diminished-leap.ts';
import { testRule } from '../support/rules.ts';

testRule(diminishedLeap, {
  failing: [
    {
      name: 'the bass goes on down',
      text: `key: C major
metre: 3/4
S: A4 G4 C5 |
A: C4 D4 E4 |
T: F3 G3 A3 |
B: F3 B2 A2 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'B',
          notes: 'B:F3 B2 A2',
          severity: 'query',
          says: 'The bass leaps down a diminished fifth, F3 to B2, and does not step back inside it but moves to A2.',
        },
      ],
    },
    {
      name: 'it turns back by leap: a remark',
      text: `key: C major
metre: 3/4
S: A4 G4 G4 |
A: C4 D4 E4 |
T: F3 G3 G3 |
B: F3 B2 E3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'B',
          notes: 'B:F3 B2 E3',
          severity: 'remark',
          says: 'The bass leaps down a diminished fifth, F3 to B2, and turns back by leap to E3.',
        },
      ],
    },
    {
      name: 'the phrase stops on it: a remark',
      text: `key: C major
metre: 2/4
S: A4 G4 |
A: C4 D4 |
T: F3 G3 |
B: F3 B2 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'B',
          notes: 'B:F3 B2',
          severity: 'remark',
          says: 'The bass leaps down a diminished fifth, F3 to B2, and stops there.',
        },
      ],
    },
    {
      name: 'inside one broken chord, a remark',
      text: `key: C major
metre: 4/4
S: A4 D5 D5 C5 |
A: F4 G4 G4 G4 |
T: C4 D4 B3 C4 |
B: F3 B2 G2 C3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'B',
          notes: 'B:F3 B2 G2',
          severity: 'remark',
          says: 'The bass leaps down a diminished fifth, F3 to B2, and does not step back inside it but moves to G2.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'a step back inside',
      text: `key: C major
metre: 3/4
S: A4 G4 G4 |
A: C4 D4 E4 |
T: F3 G3 G3 |
B: F3 B2 C3 |`,
    },
    {
      name: 'after the note has been repeated',
      text: `key: C major
metre: 4/4
S: A4 G4 G4 G4 |
A: C4 D4 D4 E4 |
T: F3 G3 G3 G3 |
B: F3 B2 B2 C3 |`,
    },
    {
      name: 'a perfect fifth needs no answer',
      text: `key: C major
metre: 3/4
S: C5 C5 B4 |
A: E4 F4 D4 |
T: G3 A3 G3 |
B: C4 F3 D3 |`,
    },
  ],
});
