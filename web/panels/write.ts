/** The write view: tools, the stave on its sheet, and in the margin what was found. */
import { html, nothing, type TemplateResult } from 'lit';
import { printKeySignature } from '../../src/notation/index.ts';
import { printTempo, withSigns } from '../../src/report/sentences.ts';
import { slipsAmong } from '../../src/review/marks.ts';
import { printMetre } from '../../src/score/time.ts';
import { sitting, withholds } from '../state/brief.ts';
import { SIDES, type Side } from '../state/page.ts';
import { titleOf } from '../state/work.ts';
import type { Panel } from './context.ts';
import { givenQuestion } from './given.ts';
import { later, type PanelView } from './later.ts';
import { marksPanel, printedList } from './marks.ts';
import { textPanel } from './text.ts';
import { toolsView } from './tools.ts';
import { transportView } from './transport.ts';
import { welcomeView } from './welcome.ts';

const SIDE_PANELS: Readonly<Record<Side, { readonly name: string; readonly view: PanelView }>> = {
  marks: { name: 'Marks', view: marksPanel },
  style: { name: 'Style', view: later(() => import('./style.ts').then(({ stylePanel }) => stylePanel)) },
  text: { name: 'Text', view: textPanel },
  chord: { name: 'Chord', view: later(() => import('./chord.ts').then(({ chordPanel }) => chordPanel)) },
  summary: {
    name: 'Summary',
    view: later(() => import('./summary.ts').then(({ summaryPanel }) => summaryPanel)),
  },
};

export function writeView(panel: Panel): TemplateResult {
  const { state } = panel;
  return html`
    <section class="write" aria-label="Exercise" ?hidden=${state.view !== 'write'} ?data-sheet=${state.sheet}>
      ${toolsView(panel)}
      <div class="sheet">
        ${welcomeView(panel)} ${givenQuestion(panel)} ${sheetHead(panel)}
        <div
          id="stave"
          class="stave"
          tabindex="0"
          role="application"
          aria-roledescription="stave"
          aria-label="Stave: letters write notes, arrows move the caret"
          aria-describedby="caret-words"
        ></div>
      </div>
      <aside class="margin" aria-label="Beside the stave">
        <div class="sides" role="tablist" aria-label="Beside the stave" @keydown=${(e: KeyboardEvent) => turnSide(e, panel)}>
          ${SIDES.map(
            (side) => html`<button
              type="button"
              role="tab"
              id="tab-${side}"
              aria-controls="side"
              aria-selected=${side === state.side}
              tabindex=${side === state.side ? 0 : -1}
              @click=${() => panel.actions.turnTo(side)}
            >
              ${SIDE_PANELS[side].name}${side === 'marks' ? html` <span class="count">${markCount(panel)}</span>` : nothing}
            </button>`,
          )}
        </div>
        <div id="side" class="side" role="tabpanel" aria-labelledby="tab-${state.side}">
          ${SIDE_PANELS[state.side].view(panel)}
        </div>
      </aside>
      ${transportView(panel)} ${panel.forPaper ? printedList(panel) : nothing}
    </section>
  `;
}

function sheetHead({ state }: Panel): TemplateResult {
  const { score } = state.history.now;
  const first = score.bars[0];
  const facts =
    first === undefined
      ? ['nothing written yet']
      : [
          withSigns(printKeySignature(first.key)),
          printMetre(first.metre),
          ...(score.tempo === undefined ? [] : [printTempo(score.tempo, first.metre)]),
        ];
  return html`<header class="sheet-head">
    <h1>${titleOf(score)}</h1>
    ${state.exercise.demonstration ? html`<p class="demonstration">A demonstration: half finished, with mistakes to find.</p>` : nothing}
    <p>${facts.join(' · ')}</p>
    ${sitting(state) === '' ? nothing : html`<p class="sitting">${sitting(state)}</p>`}
  </header>`;
}

function markCount({ state }: Panel): string {
  const { reviewed } = state;
  return reviewed === undefined || withholds(state, 'marks')
    ? ''
    : String(slipsAmong(reviewed.review.findings));
}

/** Arrows go from tab to tab, as in any tab list. */
function turnSide(event: KeyboardEvent, { state, actions }: Panel): void {
  const by = event.key === 'ArrowRight' ? 1 : event.key === 'ArrowLeft' ? -1 : 0;
  if (by === 0) return;
  event.preventDefault();
  const next = SIDES[(SIDES.indexOf(state.side) + by + SIDES.length) % SIDES.length]!;
  actions.setSide(next);
  (event.currentTarget as HTMLElement).querySelector<HTMLElement>(`#tab-${next}`)?.focus();
}
