/**
 * The exercises on this machine: beginning, opening, keeping and going back. Follows the store: whatever changes in
 * the exercise shown is put away at once.
 */
import type { Score } from '../../src/score/score.ts';
import { packEverything, unpackEverything } from '../files/everything.ts';
import { DEMO } from './demo.ts';
import { forgetUnsaved, noteUnsaved, unsavedOf } from './journal.ts';
import type { Keeping, KeptExercise } from './keeping.ts';
import { FIRST_SETTINGS, type PageState, type Particulars, type Version } from './page.ts';
import type { Store } from './store.ts';
import { beginHistory, changed, titleOf, type Work, workFromText } from './work.ts';

export interface Shelf {
  /** Opens what was worked on last, or a demo exercise for someone new. */
  begin(): Promise<void>;
  open(id: string): Promise<void>;
  /** Puts a new exercise on the shelf and opens it. */
  add(work: Work, particulars?: Partial<Particulars>): Promise<void>;
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
const OPEN_IN_THIS_TAB = 'partwise-exercise';

export function createShelf(store: Store<PageState>, keeping: Keeping): Shelf {
  let putting: Promise<void> | undefined;
  let unsaved = false;
  let askedToStay = false;
  let keptWork: Work | undefined;
  let lastVersion = { when: 0, text: '' };
  const tabs = 'BroadcastChannel' in globalThis ? new BroadcastChannel('partwise') : undefined;

  const kept = (state: PageState): KeptExercise => ({
    ...state.exercise,
    title: titleOf(state.history.now.score),
    changed: Date.now(),
    text: state.history.now.text,
    score: state.history.now.score,
  });

  const put = async (): Promise<void> => {
    while (unsaved) {
      unsaved = false;
      const exercise = kept(store.get());
      try {
        await keeping.putExercise(exercise);
        if (!unsaved) forgetUnsaved(exercise.id);
        tabs?.postMessage({ id: exercise.id });
        store.update((state) => ({
          ...state,
          kept: keeping.lasting ? 'kept' : 'not kept',
          shelf: [
            { id: exercise.id, title: exercise.title, changed: exercise.changed },
            ...state.shelf.filter((entry) => entry.id !== exercise.id),
          ],
        }));
        if (exercise.changed - lastVersion.when > VERSION_EVERY) await keepVersion('while working');
      } catch {
        store.update((state) => ({ ...state, kept: 'not kept' }));
      }
    }
    putting = undefined;
  };

  const save = (): void => {
    unsaved = true;
    // The browser is asked once not to clear what is kept when it needs room.
    if (!askedToStay) void navigator.storage?.persist?.();
    askedToStay = true;
    const { exercise, history } = store.get();
    noteUnsaved(exercise.id, { text: history.now.text, when: Date.now() });
    putting ??= put();
  };

  store.subscribe((state, before) => {
    if (state.settings !== before.settings || state.exercise.id !== before.exercise.id) {
      void keeping.putSettings({ ...state.settings, lastExercise: state.exercise.id });
      rememberInTab(state.exercise.id);
    }
    const opened = state.exercise.id !== before.exercise.id;
    // Music that has just come from the keeper need not go back to it.
    const written = state.history.now !== before.history.now && state.history.now !== keptWork;
    if (!opened && (written || state.exercise !== before.exercise)) save();
  });

  tabs?.addEventListener('message', (event: MessageEvent<{ id: string }>) => {
    // Another tab wrote on the same exercise: what it wrote becomes the next step here, and can be undone.
    if (event.data.id !== store.get().exercise.id || unsaved || putting !== undefined) return;
    void keeping.exercise(event.data.id).then((exercise) => {
      if (exercise === undefined || exercise.text === store.get().history.now.text) return;
      const history = changed(store.get().history, workOf(exercise), 'file', Date.now());
      keptWork = history.now;
      store.update((state) => ({ ...state, history }));
    });
  });

  const show = (exercise: KeptExercise): void => {
    const work = workOf(exercise);
    keptWork = work;
    lastVersion = { when: Date.now(), text: exercise.text };
    const { id, locked, notes, brief, otherSeconds, source, demonstration } = exercise;
    store.update((state) => ({
      ...state,
      exercise: {
        id,
        locked,
        notes,
        brief,
        otherSeconds,
        ...(source && { source }),
        ...(demonstration && { demonstration }),
      },
      asking: false,
      history: beginHistory(work),
      reviewed: undefined,
      chosen: undefined,
      hints: {},
      caret: { voice: 'S', at: 0 },
      stretch: undefined,
      versions: [],
      kept: keeping.lasting ? 'kept' : 'not kept',
    }));
    void showVersions();
  };

  const showVersions = async (): Promise<void> => {
    const { id } = store.get().exercise;
    const versions = await keeping.versions(id);
    store.update((state) => (state.exercise.id === id ? { ...state, versions } : state));
  };

  const keepVersion = async (label: string): Promise<void> => {
    const { exercise, history } = store.get();
    const { text, score } = history.now;
    if (text === lastVersion.text && label === 'while working') return;
    lastVersion = { when: Date.now(), text };
    await keeping.putVersion({ key: freshId(), exercise: exercise.id, when: Date.now(), label, text, score });
    await showVersions();
  };

  const add = async (work: Work, particulars: Partial<Particulars> = {}): Promise<void> => {
    const exercise: KeptExercise = {
      id: freshId(),
      locked: [],
      notes: {},
      brief: '',
      otherSeconds: 0,
      ...particulars,
      title: titleOf(work.score),
      changed: Date.now(),
      text: work.text,
      score: work.score,
    };
    await settled();
    await keeping.putExercise(exercise);
    show(exercise);
    store.update((state) => ({
      ...state,
      shelf: [{ id: exercise.id, title: exercise.title, changed: exercise.changed }, ...state.shelf],
    }));
  };

  const settled = async (): Promise<void> => {
    await putting;
  };

  const open = async (id: string): Promise<void> => {
    await settled();
    const exercise = await keeping.exercise(id);
    if (exercise === undefined) return;
    const last = unsavedOf(id);
    if (last === undefined || last.when <= exercise.changed || last.text === exercise.text) {
      show(exercise);
      return;
    }
    const { score } = workFromText(last.text);
    const rescued = { ...exercise, text: last.text, score, title: titleOf(score), changed: last.when };
    await keeping.putExercise(rescued);
    forgetUnsaved(id);
    show(rescued);
  };

  return {
    async begin() {
      const [shelf, settings] = await Promise.all([keeping.shelf(), keeping.settings()]);
      const { lastExercise, ...rest } = settings;
      store.update((state) => ({
        ...state,
        shelf,
        settings: {
          ...FIRST_SETTINGS,
          ...rest,
          shown: { ...FIRST_SETTINGS.shown, ...rest.shown },
        },
      }));
      const wanted = [openInTab(), lastExercise, shelf[0]?.id].find((id) => shelf.some((e) => e.id === id));
      if (wanted === undefined) await add(workFromText(DEMO), { locked: ['S'], demonstration: true });
      else await open(wanted);
    },
    open,
    add,
    async remove(id) {
      await settled();
      await keeping.removeExercise(id);
      const shelf = await keeping.shelf();
      store.update((state) => ({ ...state, shelf }));
      if (id !== store.get().exercise.id) return;
      const next = shelf[0];
      if (next) await open(next.id);
      else await add(workFromText(DEMO), { locked: ['S'], demonstration: true });
    },
    keepVersion,
    async goBackTo(version) {
      await keepVersion('before going back');
      const work = workOf(version);
      store.update((state) => ({ ...state, history: changed(state.history, work, 'file', Date.now()) }));
    },
    async everything() {
      await settled();
      return packEverything(keeping);
    },
    async bringIn(text) {
      await settled();
      const count = await unpackEverything(text, keeping);
      const onShelf = await keeping.shelf();
      store.update((state) => ({ ...state, shelf: onShelf }));
      return count;
    },
    settled,
  };
}

function workOf({ text, score }: { readonly text: string; readonly score: Score }): Work {
  const read = workFromText(text);
  // The score says more than the text where it came from a file (lyrics, grace notes): it is kept as it was.
  return read.problems.length > 0 ? read : { score, text, problems: [] };
}

/** `crypto.randomUUID` is missing where the page comes over plain HTTP from another machine. */
function freshId(): string {
  return Array.from(crypto.getRandomValues(new Uint32Array(4)), (n) => n.toString(36)).join('-');
}

function openInTab(): string | undefined {
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
