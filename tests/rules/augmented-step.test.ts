import { augmentedStep } from '../../src/rules/augmented-step.ts';
import { testRule } from '../support/rules.ts';

testRule(augmentedStep, {
  failing: [
    {
      name: 'from the sixth degree to the raised seventh',
      text: `key: A minor
metre: 2/4
S: A4 B4 |
A: F4 G#4 |
T: D4 E4 |
B: D3 E3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'A',
          notes: 'A:F4 G#4',
          severity: 'fault',
          says: 'The alto moves up an augmented second, F4 to G#4.',
        },
      ],
    },
    {
      name: 'downwards, in the bass',
      text: `key: A minor
metre: 2/4
S: B4 A4 |
A: E4 D4 |
T: B3 A3 |
B: G#3 F3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'B',
          notes: 'B:G#3 F3',
          severity: 'fault',
          says: 'The bass moves down an augmented second, G#3 to F3.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'a minor third sounds the same and is none',
      text: `key: A minor
metre: 2/4
S: A4 B4 |
A: F4 Ab4 |
T: D4 F4 |
B: D3 D3 |`,
    },
    {
      name: 'a chromatic semitone',
      text: `key: A minor
metre: 2/4
S: A4 B4 |
A: G4 G#4 |
T: E4 E4 |
B: C3 E3 |`,
    },
    {
      name: 'the sixth degree is raised as well',
      text: `key: A minor
metre: 3/4
S: A4 A4 B4 |
A: E4 F#4 G#4 |
T: C4 D4 E4 |
B: A3 D3 E3 |`,
    },
  ],
});
