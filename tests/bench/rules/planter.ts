/**
 * How the bench plants faults.
 *
 * A planter belongs to one rule. It offers altered chorales (one note changed, or few), and it has a plain definition
 * of the fault of its own: a function that looks for the fault in bare notes. The definition uses nothing of
 * `src/rules` or `src/harmony`, so that the rule is measured against a second opinion; where it needs to know the
 * harmony it reads the published human analysis of the chorale. The bench takes an altered chorale only if the
 * definition finds exactly one place more in it than in the original.
 */
import type { Family } from '../../../src/rules/rule.ts';
import type { Score, VoiceName } from '../../../src/score/score.ts';
import type { Ticks } from '../../../src/score/time.ts';
import type { Plain } from './plain.ts';
import type { Random } from './random.ts';

/** One chord of the published analysis, times in ticks. `key` is a tonic, upper case for major, lower for minor. */
export interface Label {
  readonly at: Ticks;
  readonly until: Ticks;
  readonly key: string;
  readonly figure: string;
  /** Note names: `F#`, `Bb`. */
  readonly root: string;
  readonly bass: string;
  readonly quality: string;
}

/** A chorale of the bench. */
export interface Piece {
  /** As in the 371-chorale edition: `003`. */
  readonly number: string;
  readonly score: Score;
  readonly plain: Plain;
  readonly labels: readonly Label[];
}

/** Where a fault stands: a finding must touch this stretch, and concern at least one of these voices. */
export interface Place {
  readonly at: Ticks;
  readonly until: Ticks;
  readonly voices: readonly VoiceName[];
}

export interface Planter {
  /** The id of the rule that should name it. */
  readonly rule: string;
  readonly family: Family;
  /** The plain definition in one sentence, for the table. */
  readonly definition: string;
  /** Altered chorales to try, most promising first; the bench stops asking when it has a plant. See `edits.ts`. */
  readonly tries: (piece: Piece, random: Random) => Iterable<Score>;
  /** Every place where the fault stands in the music, by the plain definition. `plain` is the altered score's. */
  readonly find: (plain: Plain, piece: Piece) => readonly Place[];
  /** Ids that name it rightly as well: where a fault has two trade names, or one is a case of the other. */
  readonly alsoNamed?: readonly string[];
}
