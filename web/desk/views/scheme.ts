/** The mark scheme beside a script: what the evidence suggests, and the marks that the teacher gives. */
import { html, nothing, type TemplateResult } from 'lit';
import { outOf, type Scheme, total } from '../../../src/desk/index.ts';
import type { ScriptView } from '../../../src/desk/wire-shapes.ts';
import type { Actions } from '../actions.ts';

export function schemePanel(scheme: Scheme, view: ScriptView, actions: Actions): TemplateResult {
  const sum = total(scheme, view.marks);
  return html`<section class="scheme" aria-label="Mark scheme">
    <h2>${scheme.name}</h2>
    ${scheme.criteria.map((criterion) => criterionView(criterion, view, actions))}
    <p class="total">${sum.sentence}</p>
  </section>`;
}

function criterionView(
  criterion: Scheme['criteria'][number],
  view: ScriptView,
  actions: Actions,
): TemplateResult {
  const given = view.marks.find((mark) => mark.criterion === criterion.id);
  const suggestion = view.suggestions.find((s) => s.criterion === criterion.id);
  const level = suggestion?.level;
  return html`<details class="criterion" ?open=${given === undefined}>
    <summary>
      ${criterion.name}
      <span>${given === undefined ? 'not marked yet' : `${given.marks} of ${outOf(criterion)}`}</span>
    </summary>
    <ol class="levels">
      ${criterion.levels.map(
        ({ name, marks, descriptor }, i) => html`<li class=${i === level ? 'suggested' : ''}>
          <strong>${name}</strong> (${marks[0] === marks[1] ? marks[0] : `${marks[0]} to ${marks[1]}`}): ${descriptor}
          ${i === level ? html`<em>the figures speak for this level</em>` : nothing}
        </li>`,
      )}
    </ol>
    ${
      suggestion === undefined
        ? nothing
        : html`<ul class="evidence">
            ${suggestion.evidence.map((sentence) => html`<li>${sentence}</li>`)}
            ${suggestion.missing.map((sentence) => html`<li class="missing">${sentence}</li>`)}
          </ul>`
    }
    <form
      class="mark-form"
      @submit=${(event: SubmitEvent) => {
        event.preventDefault();
        const field = (event.target as HTMLFormElement).elements.namedItem('marks') as HTMLInputElement;
        void actions.giveMark(criterion.id, field.value === '' ? null : Number(field.value));
      }}
    >
      <label>
        Your mark
        <input
          name="marks"
          type="number"
          min="0"
          max=${outOf(criterion)}
          step="0.5"
          .value=${given === undefined ? '' : String(given.marks)}
        />
      </label>
      of ${outOf(criterion)} <button>Give</button>
    </form>
  </details>`;
}
