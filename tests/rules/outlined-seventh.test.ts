import { outlinedSeventh } from '../../src/rules/outlined-seventh.ts';
import { testRule } from '../support/rules.ts';

testRule(outlinedSeventh, {
  failing: [
    {
      name: 'two fourths in the tenor',
      text: `key: C major
metre: 3/4
S: G4 F4 F4 |
A: E4 C4 D4 |
T: C3 F3 Bb3 |
B: C3 A2 Bb2 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'T',
          notes: 'T:C3 F3 Bb3',
          severity: 'query',
          says: 'The tenor leaps twice up, C3–F3–Bb3: a minor seventh in all.',
        },
      ],
    },
    {
      name: 'a third and a seventh in all, down, in the soprano',
      text: `key: C major
metre: 3/4
S: D5 A4 E4 |
A: F4 F4 C4 |
T: A3 C4 G3 |
B: D3 F3 C3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'S',
          notes: 'S:D5 A4 E4',
          severity: 'query',
          says: 'The soprano leaps twice down, D5–A4–E4: a minor seventh in all.',
        },
      ],
    },
    {
      name: 'with a step back after it, a remark',
      text: `key: C major
metre: 4/4
S: G4 F4 F4 F4 |
A: E4 C4 D4 C4 |
T: C3 F3 Bb3 A3 |
B: C3 A2 Bb2 F2 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'T',
          notes: 'T:C3 F3 Bb3',
          severity: 'remark',
          says: 'The tenor leaps twice up, C3–F3–Bb3: a minor seventh in all.',
        },
      ],
    },
    {
      name: 'in the bass, a remark',
      text: `key: C major
metre: 3/4
S: G4 F4 F4 |
A: E4 C4 D4 |
T: G3 A3 F3 |
B: C3 F3 Bb3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'B',
          notes: 'B:C3 F3 Bb3',
          severity: 'remark',
          says: 'The bass leaps twice up, C3–F3–Bb3: a minor seventh in all.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'a third and a fourth make a sixth',
      text: `key: C major
metre: 3/4
S: G4 G4 A4 |
A: C4 C4 C4 |
T: C3 E3 A3 |
B: C3 C3 F2 |`,
    },
    {
      name: 'a leap and a step',
      text: `key: C major
metre: 3/4
S: G4 F4 G4 |
A: E4 C4 E4 |
T: C3 F3 G3 |
B: C3 A2 C3 |`,
    },
    {
      name: 'up and down again',
      text: `key: C major
metre: 3/4
S: G4 F4 G4 |
A: E4 C4 E4 |
T: C3 G3 E3 |
B: C3 A2 C3 |`,
    },
  ],
});
