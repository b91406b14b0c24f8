/** The second-best reading of a harmony, its neighbours left as they are. */
import { candidateFinder } from './candidates.ts';
import type { Grid } from './grid.ts';
import { type KeyNumber, keyScores } from './keys.ts';
import type { Span } from './search.ts';
import { chordScorer, loadSegment, newSegment } from './segment.ts';
import {
  type ChordNumber,
  newStanding,
  placedFeatures,
  type Standing,
  standingAfter,
  stepFeatures,
} from './transition.ts';
import { STRANGE, vocabularyIndex } from './vocabulary.ts';

/**
 * For each span the best other chord in its key, or other key for its chord, where the sum of weights comes within
 * `margin` of the reading's own; undefined where the reading stands clear.
 */
export function secondReadings(
  grid: Grid,
  weights: Float64Array,
  spans: readonly Span[],
  margin: number,
): (Span | undefined)[] {
  const segment = newSegment(grid);
  const scorer = chordScorer(segment, weights);
  const find = candidateFinder(segment, scorer);
  const { keys, allowed, sums } = keyScores(grid, weights);
  const buffer = new Int32Array(64);
  const total = (count: number): number => {
    let sum = 0;
    for (let i = 0; i < count; i++) sum += weights[buffer[i]!]!;
    return sum;
  };
  const keyIndex = (key: KeyNumber) => keys.findIndex((k) => k.tonic === key.tonic && k.mode === key.mode);
  let standing: Standing = { age: 1, confirmed: 0, broad: 0 };

  return spans.map((span, i) => {
    const { from, to } = span;
    const before = spans[i - 1];
    const after = spans[i + 1];
    const ownKey = keyIndex(span);
    const stood = standing;
    standing =
      before === undefined
        ? newStanding(span, span)
        : standingAfter(grid, from, stood, before, before, span, span);
    const now = standing;
    loadSegment(segment, from, to);
    scorer.prepare();
    const score = (chord: ChordNumber, index: number): number => {
      const key = keys[index]!;
      let sum = scorer.chord(chord.root, chord.type) + scorer.bass(chord.root, chord.type, chord.inversion);
      sum += sums[index]![to]! - sums[index]![from]!;
      sum += total(placedFeatures(grid, from, to, chord, key, buffer, 0));
      if (before !== undefined)
        sum += total(stepFeatures(grid, from, before, before, stood, chord, key, buffer, 0));
      if (after !== undefined) {
        const stands = index === ownKey ? now : newStanding(chord, key);
        sum += total(stepFeatures(grid, to, chord, key, stands, after, after, buffer, 0));
      }
      return sum;
    };
    const own = score(span, ownKey);
    let best: Span | undefined;
    let bestScore = own - margin;
    const offer = (chord: ChordNumber, index: number) => {
      const { mode, tonic } = keys[index]!;
      // What no analyst would write is no alternative.
      if (vocabularyIndex(mode, chord.root - tonic, chord.type) === STRANGE) return;
      const offered = score(chord, index);
      if (offered <= bestScore) return;
      bestScore = offered;
      best = { from, to, root: chord.root, type: chord.type, inversion: chord.inversion, ...keys[index]! };
    };
    const found = find();
    for (let c = 0; c < found.count; c++) {
      const chord = { root: found.root[c]!, type: found.type[c]!, inversion: found.inversion[c]! };
      if (chord.root !== span.root || chord.type !== span.type) offer(chord, ownKey);
    }
    for (const index of allowed[grid.phrase[from]!]!) if (index !== ownKey) offer(span, index);
    return best;
  });
}
