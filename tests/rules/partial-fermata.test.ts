import { partialFermata } from '../../src/rules/partial-fermata.ts';
import { testRule } from '../support/rules.ts';

testRule(partialFermata, {
  failing: [
    {
      name: 'the bass has none',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 G4 F#4 | D4*4! |
T: D4 E4 D4 C4 | B3*4! |
B: G3 C3 D3 D3 | G2*4 |`,
      expect: [
        {
          bar: '2',
          beat: '1',
          voices: 'B',
          notes: 'B:G2',
          severity: 'remark',
          says: 'The fermata at bar 2, beat 1 stands in soprano, alto and tenor, but not in bass.',
        },
      ],
    },
    {
      name: 'only the given melody has any, at both phrase ends',
      text: `key: C major
metre: 4/4
S: E4 F4 E4 D4! | E4 F4 D4 C4! |
A: C4 C4 C4 B3 | C4 C4 B3 G3 |
T: G3 A3 G3 G3 | G3 A3 G3 E3 |
B: C3 F3 C3 G2 | C3 F3 G3 C3 |`,
      expect: [
        {
          bar: '1',
          beat: '4',
          voices: 'ATB',
          notes: 'A:B3 T:G3 B:G2',
          severity: 'remark',
          says: 'Only soprano has fermatas, here and at the other phrase ends; alto, tenor and bass should have them too.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'all four voices have it',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 G4 F#4 | D4*4! |
T: D4 E4 D4 C4 | B3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
    },
    {
      name: 'a voice moves under it and has it on its first note',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 G4 F#4 | D4*4! |
T: D4 E4 D4 C4 | (C4! B3)*4 |
B: G3 C3 D3 D3 | G2*4! |`,
    },
    {
      name: 'the other voices are still to be written',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: ? ? ? ? | ?*4 |
T: ? ? ? ? | ?*4 |
B: ? ? ? ? | ?*4 |`,
    },
  ],
});
