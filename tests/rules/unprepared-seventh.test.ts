import { unpreparedSeventh } from '../../src/rules/unprepared-seventh.ts';
import { testRule } from '../support/rules.ts';

testRule(unpreparedSeventh, {
  failing: [
    {
      name: 'the soprano leaps to the seventh of the supertonic chord',
      text: `key: G major
metre: 4/4
S: B4 G4 F#4 G4 | A4*2 G4*2! |
A: D4 E4 D4 D4 | F#4*2 D4*2! |
T: G3 A3 A3 B3 | D4*2 B3*2! |
B: G2 C3 D3 G2 | D3*2 G2*2! |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'S',
          notes: 'S:B4 G4',
          severity: 'query',
          says: 'G4 in the soprano is the seventh of the chord, and the soprano leaps to it by a major third.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'it is there in the chord before',
      text: `key: G major
metre: 4/4
S: G4 G4 F#4 G4 | A4*2 G4*2! |
A: D4 E4 D4 D4 | F#4*2 D4*2! |
T: B3 A3 A3 B3 | D4*2 B3*2! |
B: G2 C3 D3 G2 | D3*2 G2*2! |`,
    },
    {
      name: 'the seventh of a dominant may be leapt to',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 G4 F#4 | D4*4! |
T: D4 E4 G3 C4 | B3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
    },
  ],
});
