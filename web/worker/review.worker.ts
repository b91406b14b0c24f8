/** Does the long work away from the page's own thread. Of several orders of a kind that wait, only the newest is worth doing. */
import { reviewScore } from '../../src/review/review.ts';
import { waysOut } from '../../src/review/ways-out.ts';
import { phraseEnds } from '../../src/style/close.ts';
import { precedentsFor } from '../../src/style/precedents.ts';
import { styleOf } from '../../src/style/profile.ts';
import { findRoom, roomWanted } from '../../src/style/room.ts';
import type { Answer, Order } from './orders.ts';
import { plainReview } from './plain.ts';

const newest = new Map<Order['kind'], Order>();

addEventListener('message', (event: MessageEvent<Order>) => {
  const idle = newest.size === 0;
  newest.set(event.data.kind, event.data);
  // Orders that came in while the last one was done are all in the queue before this runs.
  if (idle) setTimeout(doNewest);
});

function doNewest(): void {
  const orders = [...newest.values()];
  newest.clear();
  for (const order of orders) postMessage(answer(order));
}

function answer(order: Order): Answer {
  const began = performance.now();
  const { number } = order;
  const review = reviewScore(order.score, order.profile);
  switch (order.kind) {
    case 'review':
      return {
        kind: 'review',
        number,
        milliseconds: performance.now() - began,
        review: plainReview(review),
      };
    case 'ways out': {
      const found = waysOut(review, order.finding, { locked: order.locked });
      return {
        kind: 'ways out',
        number,
        ways: found && {
          counts: found.counts,
          moves: found.moves,
          total: found.total,
          ways: found.ways.map(({ tone, pitch }) => ({
            voice: tone.voice,
            at: tone.at,
            was: tone.pitch,
            pitch,
          })),
        },
      };
    }
    case 'precedents':
      return {
        kind: 'precedents',
        number,
        phrases: phraseEnds(review.analysis).map(({ phrase, tune, own }) => ({
          until: phrase.until,
          tune,
          ...(own === undefined ? {} : { own }),
          found: precedentsFor(tune),
        })),
      };
    case 'room':
      return {
        kind: 'room',
        number,
        rooms: findRoom(review, roomWanted(styleOf(review.analysis)), order.locked),
      };
  }
}
