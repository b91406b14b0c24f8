/** What the search finds, in numbers. */
import type { Ticks } from '../../score/time.ts';

/** One harmony of a reading, in numbers: places on the line of fifths and an index into CHORD_TYPES. */
export interface Harmony {
  readonly at: Ticks;
  readonly until: Ticks;
  readonly tonic: number;
  readonly mode: 'major' | 'minor';
  readonly root: number;
  readonly type: number;
  readonly inversion: 0 | 1 | 2 | 3;
  /** The next best reading, where it is close. */
  readonly other?: Pick<Harmony, 'tonic' | 'mode' | 'root' | 'type' | 'inversion'>;
}
