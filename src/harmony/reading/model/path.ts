/** The search's partial readings: where a chord begins, and where it may end. */
import type { ChordNumber, Standing } from './transition.ts';

/** A chord in a key that may begin at one boundary, with the best way there. */
export interface Start {
  readonly at: number;
  readonly chord: ChordNumber;
  readonly key: number;
  readonly standing: Standing;
  readonly back: End | undefined;
}

/** A segment that may end at one boundary. */
export interface End {
  readonly start: Start;
  readonly to: number;
  readonly score: number;
}
