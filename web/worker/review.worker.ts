/** Does the long work away from the page's own thread. Of several orders of a kind that wait, only the newest is worth doing. */
import { reviewNear } from '../../src/review/near.ts';
import { reviewScore } from '../../src/review/review.ts';
import { waysOut } from '../../src/review/ways-out.ts';
import { RULES } from '../../src/rules/list.ts';
import type { Rule, RuleWords } from '../../src/rules/rule.ts';
import type { Score } from '../../src/score/score.ts';
import { phraseEnds } from '../../src/style/close.ts';
import { precedentsFor } from '../../src/style/precedents.ts';
import { styleOf } from '../../src/style/profile.ts';
import { findRoom, roomWanted } from '../../src/style/room.ts';
import type { Answer, Order } from './orders.ts';
import { plainNear, plainReview } from './plain.ts';

/** A review that takes no longer than this is made whole at once, in milliseconds. */
const AT_ONCE = 30;

const newest = new Map<Order['kind'], Order>();
let millisecondsABar = 0;

tell({ kind: 'rules', rules: RULES.map(inWords) });
addEventListener('message', (event: MessageEvent<Order>) => take(event.data));

function inWords({ check: _check, parameters: _parameters, examples: _examples, ...words }: Rule): RuleWords {
  return words;
}

function take(order: Order): void {
  const idle = newest.size === 0;
  newest.set(order.kind, order);
  // Orders that came in while the last one was done are all in the queue before this runs.
  if (idle) setTimeout(doNewest);
}

function doNewest(): void {
  const orders = [...newest.values()];
  newest.clear();
  for (const order of orders) {
    if (order.kind === 'review' && order.near !== undefined && costOf(order.score) > AT_ONCE) {
      tell({
        kind: 'near',
        number: order.number,
        near: plainNear(reviewNear(order.score, order.profile, order.near)),
      });
      // The whole gives way to whatever was written meanwhile.
      const { near: _near, ...whole } = order;
      take(whole);
    } else tell(answer(order));
  }
}

function tell(what: Answer): void {
  postMessage(what);
}

/** A whole review of the score by the time that the last one took, in milliseconds. */
function costOf(score: Score): number {
  return score.bars.length * millisecondsABar;
}

function answer(order: Order): Answer {
  const began = performance.now();
  const { number } = order;
  const review = reviewScore(order.score, order.profile);
  switch (order.kind) {
    case 'review':
      millisecondsABar = (performance.now() - began) / Math.max(1, order.score.bars.length);
      return { kind: 'review', number, review: plainReview(review) };
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
