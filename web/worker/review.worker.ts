/** Does the long work away from the page's own thread. Of several orders that wait, only the newest is worth doing. */
import { reviewScore } from '../../src/review/review.ts';
import { waysOut } from '../../src/review/ways-out.ts';
import type { Answer, Order } from './orders.ts';
import { plainReview } from './plain.ts';

let newest: Order | undefined;

addEventListener('message', (event: MessageEvent<Order>) => {
  const idle = newest === undefined;
  newest = event.data;
  // Orders that came in while the last one was done are all in the queue before this runs.
  if (idle) setTimeout(doNewest);
});

function doNewest(): void {
  const order = newest;
  newest = undefined;
  if (order !== undefined) postMessage(answer(order));
}

function answer(order: Order): Answer {
  const began = performance.now();
  const review = reviewScore(order.score, order.profile);
  if (order.kind === 'review')
    return {
      kind: 'review',
      number: order.number,
      milliseconds: performance.now() - began,
      review: plainReview(review),
    };
  const found = waysOut(review, order.finding, { locked: order.locked });
  return {
    kind: 'ways out',
    number: order.number,
    ways: found && {
      counts: found.counts,
      total: found.total,
      ways: found.ways.map(({ tone, pitch }) => ({ voice: tone.voice, at: tone.at, was: tone.pitch, pitch })),
    },
  };
}
