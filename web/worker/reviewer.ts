/** Asks the workers for reviews and for ways out, each in a worker of its own so that neither waits for the other. */
import type { Profile } from '../../src/profiles/profile.ts';
import type { Review } from '../../src/review/review.ts';
import type { Score, VoiceName } from '../../src/score/score.ts';
import type { Answer, Order, PlainWaysOut } from './orders.ts';
import { wholeReview } from './plain.ts';

export interface Reviewer {
  /** Orders a review; an order still waiting is dropped, so `onReview` hears of the newest only. */
  review(score: Score, profile: Profile): void;
  /** Orders the ways out of a finding of the score's review; likewise. */
  waysOut(score: Score, profile: Profile, finding: string, locked: readonly VoiceName[]): void;
}

export interface ReviewerEvents {
  readonly onReview: (review: Review, score: Score) => void;
  /** Undefined where the finding was gone. */
  readonly onWaysOut: (finding: string, ways: PlainWaysOut | undefined, score: Score) => void;
}

export function createReviewer({ onReview, onWaysOut }: ReviewerEvents): Reviewer {
  let number = 0;
  let reviewOrder: Order | undefined;
  let waysOrder: (Order & { kind: 'ways out' }) | undefined;
  let waysWorker: Worker | undefined;

  const hear = ({ data }: MessageEvent<Answer>): void => {
    if (data.kind === 'review' && data.number === reviewOrder?.number) {
      performance.measure('partwise-review', {
        start: performance.now() - data.milliseconds,
        end: performance.now(),
      });
      onReview(wholeReview(data.review, reviewOrder.score), reviewOrder.score);
    }
    if (data.kind === 'ways out' && data.number === waysOrder?.number)
      onWaysOut(waysOrder.finding, data.ways, waysOrder.score);
  };
  const hire = (): Worker => {
    const worker = new Worker(new URL('./review.worker.ts', import.meta.url), { type: 'module' });
    worker.addEventListener('message', hear);
    return worker;
  };
  const reviewWorker = hire();

  return {
    review(score, profile) {
      number++;
      reviewOrder = { kind: 'review', number, score, profile };
      reviewWorker.postMessage(reviewOrder);
    },
    waysOut(score, profile, finding, locked) {
      number++;
      waysOrder = { kind: 'ways out', number, score, profile, finding, locked };
      waysWorker ??= hire();
      waysWorker.postMessage(waysOrder);
    },
  };
}
