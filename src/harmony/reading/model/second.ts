/** The second-best reading of a harmony, its neighbours left as they are. */
import { featureList, worthOf } from './features.ts';
import type { Scorers } from './scorers.ts';
import type { Span } from './search.ts';
import { loadSegment } from './segment.ts';
import {
  type ChordNumber,
  newStanding,
  type Placed,
  placedFeatures,
  type Standing,
  standingAfter,
  stepFeatures,
} from './transition.ts';
import { STRANGE, vocabularyIndex } from './vocabulary.ts';

/** A span of the reading as its neighbours see it. */
interface Placing extends Placed {
  readonly span: Span;
  /** Index of its key. */
  readonly index: number;
  readonly standing: Standing;
}

/**
 * For each span the best other chord in its key, or other key for its chord, where the sum of weights comes within
 * `margin` of the reading's own; undefined where the reading stands clear.
 */
export function secondReadings(
  scorers: Scorers,
  spans: readonly Span[],
  margin: number,
): (Span | undefined)[] {
  const placings = placingsOf(scorers, spans);
  return placings.map((_, i) => secondReading(scorers, placings, i, margin));
}

function placingsOf({ grid, keys }: Scorers, spans: readonly Span[]): Placing[] {
  const placings: Placing[] = [];
  for (const span of spans) {
    const index = keys.keys.findIndex((k) => k.tonic === span.tonic && k.mode === span.mode);
    const placed = { chord: span, key: keys.keys[index]! };
    const before = placings.at(-1);
    const standing =
      before === undefined
        ? newStanding(placed.chord, placed.key)
        : standingAfter(grid, span.from, before, placed);
    placings.push({ span, index, ...placed, standing });
  }
  return placings;
}

function secondReading(
  scorers: Scorers,
  placings: readonly Placing[],
  i: number,
  margin: number,
): Span | undefined {
  const { grid, keys, segment, chords, find } = scorers;
  const { span, index: ownKey } = placings[i]!;
  loadSegment(segment, span.from, span.to);
  chords.prepare();
  let best: Span | undefined;
  let bestScore = scoreOf(scorers, placings, i, { chord: span, index: ownKey }) - margin;
  const offer = (chord: ChordNumber, index: number) => {
    const { mode, tonic } = keys.keys[index]!;
    const { root, type, inversion } = chord;
    // What no analyst would write is no alternative.
    if (vocabularyIndex(mode, root - tonic, type) === STRANGE) return;
    const offered = scoreOf(scorers, placings, i, { chord, index });
    if (offered <= bestScore) return;
    bestScore = offered;
    best = { from: span.from, to: span.to, root, type, inversion, ...keys.keys[index]! };
  };
  const found = find();
  for (let c = 0; c < found.count; c++) {
    const chord = { root: found.root[c]!, type: found.type[c]!, inversion: found.inversion[c]! };
    if (chord.root !== span.root || chord.type !== span.type) offer(chord, ownKey);
  }
  for (const index of keys.allowed[grid.phrase[span.from]!]!) if (index !== ownKey) offer(span, index);
  return best;
}

const list = featureList(64);

/** What the reading scores for the span in hand and the steps into it and out of it, were it another chord or key. */
function scoreOf(
  { grid, weights, keys, chords }: Scorers,
  placings: readonly Placing[],
  i: number,
  { chord, index }: { readonly chord: ChordNumber; readonly index: number },
): number {
  const [before, own, after] = [placings[i - 1], placings[i]!, placings[i + 1]];
  const { from, to } = own.span;
  const key = keys.keys[index]!;
  const placed = { chord, key };
  let sum = chords.chord(chord.root, chord.type) + chords.bass(chord.root, chord.type, chord.inversion);
  sum += keys.sums[index]![to]! - keys.sums[index]![from]!;
  placedFeatures(grid, own.span, placed, list);
  sum += worthOf(list, weights);
  if (before !== undefined) {
    stepFeatures(grid, from, before, placed, list);
    sum += worthOf(list, weights);
  }
  if (after !== undefined) {
    const standing = index === own.index ? own.standing : newStanding(chord, key);
    stepFeatures(grid, to, { ...placed, standing }, after, list);
    sum += worthOf(list, weights);
  }
  return sum;
}
