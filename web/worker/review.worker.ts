/** Reviews scores away from the page's own thread. Of several that wait, only the newest is worth reviewing. */
import type { Profile } from '../../src/profiles/profile.ts';
import { reviewScore } from '../../src/review/review.ts';
import type { Score } from '../../src/score/score.ts';
import { type PlainReview, withoutFunctions } from './plain.ts';

export interface ReviewOrder {
  readonly number: number;
  readonly score: Score;
  readonly profile: Profile;
}

export interface ReviewAnswer {
  readonly number: number;
  readonly milliseconds: number;
  readonly review: PlainReview;
}

let newest: ReviewOrder | undefined;

addEventListener('message', (event: MessageEvent<ReviewOrder>) => {
  const idle = newest === undefined;
  newest = event.data;
  if (idle) setTimeout(reviewNewest);
});

function reviewNewest(): void {
  const order = newest;
  newest = undefined;
  if (order === undefined) return;
  const began = performance.now();
  const review = withoutFunctions(reviewScore(order.score, order.profile));
  const answer: ReviewAnswer = { number: order.number, milliseconds: performance.now() - began, review };
  postMessage(answer);
}
