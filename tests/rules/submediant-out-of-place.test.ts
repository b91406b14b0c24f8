import { submediantOutOfPlace } from '../../src/rules/submediant-out-of-place.ts';
import { testRule } from '../support/rules.ts';

testRule(submediantOutOfPlace, {
  failing: [
    {
      name: 'after the supertonic',
      text: `key: C major
metre: 4/4
S: E4 F4 E4 D4 | C4*4! |
A: C4 A3 C4 B3 | G3*4! |
T: G3 F3 A3 G3 | E3*4! |
B: C3 D3 A2 G2 | C3*4! |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'SB',
          notes: 'S:F4 E4 B:D3 A2',
          severity: 'remark',
          says: 'The submediant comes from where it is not expected: ii to vi.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'from the tonic on to the supertonic',
      text: `key: C major
metre: 4/4
S: G4 A4 A4 G4 | G4*4! |
A: E4 E4 F4 D4 | E4*4! |
T: C4 C4 D4 B3 | C4*4! |
B: C3 A2 D3 G2 | C3*4! |`,
    },
    {
      name: 'after the dominant, as a surprise',
      text: `key: C major
metre: 4/4
S: E4 D4 C4 B3 | C4*4! |
A: C4 B3 C4 G3 | G3*4! |
T: G3 G3 E3 D3 | E3*4! |
B: C3 G2 A2 G2 | C3*4! |`,
    },
  ],
});
