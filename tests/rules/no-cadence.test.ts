import { noCadence } from '../../src/rules/no-cadence.ts';
import { testRule } from '../support/rules.ts';

testRule(noCadence, {
  failing: [
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
