import { circlingLine } from '../../src/rules/circling-line.ts';
import { testRule } from '../support/rules.ts';

testRule(circlingLine, {
  failing: [
    {
      name: 'the bass round C for two bars',
      text: `key: C major
metre: 4/4
S: E4 G4 E4 F4 | E4 D4 E4 G4 |
A: C4 D4 C4 D4 | C4 B3 C4 E4 |
T: G3 G3 G3 A3 | G3 G3 G3 C4 |
B: C3 B2 C3 D3 | C3 B2 C3 C3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'B',
          notes: 'B:C3 B2 C3 D3 C3 B2 C3 C3',
          severity: 'query',
          says: 'The bass circles between B2 and D3 for 8 notes.',
        },
      ],
    },
    {
      name: 'the given tune may: a remark',
      text: `key: C major
metre: 4/4
S: C5 B4 C5 D5 | C5 B4 C5 C5 |
A: E4 G4 G4 G4 | A4 G4 F4 E4 |
T: G3 D4 E4 G3 | C4 D4 A3 G3 |
B: C3 G3 C3 B2 | A2 G2 F2 C3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'S',
          notes: 'S:C5 B4 C5 D5 C5 B4 C5 C5',
          severity: 'remark',
          says: 'The soprano circles between B4 and D5 for 8 notes.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'it climbs on after six notes',
      text: `key: C major
metre: 4/4
S: E4 G4 E4 F4 | E4 D4 E4 G4 |
A: C4 D4 C4 D4 | C4 B3 C4 E4 |
T: G3 G3 G3 A3 | G3 G3 G3 C4 |
B: C3 B2 C3 D3 | C3 B2 E3 C3 |`,
    },
    {
      name: 'an inner voice may circle',
      text: `key: C major
metre: 4/4
S: E5 D5 C5 F5 | E5 D5 G5 E5 |
A: C4 B3 C4 D4 | C4 B3 C4 C4 |
T: G3 G3 G3 A3 | G3 G3 G3 G3 |
B: C3 G3 E3 D3 | C3 G3 E3 C3 |`,
    },
  ],
});
