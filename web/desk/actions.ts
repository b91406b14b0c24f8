/** All that can be done at the desk, gathered from its concerns. */
import type { Store } from '../state/store.ts';
import { createDeciding } from './deciding.ts';
import { createHandle } from './handle.ts';
import { createRemarking } from './remarking.ts';
import { createStacks } from './stacks.ts';
import type { DeskState } from './state.ts';
import { placeBeside, stepped } from './steps.ts';

export type Actions = ReturnType<typeof createActions>;

export function createActions(store: Store<DeskState>, say: (text: string) => void) {
  const desk = createHandle(store, say);
  const { get, set } = desk;
  const deciding = createDeciding(desk);

  return {
    ...createStacks(desk),
    ...deciding,
    ...createRemarking(desk, deciding),
    go: desk.go,
    choose: (finding: string | undefined): void => set({ chosen: finding, writing: undefined }),
    /** Chooses the finding so many places further on. */
    step: (by: number): void => {
      const finding = stepped(get(), by);
      if (finding !== undefined) set({ chosen: finding, writing: undefined });
    },
    goTo: (which: 'before' | 'next' | 'queue'): void => {
      const place = placeBeside(get(), which);
      if (place !== undefined) desk.go(place);
    },
    dismiss: (): void => set({ notice: undefined, taking: undefined }),
  };
}
