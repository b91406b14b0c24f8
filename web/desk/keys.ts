/** The keyboard: marking needs no mouse. */
import type { Store } from '../state/store.ts';
import type { Actions } from './actions.ts';
import type { DeskState } from './state.ts';

/** For the help: key, what it does. */
export const KEYS: readonly (readonly [string, string])[] = [
  ['↓ ↑', 'next and previous finding'],
  ['A', 'agree'],
  ['O', 'overrule'],
  ['Shift O', 'overrule for the whole class, with a choice how far'],
  ['1 2 3', 'count it as a fault, a query, a remark'],
  ['R', 'write a remark here'],
  ['U', 'take back the last decision'],
  ['N P', 'next and previous script'],
  ['D', 'done: on to the next script'],
  ['Esc', 'leave what is open; back to the queue'],
];

export function listenToKeys(store: Store<DeskState>, actions: Actions): void {
  window.addEventListener('keydown', (event) => {
    const target = event.target as HTMLElement;
    const typing = /^(INPUT|TEXTAREA|SELECT)$/.test(target.tagName);
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const { place, writing } = store.get();
    if (place.view !== 'script') return;
    if (event.key === 'Escape') {
      if (writing !== undefined) actions.closeRemark();
      else if (typing) target.blur();
      else actions.goTo('queue');
      event.preventDefault();
      return;
    }
    // While a remark is being written, letters are letters, wherever the focus went.
    if (typing || writing !== undefined) return;
    const run = commandFor(event, actions);
    if (run === undefined) return;
    event.preventDefault();
    run();
  });
}

function commandFor(event: KeyboardEvent, actions: Actions): (() => unknown) | undefined {
  switch (event.key) {
    case 'ArrowDown':
      return () => actions.step(1);
    case 'ArrowUp':
      return () => actions.step(-1);
    case 'a':
      return () => actions.agree();
    case 'o':
      return () => actions.overrule(reasonTyped());
    case 'O':
      return openForAll;
    case '1':
      return () => actions.setSeverity('fault');
    case '2':
      return () => actions.setSeverity('query');
    case '3':
      return () => actions.setSeverity('remark');
    case 'r': {
      const finding = actions.chosenFinding();
      return () => actions.beginRemark(finding?.from ?? 0, finding?.rule, finding?.until);
    }
    case 'u':
      return () => actions.undo();
    case 'n':
      return () => actions.goTo('next');
    case 'p':
      return () => actions.goTo('before');
    case 'd':
      return () => actions.finish();
    default:
      return undefined;
  }
}

/** What stands in the open finding's reason field. */
export function reasonTyped(): string | undefined {
  const field = document.querySelector<HTMLInputElement>('.finding.chosen input.reason');
  return field === null || field.value.trim() === '' ? undefined : field.value.trim();
}

function openForAll(): void {
  const menu = document.querySelector<HTMLDetailsElement>('.finding.chosen details.for-all');
  if (menu === null) return;
  menu.open = true;
  menu.querySelector<HTMLButtonElement>('button')?.focus();
}
