/** Asks for reviews: of the bars around the caret at once, of the whole exercise in the worker. */
import type { Profile } from '../../src/profiles/profile.ts';
import type { Review } from '../../src/review/review.ts';
import type { Score } from '../../src/score/score.ts';
import { withFunctions } from './plain.ts';
import type { ReviewAnswer, ReviewOrder } from './review.worker.ts';

export interface Reviewer {
  /** Orders a review; an order still waiting is dropped, so `onReview` hears of the newest only. */
  order(score: Score, profile: Profile): void;
}

export function createReviewer(onReview: (review: Review, score: Score) => void): Reviewer {
  const worker = new Worker(new URL('./review.worker.ts', import.meta.url), { type: 'module' });
  let number = 0;
  let waiting: Score | undefined;
  worker.addEventListener('message', (event: MessageEvent<ReviewAnswer>) => {
    if (event.data.number !== number || waiting === undefined) return;
    performance.mark('partwise-review', { detail: event.data.milliseconds });
    onReview(withFunctions(event.data.review), waiting);
  });
  return {
    order(score, profile) {
      number++;
      waiting = score;
      const order: ReviewOrder = { number, score, profile };
      worker.postMessage(order);
    },
  };
}
