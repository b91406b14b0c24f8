/** What a rule found, as a review tells it. */
import type { Occurrence, RuleWords, Severity } from '../rules/rule.ts';

export interface Finding extends Occurrence {
  /** Stable within one review and, where the music there has not changed, from one review to the next. */
  readonly id: string;
  readonly rule: RuleWords;
  readonly severity: Severity;
  /** Id of the finding this one follows from: what mends that one mends this. That one follows from nothing. */
  readonly because?: string;
  /** Number of the mark it is told under, from 1; none where the music is still to be written. */
  readonly mark?: number;
}
