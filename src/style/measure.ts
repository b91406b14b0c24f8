/**
 * What a measure of style is. One file a measure; `list.ts` names them all. A measure counts something about the
 * music that has been found to hold steady within one chorale; it judges nothing: `profile.ts` says where among
 * the model's chorales a value lies.
 */
import type { Analysis } from '../harmony/analysis.ts';
import type { Ticks } from '../score/time.ts';

/** What one unit of the value is, as read after the figure: `12 % of beats`, `0.4 a beat`. */
export type Unit = '% of beats' | '% of chords' | '% of moves' | 'a beat' | 'a phrase' | 'semitones' | 'bits';

/** A stretch of the piece that pulls the value down or up, to be shown in the score. */
export interface Stretch {
  readonly from: Ticks;
  readonly until: Ticks;
}

/** What a measure found. */
export interface Count {
  /** In the measure's unit; undefined where nothing can be counted (no bass written, no two notes). */
  readonly value: number | undefined;
  /** Where it happens, in order of time: the beats with movement, the suspensions … */
  readonly where: readonly Stretch[];
}

export interface Measure {
  /** Kebab case, in trade words. */
  readonly id: string;
  /** Trade name: `Movement below the tune`. */
  readonly name: string;
  readonly unit: Unit;
  /** What is counted, in one sentence. */
  readonly definition: string;
  /** Why the style has it so, in one or two sentences for a sixteen-year-old. */
  readonly why: string;
  /** What to listen for or try where the value lies low, and where it lies high. Neither names a note. */
  readonly low: string;
  readonly high: string;
  /** Where the definition comes from. */
  readonly source: string;
  /** Pure. Times in ticks. */
  readonly count: (music: Music) => Count;
}

/** A beat as it is felt (a dotted crotchet in 6/8), all four voices of which are written. */
export interface Beat extends Stretch {}

/** The part of a piece that can be measured: analysed, with the beats in which nothing is still to be written. */
export interface Music {
  readonly analysis: Analysis;
  readonly beats: readonly Beat[];
  /** True where a moment lies in one of the beats. */
  readonly written: (at: Ticks) => boolean;
}
