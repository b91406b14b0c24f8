/** A stack's settings, changed after it was made. */

import { ROUTES } from '../../src/desk/wire.ts';
import type { Stack } from '../../src/desk/wire-shapes.ts';
import { Refused } from '../../src/refusal/refusal.ts';
import type { Store } from '../state/store.ts';
import { ask } from './service.ts';
import type { DeskState } from './state.ts';

/** The settings of a stack as texts, as its form has them; an empty one means there is none. */
export interface StackTexts {
  readonly name: string;
  readonly profile: string;
  readonly brief: string;
  readonly scheme: string;
  readonly pattern: string;
  readonly reference: string;
  readonly second: '' | 'open' | 'blind';
  readonly voices: string;
}

const IN_WORDS: Readonly<Record<keyof StackTexts, string>> = {
  name: 'the name',
  profile: 'the house profile',
  brief: 'the brief',
  scheme: 'the mark scheme',
  pattern: 'how files are named',
  reference: 'the harmonisation to compare with',
  second: 'who marks',
  voices: 'which lines sing which voices',
};

export function textsOf(stack: Stack): StackTexts {
  return {
    name: stack.name,
    profile: stack.profile.name,
    brief: stack.brief ?? '',
    scheme: JSON.stringify(stack.scheme, null, 2),
    pattern: stack.pattern ?? '',
    reference: stack.reference ?? '',
    second: stack.second ?? '',
    voices: stack.voices ?? '',
  };
}

/**
 * Sends what differs from what the form was filled with, and nothing else: what somebody else changed meanwhile stays,
 * unless the same thing was changed here too, which is told first. Gives whether there was anything to send.
 * @throws {Refused}
 */
export async function saveSettings(store: Store<DeskState>, texts: StackTexts): Promise<boolean> {
  const { editing } = store.get();
  if (editing === undefined) return false;
  const { base, now } = editing;
  const changed = differences(textsOf(base), texts);
  if (changed.length === 0) return false;
  try {
    const { stack } = await ask(ROUTES.changeStack, {
      params: { id: base.id },
      body: {
        revision: now.revision,
        name: now.name,
        ...Object.fromEntries(changed.map((key) => [key, texts[key]])),
      },
    });
    if (store.get().stack?.id === base.id)
      store.update((state) => ({ ...state, stack, editing: { base: stack, now: stack } }));
    return true;
  } catch (error) {
    if (!(error instanceof Refused) || error.kind !== 'outdated') throw error;
    const { stack } = await ask(ROUTES.stack, { params: { id: base.id }, query: { most: 1 } });
    store.update((state) => ({ ...state, editing: { base, now: stack } }));
    const theirs = differences(textsOf(now), textsOf(stack));
    const both = theirs.filter((key) => changed.includes(key)).map((key) => IN_WORDS[key]);
    throw new Refused(
      both.length === 0
        ? 'Something about this stack was decided in another window meanwhile. Nothing was kept yet; keep again, and both hold.'
        : `In another window ${both.join(', ')} was changed meanwhile. Nothing was kept yet: yours still stands here. Keep again to put it in the other’s place, or load the page to see the other’s.`,
      { kind: 'outdated' },
    );
  }
}

function differences(a: StackTexts, b: StackTexts): (keyof StackTexts)[] {
  return (Object.keys(a) as (keyof StackTexts)[]).filter((key) => a[key] !== b[key]);
}
