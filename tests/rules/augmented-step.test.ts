import { augmentedStep } from '../../src/rules/augmented-step.ts';
import { testRule } from '../support/rules.ts';

testRule(augmentedStep, {
  failing: [
    {
      name: 'by its letters, though the other letter would make a minor third of it',
      text: `key: C major
metre: 4/4
S: E5 D5 D5 E5 | E5*4! |
A: A4 A4 Gb4 G4 | G4*4! |
T: C4 C4 B3 C4 | C4*4! |
B: A3 F#3 G3 C3 | C3*4! |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'A',
          notes: 'A:A4 Gb4',
          severity: 'fault',
          says: 'The alto moves down an augmented second, A4 to Gb4.',
        },
      ],
    },
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
