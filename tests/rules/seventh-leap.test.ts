import { seventhLeap } from '../../src/rules/seventh-leap.ts';
import { testRule } from '../support/rules.ts';

testRule(seventhLeap, {
  failing: [
    {
      name: 'a minor seventh in the alto',
      text: `key: G major
metre: 2/4
S: D5 C5 |
A: B3 A4 |
T: G3 F#3 |
B: G3 D3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'A',
          notes: 'A:B3 A4',
          severity: 'fault',
          says: 'The alto leaps up a minor seventh, B3 to A4.',
        },
      ],
    },
    {
      name: 'a major seventh in the bass that goes on: a query',
      text: `key: C major
metre: 3/4
S: E4 D4 E4 |
A: C4 B3 C4 |
T: G3 G3 G3 |
B: C3 B3 C4 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'B',
          notes: 'B:C3 B3',
          severity: 'query',
          says: 'The bass leaps up a major seventh, C3 to B3.',
        },
      ],
    },
    {
      name: 'in the bass for a step, and back: a remark',
      text: `key: C major
metre: 3/4
S: E4 D4 E4 |
A: C4 B3 C4 |
T: G3 G3 G3 |
B: C3 B3 A3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'B',
          notes: 'B:C3 B3',
          severity: 'remark',
          says: 'The bass leaps up a major seventh, C3 to B3.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'an octave',
      text: `key: G major
metre: 2/4
S: D5 D5 |
A: B4 B4 |
T: G4 G4 |
B: G3 G2 |`,
    },
    {
      name: 'a diminished seventh is another rule',
      text: `key: A minor
metre: 3/4
S: E4 E4 E4 |
A: C4 B3 C4 |
T: A3 E3 A3 |
B: F3 G#2 A2 |`,
    },
  ],
});
