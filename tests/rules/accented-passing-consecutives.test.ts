import { accentedPassingConsecutives } from '../../src/rules/accented-passing-consecutives.ts';
import { testRule } from '../support/rules.ts';

testRule(accentedPassingConsecutives, {
  failing: [
    {
      name: 'fifths with the tenor, on the beat, which are parallel fifths as they stand: a remark',
      text: `key: C major
metre: 4/4
S: A4 A4 (G4 F4) E4 |
A: F4 F4 F4 C4 |
T: C4 D4 C4 G3 |
B: F3 D3 A2 C3 |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'ST',
          notes: 'S:A4 G4 T:D4 C4',
          severity: 'remark',
          says: 'G4 in the soprano, a passing note on the beat, makes parallel fifths between soprano and tenor: D4–A4 to C4–G4.',
        },
      ],
    },
    {
      name: 'where no rule about parallels says more than a remark',
      text: `key: C major
metre: 4/4
S: A4 A4 (G4 F4) E4 |
A: F4 F4 F4 C4 |
T: C4 (D4 A3) C4 G3 |
B: F3 D3 A2 C3 |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'ST',
          notes: 'S:A4 G4 T:D4 C4',
          severity: 'query',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'the same passing note off the beat',
      text: `key: C major
metre: 4/4
S: A4 (A4 G4) F4 E4 |
A: F4 F4 F4 C4 |
T: C4 D4 C4 G3 |
B: F3 D3 A2 C3 |`,
    },
    {
      name: 'on the beat, against a voice that stays',
      text: `key: C major
metre: 4/4
S: A4 A4 (G4 F4) E4 |
A: F4 F4 F4 C4 |
T: C4 C4 C4 G3 |
B: F3 F3 A2 C3 |`,
    },
  ],
});
