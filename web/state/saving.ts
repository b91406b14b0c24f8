/** Whatever changes in the exercise shown is put away at once, and other tabs are told. */
import { afterPaint } from './frames.ts';
import { forgetUnsaved, noteUnsaved } from './journal.ts';
import type { Keeping, KeptExercise } from './keeping.ts';
import type { PageState } from './page.ts';
import { keptOf, keptWord, withFirst, withNext, workOf } from './shelving.ts';
import { NO_STEPS, type StepsKept, stepsToKeep } from './steps.ts';
import type { Store } from './store.ts';
import type { Work } from './work.ts';

export interface Saving {
  /** Resolves when everything typed so far is on the disk. */
  settled(): Promise<void>;
  /** This music has just come from the keeper: it need not go back to it. */
  cameFromKeeper(work: Work, steps: StepsKept): void;
}

const OPEN_IN_THIS_TAB = 'partwise-exercise';

/** What the keeper has: the music, by which it is told from music written since, and its steps. */
interface Kept {
  work: Work | undefined;
  steps: StepsKept;
}

/** `put` is told of each exercise put away. */
export function createSaving(
  store: Store<PageState>,
  keeping: Keeping,
  put: (exercise: KeptExercise) => Promise<void>,
): Saving {
  let putting: Promise<void> | undefined;
  let unsaved = false;
  const kept: Kept = { work: undefined, steps: NO_STEPS };
  const tabs = 'BroadcastChannel' in globalThis ? new BroadcastChannel('partwise') : undefined;

  const putAll = async (at: 'once' | 'rest'): Promise<void> => {
    if (at === 'rest') await new Promise<void>(afterPaint);
    while (unsaved) {
      unsaved = false;
      const { kept: steps, present, fresh } = stepsToKeep(kept.steps, store.get().history);
      const exercise = keptOf(store.get(), Date.now(), present);
      try {
        await keeping.putExercise(exercise, fresh);
        kept.steps = steps;
        if (!unsaved) forgetUnsaved(exercise.id);
        tabs?.postMessage({ id: exercise.id });
        store.update((state) => ({ ...withFirst(state, exercise), kept: keptWord(keeping.lasting) }));
        await put(exercise);
      } catch {
        store.update((state) => ({ ...state, kept: 'not kept' }));
      }
    }
    putting = undefined;
  };

  /** Music goes into the journal at once, so that it can be put away after the frame that shows it. */
  const save = (at: 'once' | 'rest'): void => {
    unsaved = true;
    askToStay();
    const { exercise, history } = store.get();
    noteUnsaved(exercise.id, { text: history.now.text, when: Date.now() });
    putting ??= putAll(at);
  };

  store.subscribe((state, before) => {
    const opened = state.exercise.id !== before.exercise.id;
    if (state.settings !== before.settings || opened) putSettings(state, keeping);
    const written = state.history.now !== before.history.now && state.history.now !== kept.work;
    if (!opened && (written || state.exercise !== before.exercise))
      save(state.exercise === before.exercise ? 'rest' : 'once');
  });

  tabs?.addEventListener('message', ({ data: { id } }: MessageEvent<{ id: string }>) => {
    // What is not put away here yet is later than what another tab has put away.
    if (!unsaved && putting === undefined) void takeFromOtherTab(id, store, keeping, kept);
  });

  return {
    settled: async () => {
      await putting;
    },
    cameFromKeeper: (work, steps) => {
      kept.work = work;
      kept.steps = steps;
    },
  };
}

let askedToStay = false;

/** The browser is asked once not to clear what is kept when it needs room. */
function askToStay(): void {
  if (!askedToStay) void navigator.storage?.persist?.();
  askedToStay = true;
}

function putSettings({ settings, exercise }: PageState, keeping: Keeping): void {
  keeping.putSettings({ ...settings, lastExercise: exercise.id }).catch(() => undefined);
  rememberInTab(exercise.id);
}

/** What another tab has written in the exercise shown is shown here too. */
async function takeFromOtherTab(
  id: string,
  store: Store<PageState>,
  keeping: Keeping,
  kept: Kept,
): Promise<void> {
  if (id !== store.get().exercise.id) return;
  const exercise = await keeping.exercise(id);
  if (exercise === undefined || exercise.text === store.get().history.now.text) return;
  store.update((state) => {
    const next = withNext(state, workOf(exercise), Date.now());
    // As the history holds it: put away again, it would overtake what the other tab has written since.
    kept.work = next.history.now;
    return next;
  });
}

/** The exercise this tab had open before it was loaded again. */
export function openInTab(): string | undefined {
  try {
    return sessionStorage.getItem(OPEN_IN_THIS_TAB) ?? undefined;
  } catch {
    return undefined;
  }
}

function rememberInTab(id: string): void {
  try {
    sessionStorage.setItem(OPEN_IN_THIS_TAB, id);
  } catch {
    // A tab that may keep nothing opens the exercise worked on last; no harm.
  }
}
