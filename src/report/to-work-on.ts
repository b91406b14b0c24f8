/** What to work on next: the first marks of the list, in a sentence each. A pupil's sheet has them from the same list. */

import { marksOf, toMend } from '../review/marks.ts';
import type { Review } from '../review/review.ts';
import type { RuleWords } from '../rules/rule.ts';
import { placeAt, printPlace } from '../score/place.ts';
import type { Ticks } from '../score/time.ts';
import { withSigns } from './sentences.ts';

export interface ToWorkOn {
  readonly rule: RuleWords;
  /** How many slips against it; what follows from them is not counted. */
  readonly times: number;
  readonly sentence: string;
  readonly at: Ticks;
}

/** Up to `most` rules that the exercise runs against, the most urgent first. Unfinished beats don't count. */
export function toWorkOn(review: Review, most?: number): ToWorkOn[] {
  return toMend(marksOf(review.findings), most).map(({ slips }) => {
    const { rule, from, message } = slips[0].finding;
    const times = slips.length === 1 ? '' : `, ${slips.length} times`;
    const where = printPlace(placeAt(review.score, from));
    return {
      rule,
      times: slips.length,
      at: from,
      sentence: withSigns(
        `${rule.name}${times}; ${slips.length === 1 ? 'in' : 'first in'} ${where}: ${message}`,
      ),
    };
  });
}
