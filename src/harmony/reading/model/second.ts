/** The second-best chord of a harmony, its key and its neighbours left as they are. */
import { CHORD_TYPES } from '../../chord-types.ts';
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
  readonly standing: Standing;
}

/**
 * A second chord whose sum of weights comes so near is told. On chorales the weights had not seen, one chord in fifty
 * has one; the first is right for three fifths of those (`npm run bench:harmony`).
 */
const NEAR = 1;

/**
 * For each span the best other chord in its key, where the sum of weights comes near the reading's own; undefined
 * where the reading stands clear.
 */
export function secondChords(scorers: Scorers, spans: readonly Span[]): (ChordNumber | undefined)[] {
  const placings = placingsOf(scorers, spans);
  return placings.map((_, i) => secondChord(scorers, placings, i));
}

function placingsOf({ grid }: Scorers, spans: readonly Span[]): Placing[] {
  const placings: Placing[] = [];
  for (const span of spans) {
    const placed = { chord: span, key: span };
    const before = placings.at(-1);
    const standing =
      before === undefined ? newStanding(span, span) : standingAfter(grid, span.from, before, placed);
    placings.push({ span, ...placed, standing });
  }
  return placings;
}

function secondChord(scorers: Scorers, placings: readonly Placing[], i: number): ChordNumber | undefined {
  const { segment, chords, find } = scorers;
  const { span } = placings[i]!;
  loadSegment(segment, span.from, span.to);
  chords.prepare();
  let best: ChordNumber | undefined;
  let bestScore = scoreOf(scorers, placings, i, span) - NEAR;
  const found = find();
  for (let c = 0; c < found.count; c++) {
    const chord = { root: found.root[c]!, type: found.type[c]!, inversion: found.inversion[c]! };
    if (chord.root === span.root && sameTriad(chord.type, span.type)) continue;
    // What no analyst would write is no alternative.
    if (vocabularyIndex(span.mode, chord.root - span.tonic, chord.type) === STRANGE) continue;
    const score = scoreOf(scorers, placings, i, chord);
    if (score <= bestScore) continue;
    bestScore = score;
    best = chord;
  }
  return best;
}

/** With or without its seventh it is the same chord to whoever reads it: whether the seventh only passes is no question. */
function sameTriad(a: number, b: number): boolean {
  const [one, other] = [CHORD_TYPES[a]!.offsets, CHORD_TYPES[b]!.offsets];
  return [1, 2].every((member) => one[member] === other[member]);
}

const list = featureList(64);

/** What the reading scores for the span in hand and the steps into it and out of it, were it another chord. */
function scoreOf(
  { grid, weights, chords, leaning }: Scorers,
  placings: readonly Placing[],
  i: number,
  chord: ChordNumber,
): number {
  const [before, own, after] = [placings[i - 1], placings[i]!, placings[i + 1]];
  const { from, to } = own.span;
  const placed = { chord, key: own.key };
  let sum = chords.chord(chord.root, chord.type) + chords.bass(chord.root, chord.type, chord.inversion);
  if (leaning !== undefined) sum += leaning.chord(from, to, chord);
  placedFeatures(grid, own.span, placed, list);
  sum += worthOf(list, weights);
  if (before !== undefined) {
    stepFeatures(grid, from, before, placed, list);
    sum += worthOf(list, weights);
  }
  if (after !== undefined) {
    stepFeatures(grid, to, { ...placed, standing: own.standing }, after, list);
    sum += worthOf(list, weights);
  }
  return sum;
}
