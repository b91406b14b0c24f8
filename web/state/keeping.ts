/**
 * Keeps exercises, their versions and the settings in the browser (IndexedDB). What is put is on the disk when the
 * promise resolves. Where the browser keeps nothing (some private windows), the same interface keeps it in memory
 * and says so, that the page may tell.
 */
import type { Score } from '../../src/score/score.ts';
import type { Particulars, Settings, ShelfEntry, Version } from './page.ts';
import type { Work } from './work.ts';

export interface KeptExercise extends Particulars {
  readonly title: string;
  readonly changed: number;
  readonly text: string;
  readonly score: Score;
  /** The number of the step, among those kept for undoing, that this is. */
  readonly step?: number;
}

/** One state of the work, kept so that undo survives a reload. */
export interface KeptStep extends Work {
  readonly exercise: string;
  readonly number: number;
}

/** Steps that take the place of all from the number `from` on; those before `oldest` are dropped. */
export interface FreshSteps {
  readonly steps: readonly KeptStep[];
  readonly from: number;
  readonly oldest: number;
}

export interface Keeping {
  /** False where nothing outlives the tab. */
  readonly lasting: boolean;
  shelf(): Promise<ShelfEntry[]>;
  exercise(id: string): Promise<KeptExercise | undefined>;
  /** With the steps that are new, all at once: neither is there without the other. */
  putExercise(exercise: KeptExercise, steps?: FreshSteps): Promise<void>;
  removeExercise(id: string): Promise<void>;
  versions(exercise: string): Promise<Version[]>;
  putVersion(version: Version): Promise<void>;
  /** The steps of an exercise by their numbers. */
  steps(exercise: string): Promise<KeptStep[]>;
  settings(): Promise<Partial<Settings> & { readonly lastExercise?: string }>;
  putSettings(settings: Settings & { readonly lastExercise: string }): Promise<void>;
}

const NAME = 'partwise';
const LAYOUT = 2;

export async function openKeeping(): Promise<Keeping> {
  try {
    return inDatabase(await openDatabase());
  } catch {
    return inMemory();
  }
}

function openDatabase(): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(NAME, LAYOUT);
    request.onupgradeneeded = () => {
      const database = request.result;
      if (!database.objectStoreNames.contains('exercises')) {
        database.createObjectStore('exercises', { keyPath: 'id' });
        database.createObjectStore('versions', { keyPath: 'key' }).createIndex('exercise', 'exercise');
        database.createObjectStore('settings');
      }
      database.createObjectStore('steps', { keyPath: ['exercise', 'number'] });
    };
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
    request.onblocked = () => reject(new Error('The store is held by another version of the page.'));
  });
}

function answer<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

function inDatabase(database: IDBDatabase): Keeping {
  const read = <T>(store: string, ask: (s: IDBObjectStore) => IDBRequest<T>): Promise<T> =>
    answer(ask(database.transaction(store, 'readonly').objectStore(store)));
  const write = (
    stores: string | readonly [string, string],
    act: (first: IDBObjectStore, second: IDBObjectStore) => void,
  ): Promise<void> =>
    new Promise((resolve, reject) => {
      const [first, second = first] = typeof stores === 'string' ? [stores] : stores;
      // Strict: resolved when the disk has it, so that a power cut loses nothing that was said to be kept.
      const transaction = database.transaction([first, second], 'readwrite', { durability: 'strict' });
      act(transaction.objectStore(first), transaction.objectStore(second));
      transaction.oncomplete = () => resolve();
      transaction.onabort = () => reject(transaction.error);
      transaction.onerror = () => reject(transaction.error);
    });
  return {
    lasting: true,
    async shelf() {
      const all = await read<KeptExercise[]>('exercises', (s) => s.getAll());
      return all
        .map(({ id, title, changed }) => ({ id, title, changed }))
        .sort((a, b) => b.changed - a.changed);
    },
    exercise: (id) => read<KeptExercise | undefined>('exercises', (s) => s.get(id)),
    putExercise: (exercise, fresh) =>
      write(['exercises', 'steps'], (s, other) => {
        s.put(exercise);
        if (fresh === undefined) return;
        other.delete(stepsOf(exercise.id, fresh.from));
        other.delete(IDBKeyRange.bound([exercise.id, -1], [exercise.id, fresh.oldest], false, true));
        for (const step of fresh.steps) other.put(step);
      }),
    async removeExercise(id) {
      const keys = await read<IDBValidKey[]>('versions', (s) => s.index('exercise').getAllKeys(id));
      await write('versions', (s) => {
        for (const key of keys) s.delete(key);
      });
      await write('steps', (s) => s.delete(stepsOf(id)));
      await write('exercises', (s) => s.delete(id));
    },
    async versions(exercise) {
      const all = await read<Version[]>('versions', (s) => s.index('exercise').getAll(exercise));
      return all.sort((a, b) => b.when - a.when);
    },
    putVersion: (version) => write('versions', (s) => s.put(version)),
    steps: (exercise) => read<KeptStep[]>('steps', (s) => s.getAll(stepsOf(exercise))),
    settings: async () => (await read<Settings | undefined>('settings', (s) => s.get('settings'))) ?? {},
    putSettings: (settings) => write('settings', (s) => s.put(settings, 'settings')),
  };
}

/** All steps of an exercise from a number on. */
function stepsOf(exercise: string, from = 0): IDBKeyRange {
  return IDBKeyRange.bound([exercise, from], [exercise, Number.POSITIVE_INFINITY]);
}

function inMemory(): Keeping {
  const exercises = new Map<string, KeptExercise>();
  const versions = new Map<string, Version>();
  let kept: Partial<Settings> & { lastExercise?: string } = {};
  return {
    lasting: false,
    shelf: async () =>
      [...exercises.values()]
        .map(({ id, title, changed }) => ({ id, title, changed }))
        .sort((a, b) => b.changed - a.changed),
    exercise: async (id) => exercises.get(id),
    putExercise: async (exercise) => void exercises.set(exercise.id, exercise),
    async removeExercise(id) {
      exercises.delete(id);
      for (const [key, version] of versions) if (version.exercise === id) versions.delete(key);
    },
    versions: async (exercise) =>
      [...versions.values()].filter((v) => v.exercise === exercise).sort((a, b) => b.when - a.when),
    putVersion: async (version) => void versions.set(version.key, version),
    // What does not outlive the tab need not be kept twice: the page holds its own steps.
    steps: async () => [],
    settings: async () => kept,
    putSettings: async (settings) => {
      kept = settings;
    },
  };
}
