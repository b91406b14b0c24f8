import { unrecoveredLeap } from '../../src/rules/unrecovered-leap.ts';
import { testRule } from '../support/rules.ts';

testRule(unrecoveredLeap, {
  failing: [
    {
      name: 'a sixth in the soprano, and on up: a remark, since the tune is mostly given',
      text: `key: G major
metre: 3/4
S: D4 B4 C5 |
A: D4 D4 E4 |
T: B3 G3 G3 |
B: G3 G3 C3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'S',
          notes: 'S:D4 B4 C5',
          severity: 'remark',
          says: 'The soprano leaps up a major sixth, D4 to B4, and goes on in the same direction to C5.',
        },
      ],
    },
    {
      name: 'a sixth in the tenor, and on up by step: a remark',
      text: `key: G major
metre: 3/4
S: B4 B4 A4 |
A: D4 G4 F#4 |
T: G3 E4 F#4 |
B: G3 E3 D3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'T',
          notes: 'T:G3 E4 F#4',
          severity: 'remark',
          says: 'The tenor leaps up a major sixth, G3 to E4, and goes on in the same direction to F#4.',
        },
      ],
    },
    {
      name: 'a sixth in the tenor, and on up by leap: a query',
      text: `key: G major
metre: 3/4
S: B4 B4 D5 |
A: D4 E4 G4 |
T: D3 B3 D4 |
B: G3 G3 B2 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'T',
          notes: 'T:D3 B3 D4',
          severity: 'query',
          says: 'The tenor leaps up a major sixth, D3 to B3, and goes on in the same direction to D4.',
        },
      ],
    },
    {
      name: 'a fifth in an upper voice, and on up: a remark',
      text: `key: G major
metre: 3/4
S: G4 D5 E5 |
A: D4 G4 G4 |
T: B3 B3 C4 |
B: G3 G3 C3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'S',
          notes: 'S:G4 D5 E5',
          severity: 'remark',
          says: 'The soprano leaps up a perfect fifth, G4 to D5, and goes on in the same direction to E5.',
        },
      ],
    },
    {
      name: 'an octave in the tenor that turns back by leap: a remark',
      text: `key: G major
metre: 3/4
S: B4 B4 A4 |
A: D4 G4 F#4 |
T: G3 G4 D4 |
B: G3 E3 D3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'T',
          notes: 'T:G3 G4 D4',
          severity: 'remark',
          says: 'The tenor leaps up an octave, G3 to G4, and turns back by leap to D4.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'a step back',
      text: `key: G major
metre: 3/4
S: D4 B4 A4 |
A: D4 D4 D4 |
T: B3 G3 F#3 |
B: G3 G3 D3 |`,
    },
    {
      name: 'the note is repeated',
      text: `key: G major
metre: 3/4
S: D4 B4 B4 |
A: D4 D4 E4 |
T: B3 G3 G3 |
B: G3 G3 E3 |`,
    },
    {
      name: 'a fourth is not so large',
      text: `key: G major
metre: 3/4
S: G4 C5 D5 |
A: D4 E4 G4 |
T: B3 G3 B3 |
B: G3 C3 G2 |`,
    },
    {
      name: 'the bass leaps octaves as it likes',
      text: `key: G major
metre: 3/4
S: B4 B4 C5 |
A: D4 D4 E4 |
T: G3 G3 G3 |
B: G2 G3 C4 |`,
    },
  ],
});
