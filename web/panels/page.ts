/** The frame: masthead, the view chosen, what is said aloud and what is shown as a notice. */
import { html, nothing, type TemplateResult } from 'lit';
import { keyed } from 'lit/directives/keyed.js';
import { VIEWS, type View } from '../state/page.ts';
import { titleOf } from '../state/work.ts';
import type { Panel } from './context.ts';
import { later, type PanelView } from './later.ts';
import { writeView } from './write.ts';

const VIEW_NAMES: Readonly<Record<View, string>> = {
  write: 'Write',
  rules: 'Rules',
  check: 'Hand in',
  shelf: 'Exercises',
  help: 'Help',
};

/** Every view but the stave's, which stays beneath them. */
const OTHER_VIEWS: Readonly<Record<Exclude<View, 'write'>, PanelView>> = {
  rules: later(() => import('./rules.ts').then(({ rulesView }) => rulesView)),
  shelf: later(() => import('./shelf.ts').then(({ shelfView }) => shelfView)),
  help: later(() => import('./help.ts').then(({ helpView }) => helpView)),
  check: later(() => import('./check.ts').then(({ checkView }) => checkView)),
};

export function pageView(panel: Panel): TemplateResult {
  const { state } = panel;
  const { view: shown } = state;
  return html`
    <a class="skip" href="#stave" @click=${(event: Event) => skipToStave(event, panel)}>To the stave</a>
    <header class="masthead">
      <p class="brand">Partwise</p>
      <nav aria-label="Views">
        <ul>
          ${VIEWS.map(
            (view) => html`<li>
              <a href="#${view}" aria-current=${view === state.view ? 'page' : nothing}>${VIEW_NAMES[view]}</a>
            </li>`,
          )}
        </ul>
      </nav>
      <p class="whereabouts">
        <span class="exercise-title">${titleOf(state.history.now.score)}</span>
        <span class="kept ${state.kept === 'not kept' ? 'lost' : ''}">${keptWords(panel)}</span>
      </p>
    </header>
    <main id="main">
      ${writeView(panel)} ${shown === 'write' ? nothing : keyed(shown, OTHER_VIEWS[shown](panel))}
    </main>
    ${noticeView(panel)}
  `;
}

function keptWords({ state }: Panel): string {
  if (state.kept === 'kept') return 'kept in this browser';
  return state.kept === 'keeping'
    ? 'being kept…'
    : 'not kept: this browser has no room for it, or gives no leave. Save a file.';
}

function noticeView({ state, actions }: Panel): TemplateResult {
  const { notice } = state;
  const shown = notice !== undefined && notice.kind !== 'said';
  return html`
    <div class="notice ${notice?.kind ?? ''}" ?hidden=${!shown}>
      <p role="alert">${shown ? notice.text : ''}</p>
      <button type="button" class="quiet" @click=${actions.hush}>Close</button>
    </div>
  `;
}

function skipToStave(event: Event, { actions, commands }: Panel): void {
  event.preventDefault();
  actions.show('write');
  commands.focusStave();
}
