import { upwardSuspension } from '../../src/rules/upward-suspension.ts';
import { testRule } from '../support/rules.ts';

testRule(upwardSuspension, {
  failing: [
    {
      name: 'taken for the seventh of a chord',
      text: `key: A minor
metre: 4/4
S: C5 D5 B4 C5 | B4*4! |
A: E4 D4 D4/2 E4/2 A4 | G#4*4! |
T: A3 A3 G3 E3 | E3*4! |
B: A3 F3 E3 A2 | E3*4! |`,
      expect: [
        {
          bar: '1',
          beat: '3',
          voices: 'A',
          notes: 'A:D4 D4 E4',
        },
      ],
    },
    {
      name: 'the alto rises by a tone from the held note',
      text: `key: C major
metre: 4/4
S: G4 G4 G4*2 | G4*4! |
A: E4 D4 (D4 E4)*2 | E4*4! |
T: C4 B3 C4*2 | C4*4! |
B: C3 G3 C3*2 | C3*4! |`,
      expect: [
        {
          bar: '1',
          beat: '3',
          voices: 'A',
          notes: 'A:D4 D4 E4',
          severity: 'query',
          says: 'D4 in the alto is held over as a dissonance, and the alto goes up to E4 instead of falling by step.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'the held note falls by step',
      text: `key: C major
metre: 4/4
S: G4 G4 G4*2 | G4*4! |
A: E4 D4 (D4 C4)*2 | C4*4! |
T: C4 B3 E3*2 | E3*4! |
B: C3 G3 C3*2 | C3*4! |`,
    },
    {
      name: 'a leading note that is held over may rise',
      text: `key: C major
metre: 4/4
S: G4 G4 G4*2 | G4*4! |
A: E4 D4 E4*2 | E4*4! |
T: C4 B3 (B3 C4)*2 | C4*4! |
B: C3 G3 C3*2 | C3*4! |`,
    },
  ],
});
