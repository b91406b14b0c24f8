/** What becomes of the page's state as exercises are put on the shelf and taken down: pure. */
import type { Score } from '../../src/score/score.ts';
import type { KeptExercise } from './keeping.ts';
import { FIRST_SETTINGS, type PageState, type Particulars } from './page.ts';
import { changed, titleOf, type Work, workFromText } from './work.ts';

/** The exercise open now, as it is kept. */
export function keptOf({ exercise, history }: PageState, now: number, step: number): KeptExercise {
  const { score, text } = history.now;
  return { ...exercise, step, title: titleOf(score), changed: now, text, score };
}

export function newExercise(
  id: string,
  work: Work,
  particulars: Partial<Particulars>,
  now: number,
): KeptExercise {
  return {
    id,
    locked: [],
    notes: {},
    brief: '',
    otherSeconds: 0,
    ...particulars,
    title: titleOf(work.score),
    changed: now,
    text: work.text,
    score: work.score,
  };
}

/** The exercise with the last keystrokes of a tab that was closed too soon; undefined where nothing is lost. */
export function rescued(
  exercise: KeptExercise,
  last: { readonly text: string; readonly when: number } | undefined,
): KeptExercise | undefined {
  if (last === undefined || last.when <= exercise.changed || last.text === exercise.text) return undefined;
  const { score } = workFromText(last.text);
  return { ...exercise, text: last.text, score, title: titleOf(score), changed: last.when };
}

/** An exercise opened with its history; nothing of the one before is left. */
export function withOpened(
  state: PageState,
  exercise: KeptExercise,
  history: PageState['history'],
  lasting: boolean,
): PageState {
  const { id, locked, notes, brief, otherSeconds, source, demonstration, begunFromBrief } = exercise;
  return {
    ...state,
    exercise: {
      id,
      locked,
      notes,
      brief,
      otherSeconds,
      ...(source && { source }),
      ...(demonstration && { demonstration }),
      ...(begunFromBrief && { begunFromBrief }),
    },
    asking: false,
    history,
    reviewed: undefined,
    chosen: undefined,
    hints: {},
    caret: { voice: 'S', at: 0 },
    stretch: undefined,
    versions: [],
    kept: keptWord(lasting),
  };
}

export function keptWord(lasting: boolean): PageState['kept'] {
  return lasting ? 'kept' : 'not kept';
}

/** The shelf with this exercise first. */
export function withFirst(state: PageState, { id, title, changed: when }: KeptExercise): PageState {
  return {
    ...state,
    shelf: [{ id, title, changed: when }, ...state.shelf.filter((entry) => entry.id !== id)],
  };
}

/** What came from elsewhere (another tab, an earlier version) becomes the next step, and can be undone. */
export function withNext(state: PageState, work: Work, now: number): PageState {
  return { ...state, history: changed(state.history, work, 'file', now) };
}

/** Settings kept by an earlier version of the page lack what came since. */
export function withSettings(
  state: PageState,
  shelf: PageState['shelf'],
  kept: Partial<PageState['settings']>,
): PageState {
  return {
    ...state,
    shelf,
    settings: { ...FIRST_SETTINGS, ...kept, shown: { ...FIRST_SETTINGS.shown, ...kept.shown } },
  };
}

export function workOf({ text, score }: { readonly text: string; readonly score: Score }): Work {
  const read = workFromText(text);
  // The score says more than the text where it came from a file (lyrics, grace notes): it is kept as it was.
  return read.problems.length > 0 ? read : { score, text, problems: [] };
}
