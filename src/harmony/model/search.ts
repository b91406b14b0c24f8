/**
 * The reading as one optimisation: dynamic programming over segments of time, each with a chord, its inversion and
 * a key. The best path is that with the greatest sum of weights over all features of its segments and steps
 * (`segment.ts`, `transition.ts`, `keys.ts`). A few of the best ends are kept at each boundary.
 */

import { candidateFinder } from './candidates.ts';
import type { Grid } from './grid.ts';
import { type KeyNumber, keyFeatures, likelyKeys, phraseNotes } from './keys.ts';
import { CHORD_IN_KEY, CHORD_PLACE, FIRST_CHORD, LAST_CHORD, PHRASE_CHORD } from './layout.ts';
import { chordScorer, LONGEST, loadSegment, newSegment, spanFeatures } from './segment.ts';
import { stepScorer } from './stepScorer.ts';
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
const KEPT = 20;
/** A chord its key does not know costs this, whatever the weights: they never saw one. */
const STRANGE_COST = 6;

/** A chord in a key that may begin at one boundary, with the best way there. */
interface Start {
  readonly at: number;
  readonly chord: ChordNumber;
  readonly key: number;
  readonly standing: Standing;
  readonly score: number;
  readonly back: End | undefined;
}

/** A segment that may end at one boundary. */
export interface End {
  readonly start: Start;
  readonly to: number;
  readonly score: number;
}

/** A chord on trial at one boundary, and for each length it may have its own score. */
interface Trial {
  readonly chord: ChordNumber;
  readonly to: number[];
  readonly scores: number[];
}

/** The best reading of a grid; empty for an empty grid. */
export function search(grid: Grid, weights: Float64Array, handicap?: Handicap): Span[] {
  if (grid.atoms === 0) return [];
  // Imports are read once: loaders that compile modules as they go make every later read a call.
  const [inKey, byPlace, phraseChord, firstChord, lastChord] = [CHORD_IN_KEY, CHORD_PLACE, PHRASE_CHORD, FIRST_CHORD, LAST_CHORD];
  const [width, indexOf, place] = [VOCABULARY, vocabularyIndex, placeClass];
  const segment = newSegment(grid);
  const scorer = chordScorer(segment, weights);
  const find = candidateFinder(segment, scorer);
  const buffer = new Int32Array(8);
  const { keys, allowed, sums } = keyScores(grid, weights, handicap);
  const step = stepScorer(grid, weights, keys);
  const ends: End[][] = Array.from({ length: grid.atoms + 1 }, () => []);

  for (let at = 0; at < grid.atoms; at++) {
    const before = ends[at]!;
    const trials = new Map<number, Trial>();
    const limit = longest(grid, at);
    for (let to = at + 1; to <= limit; to++) {
      loadSegment(segment, at, to);
      scorer.prepare();
      spanFeatures(segment, buffer, 0);
      const spanScore = weights[buffer[0]!]! + weights[buffer[1]!]!;
      const found = find();
      for (let i = 0; i < found.count; i++) {
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
    const choices = allowed[grid.phrase[at]!]!;
    step.arriveAt(at, before);
    for (const trial of trials.values()) {
      const { chord } = trial;
      step.tryChord(chord);
      for (const key of choices) {
        const { mode, tonic } = keys[key]!;
        const v = indexOf(mode, chord.root - tonic, chord.type);
        const row = mode * width + v;
        const placed =
          weights[inKey + row * 4 + chord.inversion]! +
          weights[byPlace + row * 3 + place(grid, at)]! +
          (at === 0 ? weights[firstChord + row]! : 0) -
          (v === STRANGE ? STRANGE_COST : 0);
        step.best(key, v);
        const stay = step.stay();
        const move = step.move();
        if (at === 0) begin(0, undefined, newStanding(chord, keys[key]!));
        if (stay !== undefined) begin(step.scores.stay, stay, standing(stay));
        if (move !== undefined) begin(step.scores.move, move, newStanding(chord, keys[key]!));

        function standing({ start }: End): Standing {
          return standingAfter(grid, at, start.standing, start.chord, keys[start.key]!, chord, keys[key]!);
        }
        function begin(score: number, back: End | undefined, stands: Standing): void {
          const start: Start = { at, chord, key, standing: stands, score: score + placed, back };
          const sum = sums[key]!;
          for (let i = 0; i < trial.to.length; i++) {
            const to = trial.to[i]!;
            let total = start.score + trial.scores[i]! + sum[to]! - sum[at]!;
            if (grid.phraseEnd[to - 1]) total += weights[phraseChord + row]!;
            if (to === grid.atoms) total += weights[lastChord + row]!;
            keep(ends[to]!, start, to, total);
          }
        }
      }
    }
  }
  return trace(ends[grid.atoms]!, keys);
}

/** Keeps an end if it is among the best of its boundary; of one chord in one key only the best is kept. */
function keep(ends: End[], start: Start, to: number, score: number): void {
  const full = ends.length === KEPT;
  if (full && score <= ends[KEPT - 1]!.score) return;
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
  let at = same < ends.length ? same : full ? KEPT - 1 : ends.length;
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

/** Keys of the piece, those allowed in each phrase, and running sums of each key's score over the atoms. */
function keyScores(
  grid: Grid,
  weights: Float64Array,
  handicap: Handicap | undefined,
): { keys: KeyNumber[]; allowed: number[][]; sums: Float64Array[] } {
  const phrases = phraseNotes(grid);
  const keys: KeyNumber[] = [];
  const allowed = phrases.map((phrase) =>
    (phrase.total === 0 ? [] : likelyKeys(phrase)).map((key) => {
      const known = keys.findIndex((k) => k.tonic === key.tonic && k.mode === key.mode);
      return known >= 0 ? known : keys.push(key) - 1;
    }),
  );
  const sums = keys.map((key, index) => {
    const running = new Float64Array(grid.atoms + 1);
    for (let atom = 0; atom < grid.atoms; atom++) {
      let score = handicap ? handicap.key(atom, key) : 0;
      if (allowed[grid.phrase[atom]!]!.includes(index))
        keyFeatures(grid, phrases, atom, key, (feature, value) => {
          score += weights[feature]! * value;
        });
      running[atom + 1] = running[atom]! + score;
    }
    return running;
  });
  return { keys, allowed, sums };
}

function trace(last: readonly End[], keys: readonly KeyNumber[]): Span[] {
  const spans: Span[] = [];
  for (let end = last[0]; end !== undefined; end = end.start.back) {
    const { at, chord, key } = end.start;
    spans.push({ from: at, to: end.to, ...chord, ...keys[key]! });
  }
  return spans.reverse();
}
