/** What everything that is done at the desk shares: its state, its turn, and how it is told. */
import { Refused } from '../../src/refusal/refusal.ts';
import type { Store } from '../state/store.ts';
import { createLoading } from './loading.ts';
import { type DeskState, hashOf, type Place } from './state.ts';

export type Handle = ReturnType<typeof createHandle>;

export function createHandle(store: Store<DeskState>, say: (text: string) => void) {
  const set = (change: Partial<DeskState>): void => store.update((state) => ({ ...state, ...change }));
  const loading = createLoading(store);

  /** Runs something that may be refused, and shows the sentence where it is. */
  async function attempt(run: () => Promise<void>): Promise<void> {
    try {
      await run();
    } catch (error) {
      if (!(error instanceof Refused)) throw error;
      set({ notice: { text: error.message, wrong: true } });
      if (error.kind === 'signed out') set({ signedIn: false });
      // Somebody decided in another window: show what stands now, so that the person can decide again.
      const { place } = store.get();
      if (error.kind === 'outdated' && place.view === 'script') await loading.loadScript(place.script);
    }
  }

  /**
   * Whoever works from the keyboard is quicker than the service: what changes something waits for what was asked for
   * before it, so that it knows the revision that stands then.
   */
  let before: Promise<void> = Promise.resolve();
  function inTurn(run: () => Promise<void>): Promise<void> {
    before = before.then(() => attempt(run));
    return before;
  }

  return {
    store,
    get: store.get,
    set,
    attempt,
    inTurn,
    /** All that was asked for so far is answered. */
    settled: () => before,
    loading,
    /** Shown and said: it is done. */
    told: (text: string): void => {
      set({ notice: { text, wrong: false } });
      say(text);
    },
    go: (place: Place): void => {
      location.hash = hashOf(place);
    },
  };
}
