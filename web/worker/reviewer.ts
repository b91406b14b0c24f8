/** Asks the workers: one for reviews, one for what a person asks for, so that neither waits for the other. */
import type { Profile } from '../../src/profiles/profile.ts';
import type { Review } from '../../src/review/review.ts';
import type { NearFindings } from '../../src/review/with-near.ts';
import type { Score, VoiceName } from '../../src/score/score.ts';
import type { Ticks } from '../../src/score/time.ts';
import type { Room } from '../../src/style/room.ts';
import { hireReviewWorker } from './hire.ts';
import type { Answer, Order, PhrasePrecedents, PlainWaysOut } from './orders.ts';
import { type RulesById, rulesById, wholeNear, wholeReview } from './plain.ts';

export interface Reviewer {
  /**
   * Orders a review; an order still waiting is dropped, so `onReview` hears of the newest only. `near` is the place just
   * written: where the whole takes long, `onNear` hears of the bars around it first.
   */
  review(score: Score, profile: Profile, near?: Ticks): void;
  /** Orders the ways out of a finding of the score's review; likewise. */
  waysOut(score: Score, profile: Profile, finding: string, locked: readonly VoiceName[]): void;
  /** Orders what the model did where the tune's phrases end alike; likewise. */
  precedents(score: Score, profile: Profile): void;
  /** Orders the places with room for what the style uses; likewise. */
  room(score: Score, profile: Profile, locked: readonly VoiceName[]): void;
}

export interface ReviewerEvents {
  /** What is found around the place just written, where the whole takes longer. */
  readonly onNear: (near: NearFindings, score: Score) => void;
  readonly onReview: (review: Review, rules: RulesById) => void;
  /** Undefined where the finding was gone. */
  readonly onWaysOut: (finding: string, ways: PlainWaysOut | undefined, score: Score) => void;
  readonly onPrecedents: (phrases: readonly PhrasePrecedents[], score: Score) => void;
  readonly onRoom: (rooms: readonly Room[], score: Score) => void;
}

export function createReviewer(events: ReviewerEvents): Reviewer {
  const { onNear, onReview, onWaysOut, onPrecedents, onRoom } = events;
  let number = 0;
  let rules: RulesById = new Map();
  let reviewOrder: Order | undefined;
  let waysOrder: (Order & { kind: 'ways out' }) | undefined;
  let precedentsOrder: Order | undefined;
  let roomOrder: Order | undefined;
  let askedWorker: Worker | undefined;

  const hear = ({ data }: MessageEvent<Answer>): void => {
    if (data.kind === 'rules') rules = rulesById(data.rules);
    if (data.kind === 'near' && data.number === reviewOrder?.number)
      onNear(wholeNear(data.near, reviewOrder.score, rules), reviewOrder.score);
    if (data.kind === 'review' && data.number === reviewOrder?.number)
      onReview(wholeReview(data.review, reviewOrder.score, rules), rules);
    if (data.kind === 'ways out' && data.number === waysOrder?.number)
      onWaysOut(waysOrder.finding, data.ways, waysOrder.score);
    if (data.kind === 'precedents' && data.number === precedentsOrder?.number)
      onPrecedents(data.phrases, precedentsOrder.score);
    if (data.kind === 'room' && data.number === roomOrder?.number) onRoom(data.rooms, roomOrder.score);
  };
  const hire = (): Worker => {
    const worker = hireReviewWorker();
    worker.addEventListener('message', hear);
    return worker;
  };
  const reviewWorker = hire();
  const asked = (): Worker => {
    askedWorker ??= hire();
    return askedWorker;
  };

  return {
    review(score, profile, near) {
      number++;
      reviewOrder = { kind: 'review', number, score, profile, ...(near === undefined ? {} : { near }) };
      reviewWorker.postMessage(reviewOrder);
    },
    waysOut(score, profile, finding, locked) {
      number++;
      waysOrder = { kind: 'ways out', number, score, profile, finding, locked };
      asked().postMessage(waysOrder);
    },
    precedents(score, profile) {
      number++;
      precedentsOrder = { kind: 'precedents', number, score, profile };
      asked().postMessage(precedentsOrder);
    },
    room(score, profile, locked) {
      number++;
      roomOrder = { kind: 'room', number, score, profile, locked };
      asked().postMessage(roomOrder);
    },
  };
}
