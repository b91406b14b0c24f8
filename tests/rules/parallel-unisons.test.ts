import { parallelUnisons } from '../../src/rules/parallel-unisons.ts';
import { testRule } from '../support/rules.ts';

testRule(parallelUnisons, {
  failing: [
    {
      name: 'alto and tenor share two notes in a row',
      text: `key: G major
metre: 2/4
S: B4 A4 |
A: D4 C4 |
T: D4 C4 |
B: G3 A3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'AT',
          notes: 'A:D4 C4 T:D4 C4',
          severity: 'fault',
          says: 'Alto and tenor move in parallel unisons: D4–D4 to C4–C4.',
        },
      ],
    },
    {
      name: 'tenor and bass',
      text: `key: C major
metre: 2/4
S: E4 D4 |
A: G3 G3 |
T: C3 B2 |
B: C3 B2 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'TB',
          notes: 'T:C3 B2 B:C3 B2',
          severity: 'fault',
          says: 'Tenor and bass move in parallel unisons: C3–C3 to B2–B2.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'they meet and part',
      text: `key: G major
metre: 2/4
S: B4 A4 |
A: D4 F#4 |
T: D4 C4 |
B: G3 A3 |`,
    },
    {
      name: 'they repeat the unison together: nothing moves',
      text: `key: G major
metre: 2/4
S: B4 B4 |
A: D4 D4 |
T: D4 D4 |
B: G3 G3 |`,
    },
  ],
});
