/** The marks of the exercise as far as its brief lets them be seen. */
import { type Marks, marksOf, NO_MARKS } from '../engrave/index.ts';
import { withholds } from '../state/brief.ts';
import type { PageState } from '../state/page.ts';

/** Said where a panel has nothing to show because the brief says so. */
export const WITHHELD = 'The brief sets this exercise without this help.';

export function marksSeen(state: Pick<PageState, 'exercise' | 'reviewed'>): Marks {
  if (state.reviewed === undefined) return NO_MARKS;
  const marks = marksOf(state.reviewed.review);
  return withholds(state, 'numerals')
    ? { ...NO_MARKS, findings: marks.findings, ...(marks.figures && { figures: marks.figures }) }
    : marks;
}
