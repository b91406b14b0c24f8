import { PARALLEL_PARAMETERS, parallels } from './consecutive.ts';
import { defineRule } from './rule.ts';

export const parallelFifths = defineRule({
  id: 'parallel-fifths',
  name: 'Parallel fifths',
  family: 'consecutives',
  statement: 'No two voices move in the same direction from one perfect fifth to another.',
  why: 'Two voices a fifth apart that move together stop sounding like two: the ear hears one line, thickened, and the harmony loses a part.',
  hints: [
    'Look at these two voices alone, from the first chord to the second.',
    'Let one of them move the other way, or stay where it is, or go to another note of the second chord.',
    'Part-writing: consecutive perfect fifths are forbidden between any two voices.',
  ],
  source:
    'E. Aldwell and C. Schachter, Harmony and Voice Leading, on parallel motion to avoid (from memory); J. J. Fux, Gradus ad Parnassum, 1725',
  severity: 'fault',
  weight: 9,
  parameters: PARALLEL_PARAMETERS,
  examples: {
    wrong: [
      {
        caption: 'Tenor and bass step up together, a fifth apart.',
        text: `key: C major
metre: 2/4
S: C5 C5 |
A: E4 E4 |
T: G3 A3 |
B: C3 D3 |`,
      },
      {
        caption: 'Soprano and alto fall together, a fifth apart; that the bass rises does not help.',
        text: `key: G major
metre: 4/4
S: B4 A4 G4 F#4 | G4*4 |
A: E4 D4 D4 D4 | D4*4 |
T: G3 A3 B3 A3 | B3*4 |
B: E3 F#3 G3 D3 | G2*4 |`,
      },
    ],
    right: [
      {
        caption: 'The upper voices move against the bass.',
        text: `key: C major
metre: 3/4
S: C5 B4 C5 |
A: E4 D4 E4 |
T: G3 G3 G3 |
B: C3 G3 C3 |`,
      },
      {
        caption: 'Both voices repeat their notes: nothing moves, so nothing is parallel.',
        text: `key: C major
metre: 2/4
S: E4 E4 |
A: C4 C4 |
T: G3 G3 |
B: C3 C3 |`,
      },
    ],
  },
  check: (analysis, values) => parallels(analysis, 'fifth', values),
});
