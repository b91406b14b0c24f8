/**
 * The exercises on this machine: beginning, opening, keeping and going back. Follows the store: whatever changes in
 * the exercise shown is put away at once.
 */
import { DEMO } from './demo.ts';
import { forgetUnsaved, unsavedOf } from './journal.ts';
import type { Keeping, KeptExercise } from './keeping.ts';
import type { PageState, Particulars, Version } from './page.ts';
import { createSaving, openInTab, type Saving } from './saving.ts';
import { newExercise, rescued, withFirst, withNext, withOpened, withSettings, workOf } from './shelving.ts';
import { historyOf } from './steps.ts';
import type { Store } from './store.ts';
import { type Work, workFromText } from './work.ts';

export interface Shelf {
  /** Opens what was worked on last, or a demo exercise for someone new. */
  begin(): Promise<void>;
  open(id: string): Promise<void>;
  /** Puts a new exercise on the shelf and opens it. */
  add(work: Work, particulars?: Partial<Particulars>): Promise<void>;
  /** The exercise here that was begun from this brief, the latest of several. */
  begunFrom(brief: string): Promise<string | undefined>;
  remove(id: string): Promise<void>;
  /** Keeps the exercise as it now is, to go back to. */
  keepVersion(label: string): Promise<void>;
  /** Makes an earlier version the present one; what is there now is kept as a version first. */
  goBackTo(version: Version): Promise<void>;
  /** Every exercise with its versions, as the text of one file. */
  everything(): Promise<string>;
  /** Takes such a file in; undefined where it is none. */
  bringIn(text: string): Promise<number | undefined>;
  /** Resolves when everything typed so far is on the disk. */
  settled(): Promise<void>;
}

/** Work goes on for so long before the state before it is kept as a version by itself, in milliseconds. */
const VERSION_EVERY = 10 * 60_000;

export function createShelf(store: Store<PageState>, keeping: Keeping): Shelf {
  const versions = createVersions(store, keeping);
  const saving = createSaving(store, keeping, versions.afterPutting);
  const { settled } = saving;
  const { add, open, openOrDemo } = createOpening(store, keeping, saving, versions.begin);

  return {
    async begin() {
      const kept: ReturnType<Keeping['settings']> = keeping.settings().catch(() => ({}));
      const [shelf, { lastExercise, ...settings }] = await Promise.all([
        keeping.shelf().catch(() => []),
        kept,
      ]);
      store.update((state) => withSettings(state, shelf, settings));
      await openOrDemo(
        [openInTab(), lastExercise, shelf[0]?.id].find((id) => shelf.some((entry) => entry.id === id)),
      );
    },
    open,
    add,
    async begunFrom(brief) {
      await settled();
      for (const { id } of store.get().shelf) {
        const kept = await keeping.exercise(id);
        if (kept?.begunFromBrief && kept.brief === brief) return id;
      }
      return undefined;
    },
    async remove(id) {
      await settled();
      await keeping.removeExercise(id);
      const shelf = await keeping.shelf();
      store.update((state) => ({ ...state, shelf }));
      if (id === store.get().exercise.id) await openOrDemo(shelf[0]?.id);
    },
    keepVersion: versions.keep,
    async goBackTo(version) {
      await versions.keep('before going back');
      store.update((state) => withNext(state, workOf(version), Date.now()));
    },
    async everything() {
      await settled();
      const { packEverything } = await import('../files/everything.ts');
      return packEverything(keeping);
    },
    async bringIn(text) {
      await settled();
      const { unpackEverything } = await import('../files/everything.ts');
      const count = await unpackEverything(text, keeping);
      const shelf = await keeping.shelf();
      store.update((state) => ({ ...state, shelf }));
      return count;
    },
    settled,
  };
}

/** How an exercise comes onto the stave. */
interface Opening {
  readonly add: Shelf['add'];
  readonly open: Shelf['open'];
  /** The exercise of this id; without one the demonstration. */
  readonly openOrDemo: (id: string | undefined) => Promise<void>;
}

function createOpening(
  store: Store<PageState>,
  keeping: Keeping,
  { settled, cameFromKeeper }: Saving,
  begun: (exercise: KeptExercise) => void,
): Opening {
  const show = async (exercise: KeptExercise, lasts = keeping.lasting): Promise<void> => {
    const work = workOf(exercise);
    const { history, steps } = await historyOf(keeping, exercise, work);
    cameFromKeeper(work, steps);
    store.update((state) => withOpened(state, exercise, history, lasts));
    begun(exercise);
  };

  const add = async (work: Work, particulars: Partial<Particulars> = {}): Promise<void> => {
    const exercise = newExercise(freshId(), work, particulars, Date.now());
    await settled();
    // Where the browser has no room, the exercise opens all the same, and the page says that it is not kept.
    const room = await hasRoom(keeping.putExercise(exercise));
    await show(exercise, keeping.lasting && room);
    store.update((state) => withFirst(state, exercise));
  };

  const open = async (id: string): Promise<void> => {
    await settled();
    const exercise = await keeping.exercise(id);
    if (exercise === undefined) return;
    const saved = rescued(exercise, unsavedOf(id));
    if (saved !== undefined && (await hasRoom(keeping.putExercise(saved)))) forgetUnsaved(id);
    await show(saved ?? exercise);
  };

  const openOrDemo = async (id: string | undefined): Promise<void> => {
    if (id === undefined) await add(workFromText(DEMO), { locked: ['S'], demonstration: true });
    else await open(id);
  };
  return { add, open, openOrDemo };
}

/** The versions of the exercise open now. */
function createVersions(store: Store<PageState>, keeping: Keeping) {
  let last = { when: 0, text: '' };

  const show = async (): Promise<void> => {
    const { id } = store.get().exercise;
    const versions = await keeping.versions(id);
    store.update((state) => (state.exercise.id === id ? { ...state, versions } : state));
  };

  const keep = async (label: string): Promise<void> => {
    const { exercise, history } = store.get();
    const { text, score } = history.now;
    if (text === last.text && label === 'while working') return;
    last = { when: Date.now(), text };
    await keeping.putVersion({ key: freshId(), exercise: exercise.id, when: Date.now(), label, text, score });
    await show();
  };

  return {
    keep,
    begin(exercise: KeptExercise): void {
      last = { when: Date.now(), text: exercise.text };
      void show().catch(() => undefined);
    },
    async afterPutting({ changed: when }: KeptExercise): Promise<void> {
      if (when - last.when > VERSION_EVERY) await keep('while working');
    },
  };
}

/** False where the browser refused to keep something, for want of room or of leave. */
function hasRoom(putting: Promise<void>): Promise<boolean> {
  return putting.then(
    () => true,
    () => false,
  );
}

/** `crypto.randomUUID` is missing where the page comes over plain HTTP from another machine. */
function freshId(): string {
  return Array.from(crypto.getRandomValues(new Uint32Array(4)), (n) => n.toString(36)).join('-');
}
