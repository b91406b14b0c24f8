import { unresolvedSeventh } from '../../src/rules/unresolved-seventh.ts';
import { testRule } from '../support/rules.ts';

testRule(unresolvedSeventh, {
  failing: [
    {
      name: 'of a chord on the last quaver of 6/8, in passing: a remark',
      text: `key: G major
metre: 6/8
S: G4*2 A4 B4*2 G4 | A4*2 B4 A4*3 | G4*6! |
A: D4*3 D4*3 | F#4*3 F#4*3 | D4*6! |
T: B3*3 G3*2 B3 | D4*3 D4*2 C4 | B3*6! |
B: G3*3 G3*2 E3 | D3*3 D3*3 | G2*6! |`,
      expect: [{ bar: '1', beat: '6', voices: 'A', notes: 'A:D4 F#4', severity: 'remark' }],
    },
    {
      name: 'the seventh of the dominant leaps up',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | B4*4! |
A: G4 G4 G4 F#4 | D4*4! |
T: D4 E4 D4 C4 | G3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
      expect: [
        {
          bar: '1',
          beat: '4',
          voices: 'T',
          notes: 'T:C4 G3',
          severity: 'fault',
          says: 'C4 in the tenor is the seventh of the chord, but the tenor goes to G3 instead of falling by step.',
        },
      ],
    },
    {
      name: 'the seventh of the supertonic chord leaps down',
      text: `key: C major
metre: 4/4
S: E4 F4 D4 B3 | C4*4! |
A: C4 C4 G3 G3 | G3*4! |
T: G3 A3 D4 D4 | E4*4! |
B: C3 D3 G3 G2 | C3*4! |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'A',
          notes: 'A:C4 G3',
          severity: 'fault',
          says: 'C4 in the alto is the seventh of the chord, but the alto goes to G3 instead of falling by step.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'it falls by step',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 G4 F#4 | D4*4! |
T: D4 E4 D4 C4 | B3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
    },
    {
      name: 'in a passing 4/3 it rises with the bass, and that is only mentioned elsewhere',
      text: `key: C major
metre: 4/4
S: C5 B4 C5 B4 | C5*4! |
A: G4 G4 G4 F4 | E4*4! |
T: E4 F4 E4 D4 | C4*4! |
B: C3 D3 E3 G3 | C3*4! |`,
    },
  ],
});
