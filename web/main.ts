/** Starts the page: the state, what follows it (drawing, reviewing, keeping, sounding), and the events it hears. */
import './styles/page.css';
import './engrave/engrave.css';
import { render } from 'lit';
import { copyTo, pasteFrom } from './commands/clipboard.ts';
import { createCommands } from './commands/commands.ts';
import { createAnnouncer } from './panels/announce.ts';
import { checkView } from './panels/check.ts';
import type { Panel } from './panels/context.ts';
import { helpView } from './panels/help.ts';
import { keepInView } from './panels/in-view.ts';
import { type OtherViews, pageView } from './panels/page.ts';
import { rulesView } from './panels/rules.ts';
import { shelfView } from './panels/shelf.ts';
import { createStave, type Stave } from './panels/stave.ts';
import { createActions } from './state/actions.ts';
import { openKeeping } from './state/keeping.ts';
import { type KeyCommands, obeyKey } from './state/keys.ts';
import { FIRST_MIXER, FIRST_SETTINGS, type PageState, VIEWS, type View } from './state/page.ts';
import { createShelf } from './state/shelf.ts';
import { createStore } from './state/store.ts';
import { beginHistory, titleOf, workFromText } from './state/work.ts';
import { createReviewing } from './worker/following.ts';

const store = createStore<PageState>({
  view: 'write',
  rule: undefined,
  side: 'marks',
  sheet: false,
  shelf: [],
  versions: [],
  exercise: { id: '', locked: [], notes: {}, brief: '', otherSeconds: 0 },
  asking: false,
  history: beginHistory(workFromText('')),
  reviewed: undefined,
  chosen: undefined,
  hints: {},
  caret: { voice: 'S', at: 0 },
  length: { numerator: 1, denominator: 1 },
  dotted: false,
  stretch: undefined,
  copied: undefined,
  settings: FIRST_SETTINGS,
  mixer: FIRST_MIXER,
  taps: [],
  playing: undefined,
  waysOut: undefined,
  precedents: undefined,
  room: undefined,
  measure: undefined,
  notice: undefined,
  kept: 'keeping',
});

async function start(): Promise<void> {
  const page = document.querySelector<HTMLElement>('#page')!;
  const region = document.createElement('div');
  region.className = 'visually-hidden';
  region.setAttribute('role', 'status');
  document.body.append(region);

  const shelf = createShelf(store, await openKeeping());
  const actions = createActions(store);
  const announcer = createAnnouncer(store, region);
  let stave: Stave | undefined;
  const commands = createCommands({
    store,
    actions,
    shelf,
    reviewing: createReviewing(store),
    stave: () => stave,
    sayAloud: announcer.say,
  });
  const keys: KeyCommands = { ...commands, actions };
  const others: OtherViews = { rules: rulesView, shelf: shelfView, help: helpView, check: checkView };

  const draw = (): void => {
    const panel: Panel = { state: store.get(), actions, shelf, commands };
    render(pageView(panel, others), page);
  };
  draw();

  stave = createStave(document.querySelector<HTMLElement>('#stave')!, store, keys, (milliseconds) =>
    performance.measure('partwise-drawn', { start: 0, detail: milliseconds }),
  );
  keepInView(store, stave);

  let asked = false;
  store.subscribe((state, before) => {
    if (state.settings.theme !== before.settings.theme) showTheme(state.settings.theme);
    document.title = `${titleOf(state.history.now.score)} – Partwise`;
    if (asked) return;
    asked = true;
    requestAnimationFrame(() => {
      asked = false;
      draw();
    });
  });

  hearPage();
  await shelf.begin();
  followAddress();
  showTheme(store.get().settings.theme);

  function hearPage(): void {
    addEventListener('hashchange', () => {
      followAddress();
      // Whoever hears the page rather than sees it is taken to the new view's heading.
      requestAnimationFrame(() => requestAnimationFrame(focusView));
    });
    document.addEventListener('keydown', (event) => {
      const typing = isWritingText(event.target);
      const obeyed = obeyKey(event, 'everywhere', keys) || (!typing && obeyKey(event, 'page', keys));
      if (obeyed) event.preventDefault();
    });
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
      commands.openFiles(files);
    });
    // A menu closes when the person goes elsewhere.
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

  function followAddress(): void {
    const hash = location.hash.slice(1);
    if (hash.startsWith('set/')) {
      // Taken out of the address at once: a reload goes on with the exercise, and nobody passes it on by mistake.
      history.replaceState(null, '', '#write');
      actions.show('write');
      void commands.openLink(hash);
      return;
    }
    const [name, rule] = hash.split('/');
    const view = VIEWS.find((known): known is View => known === name) ?? 'write';
    actions.show(view, rule === undefined ? undefined : rule);
  }
}

function focusView(): void {
  const shown = document.querySelector<HTMLElement>('.write:not([hidden]) #stave, .rule h1, .view h1');
  if (document.activeElement?.closest('main') && document.activeElement !== document.body) return;
  if (shown?.id === 'stave') return;
  scrollTo({ top: 0 });
  shown?.setAttribute('tabindex', '-1');
  shown?.focus({ preventScroll: true });
}

/** True in a field that takes text, and with it the keys and what is pasted. */
function isWritingText(target: EventTarget | null): boolean {
  if (target instanceof HTMLTextAreaElement) return true;
  return target instanceof HTMLInputElement && ['text', 'number', 'search'].includes(target.type);
}

function closeMenus(target: Node): void {
  for (const menu of document.querySelectorAll('details.menu[open]'))
    if (!menu.contains(target)) menu.removeAttribute('open');
}

function showTheme(theme: PageState['settings']['theme']): void {
  if (theme === 'system') delete document.documentElement.dataset.theme;
  else document.documentElement.dataset.theme = theme;
}

void start();

// Once loaded, the page works without a network. A new version takes over when every tab with the old one is closed.
if (import.meta.env.PROD && 'serviceWorker' in navigator)
  addEventListener('load', () => void navigator.serviceWorker.register('./sw.js').catch(() => undefined));
