import { OCTAVE_PARAMETERS, parallels } from './consecutive.ts';
import { defineRule } from './rule.ts';

export const parallelUnisons = defineRule({
  id: 'parallel-unisons',
  name: 'Parallel unisons',
  family: 'consecutives',
  statement: 'No two voices move together from one unison to another.',
  why: 'Two voices on the same note that move together to another are one voice: a part has gone missing.',
  hints: [
    'Look at these two voices: they sing the very same notes, one after the other.',
    'Let one of them leave the unison in the other direction, or go to another note of the second chord.',
    'Part-writing: consecutive unisons are forbidden between any two voices.',
  ],
  source:
    'E. Aldwell and C. Schachter, Harmony and Voice Leading, on parallel motion to avoid (from memory); J. J. Fux, Gradus ad Parnassum, 1725',
  severity: 'fault',
  weight: 8,
  parameters: OCTAVE_PARAMETERS,
  examples: {
    wrong: [
      {
        caption: 'Alto and tenor meet on one note and step down together.',
        text: `key: G major
metre: 4/4
S: B4 A4 F#4 G4 |
A: D4 C4 D4 D4 |
T: D4 C4 A3 B3 |
B: G3 A3 D3 G2 |`,
      },
    ],
    right: [
      {
        caption: 'Alto and tenor meet, and part again in opposite directions.',
        text: `key: G major
metre: 3/4
S: B4 A4 G4 |
A: D4 F#4 G4 |
T: D4 C4 B3 |
B: G3 D3 G3 |`,
      },
    ],
  },
  check: (analysis, values) => parallels(analysis, 'unison', values),
});
