import { wideLeap } from '../../src/rules/wide-leap.ts';
import { testRule } from '../support/rules.ts';

testRule(wideLeap, {
  failing: [
    {
      name: 'a tenth in the bass',
      text: `key: D major
metre: 2/4
S: F#4 F#4 |
A: D4 D4 |
T: A3 A3 |
B: F#3 D2 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'B',
          notes: 'B:F#3 D2',
          severity: 'fault',
          says: 'The bass leaps down a major tenth, F#3 to D2.',
        },
      ],
    },
    {
      name: 'a ninth in the bass for a step, a query',
      text: `key: D major
metre: 2/4
S: D5 C#5 |
A: B4 A4 |
T: F#4 E4 |
B: B2 C#4 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'B',
          notes: 'B:B2 C#4',
          severity: 'query',
          says: 'The bass leaps up a major ninth, B2 to C#4.',
        },
      ],
    },
    {
      name: 'a ninth in the soprano',
      text: `key: D major
metre: 2/4
S: D4 E5 |
A: A3 C#4 |
T: F#3 A3 |
B: D3 A2 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'S',
          notes: 'S:D4 E5',
          severity: 'fault',
          says: 'The soprano leaps up a major ninth, D4 to E5.',
        },
      ],
    },
    {
      name: 'to begin the next phrase, a remark',
      text: `key: D major
metre: 3/4
S: F#4 E4! F#4 |
A: D4 C#4! D4 |
T: A3 A3! A3 |
B: D3 A3! F#2 |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'B',
          notes: 'B:A3 F#2',
          severity: 'remark',
          says: 'The bass leaps down a minor tenth, A3 to F#2, to begin the next phrase.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'an octave',
      text: `key: D major
metre: 2/4
S: F#4 F#4 |
A: D4 D4 |
T: A3 A3 |
B: D3 D2 |`,
    },
    {
      name: 'with a rest between',
      text: `key: D major
metre: 3/4
S: F#4 r F#4 |
A: D4 r D4 |
T: A3 r A3 |
B: F#3 r D2 |`,
    },
  ],
});
