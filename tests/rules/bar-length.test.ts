import { barLength } from '../../src/rules/bar-length.ts';
import { testRule } from '../support/rules.ts';

testRule(barLength, {
  failing: [
    {
      name: 'a crotchet too many in the tenor',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 G4 F#4 | D4*4! |
T: D4*2 E4 D4 C4 | B3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'T',
          notes: 'T:D4 E4 D4 C4',
          severity: 'fault',
          says: 'Tenor has 5 beats in bar 1, where 4 beats of 4/4 should stand.',
        },
      ],
    },
    {
      name: 'half a beat too few in soprano and alto',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4/2 | G4*4! |
A: G4 G4 G4 F#4/2 | D4*4! |
T: D4 E4 D4 C4 | B3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'SA',
          notes: 'S:B4 C5 B4 A4 A:G4 G4 G4 F#4',
          severity: 'fault',
          says: 'Soprano and alto have 3½ beats in bar 1, where 4 beats of 4/4 should stand.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'full bars',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 G4 F#4 | D4*4! |
T: D4 E4 D4 C4 | B3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
    },
    {
      name: 'an upbeat, and a last bar that gives it back',
      text: `key: G major
metre: 4/4
upbeat: 1
S: D5 | B4 C5 B4 A4 | G4*3! |
A: G4 | G4 G4 G4 F#4 | D4*3! |
T: B3 | D4 E4 D4 C4 | B3*3! |
B: G3 | G3 C3 D3 D3 | G2*3! |`,
    },
    {
      name: 'a bar that is not finished yet',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4
A: G4 G4 G4 F#4
T: D4 E4
B: G3 C3 D3 D3`,
    },
  ],
});
