/** Marking one script: the score on the left, what was found on the right; on a small screen over it, in a sheet. */
import { html, nothing, type TemplateResult } from 'lit';
import { USUAL_SHEETS } from '../../../src/desk/sheet-options.ts';
import type { ScriptView } from '../../../src/desk/wire-shapes.ts';
import { crotchets } from '../../../src/score/time.ts';
import type { Actions } from '../actions.ts';
import { markedScore } from '../marked-score.ts';
import { barInWords } from '../places.ts';
import { type DeskState, hashOf } from '../state.ts';
import { carriedPart } from './carried.ts';
import { findingsPart } from './findings.ts';
import { looseRemark, remarksPart } from './remarks.ts';
import { schemePanel } from './scheme.ts';
import { voicesPart } from './voices.ts';

export function scriptPage(state: DeskState, actions: Actions): TemplateResult {
  const { script: view, stack, sheetOpen } = state;
  if (view === undefined || stack === undefined) return html`<p class="empty">Fetching the script…</p>`;
  return html`
    <div class=${`marking ${sheetOpen ? 'sheet-open' : ''}`}>
      <section class="paper" aria-label="Score">${scriptHead(view, actions)} ${scorePart(state, view, actions)}</section>
      <section class="margin" aria-label="What was found">
        ${sheetHandle(state, view, actions)} ${looseRemark(state, view, actions)} ${givenPart(view)} ${sincePart(view)}
        ${carriedPart(view, actions)} ${findingsPart(state, actions)} ${remarksPart(state, view, actions)}
        ${schemePanel(stack, state, actions)}
        <button type="button" class="quiet" @click=${() => actions.showKeys(true)}>All keys <kbd>?</kbd></button>
      </section>
    </div>
  `;
}

function scorePart(state: DeskState, view: ScriptView, actions: Actions): TemplateResult {
  const { script, score, findings, remarks } = view;
  if (score === undefined)
    return html`<p class="wrong">${script.error?.message ?? 'This file could not be read.'}</p>
      ${voicesPart(view, actions)}`;
  const drawn = markedScore(
    { score, findings, remarks },
    state.chosen,
    `${view.title ?? 'The exercise'}, ${view.key ?? ''}, with ${findings.length} marks`,
    {
      onSelect: (id) => actions.chooseInScore(id),
      onPoint: ({ at }) => void actions.beginRemark({ from: crotchets(at) }),
    },
  );
  return html`${voicesPart(view, actions)} ${drawn}`;
}

/** Only a small screen shows it: the findings come up over the score and go down again. */
function sheetHandle({ sheetOpen }: DeskState, { findings }: ScriptView, actions: Actions): TemplateResult {
  const open = findings.filter(
    ({ standing, severity }) => standing === 'open' && severity !== 'remark',
  ).length;
  return html`<button
    type="button"
    class="sheet-handle"
    aria-expanded=${sheetOpen}
    @click=${() => actions.openSheet(!sheetOpen)}
  >
    ${sheetOpen ? 'Back to the score' : `Findings and marks: ${open === 0 ? 'all decided' : `${open} to decide`}`}
  </button>`;
}

function scriptHead({ script, title, key, place }: ScriptView, actions: Actions): TemplateResult {
  return html`<header class="script-head">
    <div>
      <h1>${script.candidate ?? 'No candidate number'}, draft ${script.draft}</h1>
      <p class="aside">${title ? `${title}, ` : ''}${key ?? ''} · ${script.file} · ${place.at} of ${place.of}</p>
    </div>
    <div class="script-tools">
      ${whoseForm(script, actions)}
      <a class="button plain" href=${sheetOf(script)}>Sheet</a>
      <button type="button" @click=${() => actions.goTo('before')} ?disabled=${place.before === undefined}>Previous <kbd>P</kbd></button>
      <button type="button" @click=${() => actions.goTo('next')}>Next <kbd>N</kbd></button>
      ${
        script.done
          ? html`<button type="button" @click=${() => void actions.change({ done: false })}>Not done after all</button>`
          : html`<button type="button" class="main" @click=${() => void actions.finish()}>Done <kbd>D</kbd></button>`
      }
    </div>
  </header>`;
}

function sheetOf({ id, stack }: ScriptView['script']): string {
  return hashOf({ view: 'sheets', stack, after: 0, options: { ...USUAL_SHEETS, scripts: [id] } });
}

/** Shut where a file's name has told whose it is; it may have told wrongly. */
function whoseForm({ candidate, draft }: ScriptView['script'], actions: Actions): TemplateResult {
  return html`<details class="whose" ?open=${candidate === undefined}>
    <summary>${candidate === undefined ? 'Whose is it?' : 'Not theirs?'}</summary>
    <form
      @submit=${(event: SubmitEvent) => {
        event.preventDefault();
        const data = new FormData(event.target as HTMLFormElement);
        void actions.change({ candidate: String(data.get('candidate')), draft: Number(data.get('draft')) });
      }}
    >
      <label>Candidate <input name="candidate" size="8" required maxlength="40" .value=${candidate ?? ''} /></label>
      <label>Draft <input name="draft" type="number" min="1" max="99" required .value=${String(draft)} /></label>
      <button>Keep</button>
    </form>
  </details>`;
}

function givenPart({ script }: ScriptView): TemplateResult | typeof nothing {
  const { given } = script;
  if (given === undefined) return nothing;
  const wrong = given.departures.length > 0 || given.general.length > 0;
  return html`<details class="given" ?open=${wrong}>
    <summary class=${wrong ? 'wrong' : ''}>${given.summary}</summary>
    <ul>
      ${given.general.map((text) => html`<li>${text}</li>`)}
      ${given.departures.map(({ message }) => html`<li>${message}</li>`)}
    </ul>
  </details>`;
}

function sincePart({ since }: ScriptView): TemplateResult | typeof nothing {
  if (since === undefined) return nothing;
  return html`<details class="since">
    <summary>Since the last draft: ${since.summary}</summary>
    <ul>
      ${since.mended.map(({ name, bar }) => html`<li>Mended: ${name}, ${barInWords(bar)} of that draft</li>`)}
    </ul>
  </details>`;
}
