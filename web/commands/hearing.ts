/** What the page hears as a whole: keys, the clipboard, files dropped on it, and clicks beside an open menu. */
import type { Commands } from '../panels/context.ts';
import type { Actions } from '../state/actions.ts';
import { type KeyCommands, obeyKey } from '../state/keys.ts';
import type { PageState } from '../state/page.ts';
import type { Store } from '../state/store.ts';
import { copyTo, pasteFrom } from './clipboard.ts';

export interface Heard {
  readonly store: Store<PageState>;
  readonly actions: Actions;
  readonly commands: Commands;
}

export function hearPage(heard: Heard): void {
  hearKeys({ ...heard.commands, actions: heard.actions });
  hearClipboard(heard);
  hearDroppedFiles(heard.commands);
  hearMenus(heard);
}

function hearKeys(keys: KeyCommands): void {
  document.addEventListener('keydown', (event) => {
    const typing = isWritingText(event.target);
    const obeyed = obeyKey(event, 'everywhere', keys) || (!typing && obeyKey(event, 'page', keys));
    if (obeyed) event.preventDefault();
  });
}

function hearClipboard({ store, actions, commands }: Heard): void {
  document.addEventListener('paste', (event) => {
    if (isWritingText(event.target) || event.clipboardData === null) return;
    event.preventDefault();
    pasteFrom(event.clipboardData, store, actions, commands);
  });
  for (const kind of ['copy', 'cut'] as const)
    document.addEventListener(kind, (event) => {
      const words = String(document.getSelection() ?? '') !== '';
      if (words || isWritingText(event.target) || event.clipboardData === null) return;
      if (copyTo(event.clipboardData, kind === 'cut', store, actions)) event.preventDefault();
    });
}

function hearDroppedFiles({ openFiles }: Pick<Commands, 'openFiles'>): void {
  document.addEventListener('dragover', (event) => {
    if (!event.dataTransfer?.types.includes('Files')) return;
    event.preventDefault();
    document.body.classList.add('dropping');
  });
  document.addEventListener('dragleave', (event) => {
    if (event.relatedTarget === null) document.body.classList.remove('dropping');
  });
  document.addEventListener('drop', (event) => {
    document.body.classList.remove('dropping');
    const files = [...(event.dataTransfer?.files ?? [])];
    if (files.length === 0) return;
    event.preventDefault();
    openFiles(files);
  });
}

/** A menu closes when the person goes elsewhere, or presses Escape. */
function hearMenus({ store, commands }: Heard): void {
  document.addEventListener('pointerdown', (event) => closeMenus(event.target as Node));
  document.addEventListener('focusin', (event) => closeMenus(event.target as Node));
  document.addEventListener('keydown', (event) => {
    if (event.key !== 'Escape') return;
    const menu = document.querySelector<HTMLDetailsElement>('details.menu[open]');
    menu?.removeAttribute('open');
    menu?.querySelector('summary')?.focus();
    // From the list beside it, and from anywhere else in the view, Escape goes back to the stave.
    if (menu === null && store.get().view === 'write') commands.focusStave();
  });
}

function closeMenus(target: Node): void {
  for (const menu of document.querySelectorAll('details.menu[open]'))
    if (!menu.contains(target)) menu.removeAttribute('open');
}

/** True in a field that takes text, and with it the keys and what is pasted. */
function isWritingText(target: EventTarget | null): boolean {
  if (target instanceof HTMLTextAreaElement) return true;
  return target instanceof HTMLInputElement && ['text', 'number', 'search'].includes(target.type);
}
