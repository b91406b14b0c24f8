/** The worker as a file of its own beside the page. The single-file build puts `hire-inline.ts` in this one's place. */
export function hireReviewWorker(): Worker {
  return new Worker(new URL('./review.worker.ts', import.meta.url), { type: 'module' });
}
