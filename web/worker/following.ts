/** Keeps the review up with the score: first around the caret, in place; then the whole, from the worker. */
import { reviewNear, withNear } from '../../src/review/near.ts';
import { seenOf } from '../state/brief.ts';
import { givenVoices, type PageState } from '../state/page.ts';
import { chosenProfile } from '../state/profiles.ts';
import type { Store } from '../state/store.ts';
import { createReviewer } from './reviewer.ts';

export interface Reviewing {
  findWaysOut(finding: string): void;
  findRoom(): void;
}

export function createReviewing(store: Store<PageState>): Reviewing {
  let ordered = 0;
  const reviewer = createReviewer({
    onReview: (review, score) => {
      // For the bench: from the keystroke to the whole review, there and back again.
      performance.measure('partwise-whole', { start: ordered, end: performance.now() });
      store.update((state) =>
        state.history.now.score === score
          ? withoutCured({
              ...state,
              reviewed: { review: seenOf(state, review), of: state.history.now, whole: true },
            })
          : state,
      );
    },
    onWaysOut: (finding, ways, score) =>
      store.update((state) =>
        state.history.now.score === score && state.waysOut?.finding === finding
          ? { ...state, waysOut: ways && { finding, ways } }
          : state,
      ),
    onPrecedents: (phrases, score) =>
      store.update((state) =>
        state.history.now.score === score ? { ...state, precedents: { phrases, of: score } } : state,
      ),
    onRoom: (rooms, score) =>
      store.update((state) =>
        state.history.now.score === score && state.room !== undefined
          ? { ...state, room: { rooms, shown: 0 } }
          : state,
      ),
  });

  store.subscribe((state, before) => {
    const { score } = state.history.now;
    const otherScore = score !== before.history.now.score;
    const profile = chosenProfile(state.settings);
    if (state.side === 'style' && (otherScore || before.side !== 'style'))
      reviewer.precedents(score, profile);
    const otherBrief = state.exercise.brief !== before.exercise.brief;
    if (!otherScore && !otherBrief && profile === chosenProfile(before.settings)) return;
    ordered = performance.now();
    reviewer.review(score, profile);
    if (otherScore) lookNear(store, before);
  });

  return {
    findRoom() {
      const { history, settings, ...state } = store.get();
      store.update((state) => ({ ...state, room: { rooms: 'asked', shown: 0 } }));
      reviewer.room(history.now.score, chosenProfile(settings), givenVoices(state));
    },
    findWaysOut(finding) {
      const { history, settings, ...state } = store.get();
      store.update((state) => ({ ...state, waysOut: { finding, ways: 'asked' } }));
      reviewer.waysOut(history.now.score, chosenProfile(settings), finding, givenVoices(state));
    },
  };
}

/** A chosen finding that is no longer there is let go: nothing stays dimmed for its sake. */
function withoutCured(state: PageState): PageState {
  const there = state.reviewed?.review.findings.some(({ id }) => id === state.chosen);
  return there ? state : { ...state, chosen: undefined };
}

/** The findings around the place just written, at once; the rest stays as it was until the worker answers. */
function lookNear(store: Store<PageState>, before: PageState): void {
  const began = performance.now();
  store.update((state) => {
    const { history, reviewed, settings } = state;
    const cleared = { ...state, waysOut: undefined, room: undefined };
    if (reviewed === undefined || state.exercise.id !== before.exercise.id) return cleared;
    const near = reviewNear(history.now.score, chosenProfile(settings), before.caret.at);
    const findings = withNear(reviewed.review.findings, near);
    const review = seenOf(state, { ...reviewed.review, score: history.now.score, findings });
    return withoutCured({ ...cleared, reviewed: { review, of: history.now, whole: false } });
  });
  performance.measure('partwise-near', { start: began, end: performance.now() });
}
