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
  /** How likely people hear it in this key, 0 to 1. */
  readonly sure: number;
}

/** A stretch in which a second reading lies close: in another key, or, of one harmony in its own key, another chord. */
export interface Doubt extends Pick<Harmony, 'at' | 'until' | 'tonic' | 'mode'> {
  readonly chord?: Pick<Harmony, 'root' | 'type' | 'inversion'>;
}
