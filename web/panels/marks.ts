/** The findings, numbered as on the stave; one of them open. */
import { html, nothing, type TemplateResult } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import { printVoices } from '../../src/report/sentences.ts';
import { summarise } from '../../src/report/summary.ts';
import type { Finding } from '../../src/review/review.ts';
import { placeAt, printPlace } from '../../src/score/place.ts';
import { isShown } from '../engrave/index.ts';
import type { Panel } from './context.ts';
import { voicesForm } from './voices-form.ts';
import { waysOutView } from './ways-out.ts';

export function marksPanel(panel: Panel): TemplateResult {
  const { reviewed, settings, history } = panel.state;
  if (history.now.score.bars.length === 0)
    return html`<div class="empty">
      <p>There is nothing to look at yet.</p>
      <p>Paste an exercise anywhere on this page, drop a file on it, or begin a new one under Exercises.</p>
    </div>`;
  if (reviewed === undefined) return html`<p class="empty">Reading the harmony…</p>`;
  const { review } = reviewed;
  const listed = review.findings
    .map((finding, index) => ({ finding, number: index + 1 }))
    .filter(({ finding }) => isShown(settings.shown, finding.rule.family, finding.severity));
  const hidden = review.findings.length - listed.length;
  return html`
    <p class="verdict">${summarise(review).sentence}</p>
    ${hidden === 0 ? nothing : html`<p class="aside">${hidden} more not shown; choose what is under Show.</p>`}
    ${
      review.switchedOff.length === 0
        ? nothing
        : html`<p class="aside">The profile “${review.profile.name}” leaves out: ${review.switchedOff.join(', ')}.</p>`
    }
    <ol class="marks">
      ${repeat(
        listed,
        ({ finding }) => finding.id,
        ({ finding, number }) => markView(panel, finding, number),
      )}
    </ol>
    ${remarksOfReader(panel)}
  `;
}

function markView(panel: Panel, finding: Finding, number: number): TemplateResult {
  const { state, actions, commands } = panel;
  const open = state.chosen === finding.id;
  const note = state.exercise.notes[finding.id];
  return html`<li class="mark ${finding.severity} ${open ? 'open' : ''} ${note ? 'noted' : ''}">
    <button
      type="button"
      class="mark-head"
      data-finding=${finding.id}
      aria-expanded=${open}
      @click=${(event: MouseEvent) => {
        actions.choose(open ? undefined : finding.id);
        if (!open) commands.scrollToFinding(finding.id);
        // With the mouse the keyboard stays where one writes; a key that opened it reads on here.
        if (event.detail > 0) commands.focusStave();
      }}
    >
      <span class="tag ${finding.severity}">${number}</span>
      <span class="mark-title"
        ><span class="mark-name">${finding.rule.name}</span>
        <span class="mark-place">${placeOf(panel, finding)}</span></span
      >
      <span class="severity">${finding.severity}</span>
    </button>
    ${open ? markBody(panel, finding) : nothing}
  </li>`;
}

function placeOf({ state }: Panel, finding: Finding): string {
  const score = state.reviewed?.review.score;
  const place = score === undefined ? '' : printPlace(placeAt(score, finding.from));
  return finding.voices.length === 0 ? place : `${place}, ${printVoices(finding.voices)}`;
}

function markBody(panel: Panel, finding: Finding): TemplateResult {
  const { actions, commands, state } = panel;
  const { rule } = finding;
  const hints = [finding.hint ?? rule.hints[0], rule.hints[1], rule.hints[2]];
  const shown = state.hints[finding.id] ?? 0;
  const two = finding.voices.length === 2;
  return html`<div class="mark-body">
    <p class="message">${finding.message}</p>
    <p class="why">${rule.why}</p>
    ${shown === 0 ? nothing : html`<ol class="hints">${hints.slice(0, shown).map((hint) => html`<li>${hint}</li>`)}</ol>`}
    <div class="mark-commands">
      ${
        shown < 3
          ? html`<button type="button" @click=${() => actions.openHint(finding.id)}>
              ${shown === 0 ? 'A hint' : `Hint ${shown + 1} of 3`}
            </button>`
          : nothing
      }
      ${
        finding.voices.length > 0
          ? html`<button type="button" @click=${() => commands.playVoices(finding.voices, finding.from, finding.until)}>
              ${two ? 'Hear just these two voices' : finding.voices.length === 1 ? 'Hear this voice' : 'Hear this place'}
            </button>`
          : nothing
      }
      <a class="button" href="#rules/${rule.id}">The rule</a>
    </div>
    ${waysOutView(panel, finding)}
    <details class="own-note" ?open=${state.exercise.notes[finding.id] !== undefined}>
      <summary>I mean it so</summary>
      <label>
        Why? It stands beside this mark in the last check.
        <textarea
          rows="2"
          .value=${state.exercise.notes[finding.id] ?? ''}
          @input=${(event: Event) => actions.setNote(finding.id, (event.target as HTMLTextAreaElement).value)}
        ></textarea>
      </label>
    </details>
  </div>`;
}

/** The same list for paper: every mark with what happened there, and nothing to press. */
export function printedList(panel: Panel): TemplateResult | typeof nothing {
  const { reviewed, settings, exercise } = panel.state;
  if (reviewed === undefined) return nothing;
  const { review } = reviewed;
  return html`<section class="printed" aria-hidden="true">
    <p class="verdict">${summarise(review).sentence}</p>
    <ol class="marks">
      ${review.findings.map((finding, i) => {
        if (!isShown(settings.shown, finding.rule.family, finding.severity)) return nothing;
        const note = exercise.notes[finding.id];
        return html`<li class="mark ${finding.severity}">
          <span class="tag ${finding.severity}">${i + 1}</span>
          <p>
            <strong>${finding.rule.name}</strong>, ${finding.severity}, ${placeOf(panel, finding)}. ${finding.message}
            ${note === undefined ? nothing : html`Meant so: “${note}”`}
          </p>
        </li>`;
      })}
    </ol>
  </section>`;
}

/** What the reader noticed in the file: guesses it made, parts it set aside. */
function remarksOfReader(panel: Panel): TemplateResult | typeof nothing {
  const { remarks } = panel.state.history.now.score;
  if (remarks.length === 0 && panel.state.exercise.source === undefined) return nothing;
  return html`<section class="reader-remarks">
    <h2>Noticed while reading</h2>
    <ul>
      ${remarks.map(
        ({ message, line, column }) =>
          html`<li>${line === undefined ? nothing : html`<span class="place">Line ${line}${column === undefined ? '' : `, column ${column}`}:</span> `}${message}</li>`,
      )}
    </ul>
    ${voicesForm(panel)}
  </section>`;
}
