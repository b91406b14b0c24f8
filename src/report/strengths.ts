/**
 * What an exercise does well, in sentences that name the places. Facts about this music only:
 * nothing is praised that the analysis can't point at.
 */

import { capitalised, listed } from '../english/words.ts';
import type { Analysis, Cadence, Ornament } from '../harmony/analysis.ts';
import { homeKey } from '../harmony/questions/home-key.ts';
import { printKey } from '../harmony/words/labels.ts';
import { cadenceWords, ornamentWords } from '../harmony/words/words.ts';
import type { Review } from '../review/review.ts';
import { placeAt, printPlace } from '../score/place.ts';
import { VOICE_WORDS } from '../score/score.ts';
import type { Transition } from '../score/texture.ts';
import type { Ticks } from '../score/time.ts';
import { withSigns } from './sentences.ts';

export const STRENGTH_KINDS = [
  'suspensions',
  'cadences',
  'close',
  'bass',
  'inner',
  'keys',
  'movement',
  'colour',
  'clean',
] as const;
export type StrengthKind = (typeof STRENGTH_KINDS)[number];

export interface Strength {
  readonly id: StrengthKind;
  readonly sentence: string;
  /** How much it says about the writing, 0 to 1: the strongest come first. */
  readonly weight: number;
  /** The first place it can be seen at. */
  readonly at?: Ticks;
}

/** The strong points of an exercise, strongest first. Empty where little is written. Pure. */
export function strengthsOf(review: Review): Strength[] {
  const { analysis } = review;
  if (analysis.chords.length < 4) return [];
  return [
    suspensions(review),
    closing(analysis),
    variedCadences(analysis),
    bassLine(analysis),
    innerVoices(analysis),
    keys(analysis),
    colour(review),
    movement(review),
    clean(review),
  ]
    .filter((strength) => strength !== undefined)
    .sort((a, b) => b.weight - a.weight);
}

/** Places in words; of many the first three, with how many more. */
function places(analysis: Analysis, times: readonly Ticks[]): string {
  const { score } = analysis.texture;
  const shown = times.slice(0, 3).map((at) => printPlace(placeAt(score, at)));
  return times.length > 3 ? `${shown.join('; ')} and ${times.length - 3} more` : shown.join('; ');
}

function isQuestioned(review: Review, ornament: Ornament): boolean {
  return review.findings.some(
    (f) =>
      f.severity !== 'remark' &&
      f.tones.some((tone) => tone.voice === ornament.voice && tone.at === ornament.tone.at),
  );
}

function suspensions(review: Review): Strength | undefined {
  const right = review.analysis.ornaments.filter(
    (o) =>
      (o.kind === 'suspension' || o.kind === 'retardation') &&
      o.preparation !== undefined &&
      o.resolution !== undefined &&
      !isQuestioned(review, o) &&
      !review.findings.some(
        (f) => f.rule.id === 'upward-suspension' && f.tones.some(({ id }) => id === o.tone.id),
      ),
  );
  const [first] = right;
  if (first === undefined) return undefined;
  const figures = first.figures === undefined ? '' : ` (${first.figures})`;
  const sentence =
    right.length === 1
      ? `A suspension in the ${VOICE_WORDS[first.voice]}${figures} is prepared and resolved as it should be: ${places(review.analysis, [first.at])}.`
      : `${right.length} suspensions are prepared and resolved as they should be: ${places(
          review.analysis,
          right.map((o) => o.at),
        )}.`;
  return { id: 'suspensions', sentence, weight: Math.min(1, 0.7 + 0.1 * right.length), at: first.at };
}

function closing(analysis: Analysis): Strength | undefined {
  const last = analysis.cadences.at(-1);
  const final = analysis.phrases.at(-1);
  const closes = last !== undefined && final?.cadence === analysis.cadences.length - 1;
  if (!closes || last.kind !== 'perfect' || !last.full) return undefined;
  return {
    id: 'close',
    sentence: `It closes with a ${cadenceWords(last).name} in ${withSigns(printKey(last.key))}, both chords in root position and the tonic in the soprano.`,
    weight: 0.55,
    at: last.at,
  };
}

function variedCadences(analysis: Analysis): Strength | undefined {
  const different = new Map<string, Cadence>();
  for (const cadence of analysis.cadences) different.set(`${cadence.kind} ${printKey(cadence.key)}`, cadence);
  const kinds = [...different.values()].map(
    (c) => `${cadenceWords(c).name} in ${withSigns(printKey(c.key))}`,
  );
  if (analysis.cadences.length < 2 || different.size < 2) return undefined;
  const unvaried = analysis.cadences.length - different.size;
  return {
    id: 'cadences',
    sentence: `The phrases close in different ways: ${listed(kinds)}.`,
    weight: Math.max(0.3, 0.75 - 0.15 * unvaried),
    at: analysis.cadences[0]!.at,
  };
}

/** Steps from chord to chord where both outer voices sound. */
function outerMoves(analysis: Analysis): Transition[] {
  const starts = new Set(analysis.chords.map((chord) => chord.at));
  return analysis.texture.transitions.filter(
    ({ to, moves }) => starts.has(to.at) && moves.S !== undefined && moves.B !== undefined,
  );
}

function bassLine(analysis: Analysis): Strength | undefined {
  const moves = outerMoves(analysis);
  if (moves.length < 8) return undefined;
  const contrary = moves.filter(
    ({ moves: { S, B } }) =>
      S!.direction !== B!.direction && S!.direction !== 'level' && B!.direction !== 'level',
  ).length;
  const inverted = analysis.chords.filter((chord) => chord.roman.inversion > 0).length;
  const share = contrary / moves.length;
  const inversions = inverted / analysis.chords.length;
  if (share < 0.4 || inversions < 0.15) return undefined;
  return {
    id: 'bass',
    sentence: `The bass is a line of its own: it moves against the tune in ${contrary} of ${moves.length} steps, and ${inverted} of ${analysis.chords.length} chords are inverted.`,
    weight: Math.min(0.9, 0.4 + share * 0.6 + inversions * 0.3),
  };
}

function innerVoices(analysis: Analysis): Strength | undefined {
  const moves = (['A', 'T'] as const).flatMap((voice) =>
    analysis.texture.transitions.flatMap(({ moves: m }) => m[voice] ?? []).filter((move) => !move.held),
  );
  if (moves.length < 12) return undefined;
  const smooth = moves.filter((move) => Math.abs(move.interval.steps) <= 1).length;
  const share = smooth / moves.length;
  if (share < 0.72) return undefined;
  return {
    id: 'inner',
    sentence: `Alto and tenor are easy to sing: ${smooth} of their ${moves.length} moves are steps or repeated notes.`,
    weight: 0.3 + (share - 0.7) * 1.2,
  };
}

function keys(analysis: Analysis): Strength | undefined {
  const home = printKey(homeKey(analysis));
  const reached = analysis.cadences.filter((c) => c.kind === 'perfect' && printKey(c.key) !== home);
  const [first] = reached;
  if (first === undefined) return undefined;
  const names = [...new Set(reached.map((c) => withSigns(printKey(c.key))))];
  return {
    id: 'keys',
    sentence: `It reaches ${listed(names)} and confirms ${names.length === 1 ? 'it' : 'them'} with a cadence: ${places(
      analysis,
      reached.map((c) => c.at),
    )}.`,
    weight: 0.65,
    at: first.at,
  };
}

function colour(review: Review): Strength | undefined {
  const coloured = review.analysis.chords.filter(
    (chord) =>
      (chord.roman.applied !== undefined || chord.roman.special !== undefined) &&
      !review.findings.some((f) => f.severity === 'fault' && f.from >= chord.at && f.from < chord.until),
  );
  const [first] = coloured;
  if (first === undefined) return undefined;
  return {
    id: 'colour',
    sentence: `${coloured.length === 1 ? 'A chromatic chord is' : `${coloured.length} chromatic chords are`} used to lead on: ${places(
      review.analysis,
      coloured.map((c) => c.at),
    )}.`,
    weight: 0.5,
    at: first.at,
  };
}

function movement(review: Review): Strength | undefined {
  const { analysis } = review;
  const moving = analysis.ornaments.filter(
    (o) => ['passing', 'accented passing', 'neighbour'].includes(o.kind) && !isQuestioned(review, o),
  );
  const voices = new Set(moving.map((o) => o.voice));
  const [first] = moving;
  if (first === undefined || voices.size < 2 || moving.length < 3) return undefined;
  const kinds = listed([...new Set(moving.map((o) => `${ornamentWords(o.kind).split(' (')[0]}s`))]);
  return {
    id: 'movement',
    sentence: `${capitalised(kinds)} keep it moving in ${voices.size} voices (${moving.length} in all; the first in ${places(analysis, [first.at])}).`,
    weight: Math.min(0.6, 0.3 + voices.size * 0.06 + moving.length * 0.01),
    at: first.at,
  };
}

function clean(review: Review): Strength | undefined {
  const { analysis } = review;
  const consecutives = review.findings.some(
    (f) => f.rule.family === 'consecutives' && f.severity !== 'remark',
  );
  if (consecutives || analysis.chords.length < 12) return undefined;
  return {
    id: 'clean',
    sentence: `No consecutive fifths or octaves in ${analysis.chords.length} chords.`,
    weight: 0.45,
  };
}
