import { diminishedRootPosition } from '../../src/rules/diminished-root-position.ts';
import { testRule } from '../support/rules.ts';

testRule(diminishedRootPosition, {
  failing: [
    {
      name: 'the leading-note triad over its root',
      text: `key: C major
metre: 4/4
S: E4 D4 E4 D4 | C4*4! |
A: C4 D4 C4 B3 | G3*4! |
T: G3 F3 G3 G3 | E3*4! |
B: C3 B2 C3 G2 | C3*4! |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'B',
          notes: 'B:B2',
          severity: 'query',
          says: 'The diminished triad at bar 1, beat 2 has its root, B, in the bass.',
        },
      ],
    },
    {
      name: 'the root of the seventh chord comes in late, while the bass stays for it: a remark',
      text: `key: C major
metre: 4/4
S: E4 F4*2 E4 | D4 D4 C4*2! |
A: C4 D4*2 C4 | C4 B3 G3*2! |
T: G3 D4 G3 G3 | A3 G3 E3*2! |
B: C3 B2*2 C3 | F2 G2 C3*2! |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'B',
          notes: 'B:B2',
          severity: 'remark',
          says: 'The diminished triad at bar 1, beat 2 has its root, B, in the bass.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'the same triad in first inversion',
      text: `key: C major
metre: 4/4
S: E4 D4 E4 D4 | C4*4! |
A: C4 B3 C4 B3 | G3*4! |
T: G3 F3 G3 G3 | E3*4! |
B: C3 D3 C3 G2 | C3*4! |`,
    },
    {
      name: 'a dominant in first inversion has the same bass',
      text: `key: C major
metre: 4/4
S: E4 D4 E4 D4 | C4*4! |
A: C4 D4 C4 B3 | G3*4! |
T: G3 G3 G3 G3 | E3*4! |
B: C3 B2 C3 G2 | C3*4! |`,
    },
    {
      name: 'in a sequence of falling fifths',
      text: `key: C major
metre: 4/4
S: E5 C5 D5 B4 | C5 A4 B4 C5! |
A: G4 A4 F4 G4 | E4 F4 G4 G4! |
T: C4 C4 B3 B3 | A3 A3 D4 E4! |
B: C3 F3 B2 E3 | A2 D3 G2 C3! |`,
    },
    {
      name: 'eight–seven over the dominant in first inversion, the bass held',
      text: `key: C major
metre: 4/4
S: E4 G4 F4 E4 | D4 D4 C4*2! |
A: C4 D4*2 C4 | C4 B3 G3*2! |
T: G3 D4*2 G3 | A3 G3 E3*2! |
B: C3 B2*2 C3 | F2 G2 C3*2! |`,
    },
  ],
});
