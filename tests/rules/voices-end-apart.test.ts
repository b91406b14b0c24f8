import { voicesEndApart } from '../../src/rules/voices-end-apart.ts';
import { testRule } from '../support/rules.ts';

testRule(voicesEndApart, {
  failing: [
    {
      name: 'the alto stops a beat early',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 G4 F#4 | D4*3 r |
T: D4 E4 D4 C4 | B3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
      expect: [
        {
          bar: '2',
          beat: '1',
          voices: 'A',
          notes: 'A:D4',
          severity: 'fault',
          says: 'Alto stops at bar 2, beat 4, and the other voices sing on to the end of bar 2.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'all stop together',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 G4 F#4 | D4*4! |
T: D4 E4 D4 C4 | B3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
    },
    {
      name: 'the alto is not written to the end',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 G4 F#4 | D4*3 ? |
T: D4 E4 D4 C4 | B3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
    },
    {
      name: 'one voice moves in the last chord and ends with the others',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 G4 F#4 | D4*4! |
T: D4 E4 D4 C4 | C4 B3*3! |
B: G3 C3 D3 D3 | G2*4! |`,
    },
  ],
});
