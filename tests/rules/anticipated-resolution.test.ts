import { anticipatedResolution } from '../../src/rules/anticipated-resolution.ts';
import { testRule } from '../support/rules.ts';

testRule(anticipatedResolution, {
  failing: [
    {
      name: 'the tenor has the third before the alto comes down to it',
      text: `key: C major
metre: 4/4
S: E5 D5 D5*2 | C5*4! |
A: G4 C5 (C5 B4)*2 | G4*4! |
T: C4 A3 B3*2 | C4*4! |
B: C3 F3 G3*2 | C3*4! |`,
      expect: [
        {
          bar: '1',
          beat: '3',
          voices: 'AT',
          notes: 'A:C5 B4 T:B3',
          severity: 'fault',
          says: 'C5 in the alto is suspended before alto B4, but tenor B3 has that note already.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'nobody has it',
      text: `key: C major
metre: 4/4
S: E5 D5 D5*2 | C5*4! |
A: G4 C5 (C5 B4)*2 | G4*4! |
T: C4 A3 G3*2 | E3*4! |
B: C3 F3 G3*2 | C3*4! |`,
    },
    {
      name: '9–8: the bass has the root below',
      text: `key: C major
metre: 4/4
S: E4 D4 (D4 C4)*2 | C4*4! |
A: C4 B3 G3*2 | G3*4! |
T: G3 G3 E3*2 | E3*4! |
B: C3 G2 C3*2 | C3*4! |`,
    },
    {
      name: '9–8 over the tenor, while the bass rests',
      text: `key: G minor
metre: 4/4
S: Bb4 A4 Bb4 A4 | G4*4! |
A: G4 A4 (A4 G4) F#4 | D4*4! |
T: D4 D4 G3 C4 | Bb3*4! |
B: G3 F#3 r D3 | G2*4! |`,
    },
  ],
});
