/** The teacher's own remarks on a script: about all of it, then by place. */
import { html, nothing, type TemplateResult } from 'lit';
import { ref } from 'lit/directives/ref.js';
import type { Remark, ScriptView } from '../../../src/desk/wire-shapes.ts';
import type { Actions } from '../actions.ts';
import { letterOf, placed } from '../marked-score.ts';
import { placeIn } from '../places.ts';
import type { DeskState, Writing } from '../state.ts';

/** The form for a remark that stands beside no finding: at the top, whatever is in view below. */
export function looseRemark(
  state: DeskState,
  view: ScriptView,
  actions: Actions,
): TemplateResult | typeof nothing {
  const { writing } = state;
  if (writing === undefined || view.findings.some(({ id }) => id === writing.finding && id === state.chosen))
    return nothing;
  return html`<div class="loose-remark">${writingForm(writing, view, actions)}</div>`;
}

export function remarksPart(state: DeskState, view: ScriptView, actions: Actions): TemplateResult {
  const letters = new Map(placed(view.remarks).map(({ id }, i) => [id, letterOf(i)]));
  return html`<section class="own-remarks" aria-label="Your remarks">
    ${view.remarks.length === 0 ? nothing : html`<h2>Your remarks</h2>`}
    <ul>
      ${view.remarks.map((remark) => remarkItem(remark, letters.get(remark.id), state, actions))}
    </ul>
    <button type="button" @click=${() => void actions.comment()}>Comment on the whole script <kbd>C</kbd></button>
    <span class="aside">or click a place in the score</span>
  </section>`;
}

function remarkItem(
  remark: Remark,
  letter: string | undefined,
  { script, chosen }: DeskState,
  actions: Actions,
): TemplateResult {
  const who = remark.by === undefined ? '' : `, ${remark.by}`;
  return html`<li class=${chosen === remark.id ? 'chosen' : ''}>
    <span class="tag own">${letter ?? '✎'}</span>
    <span>${remark.text} <small>${script === undefined ? '' : placeIn(script, remark)}${who}</small></span>
    <button
      type="button"
      class="quiet"
      @click=${() => void actions.takeBack(remark.id, false, 'Remark taken back.')}
    >
      Take back
    </button>
  </li>`;
}

/** A remark being written, with those used before. */
export function writingForm(writing: Writing, view: ScriptView, actions: Actions): TemplateResult {
  const keep = (): void => void actions.saveRemark(writing.text);
  return html`<form
    class="writing"
    @submit=${(event: SubmitEvent) => {
      event.preventDefault();
      keep();
    }}
  >
    <label>
      ${writing.from === undefined ? 'Comment on the whole script' : `Remark at ${placeIn(view, writing)}`}
      <textarea
        ${ref(focusOnce)}
        rows="3"
        maxlength="2000"
        .value=${writing.text}
        @input=${(event: Event) => void actions.typeRemark((event.target as HTMLTextAreaElement).value)}
        @keydown=${(event: KeyboardEvent) => {
          if (event.key !== 'Enter' || event.shiftKey) return;
          event.preventDefault();
          void actions.saveRemark((event.target as HTMLTextAreaElement).value);
        }}
      ></textarea>
    </label>
    ${
      writing.offered.length === 0
        ? nothing
        : html`<ul class="bank" aria-label="Remarks used before">
            ${writing.offered.slice(0, 6).map(
              ({ text, uses }) => html`<li>
                <button type="button" @click=${() => void actions.saveRemark(text)}>
                  ${text} <small>×${uses}</small>
                </button>
              </li>`,
            )}
          </ul>`
    }
    <button>Keep <kbd>Enter</kbd></button>
    <button type="button" class="quiet" @click=${actions.closeRemark}>Leave it <kbd>Esc</kbd></button>
  </form>`;
}

/** Whoever asks for a remark wants to write it. The same function each time, so that it runs once. */
function focusOnce(element: Element | undefined): void {
  // It is not in the page yet when this is called.
  queueMicrotask(() => (element as HTMLTextAreaElement | undefined)?.focus());
}
