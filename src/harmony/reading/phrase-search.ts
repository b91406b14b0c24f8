/**
 * Where the phrases of a melody end, as one optimisation: of all ways to divide it, the one with the greatest sum of
 * weights over its endings and the lengths between them (`phrase-model.ts`).
 */
import type { Ticks } from '../../score/time.ts';
import { endFeatures, lengthFeatures, type Melody, spanFeatures } from './phrase-model.ts';

/** Weights by the name of the feature; one that is not there weighs nothing. */
export type PhraseWeights = ReadonlyMap<string, number>;

/** What is known of the endings beforehand. */
export interface Given {
  /** A phrase ends with tone `i`. */
  readonly ends: (i: number) => boolean;
  /** None does, whatever speaks for it. */
  readonly goesOn: (i: number) => boolean;
}

export interface Division {
  /** Indices of the tones that end a phrase, the last tone among them. */
  readonly ends: readonly number[];
  /** The length that phrases were taken to have. */
  readonly usual: Ticks;
  readonly score: number;
}

/** Lengths that most phrases of a tune may have, in bars. */
const USUAL_BARS = [2, 4, 3, 1.5] as const;
/** No phrase is longer than this many bars, unless nothing can divide it. */
const LONGEST_BARS = 12;

const known = new WeakMap<Melody, readonly (readonly string[])[]>();

/** The features of an ending with each tone; none for the last, with which the melody ends anyhow. */
export function endNames(melody: Melody): readonly (readonly string[])[] {
  const before = known.get(melody);
  if (before !== undefined) return before;
  const fresh = melody.tones.map((_, i) => {
    const names: string[] = [];
    if (i + 1 < melody.tones.length) endFeatures(melody, i, (name) => names.push(name));
    return names;
  });
  known.set(melody, fresh);
  return fresh;
}

/**
 * The best division of a melody. `handicap` is added for each ending, for learning.
 */
export function divide(
  melody: Melody,
  weights: PhraseWeights,
  given: Given,
  handicap?: (i: number) => number,
): Division {
  const scores = endNames(melody).map((names, i) =>
    names.reduce((sum, name) => sum + (weights.get(name) ?? 0), handicap ? handicap(i) : 0),
  );
  const spans = spanScores(melody, weights);
  let best: Division | undefined;
  for (const bars of USUAL_BARS) {
    const usual = bars * melody.bar;
    const found = divideBy(melody, weights, given, scores, spans, usual);
    if (best === undefined || found.score > best.score) best = found;
  }
  return best!;
}

/** What a phrase from one tone to another weighs by itself, each asked once. */
function spanScores(melody: Melody, weights: PhraseWeights): (from: number, to: number) => number {
  const known = new Map<number, number>();
  const count = melody.tones.length;
  return (from, to) => {
    const key = from * count + to;
    const before = known.get(key);
    if (before !== undefined) return before;
    let score = 0;
    spanFeatures(melody, from, to, (name) => {
      score += weights.get(name) ?? 0;
    });
    known.set(key, score);
    return score;
  };
}

function divideBy(
  melody: Melody,
  weights: PhraseWeights,
  given: Given,
  scores: readonly number[],
  spans: (from: number, to: number) => number,
  usual: Ticks,
): Division {
  const { tones } = melody;
  const lengthScore = (length: Ticks): number => {
    let score = 0;
    lengthFeatures(length, usual, (name) => {
      score += weights.get(name) ?? 0;
    });
    return score;
  };
  const final = tones.length - 1;
  const total = new Float64Array(tones.length).fill(Number.NEGATIVE_INFINITY);
  const back = new Int32Array(tones.length).fill(-1);
  for (let i = 0; i <= final; i++) {
    if (i < final && given.goesOn(i)) continue;
    const { until } = tones[i]!;
    // One note is a phrase only where somebody says so.
    const alone = final === 0 || given.ends(i - 1) || (i === 0 && given.ends(0));
    for (let j = alone ? i - 1 : i - 2; j >= -1; j--) {
      const from = j < 0 ? tones[0]!.at : tones[j]!.until;
      const reached = j < 0 ? 0 : total[j]!;
      const score = reached + spans(j + 1, i) + lengthScore(until - from) + scores[i]!;
      if (score > total[i]!) {
        total[i] = score;
        back[i] = j;
      }
      const long = until - from > LONGEST_BARS * melody.bar;
      if (j < 0 || given.ends(j) || (long && total[i]! > Number.NEGATIVE_INFINITY)) break;
    }
  }
  const ends: number[] = [];
  for (let i = final; i >= 0; i = back[i]!) ends.push(i);
  return { ends: ends.reverse(), usual, score: total[final]! };
}
