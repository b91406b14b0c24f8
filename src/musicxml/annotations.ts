/** What a review adds to a score that is handed back: marks and words, as plain data. */
import type { VoiceName } from '../score/score.ts';
import type { Ticks } from '../score/time.ts';

/** A note to be coloured; `at` is where the written note begins. */
export interface NoteheadMark {
  readonly voice: VoiceName;
  readonly at: Ticks;
  /** `#RRGGBB`, in capitals as the schema asks. */
  readonly colour: string;
}

/** The number of a finding, over the staff of a voice. */
export interface NumberMark {
  readonly at: Ticks;
  readonly voice: VoiceName;
  readonly text: string;
  /** `#RRGGBB` */
  readonly colour: string;
  readonly bold: boolean;
}

/** A word under the bass. */
export interface Label {
  readonly at: Ticks;
  readonly text: string;
}

export interface ScoreAnnotations {
  readonly noteheads: readonly NoteheadMark[];
  readonly numbers: readonly NumberMark[];
  /** Rows under the bass, the upper one first: the numerals; keys and cadences. Each in order of time. */
  readonly rows: readonly (readonly Label[])[];
  /** A list over the first staff, which says what the numbers stand for; a line each. */
  readonly list: readonly string[];
}
