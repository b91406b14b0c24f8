/** The keyboard: marking needs no mouse. One table has each key, its help and what it does. */
import type { Store } from '../state/store.ts';
import type { Actions } from './actions.ts';
import type { DeskState } from './state.ts';

export interface KeyCommand {
  /** As the browser names it; capitals are typed with Shift. */
  readonly key: string;
  readonly run: (actions: Actions, state: DeskState) => unknown;
}

export interface KeyHelp {
  /** The keys as help prints them. */
  readonly shown: string;
  readonly help: string;
  readonly commands: readonly KeyCommand[];
}

export const KEYS: readonly KeyHelp[] = [
  {
    shown: '↓ ↑',
    help: 'next and previous finding',
    commands: [
      { key: 'ArrowDown', run: (actions) => actions.step(1) },
      { key: 'ArrowUp', run: (actions) => actions.step(-1) },
    ],
  },
  { shown: 'A', help: 'agree', commands: [{ key: 'a', run: (actions) => actions.agree() }] },
  {
    shown: 'Shift A',
    help: 'agree with all that comes from the same slip',
    commands: [{ key: 'A', run: (actions) => actions.agreeWithGroup() }],
  },
  {
    shown: 'O',
    help: 'overrule',
    commands: [{ key: 'o', run: (actions) => actions.overrule(reasonTyped()) }],
  },
  {
    shown: 'Shift O',
    help: 'overrule for the whole class, with a choice how far',
    commands: [{ key: 'O', run: openForAll }],
  },
  {
    shown: '1 2 3',
    help: 'count it as a fault, a query, a remark',
    commands: [
      { key: '1', run: (actions) => actions.setSeverity('fault') },
      { key: '2', run: (actions) => actions.setSeverity('query') },
      { key: '3', run: (actions) => actions.setSeverity('remark') },
    ],
  },
  {
    shown: 'R',
    help: 'write a remark here',
    commands: [{ key: 'r', run: (actions) => actions.remarkHere() }],
  },
  {
    shown: 'C',
    help: 'comment on the whole script',
    commands: [{ key: 'c', run: (actions) => actions.comment() }],
  },
  {
    shown: 'M',
    help: 'open the marks: digits and Enter give them, M goes back',
    commands: [{ key: 'm', run: (actions) => actions.openMarks() }],
  },
  {
    shown: 'U',
    help: 'take back the last decision',
    commands: [{ key: 'u', run: (actions) => actions.undo() }],
  },
  {
    shown: 'N P',
    help: 'next and previous script',
    commands: [
      { key: 'n', run: (actions) => actions.goTo('next') },
      { key: 'p', run: (actions) => actions.goTo('before') },
    ],
  },
  {
    shown: 'D',
    help: 'done: on to the next script',
    commands: [{ key: 'd', run: (actions) => actions.finish() }],
  },
  {
    shown: 'Q',
    help: 'back to the queue',
    commands: [{ key: 'q', run: (actions) => actions.goTo('queue') }],
  },
  { shown: '?', help: 'these keys', commands: [{ key: '?', run: (actions) => actions.showKeys(true) }] },
  {
    shown: 'Esc',
    help: 'close what was opened last',
    commands: [{ key: 'Escape', run: leave }],
  },
];

const COMMANDS: ReadonlyMap<string, KeyCommand['run']> = new Map(
  KEYS.flatMap(({ commands }) => commands.map(({ key, run }) => [key, run] as const)),
);

export function listenToKeys(store: Store<DeskState>, actions: Actions): void {
  window.addEventListener('keydown', (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const state = store.get();
    if (state.place.view !== 'script') return;
    // An open dialog keeps its keys: it closes by Esc itself.
    if (state.help) return;
    if (state.marking !== undefined && event.key === 'm') {
      event.preventDefault();
      actions.closeMarks();
      return;
    }
    // While something is being written, letters are letters, wherever the focus went.
    const writing = isField(event.target) || state.writing !== undefined;
    const run = writing && event.key !== 'Escape' ? undefined : COMMANDS.get(event.key);
    if (run === undefined) return;
    event.preventDefault();
    run(actions, state);
  });
}

function isField(target: EventTarget | null): target is HTMLElement {
  return target instanceof HTMLElement && /^(INPUT|TEXTAREA|SELECT)$/.test(target.tagName);
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

/** Closes the nearest thing that is open, and nothing else; the script itself is never left. */
function leave(actions: Actions, { writing, marking, sheetOpen, notice }: DeskState): void {
  const field = document.activeElement;
  const menu = document.querySelector<HTMLDetailsElement>('.finding.chosen details.for-all[open]');
  if (writing !== undefined) actions.closeRemark();
  else if (marking !== undefined) actions.closeMarks();
  else if (menu !== null) {
    menu.open = false;
    menu.querySelector('summary')?.focus();
  } else if (isField(field)) field.blur();
  else if (notice !== undefined) actions.dismiss();
  else if (sheetOpen) actions.openSheet(false);
}
