import { earlyHomeClose } from '../../src/rules/early-home-close.ts';
import { testRule } from '../support/rules.ts';

testRule(earlyHomeClose, {
  failing: [
    {
      name: 'two phrases running, and a third to come',
      text: `key: C major
metre: 4/4
S: E4 D4 C4*2! | F4 D4 C4*2! | E4 D4 C4*2! |
A: C4 B3 G3*2! | C4 B3 G3*2! | C4 B3 G3*2! |
T: G3 G3 E3*2! | A3 G3 E3*2! | G3 F3 E3*2! |
B: C3 G2 C3*2! | F2 G2 C3*2! | G2 G2 C3*2! |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'SB',
          notes: 'S:D4 C4 D4 C4 B:G2 C3 G2 C3',
          severity: 'query',
          says: 'Two phrases running close with a full perfect cadence in C major, the second at bar 2, beat 3, and the piece goes on.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'the second of two phrases is the last',
      text: `key: C major
metre: 4/4
S: E4 D4 C4*2! | F4 D4 C4*2! |
A: C4 B3 G3*2! | C4 B3 G3*2! |
T: G3 G3 E3*2! | A3 G3 E3*2! |
B: C3 G2 C3*2! | F2 G2 C3*2! |`,
    },
    {
      name: 'the phrase between stops on the dominant',
      text: `key: C major
metre: 4/4
S: E4 D4 C4*2! | F4 E4 D4*2! | E4 D4 C4*2! |
A: C4 B3 G3*2! | C4 C4 B3*2! | C4 B3 G3*2! |
T: G3 G3 E3*2! | A3 G3 G3*2! | G3 F3 E3*2! |
B: C3 G2 C3*2! | F2 C3 G2*2! | G2 G2 C3*2! |`,
    },
  ],
});
