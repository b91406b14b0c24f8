/** What a review adds to a score that is handed back: marks and words, as plain data. */
import type { VoiceName, WrittenFigure } from '../score/score.ts';
import type { Ticks } from '../score/time.ts';

/** A note to be coloured; `at` is where the written note begins. */
export interface NoteheadMark {
  readonly voice: VoiceName;
  readonly at: Ticks;
  /** `#rrggbb`. */
  readonly colour: string;
}

/** Words at a moment, beside the staff of a voice. */
export interface Words {
  readonly at: Ticks;
  readonly voice: VoiceName;
  readonly placement: 'above' | 'below';
  readonly text: string;
  /** `#rrggbb`. */
  readonly colour?: string;
  readonly bold?: boolean;
}

export interface ScoreAnnotations {
  readonly noteheads?: readonly NoteheadMark[];
  /** Numbers of findings, keys, cadences. */
  readonly words?: readonly Words[];
  /** Chord labels, printed in one row under the bass. */
  readonly labels?: readonly { readonly at: Ticks; readonly text: string }[];
  /**
   * Figures under the bass where the score has none of its own. Written as real figured bass, so a score read from the
   * result has them too.
   */
  readonly figuredBass?: readonly WrittenFigure[];
}
