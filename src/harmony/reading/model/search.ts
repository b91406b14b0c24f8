/**
 * The reading as one optimisation: dynamic programming over segments of time, each with a chord, its inversion and
 * a key. The best path is that with the greatest sum of weights over all features of its segments and steps
 * (`segment.ts`, `transition.ts`, `keys.ts`). A few of the best ends are kept at each boundary.
 */

import type { Grid } from './grid.ts';
import type { KeyNumber } from './keys.ts';
import { CHORD_IN_KEY, CHORD_PLACE, FEW_CHORD, FIRST_CHORD, LAST_CHORD, PHRASE_CHORD } from './layout.ts';
import type { Leaning } from './leaning.ts';
import type { End, Start } from './path.ts';
import { type Scorers, scorersOf } from './scorers.ts';
import { type StepScorer, stepScorer } from './step-scorer.ts';
import { type ChordNumber, newStanding, placeClass, type Standing, standingInKey } from './transition.ts';
import { type Trial, TrialFinder } from './trials.ts';
import { STRANGE, VOCABULARY, vocabularyIndex } from './vocabulary.ts';

/** A segment of the reading: atoms `from` to before `to`. */
export interface Span extends ChordNumber, KeyNumber {
  readonly from: number;
  readonly to: number;
}

/** Ends kept at each boundary. */
const KEPT = 8;
/** A chord its key does not know costs this, whatever the weights: they never saw one. */
export const STRANGE_COST = 6;

/** The best reading of a grid; empty for an empty grid. */
export function search(grid: Grid, weights: Float64Array, leaning?: Leaning): Span[] {
  return bestReading(scorersOf(grid, weights, leaning)).spans;
}

/**
 * The best reading with its score: the sum of the weights of all its features and of what the scorers lean to, less
 * what strange and rootless chords cost.
 */
export function bestReading(scorers: Scorers): { readonly spans: Span[]; readonly score: number } {
  if (scorers.grid.atoms === 0) return { spans: [], score: 0 };
  const last = new Search(scorers).run();
  return { spans: trace(last, scorers.keys.keys), score: last[0]?.score ?? 0 };
}

// Imports are read once: loaders that compile modules as they go make every later read a call.
const [inKey, byPlace, phraseChord] = [CHORD_IN_KEY, CHORD_PLACE, PHRASE_CHORD];
const [firstChord, lastChord, fewChord] = [FIRST_CHORD, LAST_CHORD, FEW_CHORD];
const [width, indexOf] = [VOCABULARY, vocabularyIndex];

/** What it has in hand (a boundary, a chord on trial) is state of its own: handing it on costs time in the innermost loops. */
class Search {
  private readonly ends: End[][];
  /** By boundary: what a score must exceed to be kept, once there is no more room. */
  private readonly bars: Float64Array;
  private readonly finder: TrialFinder;
  private readonly step: StepScorer;
  private at = 0;

  constructor(private readonly scorers: Scorers) {
    const { grid, weights, keys } = scorers;
    this.ends = Array.from({ length: grid.atoms + 1 }, () => []);
    this.bars = new Float64Array(grid.atoms + 1).fill(Number.NEGATIVE_INFINITY);
    this.finder = new TrialFinder(scorers);
    this.step = stepScorer(grid, weights, keys.keys);
  }

  /** Goes from boundary to boundary; gives the ends at the last, the best first. */
  run(): readonly End[] {
    const { ends, finder, step } = this;
    const { grid } = this.scorers;
    for (let at = 0; at < grid.atoms; at++) {
      this.at = at;
      step.arriveAt(at, ends[at]!);
      finder.findAt(at);
      for (let i = 0; i < finder.count; i++) this.tryChord(finder.trials[i]!);
    }
    return ends[grid.atoms]!;
  }

  /** Tries a chord in each key it may be in, from the best ways into it. */
  private tryChord(trial: Trial): void {
    const { at, step } = this;
    const { grid, weights, keys } = this.scorers;
    const { root, type, inversion } = trial.chord;
    const place = placeClass(grid, at);
    const few = grid.few[at]!;
    step.tryChord(trial.chord);
    for (const key of keys.allowed[grid.phrase[at]!]!) {
      const { mode, tonic } = keys.keys[key]!;
      const v = indexOf(mode, root - tonic, type);
      const row = mode * width + v;
      let placed = weights[inKey + row * 4 + inversion]! + weights[byPlace + row * 3 + place]!;
      if (few >= 0) placed += weights[fewChord + ((few * 2 + mode) * width + v) * 4 + inversion]!;
      if (v === STRANGE) placed -= STRANGE_COST;
      if (at === 0) {
        this.begin(trial, key, placed + weights[firstChord + row]!, undefined);
        continue;
      }
      step.best(key, v);
      const stay = step.stay();
      const move = step.move();
      if (stay !== undefined) this.begin(trial, key, step.scores.stay + placed, stay);
      if (move !== undefined) this.begin(trial, key, step.scores.move + placed, move);
    }
  }

  /** Lets a chord begin: tries each of its lengths. `before`: its score without what it covers. */
  private begin(trial: Trial, key: number, before: number, back: End | undefined): void {
    const { at, ends, bars } = this;
    const { grid, weights, keys } = this.scorers;
    const sum = keys.sums[key]!;
    const base = before - sum[at]!;
    const { chord } = trial;
    let start: Start | undefined;
    for (let i = 0; i < trial.lengths; i++) {
      const to = trial.to[i]!;
      let score = base + trial.scores[i]! + sum[to]!;
      if (grid.phraseEnd[to - 1] || to === grid.atoms) {
        const { mode, tonic } = keys.keys[key]!;
        const row = mode * width + indexOf(mode, chord.root - tonic, chord.type);
        if (grid.phraseEnd[to - 1]) score += weights[phraseChord + row]!;
        if (to === grid.atoms) score += weights[lastChord + row]!;
      }
      if (score <= bars[to]!) continue;
      start ??= { at, chord, key, standing: this.standingOf(chord, key, back), back };
      const list = ends[to]!;
      keep(list, start, to, score);
      if (list.length === KEPT) bars[to] = list[KEPT - 1]!.score;
    }
  }

  private standingOf(chord: ChordNumber, key: number, back: End | undefined): Standing {
    const { grid, keys } = this.scorers;
    const number = keys.keys[key]!;
    return back === undefined || back.start.key !== key
      ? newStanding(chord, number)
      : standingInKey(grid, this.at, back.start, chord, number);
  }
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

function trace(last: readonly End[], keys: readonly KeyNumber[]): Span[] {
  const spans: Span[] = [];
  for (let end = last[0]; end !== undefined; end = end.start.back) {
    const { at, chord, key } = end.start;
    spans.push({ from: at, to: end.to, ...chord, ...keys[key]! });
  }
  return spans.reverse();
}
