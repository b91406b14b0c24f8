/**
 * The reading as one optimisation: dynamic programming over segments of time, each with a chord, its inversion and
 * a key. The best path is that with the greatest sum of weights over all features of its segments and steps
 * (`segment.ts`, `transition.ts`, `keys.ts`). A few of the best ends are kept at each boundary.
 */

import { candidateFinder } from './candidates.ts';
import type { Grid } from './grid.ts';
import { type KeyNumber, keyScores } from './keys.ts';
import { CHORD_IN_KEY, CHORD_PLACE, FEW_CHORD, FIRST_CHORD, LAST_CHORD, PHRASE_CHORD } from './layout.ts';
import type { End, Start } from './path.ts';
import { chordScorer, LONGEST, loadSegment, newSegment, spanFeatures } from './segment.ts';
import { stepScorer } from './step-scorer.ts';
import { type ChordNumber, newStanding, placeClass, type Standing, standingAfter } from './transition.ts';
import { STRANGE, VOCABULARY, vocabularyIndex } from './vocabulary.ts';

/** A segment of the reading: atoms `from` to before `to`. */
export interface Span extends ChordNumber, KeyNumber {
  readonly from: number;
  readonly to: number;
}

/** Added to scores while learning, to push the search towards likely mistakes. */
export interface Handicap {
  readonly chord: (from: number, to: number, chord: ChordNumber) => number;
  readonly key: (atom: number, key: KeyNumber) => number;
}

/** Ends kept at each boundary. */
const KEPT = 8;
/** Chords that fit a segment so much worse than the best are not tried. */
const MARGIN = 3;
/** The same where voices are silent or still to be written: much is left open there. */
const FEW_MARGIN = 6;
/** A chord its key does not know costs this, whatever the weights: they never saw one. */
export const STRANGE_COST = 6;

/** A chord on trial at one boundary, and for each length it may have its own score. */
interface Trial {
  readonly chord: ChordNumber;
  readonly to: number[];
  readonly scores: number[];
}

/** The best reading of a grid; empty for an empty grid. */
export function search(grid: Grid, weights: Float64Array, handicap?: Handicap): Span[] {
  return bestReading(grid, weights, handicap).spans;
}

/** The best reading with its score: the sum of the weights of all its features, less what strange and rootless chords cost. */
export function bestReading(
  grid: Grid,
  weights: Float64Array,
  handicap?: Handicap,
): { readonly spans: Span[]; readonly score: number } {
  if (grid.atoms === 0) return { spans: [], score: 0 };
  const { keys, allowed, sums } = keyScores(grid, weights, handicap?.key);
  const trialsAt = trialFinder(grid, weights, handicap);
  const step = stepScorer(grid, weights, keys);
  const ends: End[][] = Array.from({ length: grid.atoms + 1 }, () => []);
  // Imports are read once: loaders that compile modules as they go make every later read a call.
  const [inKey, byPlace, phraseChord] = [CHORD_IN_KEY, CHORD_PLACE, PHRASE_CHORD];
  const [firstChord, lastChord, fewChord] = [FIRST_CHORD, LAST_CHORD, FEW_CHORD];
  const [width, indexOf] = [VOCABULARY, vocabularyIndex];

  /** Lets a chord begin: tries each of its lengths from the best ways into it. */
  const begin = (
    trial: Trial,
    key: number,
    placed: number,
    row: number,
    at: number,
    back: End | undefined,
  ) => {
    const from = back === undefined ? 0 : back.start.key === key ? step.scores.stay : step.scores.move;
    const sum = sums[key]!;
    const base = from + placed - sum[at]!;
    let start: Start | undefined;
    for (let i = 0; i < trial.to.length; i++) {
      const to = trial.to[i]!;
      let score = base + trial.scores[i]! + sum[to]!;
      if (grid.phraseEnd[to - 1]) score += weights[phraseChord + row]!;
      if (to === grid.atoms) score += weights[lastChord + row]!;
      const list = ends[to]!;
      if (list.length === KEPT && score <= list[KEPT - 1]!.score) continue;
      start ??= { at, chord: trial.chord, key, standing: standingOf(at, trial.chord, key, back), back };
      keep(list, start, to, score);
    }
  };

  const standingOf = (at: number, chord: ChordNumber, key: number, back: End | undefined): Standing => {
    if (back === undefined || back.start.key !== key) return newStanding(chord, keys[key]!);
    const { start } = back;
    return standingAfter(grid, at, start.standing, start.chord, keys[key]!, chord, keys[key]!);
  };

  for (let at = 0; at < grid.atoms; at++) {
    step.arriveAt(at, ends[at]!);
    const place = placeClass(grid, at);
    const few = grid.few[at]!;
    for (const trial of trialsAt(at)) {
      const { root, type, inversion } = trial.chord;
      step.tryChord(trial.chord);
      for (const key of allowed[grid.phrase[at]!]!) {
        const { mode, tonic } = keys[key]!;
        const v = indexOf(mode, root - tonic, type);
        const row = mode * width + v;
        let placed = weights[inKey + row * 4 + inversion]! + weights[byPlace + row * 3 + place]!;
        if (few >= 0) placed += weights[fewChord + ((few * 2 + mode) * width + v) * 4 + inversion]!;
        if (v === STRANGE) placed -= STRANGE_COST;
        if (at === 0) {
          begin(trial, key, placed + weights[firstChord + row]!, row, at, undefined);
          continue;
        }
        step.best(key, v);
        const stay = step.stay();
        const move = step.move();
        if (stay !== undefined) begin(trial, key, placed, row, at, stay);
        if (move !== undefined) begin(trial, key, placed, row, at, move);
      }
    }
  }
  const last = ends[grid.atoms]!;
  return { spans: trace(last, keys), score: last[0]?.score ?? 0 };
}

/** Makes a function that finds the chords that may begin at an atom, and how well each fits what follows it. */
function trialFinder(
  grid: Grid,
  weights: Float64Array,
  handicap: Handicap | undefined,
): (at: number) => Iterable<Trial> {
  const segment = newSegment(grid);
  const scorer = chordScorer(segment, weights);
  const find = candidateFinder(segment, scorer);
  const buffer = new Int32Array(4);
  return (at) => {
    const trials = new Map<number, Trial>();
    const limit = longest(grid, at);
    for (let to = at + 1; to <= limit; to++) {
      loadSegment(segment, at, to);
      scorer.prepare();
      let spanScore = 0;
      for (let i = spanFeatures(segment, buffer, 0) - 1; i >= 0; i--) spanScore += weights[buffer[i]!]!;
      const found = find();
      let top = Number.NEGATIVE_INFINITY;
      for (let i = 0; i < found.count; i++) top = Math.max(top, found.score[i]!);
      const margin = grid.few[at]! < 0 ? MARGIN : FEW_MARGIN;
      for (let i = 0; i < found.count; i++) {
        if (found.score[i]! < top - margin) continue;
        const root = found.root[i]!;
        const type = found.type[i]!;
        const inversion = found.inversion[i]!;
        const id = ((root + 40) * 16 + type) * 4 + inversion;
        let trial = trials.get(id);
        if (trial === undefined) {
          trial = { chord: { root, type, inversion }, to: [], scores: [] };
          trials.set(id, trial);
        }
        const extra = handicap ? handicap.chord(at, to, trial.chord) : 0;
        trial.to.push(to);
        trial.scores.push(found.score[i]! + spanScore + extra);
      }
    }
    return trials.values();
  };
}

/** Keeps an end among the best of its boundary; of one chord in one key only the best is kept. */
function keep(ends: End[], start: Start, to: number, score: number): void {
  let same = ends.length;
  for (let i = 0; i < ends.length; i++) {
    const other = ends[i]!.start;
    if (
      other.key === start.key &&
      other.standing.age === start.standing.age &&
      other.chord.root === start.chord.root &&
      other.chord.type === start.chord.type &&
      other.chord.inversion === start.chord.inversion
    ) {
      if (ends[i]!.score >= score) return;
      same = i;
      break;
    }
  }
  let at = same < ends.length ? same : ends.length === KEPT ? KEPT - 1 : ends.length;
  while (at > 0 && ends[at - 1]!.score < score) {
    ends[at] = ends[at - 1]!;
    at--;
  }
  ends[at] = { start, to, score };
}

/** No segment crosses a silence or a phrase's end. */
function longest(grid: Grid, at: number): number {
  let to = at + 1;
  while (to < grid.atoms && to < at + LONGEST && grid.gapBefore[to] === 0 && grid.phraseStart[to] === 0) to++;
  return to;
}

function trace(last: readonly End[], keys: readonly KeyNumber[]): Span[] {
  const spans: Span[] = [];
  for (let end = last[0]; end !== undefined; end = end.start.back) {
    const { at, chord, key } = end.start;
    spans.push({ from: at, to: end.to, ...chord, ...keys[key]! });
  }
  return spans.reverse();
}
