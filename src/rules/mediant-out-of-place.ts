import type { Analysis } from '../harmony/analysis.ts';
import { type HeardStep, heardSteps } from '../harmony/by-ear/heard-steps.ts';
import { sameKey } from '../harmony/key.ts';
import { dullDominants } from '../harmony/questions/dull-dominants.ts';
import { homeKey } from '../harmony/questions/home-key.ts';
import { keyAt } from '../harmony/questions/moments.ts';
import { type HarmonyStep, harmonySteps, plainDegree } from '../harmony/questions/progression.ts';
import { tonesOf, voicings } from '../harmony/questions/voicing.ts';
import { numeral, printKey } from '../harmony/words/labels.ts';
import { about, besides, heardRemark, oncePerPlace, outerTones } from './occurrence.ts';
import { defineRule, type Occurrence, type Severity } from './rule.ts';

export const mediantOutOfPlace = defineRule({
  id: 'mediant-out-of-place',
  name: 'Mediant chord out of place',
  family: 'chords',
  statement: 'The mediant chord leads on to the submediant or the subdominant.',
  why: 'The mediant shares two notes with the tonic and two with the dominant, so the ear hardly knows what it is; only a step to VI or IV gives it a meaning.',
  hints: [
    'Look at the chord on the third degree and at the chord that follows.',
    'Let it go to the submediant or the subdominant, or try the tonic in first inversion in its place.',
    'Choice of chords: the mediant is rare, and goes to VI or to IV.',
  ],
  source: 'W. Piston, Harmony, table of usual root progressions (from memory)',
  severity: 'query',
  weight: 4,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The mediant on the second beat goes straight to the dominant.',
        text: `key: G major
metre: 4/4
S: B4 B4 A4*2 | G4*4! |
A: G4 F#4 F#4*2 | D4*4! |
T: D4 D4 D4*2 | B3*4! |
B: G3 B2 D3*2 | G2*4! |`,
      },
    ],
    right: [
      {
        caption: 'The mediant goes on to the subdominant, under a descending melody.',
        text: `key: G major
metre: 4/4
S: G4 F#4 E4 D4 | D4*4! |
A: D4 D4 C4 A3 | B3*4! |
T: B3 B3 G3 F#3 | G3*4! |
B: G3 B2 C3 D3 | G2*4! |`,
      },
    ],
  },
  check: (analysis) =>
    besides(
      oncePerPlace(harmonySteps(analysis).flatMap((step) => stray(analysis, step))),
      oncePerPlace(heardSteps(analysis).flatMap((step) => strayAsHeard(analysis, step))),
    ),
});

/** Degrees a mediant chord leads to. */
const GOALS: ReadonlySet<number | undefined> = new Set([4, 6]);

function stray(analysis: Analysis, step: HarmonyStep): Occurrence[] {
  const { key, from, to, modulates } = step;
  if (plainDegree(from.roman) !== 3 || from.roman.quality === 'augmented') return [];
  // Applied and altered chords lead elsewhere by their own force.
  const goal = plainDegree(to.roman);
  if (goal === undefined || GOALS.has(goal)) return [];
  // Third and root alone, the third in the bass: it may as well have lost the root of another chord.
  if (from.roman.inversion === 1 && tonesOf(voicings(analysis)[from.chord.index]!, 'fifth').length === 0)
    return [];
  const inverted = from.roman.inversion + to.roman.inversion > 0;
  const severity: Severity = key.mode === 'minor' || inverted || modulates ? 'remark' : 'query';
  return [
    about(outerTones(analysis, step), {
      severity,
      from: from.chord.at,
      until: to.chord.until,
      message: `The mediant chord, ${numeral(from.roman, key)}, goes to ${numeral(to.roman, key)}.`,
    }),
  ];
}

/** The same by the notes alone, in the key of the moment before or after, or at home. */
function strayAsHeard(analysis: Analysis, step: HeardStep): Occurrence[] {
  const { key, from, to, fromDegree, toDegree } = step;
  if (!(fromDegree === 3 && toDegree === 5)) return [];
  // A minor dominant, where the reading is in the relative minor, is told for what it is.
  const dull = dullDominants(analysis).some(({ chord }) => chord.at < to.until && from.at < chord.until);
  if (dull) return [];
  const keys = [keyAt(analysis, from.at), keyAt(analysis, to.at), homeKey(analysis)];
  if (!keys.some((own) => own !== undefined && sameKey(own, key))) return [];
  return [
    heardRemark(
      analysis,
      step,
      (where) =>
        `The chord at ${where} is the mediant of ${printKey(key)}, and goes straight to the dominant.`,
    ),
  ];
}
