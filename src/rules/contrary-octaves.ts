import { CONTRARY_PARAMETERS, contraries } from './consecutive.ts';
import { defineRule } from './rule.ts';

export const contraryOctaves = defineRule({
  id: 'contrary-octaves',
  name: 'Contrary octaves and unisons',
  family: 'consecutives',
  statement:
    'No two voices move in opposite directions from one octave to another, from an octave to a unison or from a unison to an octave.',
  why: 'The two voices have the same two notes one after the other. Going opposite ways does not make them two parts again.',
  hints: [
    'Look at these two voices: they have the same note names, both times.',
    'Keep one of them where it is, or give it another note of the second chord.',
    'Part-writing: consecutive octaves by contrary motion are still consecutive octaves.',
  ],
  source: 'W. Piston, Harmony, on consecutive fifths and octaves by contrary motion (from memory)',
  severity: 'fault',
  weight: 6,
  parameters: CONTRARY_PARAMETERS,
  examples: {
    wrong: [
      {
        caption: 'Soprano up, bass down, and both from the dominant to the tonic.',
        text: `key: C major
metre: 2/4
S: G4 C5 |
A: D4 E4 |
T: B3 G3 |
B: G3 C3 |`,
      },
    ],
    right: [
      {
        caption: 'The soprano repeats its note instead.',
        text: `key: C major
metre: 2/4
S: G4 G4 |
A: D4 E4 |
T: B3 C4 |
B: G3 C3 |`,
      },
    ],
  },
  check: (analysis, values) => contraries(analysis, 'octave', values),
});
