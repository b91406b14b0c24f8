import { augmentedLeap } from '../../src/rules/augmented-leap.ts';
import { testRule } from '../support/rules.ts';

testRule(augmentedLeap, {
  failing: [
    {
      name: 'an augmented fourth up to the leading note',
      text: `key: C major
metre: 2/4
S: A4 G4 |
A: C4 D4 |
T: F3 G3 |
B: F2 B2 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'B',
          notes: 'B:F2 B2',
          severity: 'fault',
          says: 'The bass leaps up an augmented fourth, F2 to B2.',
        },
      ],
    },
    {
      name: 'an augmented fifth down',
      text: `key: A minor
metre: 2/4
S: B4 A4 |
A: E4 E4 |
T: B3 A3 |
B: G#3 C3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'B',
          notes: 'B:G#3 C3',
          severity: 'fault',
          says: 'The bass leaps down an augmented fifth, G#3 to C3.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'the diminished fifth instead',
      text: `key: C major
metre: 2/4
S: A4 G4 |
A: C4 D4 |
T: F3 G3 |
B: F3 B2 |`,
    },
    {
      name: 'an augmented second is another rule',
      text: `key: A minor
metre: 2/4
S: A4 B4 |
A: F4 G#4 |
T: D4 E4 |
B: D3 E3 |`,
    },
  ],
});
