/** Keeps the review up with the score: the worker looks around the caret first where the whole takes long. */
import { type NearFindings, withNear } from '../../src/review/with-near.ts';
import type { Score } from '../../src/score/score.ts';
import type { Ticks } from '../../src/score/time.ts';
import { seenOf } from '../state/brief.ts';
import { onceAfterPaint } from '../state/frames.ts';
import { givenVoices, type PageState } from '../state/page.ts';
import { chosenProfile } from '../state/profiles.ts';
import type { Store } from '../state/store.ts';
import { createReviewer } from './reviewer.ts';

export interface Reviewing {
  findWaysOut(finding: string): void;
  findRoom(): void;
}

export function createReviewing(store: Store<PageState>): Reviewing {
  const reviewer = createReviewer({
    onNear: (near, score) => store.update((state) => withNearFindings(state, near, score)),
    onReview: (review, rules) =>
      store.update((state) =>
        state.history.now.score === review.score
          ? withoutCured({
              ...state,
              reviewed: { review: seenOf(state, review), rules, of: state.history.now, whole: true },
            })
          : state,
      ),
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

  /** Handing a score to the worker copies it: the note just written is seen before that. */
  const reviewWritten = onceAfterPaint((written: { readonly score: Score; readonly near: Ticks }) => {
    const { history, settings } = store.get();
    // Another exercise may have come meanwhile, and was ordered at once.
    if (history.now.score === written.score)
      reviewer.review(written.score, chosenProfile(settings), written.near);
  });

  store.subscribe((state, before) => {
    const { score } = state.history.now;
    const otherScore = score !== before.history.now.score;
    const profile = chosenProfile(state.settings);
    if (state.side === 'style' && (otherScore || before.side !== 'style'))
      reviewer.precedents(score, profile);
    const otherBrief = state.exercise.brief !== before.exercise.brief;
    if (!otherScore && !otherBrief && profile === chosenProfile(before.settings)) return;
    if (otherScore) store.update(letGoOfAnswers);
    const goesOn = otherScore && state.reviewed !== undefined && state.exercise.id === before.exercise.id;
    if (goesOn) reviewWritten({ score, near: before.caret.at });
    else reviewer.review(score, profile);
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

/** Nothing that was asked about the music before is shown beside the music now. */
function letGoOfAnswers(state: PageState): PageState {
  return state.waysOut === undefined && state.room === undefined
    ? state
    : { ...state, waysOut: undefined, room: undefined };
}

/** The findings around the place just written; the rest stays as it was until the worker has read the whole. */
function withNearFindings(state: PageState, near: NearFindings, score: Score): PageState {
  const { history, reviewed } = state;
  if (history.now.score !== score || reviewed === undefined) return state;
  const findings = withNear(reviewed.review.findings, near);
  const review = seenOf(state, { ...reviewed.review, score, findings });
  return withoutCured({ ...state, reviewed: { ...reviewed, review, of: history.now, whole: false } });
}
