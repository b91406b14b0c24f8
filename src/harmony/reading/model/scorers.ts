/** All that scores the chords and keys of one grid by one table: made once, and used by the search and the second readings. */
import { type CandidateFinder, candidateFinder } from './candidates.ts';
import { type ChordScorer, chordScorer } from './chord-scorer.ts';
import type { Grid } from './grid.ts';
import { type KeyScores, keyScores } from './keys.ts';
import type { Leaning } from './leaning.ts';
import { newSegment, type Segment } from './segment.ts';

export interface Scorers {
  readonly grid: Grid;
  readonly weights: Float64Array;
  readonly keys: KeyScores;
  /** The segment in hand, of which the next two speak. */
  readonly segment: Segment;
  readonly chords: ChordScorer;
  readonly find: CandidateFinder;
  readonly leaning: Leaning | undefined;
}

export function scorersOf(grid: Grid, weights: Float64Array, leaning?: Leaning): Scorers {
  const segment = newSegment(grid);
  const chords = chordScorer(segment, weights);
  const find = candidateFinder(segment, chords);
  return { grid, weights, keys: keyScores(grid, weights, leaning?.key), segment, chords, find, leaning };
}
