import { OCTAVE_PARAMETERS, parallels } from './consecutive.ts';
import { defineRule } from './rule.ts';

export const parallelOctaves = defineRule({
  id: 'parallel-octaves',
  name: 'Parallel octaves',
  family: 'consecutives',
  statement:
    'No two voices move in the same direction from one octave to another, or from an octave to a unison.',
  why: 'A voice that moves in octaves with another only doubles it: for that moment the music has three parts and not four.',
  hints: [
    'Look at these two voices alone: they sing the same two notes, an octave or more apart.',
    'Let one of them move the other way, or stay where it is, or give it another note of the second chord.',
    'Part-writing: consecutive octaves are forbidden between any two voices.',
  ],
  source:
    'E. Aldwell and C. Schachter, Harmony and Voice Leading, on parallel motion to avoid (from memory); J. J. Fux, Gradus ad Parnassum, 1725',
  severity: 'fault',
  weight: 9,
  parameters: OCTAVE_PARAMETERS,
  examples: {
    wrong: [
      {
        caption: 'Soprano and bass step down together, an octave apart.',
        text: `key: C major
metre: 2/4
S: F4 E4 |
A: C4 C4 |
T: A3 G3 |
B: F3 E3 |`,
      },
    ],
    right: [
      {
        caption: 'The bass leaps to the root instead, a tenth below the soprano.',
        text: `key: C major
metre: 4/4
S: F4 E4 D4 C4 |
A: C4 C4 B3 C4 |
T: A3 G3 G3 E3 |
B: F3 C3 G2 C3 |`,
      },
      {
        caption: 'The bass leaps an octave while the soprano repeats its note: nothing goes along with it.',
        text: `key: C major
metre: 2/4
S: C5 C5 |
A: E4 E4 |
T: G3 G3 |
B: C3 C2 |`,
      },
    ],
  },
  check: (analysis, values) => parallels(analysis, 'octave', values),
});
