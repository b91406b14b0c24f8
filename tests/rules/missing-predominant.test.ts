import { missingPredominant } from '../../src/rules/missing-predominant.ts';
import { testRule } from '../support/rules.ts';

testRule(missingPredominant, {
  failing: [
    {
      name: 'the dominant comes from the tonic',
      text: `key: C major
metre: 4/4
S: E4 G4 E4 D4 | C4*4! |
A: C4 D4 C4 B3 | G3*4! |
T: G3 B3 G3 G3 | E3*4! |
B: C3 G2 C3 G2 | C3*4! |`,
      expect: [
        {
          bar: '1',
          beat: '3',
          voices: 'SB',
          notes: 'S:E4 D4 C4 B:C3 G2 C3',
          severity: 'remark',
          says: 'The dominant of this cadence comes from I, without a chord that leads to it.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'a cadential six-four leans on the dominant',
      text: `key: C major
metre: 4/4
S: E4 F4 E4 D4 | C4*4! |
A: C4 C4 C4 B3 | G3*4! |
T: G3 A3 G3 G3 | E3*4! |
B: C3 F3 G3 G2 | C3*4! |`,
    },
    {
      name: 'the supertonic leads to it',
      text: `key: C major
metre: 4/4
S: E4 G4 F4 D4 | C4*4! |
A: C4 C4 D4 B3 | G3*4! |
T: G3 E3 A3 G3 | E3*4! |
B: C3 C3 F2 G2 | C3*4! |`,
    },
  ],
});
