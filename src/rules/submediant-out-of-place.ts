import type { Analysis } from '../harmony/analysis.ts';
import { type HeardStep, heardSteps } from '../harmony/by-ear/heard-steps.ts';
import { type HarmonyStep, harmonySteps, plainDegree } from '../harmony/questions/progression.ts';
import { numeral, printKey } from '../harmony/words/labels.ts';
import { about, besides, heardRemark, oncePerPlace, outerTones } from './occurrence.ts';
import { defineRule, type Occurrence } from './rule.ts';

export const submediantOutOfPlace = defineRule({
  id: 'submediant-out-of-place',
  name: 'Submediant chord out of place',
  family: 'chords',
  statement:
    'The submediant comes from the tonic or the dominant and leads on to the supertonic, the subdominant or the dominant.',
  why: 'The submediant is a halfway house on the road from the tonic to the dominant, or a surprise after the dominant; anywhere else the harmony seems to wander.',
  hints: [
    'Look at the chord on the sixth degree, at the chord before it and at the chord after it.',
    'Let it come from I or V, and go on to ii, IV or V.',
    'Choice of chords: VI goes to II, IV or V.',
  ],
  source: 'W. Piston, Harmony, table of usual root progressions (from memory)',
  severity: 'remark',
  weight: 3,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The submediant on the second beat comes after the supertonic, and leads nowhere.',
        text: `key: C major
metre: 4/4
S: A4 A4 G4 G4 | G4 F4 E4*2! |
A: F4 E4 E4 E4 | D4 D4 C4*2! |
T: D4 C4 C4 C4 | B3 B3 G3*2! |
B: D3 A2 C3 E3 | G2 G2 C3*2! |`,
      },
    ],
    right: [
      {
        caption: 'From the tonic to the submediant, and on to the supertonic and the dominant.',
        text: `key: C major
metre: 4/4
S: G4 A4 A4 G4 | G4*4! |
A: E4 E4 F4 D4 | E4*4! |
T: C4 C4 D4 B3 | C4*4! |
B: C3 A2 D3 G2 | C3*4! |`,
      },
    ],
  },
  check: (analysis) =>
    besides(
      oncePerPlace(harmonySteps(analysis).flatMap((step) => stray(analysis, step))),
      oncePerPlace(heardSteps(analysis).flatMap((step) => strayAsHeard(analysis, step))),
    ),
});

/** Degrees from which no submediant is expected, and to which none is. */
const BEFORE: ReadonlySet<number | undefined> = new Set([2, 4]);
const AFTER: ReadonlySet<number | undefined> = new Set([3]);

function stray(analysis: Analysis, step: HarmonyStep): Occurrence[] {
  const { key, from, to, modulates } = step;
  // In a turn from key to key it may be read as another degree.
  if (modulates) return [];
  const arrives = plainDegree(to.roman) === 6 && BEFORE.has(plainDegree(from.roman));
  const leaves = plainDegree(from.roman) === 6 && AFTER.has(plainDegree(to.roman));
  if (!arrives && !leaves) return [];
  const words = `${numeral(from.roman, key)} to ${numeral(to.roman, key)}`;
  return [
    about(outerTones(analysis, step), {
      from: from.chord.at,
      until: to.chord.until,
      message: arrives
        ? `The submediant comes from where it is not expected: ${words}.`
        : `The submediant leads where it is not expected: ${words}.`,
    }),
  ];
}

/** The same in a key that the reading does not choose, though it is near. */
function strayAsHeard(analysis: Analysis, step: HeardStep): Occurrence[] {
  const { key, fromDegree, toDegree } = step;
  if (!(fromDegree === 4 && toDegree === 6)) return [];
  return [
    heardRemark(
      analysis,
      step,
      (where) => `The submediant of ${printKey(key)} comes straight from the subdominant at ${where}.`,
    ),
  ];
}
