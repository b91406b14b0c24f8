/** Starts the marking desk's page: the state, what is drawn from it, and what it hears. */
import '../styles/tokens.css';
import '../engrave/engrave.css';
import './desk.css';
import { render } from 'lit';
import { loadMusicFont } from '../engrave/index.ts';
import { createStore } from '../state/store.ts';
import { createActions } from './actions.ts';
import { listenToKeys } from './keys.ts';
import { type DeskState, EMPTY_DESK } from './state.ts';
import { writeView } from './views/desk.ts';

const store = createStore<DeskState>(EMPTY_DESK);
const said = document.querySelector<HTMLElement>('#said')!;
const actions = createActions(store, (text) => {
  said.textContent = text;
});

const page = document.querySelector<HTMLElement>('#desk')!;
let waiting = false;
const draw = (): void => {
  waiting = false;
  render(writeView(store.get(), actions), page);
};
store.subscribe(() => {
  // Several changes in one turn are drawn once.
  if (waiting) return;
  waiting = true;
  queueMicrotask(draw);
});
window.addEventListener('hashchange', () => void actions.load());
listenToKeys(store, actions);

// Drawn without its font, music has heads and stems in the wrong places.
await loadMusicFont();
draw();
await actions.start();
