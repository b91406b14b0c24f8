import { unpreparedSuspension } from '../../src/rules/unprepared-suspension.ts';
import { testRule } from '../support/rules.ts';

testRule(unpreparedSuspension, {
  failing: [
    {
      name: 'the tenor leaps to the fourth above the bass while the soprano leaves the fifth for a quaver',
      text: `key: B minor
metre: 4/4
S: D5 (C#5 B4) C#5 B4 | B4*4! |
A: F#4 F#4 F#4 D4 | D4*4! |
T: F#3 B3 A#3 B3 | B3*4! |
B: (D3 E3) F#3 F#2 B2 | B2*4! |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'ST',
          notes: 'S:C#5 T:F#3 B3 A#3',
          severity: 'remark',
          says: 'B3 in the tenor is dissonant with',
        },
      ],
    },
    {
      name: 'the alto leaps to the fourth above the bass',
      text: `key: C major
metre: 4/4
S: C5 D5 D5*2 | C5*4! |
A: G4 F4 (C5 B4)*2 | G4*4! |
T: E4 A3 G3*2 | E3*4! |
B: C3 D3 G2*2 | C3*4! |`,
      expect: [
        {
          bar: '1',
          beat: '3',
          voices: 'SAB',
          notes: 'S:D5 A:F4 C5 B4 B:G2',
          severity: 'fault',
          says: 'C5 in the alto is dissonant with soprano D5 and bass G2 and falls to B4 like a suspension, but the alto leaps to it from F4.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'the bass leaps beneath a suspension that falls and returns as the bass moves on',
      text: `key: G major
metre: 4/4
S: B4 G4*3/2 F#4/2 G4! |
A: D4 E4 C4 D4! |
T: G3 G3 C4 B3! |
B: G3 C4 A3 G3! |`,
    },
    {
      name: 'prepared in the chord before',
      text: `key: C major
metre: 4/4
S: E5 D5 D5*2 | C5*4! |
A: G4 C5 (C5 B4)*2 | G4*4! |
T: C4 A3 G3*2 | E3*4! |
B: C3 F3 G3*2 | C3*4! |`,
    },
    {
      name: 'an accented passing note comes by step',
      text: `key: C major
metre: 4/4
S: E5 D5 D5*2 | C5*4! |
A: G4 D5 (C5 B4)*2 | G4*4! |
T: C4 A3 G3*2 | E3*4! |
B: C3 F3 G3*2 | C3*4! |`,
    },
  ],
});
