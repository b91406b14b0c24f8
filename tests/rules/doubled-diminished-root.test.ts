import { doubledDiminishedRoot } from '../../src/rules/doubled-diminished-root.ts';
import { testRule } from '../support/rules.ts';

testRule(doubledDiminishedRoot, {
  failing: [
    {
      name: 'the supertonic triad of a minor key with its root in two voices',
      text: `key: A minor
metre: 4/4
S: C5 B4 C5 B4 | A4*4! |
A: A4 F4 A4 G#4 | E4*4! |
T: E4 B3 E4 D4 | C4*4! |
B: A3 D3 E3 E3 | A2*4! |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'ST',
          notes: 'S:B4 T:B3',
          severity: 'query',
          says: 'B, the root of a diminished triad, is doubled: B4 in the soprano and B3 in the tenor.',
        },
      ],
    },
    {
      name: 'the leading-note chord likewise, told as a doubled leading note: a remark',
      text: `key: C major
metre: 4/4
S: E4 B3 C4 B3 | C4*4! |
A: C4 F3 G3 F3 | E3*4! |
T: G3 B2 E3 D3 | C3*4! |
B: C3 D3 C3 G2 | C3*4! |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'ST',
          notes: 'S:B3 T:B2',
          severity: 'remark',
          says: 'B, the root of a diminished triad, is doubled: B3 in the soprano and B2 in the tenor.',
        },
      ],
    },
    {
      name: 'once, though the bass goes from the third to the root under it',
      text: `key: A minor
metre: 4/4
S: C5 D5 B4 B4 | A4*4! |
A: E4 F4 B4 G#4 | E4*4! |
T: A3 A3 F4 E4 | C4*4! |
B: A3 D3 (D3 B2) E3 | A2*4! |`,
      expect: [
        {
          bar: '1',
          beat: '3',
          voices: 'SA',
          notes: 'S:B4 A:B4',
          severity: 'query',
          says: 'B, the root of a diminished triad, is doubled: B4 in the soprano and B4 in the alto.',
        },
      ],
    },
    {
      name: 'the leading note twice, though the chord goes elsewhere than to its tonic',
      text: `key: C major
metre: 4/4
S: E4 B3 E4 D4 | C4*4! |
A: C4 F3 A3 B3 | G3*4! |
T: G3 B2 C3 G3 | E3*4! |
B: C3 D3 A2 G2 | C3*4! |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'ST',
          notes: 'S:B3 T:B2',
          severity: 'query',
        },
      ],
    },
    {
      name: 'in root position, which has a rule of its own: a remark',
      text: `key: A minor
metre: 4/4
S: C5 B4 C5 B4 | A4*4! |
A: A4 F4 A4 G#4 | E4*4! |
T: E4 D4 E4 D4 | C4*4! |
B: A3 B2 C3 E3 | A2*4! |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'SB',
          notes: 'S:B4 B:B2',
          severity: 'remark',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'its third doubled',
      text: `key: A minor
metre: 4/4
S: C5 B4 C5 B4 | A4*4! |
A: A4 F4 A4 G#4 | E4*4! |
T: E4 D4 E4 D4 | C4*4! |
B: A3 D3 E3 E3 | A2*4! |`,
    },
    {
      name: 'a half-diminished seventh has four notes, none of them doubled',
      text: `key: A minor
metre: 4/4
S: C5 B4 C5 B4 | A4*4! |
A: A4 A4 A4 G#4 | E4*4! |
T: E4 F4 E4 D4 | C4*4! |
B: A3 D3 E3 E3 | A2*4! |`,
    },
  ],
});
