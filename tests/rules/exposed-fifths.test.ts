import { exposedFifths } from '../../src/rules/exposed-fifths.ts';
import { testRule } from '../support/rules.ts';

testRule(exposedFifths, {
  failing: [
    {
      name: 'both up, the soprano by a fourth',
      text: `key: C major
metre: 2/4
S: E4 A4 |
A: C4 F4 |
T: G3 F3 |
B: C3 D3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'SB',
          notes: 'S:E4 A4 B:C3 D3',
          severity: 'query',
          says: 'Soprano and bass both move up into a fifth, and the soprano leaps: E4–C3 to A4–D3 (soprano up a perfect fourth).',
        },
      ],
    },
    {
      name: 'both down',
      text: `key: C major
metre: 2/4
S: C5 G4 |
A: F4 E4 |
T: C4 C4 |
B: A3 C3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'SB',
          notes: 'S:C5 G4 B:A3 C3',
          severity: 'query',
          says: 'Soprano and bass both move down into a fifth, and the soprano leaps: C5–A3 to G4–C3 (soprano down a perfect fourth).',
        },
      ],
    },
    {
      name: 'parallel fifths but for a passing note, and told as those: a remark',
      text: `key: C major
metre: 4/4
S: E5 E5 D5 B4 | C5*4! |
A: G4 C5*2 G4 | G4*4! |
T: C4 C4*2 E4 | E4*4! |
B: C3 A3*2 E3 | C3*4! |`,
      expect: [
        {
          bar: '1',
          beat: '3',
          voices: 'SB',
          notes: 'S:D5 B4 B:A3 E3',
          severity: 'remark',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'the soprano moves by step',
      text: `key: C major
metre: 2/4
S: E4 D4 |
A: C4 B3 |
T: G3 G3 |
B: C4 G3 |`,
    },
    {
      name: 'the bass goes the other way',
      text: `key: C major
metre: 2/4
S: E4 A4 |
A: C4 F4 |
T: G3 F3 |
B: E3 D3 |`,
    },
    {
      name: 'alto and bass are not both outer voices',
      text: `key: C major
metre: 2/4
S: C5 C5 |
A: E4 A4 |
T: G3 F3 |
B: C3 D3 |`,
    },
    {
      name: 'parallel fifths have a rule of their own',
      text: `key: C major
metre: 2/4
S: G4 C5 |
A: E4 A4 |
T: C4 E4 |
B: C3 F3 |`,
    },
  ],
});
