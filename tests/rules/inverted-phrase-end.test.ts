import { invertedPhraseEnd } from '../../src/rules/inverted-phrase-end.ts';
import { testRule } from '../support/rules.ts';

testRule(invertedPhraseEnd, {
  failing: [
    {
      name: 'the dominant over its third under the fermata',
      text: `key: C major
metre: 4/4
S: E4 F4 E4 D4! | E4 F4 D4 C4! |
A: C4 C4 C4 D4! | C4 C4 B3 G3! |
T: G3 A3 G3 G3! | G3 A3 G3 E3! |
B: C3 F3 C3 B2! | C3 F3 G3 C3! |`,
      expect: [
        {
          bar: '1',
          beat: '4',
          voices: 'B',
          notes: 'B:B2',
          severity: 'query',
          says: 'The phrase ends at bar 1, beat 4 on V6, a chord in first inversion.',
        },
      ],
    },
    {
      name: 'a dominant seventh over its fifth, whose tonic begins the next phrase',
      text: `key: C major
metre: 4/4
S: G4 A4 G4 B4! | C5 A4 B4 C5! |
A: E4 F4 E4 F4! | E4 F4 D4 E4! |
T: C4 C4 C4 G3! | G3 C4 G3 G3! |
B: C3 F3 C3 D3! | C3 F3 G3 C3! |`,
      expect: [{ bar: '1', beat: '4', voices: 'B', notes: 'B:D3', severity: 'remark' }],
    },
    {
      name: 'on a chord with which no cadence is made anyway: a remark',
      text: `key: A minor
metre: 4/4
S: A4 C5 C5 D5! | A4 G#4 A4*2! |
A: E4 E4 F4 F4! | E4 E4 E4*2! |
T: C4 A3 A3 B3! | A3 B3 C4*2! |
B: A3 C3 F3 D3! | C3 E3 A2*2! |`,
      expect: [
        {
          bar: '1',
          beat: '4',
          voices: 'B',
          notes: 'B:D3',
          severity: 'remark',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'the dominant over its root',
      text: `key: C major
metre: 4/4
S: E4 F4 E4 D4! | E4 F4 D4 C4! |
A: C4 C4 C4 B3! | C4 C4 B3 G3! |
T: G3 A3 G3 G3! | G3 A3 G3 E3! |
B: C3 F3 C3 G2! | C3 F3 G3 C3! |`,
    },
    {
      name: 'the bass moves on under the fermata',
      text: `key: C major
metre: 4/4
S: E4 F4 D4*2! | E4 F4 D4 C4! |
A: C4 C4 B3*2! | C4 C4 B3 G3! |
T: G3 A3 G3*2! | G3 A3 G3 E3! |
B: C3 F3 (G2! B2)*2 | C3 F3 G3 C3! |`,
    },
  ],
});
