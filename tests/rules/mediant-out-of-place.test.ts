import { mediantOutOfPlace } from '../../src/rules/mediant-out-of-place.ts';
import { testRule } from '../support/rules.ts';

testRule(mediantOutOfPlace, {
  failing: [
    {
      name: 'to the dominant',
      text: `key: G major
metre: 4/4
S: B4 B4 A4 G4 | F#4*2 G4*2! |
A: G4 F#4 F#4 E4 | D4*2 D4*2! |
T: D4 D4 D4 C4 | C4*2 B3*2! |
B: G3 B2 D3 C3 | D3*2 G2*2! |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'SB',
          notes: 'S:B4 A4 B:B2 D3',
          severity: 'query',
          says: 'The mediant chord, iii, goes to V.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'to the subdominant, under a falling melody',
      text: `key: G major
metre: 4/4
S: G4 F#4 E4 D4 | D4*4! |
A: D4 D4 C4 A3 | B3*4! |
T: B3 B3 G3 F#3 | G3*4! |
B: G3 B2 C3 D3 | G2*4! |`,
    },
    {
      name: 'no mediant at all: the tonic in first inversion',
      text: `key: G major
metre: 4/4
S: B4 B4 A4 G4 | F#4*2 G4*2! |
A: G4 G4 F#4 E4 | D4*2 D4*2! |
T: D4 D4 D4 C4 | C4*2 B3*2! |
B: G3 B2 D3 C3 | D3*2 G2*2! |`,
    },
  ],
});
