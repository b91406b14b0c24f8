/** Copying, cutting and pasting: notes as notes, anything else as an exercise to open. */

import { printPassage, readPassage } from '../files/passage-text.ts';
import { pasted } from '../files/pasted.ts';
import type { Commands } from '../panels/context.ts';
import type { Actions } from '../state/actions.ts';
import type { PageState } from '../state/page.ts';
import type { Store } from '../state/store.ts';

/** Puts what is chosen on the clipboard; false where nothing is. */
export function copyTo(
  clipboard: DataTransfer,
  cut: boolean,
  store: Store<PageState>,
  actions: Actions,
): boolean {
  const { stretch, view } = store.get();
  if (stretch === undefined || view !== 'write') return false;
  actions.copy();
  const { copied } = store.get();
  if (copied === undefined) return false;
  clipboard.setData('text/plain', printPassage(copied));
  if (cut) actions.erase();
  return true;
}

/** Pasting notes never opens an exercise, wherever on the page it is done. */
export function pasteFrom(
  clipboard: DataTransfer,
  store: Store<PageState>,
  actions: Actions,
  commands: Pick<Commands, 'openFiles' | 'takeText'>,
): void {
  const { text, files } = pasted(clipboard);
  if (text === undefined) {
    if (files.length > 0) commands.openFiles(files);
    return;
  }
  const { copied } = store.get();
  const same = copied !== undefined && printPassage(copied) === text.replaceAll('\r\n', '\n').trim();
  const passage = same ? copied : readPassage(text);
  if (passage === undefined) commands.takeText(text);
  else actions.paste(passage);
}
