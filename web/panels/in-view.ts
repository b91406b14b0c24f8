/** Keeps in view, beside the stave, what belongs to the place one is at on it; and the other way about. */
import type { PageState } from '../state/page.ts';
import type { Store } from '../state/store.ts';
import { isNarrow } from './narrow.ts';
import type { Stave } from './stave.ts';

export function keepInView(store: Store<PageState>, stave: Stave): void {
  store.subscribe((state, before) => {
    if (state.chosen !== undefined && state.chosen !== before.chosen) afterDrawing(showOpenMark);
    if (state.caret === before.caret || state.side !== 'text') return;
    const typing = document.activeElement?.id === 'notation';
    if (!typing) afterDrawing(() => showIn('.text-under .here'));
    else if (!isNarrow()) stave.engraving.scrollTo({ at: state.caret.at });
  });
}

/** The page is drawn in the next frame; this runs in the one after. */
function afterDrawing(act: () => void): void {
  requestAnimationFrame(() => requestAnimationFrame(act));
}

function showOpenMark(): void {
  showIn('.mark.open');
}

/** Scrolls the panel, and nothing but the panel: the stave stays where it is. */
function showIn(selector: string): void {
  const shown = document.querySelector(selector);
  const panel = shown?.closest('.text-editor, .side');
  if (!shown || !panel) return;
  const [inner, outer] = [shown.getBoundingClientRect(), panel.getBoundingClientRect()];
  if (inner.top < outer.top || inner.height > outer.height) panel.scrollTop += inner.top - outer.top;
  else if (inner.bottom > outer.bottom) panel.scrollTop += inner.bottom - outer.bottom;
}
