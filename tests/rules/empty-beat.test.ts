import { emptyBeat } from '../../src/rules/empty-beat.ts';
import { testRule } from '../support/rules.ts';

testRule(emptyBeat, {
  failing: [
    {
      name: 'all four voices rest on the third beat',
      text: `key: C major
metre: 4/4
S: E4 F4 r D4 | C4*4! |
A: C4 C4 r B3 | G3*4! |
T: G3 A3 r G3 | E3*4! |
B: C3 F3 r G2 | C3*4! |`,
      expect: [
        {
          bar: '1',
          beat: '3',
          voices: 'SATB',
          notes: '',
          severity: 'query',
          says: 'Nobody sings for 1 beat from bar 1, beat 3.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'a breath after a fermata',
      text: `key: C major
metre: 4/4
S: E4 D4! r E4 | F4 D4 C4*2! |
A: C4 B3! r C4 | C4 B3 G3*2! |
T: G3 G3! r G3 | A3 G3 E3*2! |
B: C3 G2! r C3 | F3 G3 C3*2! |`,
    },
    {
      name: 'one voice sings on',
      text: `key: C major
metre: 4/4
S: E4 F4 E4 D4 | C4*4! |
A: C4 C4 r B3 | G3*4! |
T: G3 A3 r G3 | E3*4! |
B: C3 F3 r G2 | C3*4! |`,
    },
    {
      name: 'nothing is written there yet',
      text: `key: C major
metre: 4/4
S: E4 F4 ? D4 | C4*4! |
A: C4 C4 ? B3 | G3*4! |
T: G3 A3 ? G3 | E3*4! |
B: C3 F3 ? G2 | C3*4! |`,
    },
  ],
});
