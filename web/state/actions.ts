/**
 * What a person can do, tied to the store. The changes themselves are pure functions of the state, by concern, in
 * the files beside this one; nothing here draws, keeps or sounds: that follows the state.
 */
import * as caret from './caret.ts';
import * as exercise from './exercise.ts';
import * as looking from './looking.ts';
import * as notice from './notice.ts';
import type { PageState } from './page.ts';
import type { Store } from './store.ts';
import * as writing from './writing.ts';

const { canChangeNote, endsPhrase: _question, typeText, ...writingChanges } = writing;
const { tapTempo, ...lookingChanges } = looking;
const { say, hush } = notice;

/** Every change that a panel or a key may ask for, by name. */
const CHANGES = { ...writingChanges, ...caret, ...lookingChanges, ...exercise, say, hush };

/** The same functions without their first argument, which the store gives. */
type Bound<T> = {
  readonly [K in keyof T]: T[K] extends (state: PageState, ...rest: infer Rest) => PageState
    ? (...rest: Rest) => void
    : never;
};

export interface Actions extends Bound<typeof CHANGES> {
  /** The text as it was typed just now. */
  readonly typeText: (text: string) => void;
  /** The tempo tapped just now. */
  readonly tapTempo: () => void;
  /** What a digit means on the stave. */
  readonly digits: () => PageState['settings']['digits'];
  /** True where the caret stands on (or just behind) a note that may be changed. */
  readonly canChangeNote: () => boolean;
}

export function createActions(store: Store<PageState>, now: () => number = Date.now): Actions {
  const bound = Object.fromEntries(
    Object.entries(CHANGES).map(([name, change]) => [
      name,
      (...rest: readonly unknown[]) =>
        store.update((state) =>
          (change as (s: PageState, ...more: readonly unknown[]) => PageState)(state, ...rest),
        ),
    ]),
  ) as Bound<typeof CHANGES>;
  return {
    ...bound,
    typeText: (text) => store.update((state) => typeText(state, text, now())),
    tapTempo: () => store.update((state) => tapTempo(state, now())),
    digits: () => store.get().settings.digits,
    canChangeNote: () => canChangeNote(store.get()),
  };
}
