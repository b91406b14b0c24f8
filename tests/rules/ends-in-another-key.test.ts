import { endsInAnotherKey } from '../../src/rules/ends-in-another-key.ts';
import { testRule } from '../support/rules.ts';

const phrases = (key: string, last: readonly [string, string, string, string]) => `key: ${key}
metre: 4/4
S: E4 D4 C4*2! | F4 E4 D4*2! | ${last[0]} |
A: C4 B3 G3*2! | C4 C4 B3*2! | ${last[1]} |
T: G3 G3 E3*2! | A3 G3 G3*2! | ${last[2]} |
B: C3 G2 C3*2! | F2 C3 G2*2! | ${last[3]} |`;

const FLAT = ['Eb4 Eb4 D4*2!', 'Bb3 C4 Bb3*2!', 'G3 A3 F3*2!', 'G2 F2 Bb2*2!'] as const;

testRule(endsInAnotherKey, {
  failing: [
    {
      name: 'the last of three phrases closes a tone too low',
      text: phrases('C major', FLAT),
      expect: [
        {
          bar: '3',
          beat: '3',
          voices: 'SB',
          notes: 'S:D4 B:Bb2',
          severity: 'fault',
          says: 'The piece began in C major and ends in Bb major, a key in which no phrase before has closed.',
        },
      ],
    },
    {
      name: 'in the dominant, as tunes in other modes do, a query',
      text: phrases('C major', ['B4 A4 G4*2!', 'G4 F#4 D4*2!', 'D4 C4 B3*2!', 'G3 D3 G2*2!']),
      expect: [
        {
          bar: '3',
          beat: '3',
          voices: 'SB',
          notes: 'S:G4 B:G2',
          severity: 'query',
          says: 'The piece began in C major and ends in G major, a key in which no phrase before has closed.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'the last phrase comes home',
      text: phrases('C major', ['E4 D4 C4*2!', 'C4 B3 G3*2!', 'G3 F3 E3*2!', 'G2 G2 C3*2!']),
    },
    {
      name: 'the tenor of the last phrase is still to be written, and with it the key',
      text: phrases('C major', [FLAT[0], '? ? ?*2', '? ? ?*2', FLAT[3]]),
    },
    {
      name: 'what the exercise states is the home key, and it began elsewhere',
      text: phrases('Bb major', FLAT),
    },
    {
      name: 'two phrases make no plan',
      text: `key: C major
metre: 4/4
S: E4 D4 C4*2! | Eb4 Eb4 D4*2! |
A: C4 B3 G3*2! | Bb3 C4 Bb3*2! |
T: G3 G3 E3*2! | G3 A3 F3*2! |
B: C3 G2 C3*2! | G2 F2 Bb2*2! |`,
    },
  ],
});
