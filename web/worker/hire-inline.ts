/** The worker out of the page's own text, where there is no file beside it to load. */
import ReviewWorker from './review.worker.ts?worker&inline';

export function hireReviewWorker(): Worker {
  return new ReviewWorker();
}
