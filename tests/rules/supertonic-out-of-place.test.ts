import { supertonicOutOfPlace } from '../../src/rules/supertonic-out-of-place.ts';
import { testRule } from '../support/rules.ts';

testRule(supertonicOutOfPlace, {
  failing: [
    {
      name: 'back to the tonic',
      text: `key: C major
metre: 4/4
S: G4 F4 G4 F4 | E4*4! |
A: E4 D4 E4 D4 | C4*4! |
T: C4 A3 C4 B3 | G3*4! |
B: C3 D3 C3 G3 | C3*4! |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'SB',
          notes: 'S:F4 G4 B:D3 C3',
          severity: 'query',
          says: 'The supertonic chord, ii, goes to I.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'to the dominant',
      text: `key: C major
metre: 4/4
S: G4 F4 G4 F4 | E4*4! |
A: E4 D4 D4 D4 | C4*4! |
T: C4 A3 B3 B3 | G3*4! |
B: C3 D3 G2 G2 | C3*4! |`,
    },
    {
      name: 'to the six-four over the dominant',
      text: `key: C major
metre: 4/4
S: E4 F4 E4 D4 | C4*4! |
A: C4 A3 C4 B3 | G3*4! |
T: G3 D4 G3 G3 | E3*4! |
B: C3 D3 G2 G2 | C3*4! |`,
    },
    {
      name: 'in first inversion, between two positions of the tonic',
      text: `key: C major
metre: 4/4
S: G4 A4 G4 F4 | E4*4! |
A: E4 D4 E4 D4 | C4*4! |
T: C4 D4 C4 B3 | G3*4! |
B: E3 F3 E3 G3 | C3*4! |`,
    },
    {
      name: 'quickly, in tenths over a passing bass',
      text: `key: C major
metre: 4/4
S: G4 G4/2 F4/2 E4 D4 | C4*4! |
A: C4 C4 C4 B3 | G3*4! |
T: E3 E3/2 F3/2 G3 G3 | E3*4! |
B: C3 E3/2 D3/2 C3 G2 | C3*4! |`,
    },
  ],
});
