import { heldUnison } from '../../src/rules/held-unison.ts';
import { testRule } from '../support/rules.ts';

testRule(heldUnison, {
  failing: [
    {
      name: 'alto and tenor for three beats',
      text: `key: C major
metre: 4/4
S: G4 A4 G4 G4 |
A: C4 C4 C4 D4 |
T: C4*3 B3 |
B: E3 F3 E3 G3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'AT',
          notes: 'A:C4 C4 C4 T:C4',
          severity: 'query',
          says: 'Alto and tenor stay on the same note, C4, for 3 beats.',
        },
      ],
    },
    {
      name: 'two beats, a remark',
      text: `key: C major
metre: 3/4
S: G4 A4 G4 |
A: C4 C4 E4 |
T: C4 C4 C4 |
B: E3 F3 C3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'AT',
          notes: 'A:C4 C4 T:C4 C4',
          severity: 'remark',
          says: 'Alto and tenor stay on the same note, C4, for 2 beats.',
        },
      ],
    },
    {
      name: 'for three beats, but moving, which is said as parallel unisons: a remark',
      text: `key: C major
metre: 4/4
S: G4 E4 F4 E4 | G4*4! |
A: C4 E4 F4 E4 | E4*4! |
T: G3 C4 A3 C4 | C4*4! |
B: E3 C3 D3 A2 | C3*4! |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'SA',
          notes: 'S:E4 F4 E4 A:E4 F4 E4',
          severity: 'remark',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'one beat',
      text: `key: C major
metre: 3/4
S: G4 A4 G4 |
A: C4 C4 E4 |
T: G3 C4 C4 |
B: E3 F3 C3 |`,
    },
    {
      name: 'an octave is no unison',
      text: `key: C major
metre: 3/4
S: G4 A4 G4 |
A: C4 C4 C4 |
T: C3 C3 C3 |
B: E3 F3 E3 |`,
    },
  ],
});
