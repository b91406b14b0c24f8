import { doubledThird } from '../../src/rules/doubled-third.ts';
import { testRule } from '../support/rules.ts';

testRule(doubledThird, {
  failing: [
    {
      name: 'the alto leaps to the third that the soprano leaps to',
      text: `key: G major
metre: 4/4
S: D5 B4 C5 A4 | G4*4! |
A: G4 B4 E4 F#4 | D4*4! |
T: B3 D4 G3 C4 | B3*4! |
B: G3 G3 C3 D3 | G2*4! |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'SA',
          notes: 'S:B4 A:B4',
          severity: 'remark',
          says: 'The third of a major chord, B, is doubled: B4 in the soprano and B4 in the alto.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'the root doubled',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 G4 F#4 | D4*4! |
T: D4 E4 D4 C4 | B3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
    },
    {
      name: 'the thirds are met by step in contrary motion',
      text: `key: C major
metre: 4/4
S: D4 E4 F4 D4 | C4*4! |
A: B3 C4 A3 B3 | G3*4! |
T: F3 E3 D3 D3 | E3*4! |
B: G2 C3 D3 G2 | C3*4! |`,
    },
    {
      name: 'VI after V, where the third is doubled by custom',
      text: `key: C major
metre: 4/4
S: E4 D4 C4 B3 | C4*4! |
A: C4 B3 C4 G3 | G3*4! |
T: G3 G3 E3 D3 | E3*4! |
B: C3 G2 A2 G2 | C3*4! |`,
    },
  ],
});
