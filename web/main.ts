/** Starts the page: the state, what follows it (drawing, reviewing, keeping, sounding), and the events it hears. */
import './styles/page.css';
import './engrave/engrave.css';
import { render } from 'lit';
import { createCommands } from './commands/commands.ts';
import { hearPage } from './commands/hearing.ts';
import { loadMusicFont } from './engrave/index.ts';
import { createAnnouncer } from './panels/announce.ts';
import type { Commands } from './panels/context.ts';
import { keepInView } from './panels/in-view.ts';
import { whenArrived } from './panels/later.ts';
import { pageView } from './panels/page.ts';
import { createStave, type Stave } from './panels/stave.ts';
import { type Actions, createActions } from './state/actions.ts';
import { FIRST_STATE } from './state/first.ts';
import { openKeeping } from './state/keeping.ts';
import { type PageState, VIEWS, type View } from './state/page.ts';
import { createShelf, type Shelf } from './state/shelf.ts';
import { createStore, type Store } from './state/store.ts';
import { titleOf } from './state/work.ts';
import { createReviewing } from './worker/following.ts';

async function start(): Promise<void> {
  const keeping = openKeeping();
  // The font is on its way while the rest is made.
  loadMusicFont().catch(() => undefined);
  const store = createStore<PageState>(FIRST_STATE);
  const actions = createActions(store);
  const announcer = createAnnouncer(store, liveRegion());
  let stave: Stave | undefined;
  const shelf = createShelf(store, await keeping);
  const commands = createCommands({
    store,
    actions,
    shelf,
    reviewing: createReviewing(store),
    stave: () => stave,
    sayAloud: announcer.say,
  });
  showState(store, () => ({ actions, shelf, commands }));
  let drawn = false;
  stave = createStave(document.querySelector<HTMLElement>('#stave')!, store, { ...commands, actions }, () => {
    if (drawn || store.get().history.now.score.bars.length === 0) return;
    drawn = true;
    // For the bench: the whole of the exercise is on screen.
    performance.measure('partwise-drawn', { start: 0 });
  });
  keepInView(store, stave);
  hearPage({ store, actions, commands });
  hearAddress(actions, commands);
  keepForOffline(store);
  await shelf.begin();
  followAddress(actions, commands);
  showTheme(store.get().settings.theme);
}

/** What is said to those who don't see the page. */
function liveRegion(): HTMLElement {
  const region = document.createElement('div');
  region.className = 'visually-hidden';
  region.setAttribute('role', 'status');
  document.body.append(region);
  return region;
}

interface Given {
  readonly actions: Actions;
  readonly shelf: Shelf;
  readonly commands: Commands;
}

/**
 * Draws the panels now, and again in the next frame after each change; several changes are one drawing. After a note
 * written on the stave they wait one frame more: the note is seen first.
 */
function showState(store: Store<PageState>, given: () => Given): void {
  const page = document.querySelector<HTMLElement>('#page')!;
  let forPaper = false;
  const draw = (): void => {
    render(pageView({ state: store.get(), forPaper, ...given() }), page);
  };
  // What stood there for the eye while the scripts were on their way.
  page.replaceChildren();
  draw();
  whenArrived(() => {
    draw();
    focusView();
  });
  // The list for paper is made when it is printed, and not at each note.
  for (const event of ['beforeprint', 'afterprint'] as const)
    addEventListener(event, () => {
      forPaper = event === 'beforeprint';
      draw();
    });
  let stale = false;
  const drawStale = (): void => {
    if (!stale) return;
    stale = false;
    draw();
  };
  store.subscribe((state, before) => {
    if (state.settings.theme !== before.settings.theme) showTheme(state.settings.theme);
    // Set to what it is, it would be told to the browser's window all the same.
    const [now, then] = [state.history.now.score, before.history.now.score];
    if (now.title !== then.title || state.exercise.id !== before.exercise.id) showTitle(state);
    const written = state.history.now !== before.history.now && state.history.last.by === 'stave';
    if (!stale) stale = true;
    else if (written) return;
    if (written) requestAnimationFrame(() => requestAnimationFrame(drawStale));
    else requestAnimationFrame(drawStale);
  });
}

function showTitle({ history }: PageState): void {
  document.title = `${titleOf(history.now.score)} – Partwise`;
}

function hearAddress(actions: Actions, commands: Commands): void {
  addEventListener('hashchange', () => {
    followAddress(actions, commands);
    // Whoever hears the page rather than sees it is taken to the new view's heading.
    requestAnimationFrame(() => requestAnimationFrame(focusView));
  });
}

function followAddress(actions: Actions, commands: Commands): void {
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

function focusView(): void {
  const shown = document.querySelector<HTMLElement>('.write:not([hidden]) #stave, .rule h1, .view h1');
  if (document.activeElement?.closest('main') && document.activeElement !== document.body) return;
  if (shown?.id === 'stave') return;
  scrollTo({ top: 0 });
  shown?.setAttribute('tabindex', '-1');
  shown?.focus({ preventScroll: true });
}

function showTheme(theme: PageState['settings']['theme']): void {
  if (theme === 'system') delete document.documentElement.dataset.theme;
  else document.documentElement.dataset.theme = theme;
}

/**
 * Once loaded, the page works without a network. What that takes is fetched when the first marks are there, so that
 * nobody waits for it. A new version takes over when every tab with the old one is closed.
 */
function keepForOffline(store: Store<PageState>): void {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  const register = (): void => {
    clearTimeout(late);
    stop();
    void navigator.serviceWorker.register('./sw.js').catch(() => undefined);
  };
  const late = setTimeout(register, 10_000);
  const stop = store.subscribe(({ reviewed }) => {
    if (reviewed?.whole) register();
  });
}

void start();
