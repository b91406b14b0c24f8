import { CONTRARY_PARAMETERS, contraries } from './consecutive.ts';
import { defineRule } from './rule.ts';

export const contraryFifths = defineRule({
  id: 'contrary-fifths',
  name: 'Contrary fifths',
  family: 'consecutives',
  statement:
    'No two voices move in opposite directions from a fifth to a twelfth, or from a twelfth to a fifth.',
  why: 'Turning one voice round an octave does not hide the fifths: the ear still hears one fifth follow another.',
  hints: [
    'Look at these two voices: each interval is a fifth, with or without an octave added.',
    'Keep one of the two voices where it is, or lead it to another note of the second chord.',
    'Part-writing: consecutive fifths by contrary motion are still consecutive fifths.',
  ],
  source:
    'W. Piston, Harmony, on consecutive fifths and octaves by contrary motion (from memory); the chorales have them between inner voices now and then',
  severity: 'fault',
  weight: 5,
  parameters: CONTRARY_PARAMETERS,
  examples: {
    wrong: [
      {
        caption: 'Soprano and bass go from a twelfth to a fifth, and the ear still hears two fifths.',
        text: `key: C major
metre: 3/4
S: G4 D4 E4 |
A: E4 D4 C4 |
T: C4 B3 C4 |
B: C3 G3 C3 |`,
      },
    ],
    right: [
      {
        caption: 'Soprano and bass go from a twelfth to an octave.',
        text: `key: C major
metre: 3/4
S: G4 G4 G4 |
A: E4 D4 E4 |
T: C4 B3 C4 |
B: C3 G3 C3 |`,
      },
    ],
  },
  check: (analysis, values) => contraries(analysis, 'fifth', values),
});
