import { noTierce } from '../../src/rules/no-tierce.ts';
import { testRule } from '../support/rules.ts';

testRule(noTierce, {
  failing: [
    {
      name: 'a minor close',
      text: `key: A minor
metre: 4/4
S: C5 D5 C5 B4 | A4*4! |
A: A4 A4 A4 G#4 | E4*4! |
T: E4 F4 E4 D4 | C4*4! |
B: A3 D3 E3 E3 | A2*4! |`,
      expect: [
        {
          bar: '2',
          beat: '1',
          voices: 'T',
          notes: 'T:C4',
          severity: 'remark',
          says: 'The piece ends with a minor chord, its third being C4 in the tenor; most chorales in minor end with a major one.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'a major close',
      text: `key: A minor
metre: 4/4
S: C5 D5 C5 B4 | A4*4! |
A: A4 A4 A4 G#4 | E4*4! |
T: E4 F4 E4 D4 | C#4*4! |
B: A3 D3 E3 E3 | A2*4! |`,
    },
    {
      name: 'a major key',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 G4 F#4 | D4*4! |
T: D4 E4 D4 C4 | B3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
    },
  ],
});
