/** Commands that bring something before the eye or the ear of whoever reads the page: places, marks, paper. */
import { caretWords } from '../panels/announce.ts';
import type { Commands } from '../panels/context.ts';
import type { Stave } from '../panels/stave.ts';
import type { Actions } from '../state/actions.ts';
import type { PageState } from '../state/page.ts';
import type { Store } from '../state/store.ts';

export type SightCommands = Pick<
  Commands,
  'print' | 'showPlace' | 'scrollToFinding' | 'openFindingAtCaret' | 'describeCaret' | 'focusStave'
>;

/** `stave` gives it once there is one; `sayAloud` speaks to those who don't see it. */
export function createSightCommands(
  store: Store<PageState>,
  actions: Actions,
  stave: () => Stave | undefined,
  sayAloud: (text: string) => void,
): SightCommands {
  return {
    print() {
      stave()?.engraving.complete();
      print();
    },
    showPlace(at) {
      // The stave is drawn first, where another view was open.
      afterDrawing(() => stave()?.engraving.scrollTo({ at }, true));
    },
    scrollToFinding(id) {
      // Once the sheet is open, which takes room from the stave.
      afterDrawing(() => stave()?.engraving.scrollTo({ finding: id }, true));
    },
    openFindingAtCaret() {
      const { caret, reviewed } = store.get();
      const here = reviewed?.review.findings.find(
        (f) =>
          f.because === undefined &&
          f.voices.includes(caret.voice) &&
          f.from <= caret.at &&
          caret.at < Math.max(f.until, f.from + 1),
      );
      if (here === undefined) {
        actions.say('There is no finding at the caret.');
        return;
      }
      actions.choose(here.id);
      afterDrawing(() =>
        document.querySelector<HTMLElement>(`button[data-finding="${CSS.escape(here.id)}"]`)?.focus(),
      );
    },
    describeCaret: () => sayAloud(caretWords(store.get())),
    focusStave: () => stave()?.focus(),
  };
}

/** The page is drawn in the next frame; this runs in the one after. */
function afterDrawing(act: () => void): void {
  requestAnimationFrame(() => requestAnimationFrame(act));
}
