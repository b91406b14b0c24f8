/** What a part of `npm run bench:pupils` is: rows of figures, each beside what it should reach. */
import type { Learnt } from '../../../src/harmony/reading/harmonies.ts';
import type { PhraseWeights } from '../../../src/harmony/reading/phrase-search.ts';
import type { Piece } from '../harmony-corpus.ts';
import type { Half } from './hymns/list.ts';

/** What the sections measure on. */
export interface Bench {
  /** The open chorales; empty where they are not there. */
  readonly pieces: readonly Piece[];
  /** What to read a piece by: learnt from other tunes, or what is committed where that was asked for. */
  readonly learntFor: (piece: Piece) => Learnt | undefined;
  /** What to weigh phrase ends by; likewise. */
  readonly phraseWeightsFor: (piece: Piece) => PhraseWeights | undefined;
  /** What to weigh phrase ends of hymn tunes of one half by: learnt from the chorales and the other half; likewise. */
  readonly hymnWeights: (half: Half) => PhraseWeights | undefined;
}

export interface Row {
  readonly material: string;
  readonly figure: string;
  /** What to reach, in the same unit; empty where a figure only informs. */
  readonly target: string;
}

export interface Section {
  readonly title: string;
  readonly rows: (bench: Bench) => readonly Row[];
}

/** `87.3 %` */
export function percent(part: number, whole: number): string {
  return whole === 0 ? 'none' : `${((100 * part) / whole).toFixed(1)} %`;
}
