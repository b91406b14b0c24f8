/** All that can be done at the desk, gathered from its concerns. */
import type { Store } from '../state/store.ts';
import { createComparing } from './comparing.ts';
import { createDeciding } from './deciding.ts';
import { createFinishing } from './finishing.ts';
import { afterDrawing, showChosen } from './focus.ts';
import { createGivingVoices } from './giving-voices.ts';
import { createHandle } from './handle.ts';
import { createMarking } from './marking.ts';
import { createOpening } from './opening.ts';
import { createRemarking } from './remarking.ts';
import { createReviewing } from './reviewing.ts';
import { createScriptWork } from './script-work.ts';
import { createSheets } from './sheets.ts';
import { createStacks } from './stacks.ts';
import type { DeskState } from './state.ts';
import { placeBeside, stepped } from './steps.ts';

export type Actions = ReturnType<typeof createActions>;

export function createActions(store: Store<DeskState>, say: (text: string) => void) {
  const desk = createHandle(store, say);
  const { get, set } = desk;
  const work = createScriptWork(desk);
  const choose = (finding: string | undefined): void =>
    set({ chosen: finding, writing: undefined, marking: undefined });

  return {
    ...createOpening(desk),
    ...createStacks(desk),
    ...createDeciding(desk, work),
    ...createGivingVoices(desk, work),
    ...createFinishing(desk, work),
    ...createMarking(desk, work),
    ...createRemarking(desk, work),
    ...createSheets(desk),
    ...createComparing(desk),
    ...createReviewing(desk),
    go: desk.go,
    choose,
    /** Chosen in the score: on a small screen its words come up. */
    chooseInScore: (finding: string | undefined): void => {
      choose(finding);
      if (finding === undefined) return;
      set({ sheetOpen: true });
      afterDrawing(showChosen);
    },
    /** Chooses the finding so many places further on. */
    step: (by: number): void => {
      const finding = stepped(get(), by);
      if (finding !== undefined) choose(finding);
    },
    goTo: (which: 'before' | 'next' | 'queue'): void => {
      const place = placeBeside(get(), which);
      if (place !== undefined) desk.go(place);
    },
    showKeys: (help: boolean): void => set({ help }),
    /** On a small screen: the findings over the score, with what they are about in view above them. */
    openSheet: (sheetOpen: boolean): void => {
      set({ sheetOpen });
      afterDrawing(showChosen);
    },
    dismiss: (): void => set({ notice: undefined, taking: undefined }),
  };
}
