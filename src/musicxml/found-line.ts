import { Refused } from '../refusal/refusal.ts';
import type { VoiceName } from '../score/score.ts';

/** A line of notes found in a file, for a person to say which voice it is. */
export interface FoundLine {
  /** Names this line in a {@link VoiceAssignment}. */
  readonly id: string;
  /** The part as the file names it; may be empty. */
  readonly part: string;
  /** Staff of the part, from 1 at the top. */
  readonly staff: number;
  /** Line of the staff, from 1 at the top. */
  readonly voice: number;
  /** In words: `Soprano`, `Choir, lower staff, upper voice`. */
  readonly name: string;
  readonly notes: number;
  /** Scientific pitch names; absent where the line has no notes. */
  readonly lowest?: string;
  readonly highest?: string;
  /** The voice it was given to; absent where it was set aside. */
  readonly given?: VoiceName;
}

/** The file was read, but which of its lines are the voices is not told: a person can say it. */
export class VoicesUntold extends Refused {
  readonly lines: readonly FoundLine[];

  constructor(message: string, lines: readonly FoundLine[]) {
    super(message);
    this.lines = lines;
  }
}
