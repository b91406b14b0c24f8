/**
 * How likely each key is at each harmony of a reading. The chords stay as they were read, and every way through the
 * keys counts by its score, which is the search's: forwards and backwards over keys and how they stand.
 */
import { featureList, worthOf } from './features.ts';
import { contradiction, scaleSet } from './keys.ts';
import {
  AGES,
  CONFIRMED,
  KEY_CHANGE,
  KEY_ENTRY,
  KEY_EXIT,
  KEY_NEED,
  KEY_PIVOT,
  KEY_SINCE,
  KEY_STRENGTH,
  KEY_UNTIL,
  SIGNATURE,
} from './layout.ts';
import type { Scorers } from './scorers.ts';
import { type Span, STRANGE_COST } from './search.ts';
import {
  changePlace,
  keyChange,
  leaving,
  needOf,
  newStanding,
  placedFeatures,
  progressionFeatures,
  type Standing,
  stepWithin,
  stoodOn,
} from './transition.ts';
import { STRANGE, VOCABULARY, vocabularyIndex } from './vocabulary.ts';

/**
 * Scores times this are taken for logarithms of odds: so the likelihood of human readings of chorales that the weights
 * had not seen is greatest.
 */
export const SHARPNESS = 0.8;

/** How a key may stand ({@link Standing}), as numbers. */
const STANDINGS: readonly Standing[] = AGES.flatMap((_, age) =>
  CONFIRMED.flatMap((_, confirmed) => [0, 1].map((broad) => ({ age: age + 1, confirmed, broad }))),
);
const numberOf = ({ age, confirmed, broad }: Standing): number =>
  ((age - 1) * CONFIRMED.length + confirmed) * 2 + broad;

/** By step within a key (see `stepNumber`) and standing: the standing after it. */
const AFTER: readonly Int8Array[] = Array.from({ length: 8 }, (_, step) => {
  const told = { phraseStart: (step & 4) > 0, confirms: (step & 2) > 0, broadens: (step & 1) > 0 };
  return Int8Array.from(STANDINGS, (before) => numberOf(stoodOn(before, told)));
});
const S = STANDINGS.length;

// Imports are read once: loaders that compile modules as they go make every later read a call.
const [width, indexOf] = [VOCABULARY, vocabularyIndex];

/** By span and key (span × keys + key): the share of all ways that go through that key there, 0 to 1. */
export function keyOdds(scorers: Scorers, spans: readonly Span[]): Float64Array {
  return new Ways(scorers, spans).odds();
}

/**
 * Scores are kept as factors. Those of one span are divided by their greatest, and sums by the whole: only how they
 * compare matters.
 */
class Ways {
  private readonly count: number;
  /** By span and key: the chord in that key with the step into it; 0 where the key is not tried. */
  private readonly worth: Float64Array;
  /** By span, the key before and the key: the change of key there. */
  private readonly moves: Float64Array;
  /** By span and key: which of AFTER the step into it is; and the standing of the key where it is new. */
  private readonly steps: Int8Array;
  private readonly fresh: Int8Array;
  /** By place of the change and standing: leaving a key that stands so. */
  private readonly leaves: readonly Float64Array[];
  /** The families of a change that hang on both keys. */
  private readonly changes: Float64Array;
  private readonly needs: Float64Array;
  private readonly scales: readonly (readonly [number, number])[];
  private readonly list = featureList(64);

  constructor(
    private readonly scorers: Scorers,
    private readonly spans: readonly Span[],
  ) {
    const count = scorers.keys.keys.length;
    this.count = count;
    this.worth = new Float64Array(spans.length * count);
    this.moves = new Float64Array(spans.length * count * count);
    this.steps = new Int8Array(spans.length * count);
    this.fresh = new Int8Array(spans.length * count);
    this.leaves = [0, 1, 2].map((place) =>
      Float64Array.from(STANDINGS, (standing) => factor(scorers.weights[leaving(place, standing)]!)),
    );
    const family = (from: number, to: number) =>
      Float64Array.from(scorers.weights.subarray(from, to), factor);
    this.changes = family(KEY_CHANGE, KEY_ENTRY);
    this.needs = family(KEY_NEED, SIGNATURE);
    this.scales = scorers.keys.keys.map(scaleSet);
    for (let i = 0; i < spans.length; i++) this.weigh(i);
  }

  private allowed(i: number): readonly number[] {
    const { grid, keys } = this.scorers;
    return keys.allowed[grid.phrase[this.spans[i]!.from]!]!;
  }

  private weigh(i: number): void {
    const { scorers, spans, count, worth, list } = this;
    const { grid, weights, keys } = scorers;
    const [before, span] = [spans[i - 1], spans[i]!];
    let top = Number.NEGATIVE_INFINITY;
    for (const k of this.allowed(i)) {
      const key = keys.keys[k]!;
      const sums = keys.sums[k]!;
      placedFeatures(grid, span, { chord: span, key }, list);
      if (before !== undefined) progressionFeatures(grid, span.from, before, { chord: span, key }, list);
      let score = sums[span.to]! - sums[span.from]! + worthOf(list, weights);
      if (indexOf(key.mode, span.root - key.tonic, span.type) === STRANGE) score -= STRANGE_COST;
      worth[i * count + k] = score;
      top = Math.max(top, score);
      this.fresh[i * count + k] = numberOf(newStanding(span, key));
      if (before === undefined) continue;
      const step = stepWithin(grid, span.from, before, span, key);
      this.steps[i * count + k] =
        (step.phraseStart ? 4 : 0) + (step.confirms ? 2 : 0) + (step.broadens ? 1 : 0);
    }
    if (before !== undefined) this.weighMoves(i);
    for (const k of this.allowed(i)) worth[i * count + k] = factor(worth[i * count + k]! - top);
  }

  /** Fills in the changes of key at a span, each a product of what hangs on one key and what hangs on both. */
  private weighMoves(i: number): void {
    const { count, moves, spans } = this;
    const { grid, weights, keys } = this.scorers;
    const [a, b] = [spans[i - 1]!, spans[i]!];
    const at = b.from;
    const place = changePlace(grid, at);
    const common =
      weights[KEY_STRENGTH + grid.strength[at]!]! +
      weights[KEY_SINCE + grid.since[at]!]! +
      weights[KEY_UNTIL + grid.left[at]!]!;
    const told = this.allowed(i - 1).map((k) => {
      const { mode, tonic } = keys.keys[k]!;
      const left = weights[KEY_EXIT + mode * width + indexOf(mode, b.root - tonic, b.type)]!;
      return {
        k,
        mode,
        tonic,
        worth: factor(left + common),
        against: contradiction(grid, at, this.scales[k]!),
      };
    });
    for (const k of this.allowed(i)) {
      const { mode, tonic } = keys.keys[k]!;
      const against = contradiction(grid, at, this.scales[k]!);
      const row = mode * width;
      const into = factor(
        weights[KEY_ENTRY + row + indexOf(mode, b.root - tonic, b.type)]! +
          weights[KEY_PIVOT + row + indexOf(mode, a.root - tonic, a.type)]!,
      );
      for (const from of told) {
        if (from.k === k) continue;
        moves[(i * count + from.k) * count + k] =
          into *
          from.worth *
          this.changes[keyChange(place, from, keys.keys[k]!) - KEY_CHANGE]! *
          this.needs[needOf(place, from.against, against)]!;
      }
    }
  }

  odds(): Float64Array {
    const { spans, count } = this;
    const odds = new Float64Array(spans.length * count);
    const before = this.forwards();
    let after = new Float64Array(count * S).fill(1);
    for (let i = spans.length - 1; i >= 0; i--) {
      const here = before[i]!;
      for (let k = 0; k < count; k++)
        for (let s = k * S; s < (k + 1) * S; s++) odds[i * count + k]! += here[s]! * after[s]!;
      shareOut(odds.subarray(i * count, (i + 1) * count));
      if (i > 0) after = this.backwards(i, after);
    }
    return odds;
  }

  /** By span, and there by key and standing: all ways that lead there. */
  private forwards(): Float64Array[] {
    const { spans, count, worth, fresh } = this;
    let last = new Float64Array(count * S);
    return spans.map((_, i) => {
      const here = new Float64Array(count * S);
      if (i > 0) this.goOn(i, last, here);
      else for (const k of this.allowed(0)) here[k * S + fresh[k]!] = worth[k]!;
      shareOut(here);
      last = here;
      return here;
    });
  }

  private goOn(i: number, last: Float64Array, here: Float64Array): void {
    const { count, worth, moves, steps, fresh } = this;
    const leave = this.leaveAt(i);
    const gone = this.allowed(i - 1).map((k) => {
      let sum = 0;
      for (let s = 0; s < S; s++) sum += last[k * S + s]! * leave[s]!;
      return { k, sum };
    });
    for (const k of this.allowed(i)) {
      const own = worth[i * count + k]!;
      const after = AFTER[steps[i * count + k]!]!;
      for (let s = 0; s < S; s++) here[k * S + after[s]!]! += last[k * S + s]! * own;
      let come = 0;
      for (const from of gone) come += from.sum * moves[(i * count + from.k) * count + k]!;
      here[k * S + fresh[i * count + k]!]! += come * own;
    }
  }

  /** By key and standing at the span before: all ways that lead from there to the end. */
  private backwards(i: number, after: Float64Array): Float64Array<ArrayBuffer> {
    const { count, worth, moves, steps, fresh } = this;
    const before = new Float64Array(count * S);
    const leave = this.leaveAt(i);
    for (const k of this.allowed(i - 1)) {
      let gone = 0;
      for (const to of this.allowed(i)) {
        const at = i * count + to;
        gone += moves[(i * count + k) * count + to]! * worth[at]! * after[to * S + fresh[at]!]!;
      }
      const own = worth[i * count + k]!;
      const next = AFTER[steps[i * count + k]!]!;
      for (let s = 0; s < S; s++) before[k * S + s] = own * after[k * S + next[s]!]! + leave[s]! * gone;
    }
    shareOut(before);
    return before;
  }

  private leaveAt(i: number): Float64Array {
    return this.leaves[changePlace(this.scorers.grid, this.spans[i]!.from)]!;
  }
}

function factor(score: number): number {
  return Math.exp(SHARPNESS * score);
}

/** Divides by the whole, where there is any. */
function shareOut(parts: Float64Array): void {
  let sum = 0;
  for (let i = 0; i < parts.length; i++) sum += parts[i]!;
  if (sum > 0) for (let i = 0; i < parts.length; i++) parts[i]! /= sum;
}
