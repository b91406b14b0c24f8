import { exposed } from './exposed.ts';
import { defineRule } from './rule.ts';

export const exposedFifths = defineRule({
  id: 'exposed-fifths',
  name: 'Exposed fifths',
  family: 'consecutives',
  statement:
    'Soprano and bass do not move in the same direction into a perfect fifth when the soprano leaps.',
  why: 'The outer voices are heard most. When both jump the same way onto a bare fifth, it stands out from the chord, as parallel fifths do.',
  hints: [
    'Look at soprano and bass alone: which way does each move into the second chord?',
    'Let the bass move against the soprano, or take another position of the chord; with the melody given, the bass is the one to change.',
    'Part-writing: exposed (hidden, or direct) fifths between the outer voices.',
  ],
  source:
    'E. Aldwell and C. Schachter, Harmony and Voice Leading, on hidden fifths and octaves (from memory)',
  disagreement:
    'J. J. Fux (Gradus ad Parnassum, 1725) forbids every movement in the same direction into a perfect fifth between two voices. S. Kostka and D. Payne, and E. Aldwell and C. Schachter, mind it between the outer voices alone, and where the soprano leaps; when the soprano steps they let it pass (both from memory). This rule asks what these two ask: a profile that takes it as a fault is as strict as they are, one that takes it as a query leaves room for the chorales, which have it now and then.',
  severity: 'query',
  weight: 3,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'Both outer voices move up, the soprano by a third, and meet in a fifth.',
        text: `key: C major
metre: 4/4
S: E4 A4 B4 C5 |
A: C4 F4 D4 E4 |
T: G3 F3 G3 G3 |
B: C3 D3 G2 C3 |`,
      },
    ],
    right: [
      {
        caption: 'The soprano moves by step into the fifth.',
        text: `key: C major
metre: 3/4
S: E4 D4 C4 |
A: C4 B3 C4 |
T: G3 G3 E3 |
B: C4 G3 C3 |`,
      },
      {
        caption: 'The soprano leaps, but the bass goes the other way.',
        text: `key: C major
metre: 4/4
S: E4 A4 B4 C5 |
A: C4 F4 D4 E4 |
T: G3 F3 G3 G3 |
B: E3 D3 G2 C3 |`,
      },
    ],
  },
  check: (analysis) => exposed(analysis, 'fifth'),
});
