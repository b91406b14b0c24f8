import { hammeredNote } from '../../src/rules/hammered-note.ts';
import { testRule } from '../support/rules.ts';

testRule(hammeredNote, {
  failing: [
    {
      name: 'seven times in the alto',
      text: `key: C major
metre: 4/4
S: E5 D5 E5 D5 | C5 B4 C5 C5 |
A: G4 G4 G4 G4 | G4 G4 G4 A4 |
T: C4 B3 C4 B3 | E4 D4 E4 F4 |
B: C3 G3 C3 G2 | C3 G3 C3 F3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'A',
          notes: 'A:G4 G4 G4 G4 G4 G4 G4',
          severity: 'query',
          says: 'The alto strikes G4 7 times in a row.',
        },
      ],
    },
    {
      name: 'six times: a remark',
      text: `key: C major
metre: 4/4
S: E5 D5 E5 D5 | C5 D5 C5 C5 |
A: G4 G4 G4 G4 | G4 G4 A4 G4 |
T: C4 B3 C4 B3 | E4 B3 F4 E4 |
B: C3 G3 C3 G2 | C3 G3 F3 C3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'A',
          notes: 'A:G4 G4 G4 G4 G4 G4',
          severity: 'remark',
          says: 'The alto strikes G4 6 times in a row.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'four times',
      text: `key: C major
metre: 4/4
S: E5 D5 E5 D5 |
A: G4 G4 G4 G4 |
T: C4 B3 C4 B3 |
B: C3 G3 C3 G2 |`,
    },
    {
      name: 'one long note is struck once',
      text: `key: C major
metre: 4/4
S: E5 D5 E5 D5 | C5 B4 C5 C5 |
A: G4*4_ | G4*3 A4 |
T: C4 B3 C4 B3 | E4 D4 E4 F4 |
B: C3 G3 C3 G2 | C3 G3 C3 F3 |`,
    },
    {
      name: 'with a fermata in the middle',
      text: `key: C major
metre: 4/4
S: E5 D5 E5 D5! | C5 B4 C5 C5 |
A: G4 G4 G4 G4! | G4 G4 G4 A4 |
T: C4 B3 C4 B3! | E4 D4 E4 F4 |
B: C3 G3 C3 G2! | C3 G3 C3 F3 |`,
    },
  ],
});
