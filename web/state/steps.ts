/** Undo that survives a reload: the steps of an exercise are kept beside it, each written once. */
import type { FreshSteps, Keeping, KeptExercise } from './keeping.ts';
import { beginHistory, type History, type Work } from './work.ts';

/** Older steps are no longer kept; while the page is open none is lost. */
const MOST_KEPT = 300;

/** Which works are kept of which exercise, the first under the number `base`. */
export interface StepsKept {
  readonly exercise: string;
  readonly base: number;
  readonly works: readonly Work[];
}

export const NO_STEPS: StepsKept = { exercise: '', base: 0, works: [] };

/** The history as a row of works, and where in it the present stands. */
function rowOf(history: History): readonly Work[] {
  return [...history.past, history.now, ...history.future];
}

/** What is kept after `history` was put away, the number of its present, and the steps that are new. */
export function stepsToKeep(
  before: StepsKept,
  history: History,
): {
  readonly kept: StepsKept;
  readonly present: number;
  readonly fresh: FreshSteps;
} {
  const row = rowOf(history);
  const skipped = Math.max(0, row.length - MOST_KEPT);
  const works = row.slice(skipped);
  // The row's beginning may have been dropped already: what is kept lines up with it by its first work.
  const shift = Math.max(0, before.works.indexOf(works[0] ?? history.now));
  const base = before.base + shift;
  const known = before.works.slice(shift);
  let same = 0;
  while (same < works.length && known[same] === works[same]) same++;
  const fresh = works
    .slice(same)
    .map((work, i) => ({ ...work, exercise: before.exercise, number: base + same + i }));
  const present = base + history.past.length - skipped;
  return {
    kept: { exercise: before.exercise, base, works },
    present,
    fresh: { steps: fresh, from: base + same, oldest: base },
  };
}

/** The history as it was kept with the exercise; only its present where the two don't fit together. */
export async function historyOf(
  keeping: Keeping,
  exercise: KeptExercise,
  now: Work,
): Promise<{ readonly history: History; readonly steps: StepsKept }> {
  const found = await keeping.steps(exercise.id).catch(() => []);
  // A tab that was closed too soon may have kept a later text than the step it names: then that text's own step.
  const named = found.findIndex(({ number, text }) => number === exercise.step && text === exercise.text);
  const index = named >= 0 ? named : found.findLastIndex(({ text }) => text === exercise.text);
  const works = found.map(({ score, text, problems }): Work => ({ score, text, problems }));
  const fits = index >= 0;
  const history = {
    ...beginHistory(now),
    past: works.slice(0, fits ? index : works.length),
    future: fits ? works.slice(index + 1) : [],
  };
  return {
    history,
    steps: {
      exercise: exercise.id,
      base: found[0]?.number ?? 0,
      works: fits ? rowOf(history) : history.past,
    },
  };
}
