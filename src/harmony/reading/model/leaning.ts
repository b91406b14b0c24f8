/** What is added to the sums of weights from outside: while learning, or where voices are still to be written. */
import type { KeyNumber } from './keys.ts';
import type { ChordNumber } from './transition.ts';

export interface Leaning {
  /** For a chord over the atoms `from` to before `to`. */
  readonly chord: (from: number, to: number, chord: ChordNumber) => number;
  /** For a key at an atom. */
  readonly key: (atom: number, key: KeyNumber) => number;
}
