/** The marks of the exercise as far as its brief lets them be seen. */
import type { Review } from '../../src/review/review.ts';
import { type Marks, marksOf, NO_MARKS } from '../engrave/index.ts';
import { withholds } from '../state/brief.ts';
import type { PageState } from '../state/page.ts';

/** Said where a panel has nothing to show because the brief says so. */
export const WITHHELD = 'The brief sets this exercise without this help.';

const ofReviews = new WeakMap<Review, { readonly all: Marks; readonly withoutNumerals: Marks }>();

/** The same marks for the same review, so that whoever follows them sees whether they have changed. */
export function marksSeen(state: Pick<PageState, 'exercise' | 'reviewed'>): Marks {
  if (state.reviewed === undefined) return NO_MARKS;
  const { review } = state.reviewed;
  const known = ofReviews.get(review) ?? bothMarks(review);
  ofReviews.set(review, known);
  return withholds(state, 'numerals') ? known.withoutNumerals : known.all;
}

function bothMarks(review: Review): { readonly all: Marks; readonly withoutNumerals: Marks } {
  const all = marksOf(review);
  const { findings, figures } = all;
  return { all, withoutNumerals: { ...NO_MARKS, findings, ...(figures && { figures }) } };
}
