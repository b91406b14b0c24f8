/** Marking one script: the score on the left, what was found on the right. */
import { html, nothing, type TemplateResult } from 'lit';
import { ref } from 'lit/directives/ref.js';
import { repeat } from 'lit/directives/repeat.js';
import type { Judged, ScriptView } from '../../../src/desk/wire-shapes.ts';
import { printVoices } from '../../../src/report/sentences.ts';
import { crotchets } from '../../../src/score/time.ts';
import type { Actions } from '../actions.ts';
import { KEYS, reasonTyped } from '../keys.ts';
import { letterOf, markedScore } from '../marked-score.ts';
import { beatInWords, placeIn } from '../places.ts';
import type { DeskState } from '../state.ts';
import { carriedPart } from './carried.ts';
import { schemePanel } from './scheme.ts';

export function scriptPage(state: DeskState, actions: Actions): TemplateResult {
  const view = state.script;
  if (view === undefined || state.stack === undefined) return html`<p class="empty">Fetching the script…</p>`;
  const { script, score } = view;
  return html`
    <div class="marking">
      <section class="paper" aria-label="Score">
        ${scriptHead(view, actions)}
        ${
          score === undefined
            ? html`<p class="wrong">${script.error?.message ?? 'This file could not be read.'}</p>`
            : markedScore(
                { score, findings: view.findings, remarks: view.remarks },
                state.chosen,
                `${view.title ?? 'The exercise'}, ${view.key ?? ''}, with ${view.findings.length} marks`,
                {
                  onSelect: (id) => actions.choose(id),
                  onPoint: ({ at }) => void actions.beginRemark(crotchets(at), undefined),
                },
              )
        }
      </section>
      <section class="margin" aria-label="What was found">
        ${givenPart(view)} ${sincePart(view)} ${carriedPart(view, actions)}
        ${view.findings.length === 0 ? html`<p class="empty">Nothing was found.</p>` : nothing}
        <ol class="findings">
          ${repeat(
            view.findings,
            ({ id }) => id,
            (finding, i) => findingView(finding, i + 1, state, actions),
          )}
        </ol>
        ${remarksPart(state, view, actions)} ${schemePanel(state.stack.scheme, view, actions)} ${keysHelp()}
      </section>
    </div>
  `;
}

function scriptHead({ script, title, key, place }: ScriptView, actions: Actions): TemplateResult {
  return html`<header class="script-head">
    <div>
      <h1>${script.candidate ?? 'No candidate number'}, draft ${script.draft}</h1>
      <p class="aside">${title ? `${title}, ` : ''}${key ?? ''} · ${script.file} · ${place.at} of ${place.of}</p>
    </div>
    <div class="script-tools">
      ${whoseForm(script, actions)}
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
      ${given.departures.map(({ bar, message }) => html`<li>Bar ${bar}: ${message}</li>`)}
    </ul>
  </details>`;
}

function sincePart({ since }: ScriptView): TemplateResult | typeof nothing {
  if (since === undefined) return nothing;
  return html`<details class="since">
    <summary>Since the last draft: ${since.summary}</summary>
    <ul>
      ${since.mended.map(({ name, bar }) => html`<li>Mended: ${name}, bar ${bar} of that draft</li>`)}
    </ul>
  </details>`;
}

function findingView(finding: Judged, number: number, state: DeskState, actions: Actions): TemplateResult {
  const open = state.chosen === finding.id;
  const since = state.script?.since;
  const news = since?.fresh.includes(finding.id)
    ? 'new'
    : since?.stillThere.includes(finding.id)
      ? 'still there'
      : '';
  return html`<li class=${`finding ${finding.severity} ${finding.standing} ${open ? 'chosen' : ''}`}>
    <button
      type="button"
      class="finding-head"
      aria-expanded=${open}
      data-finding=${finding.id}
      @click=${() => actions.choose(open ? undefined : finding.id)}
    >
      <span class=${`tag ${finding.severity}`}>${number}</span>
      <span class="finding-name">
        ${finding.name}
        <small>
          bar ${finding.bar}, beat ${beatInWords(finding.beat)}${finding.voices.length > 0 ? `, ${printVoices(finding.voices)}` : ''}${news === '' ? '' : ` · ${news}`}
        </small>
      </span>
      <span class="standing">${standingWords(finding)}</span>
    </button>
    ${open ? openFinding(finding, actions) : nothing}
  </li>`;
}

function standingWords(finding: Judged): string {
  const { standing, severity, foundAs, forAll } = finding;
  if (standing === 'overruled') return forAll ? 'overruled for all' : 'overruled';
  const weight = severity === foundAs ? severity : `${severity}, was ${foundAs}`;
  return standing === 'agreed' ? `agreed: ${weight}` : weight;
}

function openFinding(finding: Judged, actions: Actions): TemplateResult {
  const { decision } = finding;
  return html`<div class="finding-body">
    <p>${finding.message}</p>
    <p class="aside">${finding.why}</p>
    ${finding.reason === undefined ? nothing : html`<p class="aside">Overruled because: ${finding.reason}</p>`}
    <div class="decide">
      <button type="button" @click=${() => void actions.agree()}>Agree <kbd>A</kbd></button>
      <button type="button" @click=${() => void actions.overrule(reasonTyped())}>Overrule <kbd>O</kbd></button>
      <input class="reason" aria-label="Reason for overruling, if you like" placeholder="reason, if you like" maxlength="500" />
    </div>
    <div class="decide">
      <details class="for-all">
        <summary>Overrule for the whole class…</summary>
        <button type="button" @click=${() => void actions.overruleForAll('place', reasonTyped())}>
          at places like this
        </button>
        <button type="button" @click=${() => void actions.overruleForAll('rule', reasonTyped())}>
          wherever this rule speaks
        </button>
      </details>
      <fieldset class="severities">
        <legend class="visually-hidden">Counts as</legend>
        ${(['fault', 'query', 'remark'] as const).map(
          (severity, i) =>
            html`<button
              type="button"
              aria-pressed=${finding.severity === severity}
              @click=${() => void actions.setSeverity(severity)}
            >
              ${severity} <kbd>${i + 1}</kbd>
            </button>`,
        )}
      </fieldset>
      <button type="button" @click=${() => void actions.beginRemark(finding.from, finding.rule, finding.until)}>
        Remark <kbd>R</kbd>
      </button>
      ${
        decision === undefined
          ? nothing
          : html`<button
              type="button"
              class="quiet"
              @click=${() =>
                void actions.takeBack(
                  decision,
                  finding.forAll === true,
                  `Taken back: ${finding.name}, bar ${finding.bar}.`,
                )}
            >
              Take the decision back
            </button>`
      }
    </div>
  </div>`;
}

function remarksPart(state: DeskState, view: ScriptView, actions: Actions): TemplateResult {
  const { writing } = state;
  return html`<section class="own-remarks" aria-label="Your remarks">
    ${view.remarks.length === 0 ? nothing : html`<h2>Your remarks</h2>`}
    <ul>
      ${view.remarks.map(
        (remark, i) => html`<li class=${state.chosen === remark.id ? 'chosen' : ''}>
          <span class="tag own">${letterOf(i)}</span>
          <span>${remark.text} <small>${placeIn(view, remark)}</small></span>
          <button
            type="button"
            class="quiet"
            @click=${() => void actions.takeBack(remark.id, false, 'Remark taken back.')}
          >
            Take back
          </button>
        </li>`,
      )}
    </ul>
    ${
      writing === undefined
        ? html`<button type="button" @click=${() => void actions.beginRemark(0, undefined)}>
            Write a remark
          </button>
          <span class="aside">or click the place in the score</span>`
        : html`<form
            class="writing"
            @submit=${(event: SubmitEvent) => {
              event.preventDefault();
              void actions.saveRemark(writing.text, writing.until);
            }}
          >
            <label>
              Remark at ${placeIn(view, writing)}
              <textarea
                ${ref(focusOnce)}
                rows="3"
                maxlength="2000"
                .value=${writing.text}
                @input=${(event: Event) => void actions.typeRemark((event.target as HTMLTextAreaElement).value)}
                @keydown=${(event: KeyboardEvent) => {
                  if (event.key !== 'Enter' || event.shiftKey) return;
                  event.preventDefault();
                  void actions.saveRemark((event.target as HTMLTextAreaElement).value, writing.until);
                }}
              ></textarea>
            </label>
            ${
              writing.offered.length === 0
                ? nothing
                : html`<ul class="bank" aria-label="Remarks used before">
                    ${writing.offered.slice(0, 6).map(
                      ({ text, uses }) => html`<li>
                        <button type="button" @click=${() => void actions.saveRemark(text, writing.until)}>
                          ${text} <small>×${uses}</small>
                        </button>
                      </li>`,
                    )}
                  </ul>`
            }
            <button>Keep <kbd>Enter</kbd></button>
            <button type="button" class="quiet" @click=${actions.closeRemark}>Leave it</button>
          </form>`
    }
  </section>`;
}

/** Whoever asks for a remark wants to write it. The same function each time, so that it runs once. */
function focusOnce(element: Element | undefined): void {
  // It is not in the page yet when this is called.
  queueMicrotask(() => (element as HTMLTextAreaElement | undefined)?.focus());
}

function keysHelp(): TemplateResult {
  return html`<details class="keys">
    <summary>Keys</summary>
    <dl>
      ${KEYS.map(({ shown, help }) => html`<div><dt><kbd>${shown}</kbd></dt><dd>${help}</dd></div>`)}
    </dl>
  </details>`;
}
