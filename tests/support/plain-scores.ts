/**
 * The reading's scores the slow way: every feature named by the functions from which the weights are learnt, and
 * their weights added up. Whatever the search does faster must come to the same sums.
 */
import { ROOTLESS_COST } from '../../src/harmony/reading/model/chord-scorer.ts';
import { featureList, worthOf } from '../../src/harmony/reading/model/features.ts';
import type { Grid } from '../../src/harmony/reading/model/grid.ts';
import type { KeyNumber } from '../../src/harmony/reading/model/keys.ts';
import type { End } from '../../src/harmony/reading/model/path.ts';
import { type Span, STRANGE_COST } from '../../src/harmony/reading/model/search.ts';
import {
  bassFeatures,
  chordFeatures,
  memberAt,
  type Segment,
} from '../../src/harmony/reading/model/segment.ts';
import { type ChordNumber, stepFeatures } from '../../src/harmony/reading/model/transition.ts';
import { STRANGE, vocabularyIndex } from '../../src/harmony/reading/model/vocabulary.ts';
import { addFeatures } from '../bench/harmony-learning.ts';

const list = featureList(4096);

/** The score of coming from an end to a chord in a key, the end's own score included. */
export function plainStep(
  grid: Grid,
  weights: Float64Array,
  at: number,
  end: { readonly end: End; readonly key: KeyNumber },
  to: { readonly chord: ChordNumber; readonly key: KeyNumber },
): number {
  const { start, score } = end.end;
  stepFeatures(grid, at, { ...start, key: end.key }, to, list);
  return score + worthOf(list, weights);
}

/** The score of the segment in hand as a chord in a position, whatever the key. */
export function plainChord(segment: Segment, weights: Float64Array, chord: ChordNumber): number {
  const { root, type, inversion } = chord;
  chordFeatures(segment, root, type, list);
  bassFeatures(segment, root, type, inversion, list);
  const sum = worthOf(list, weights);
  return isRootless(segment, chord) ? sum - ROOTLESS_COST : sum;
}

function isRootless(segment: Segment, { root, type }: ChordNumber): boolean {
  for (let i = 0; i < segment.tones; i++) if (memberAt(type, root, segment.place[i]!) === 0) return false;
  return segment.grid.sounding[segment.from]! < 3;
}

/** The score of a whole reading; rootless chords, of which full textures have none, are not charged. */
export function plainReading(grid: Grid, weights: Float64Array, spans: readonly Span[]): number {
  const features = new Map<number, number>();
  addFeatures(grid, spans, 1, features);
  let sum = 0;
  for (const [index, value] of features) sum += weights[index]! * value;
  for (const { mode, tonic, root, type } of spans)
    if (vocabularyIndex(mode, root - tonic, type) === STRANGE) sum -= STRANGE_COST;
  return sum;
}
