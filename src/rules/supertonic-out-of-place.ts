import type { Analysis } from '../harmony/analysis.ts';
import { type HeardStep, heardSteps } from '../harmony/by-ear/heard-steps.ts';
import { sameKey } from '../harmony/key.ts';
import { homeKey } from '../harmony/questions/home-key.ts';
import { keyAt } from '../harmony/questions/moments.ts';
import { isFleeting } from '../harmony/questions/ornamental.ts';
import { type HarmonyStep, harmonySteps, plainDegree } from '../harmony/questions/progression.ts';
import { numeral, printKey } from '../harmony/words/labels.ts';
import { about, besides, heardRemark, oncePerPlace, outerTones } from './occurrence.ts';
import { defineRule, type Occurrence } from './rule.ts';

export const supertonicOutOfPlace = defineRule({
  id: 'supertonic-out-of-place',
  name: 'Supertonic chord out of place',
  family: 'chords',
  statement: 'The supertonic chord leads on to the dominant; it does not fall straight back to the tonic.',
  why: 'The supertonic makes the ear wait for the dominant. Where the tonic comes straight back instead, the promise is dropped and the harmony has gone nowhere.',
  hints: [
    'Look at the chord on the second degree and at the tonic that follows it.',
    'Put a dominant between them, or let another chord stand before the tonic, if the melody allows.',
    'Choice of chords: II goes to V, at times by way of a six-four over the dominant.',
  ],
  source: 'W. Piston, Harmony, table of usual root progressions (from memory)',
  severity: 'query',
  weight: 4,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The supertonic on the second beat falls back to the tonic.',
        text: `key: C major
metre: 4/4
S: G4 F4 G4 F4 | E4*4! |
A: E4 D4 E4 D4 | C4*4! |
T: C4 A3 C4 B3 | G3*4! |
B: C3 D3 C3 G3 | C3*4! |`,
      },
    ],
    right: [
      {
        caption: 'The supertonic goes on to the dominant.',
        text: `key: C major
metre: 4/4
S: G4 F4 G4 F4 | E4*4! |
A: E4 D4 D4 D4 | C4*4! |
T: C4 A3 B3 B3 | G3*4! |
B: C3 D3 G2 G2 | C3*4! |`,
      },
    ],
  },
  check: (analysis) =>
    besides(
      oncePerPlace(harmonySteps(analysis).flatMap((step) => stray(analysis, step))),
      oncePerPlace(heardSteps(analysis).flatMap((step) => strayAsHeard(analysis, step))),
    ),
});

function stray(analysis: Analysis, step: HarmonyStep): Occurrence[] {
  const { key, from, to, modulates } = step;
  if (plainDegree(from.roman) !== 2 || plainDegree(to.roman) !== 1) return [];
  // In inversion it passes between positions of the tonic; what is over at once only decorates it.
  if (from.roman.inversion + to.roman.inversion > 0 || isFleeting(analysis, from.chord)) return [];
  return [
    about(outerTones(analysis, step), {
      ...(modulates ? { severity: 'remark' as const } : {}),
      from: from.chord.at,
      until: to.chord.until,
      message: `The supertonic chord, ${numeral(from.roman, key)}, goes to ${numeral(to.roman, key)}.`,
    }),
  ];
}

/** The same by the notes alone, in the key of the moment before or after, or at home: the reading may hear past it. */
function strayAsHeard(analysis: Analysis, step: HeardStep): Occurrence[] {
  const { key, from, to, fromDegree, toDegree } = step;
  if (!(fromDegree === 2 && toDegree === 1)) return [];
  const keys = [keyAt(analysis, from.at), keyAt(analysis, to.at), homeKey(analysis)];
  if (!keys.some((own) => own !== undefined && sameKey(own, key))) return [];
  return [
    heardRemark(
      analysis,
      step,
      (where) =>
        `The chord at ${where} is the supertonic of ${printKey(key)}, and falls straight back to the tonic.`,
    ),
  ];
}
