import { doubledSeventh } from '../../src/rules/doubled-seventh.ts';
import { testRule } from '../support/rules.ts';

testRule(doubledSeventh, {
  failing: [
    {
      name: 'alto and tenor both have the seventh of the dominant',
      text: `key: C major
metre: 4/4
S: E4 F4 D4 B3 | C4*4! |
A: C4 C4 B3 F3 | E3*4! |
T: G3 A3 G3 F3 | E3*4! |
B: C3 F3 G3 G2 | C3*4! |`,
      expect: [
        {
          bar: '1',
          beat: '4',
          voices: 'AT',
          notes: 'A:F3 T:F3',
          severity: 'fault',
          says: 'The seventh of the chord, F, is doubled: F3 in the alto and F3 in the tenor.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'the seventh in one voice',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 G4 F#4 | D4*4! |
T: D4 E4 D4 C4 | B3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
    },
    {
      name: 'the seventh passes on the half beat and is not doubled',
      text: `key: C major
metre: 4/4
S: E4 F4 E4 D4 | C4*4! |
A: C4 C4 C4 B3 | G3*4! |
T: G3 A3 G3 (G3 F3) | E3*4! |
B: C3 F3 G3 G2 | C3*4! |`,
    },
  ],
});
