/** The mark scheme beside a script: what the evidence suggests, and the marks that the teacher gives. */
import { html, nothing, type TemplateResult } from 'lit';
import { outOf, type Scheme, total } from '../../../src/desk/index.ts';
import type { ScriptView, Stack, Suggestion } from '../../../src/desk/wire-shapes.ts';
import type { Actions } from '../actions.ts';
import type { DeskState } from '../state.ts';
import { ownMark } from '../steps.ts';

type Criterion = Scheme['criteria'][number];

export function schemePanel(stack: Stack, state: DeskState, actions: Actions): TemplateResult {
  const { scheme } = stack;
  const view = state.script!;
  return html`<section class="scheme" aria-label="Mark scheme">
    <h2>
      ${scheme.name}
      ${
        state.marking === undefined
          ? html`<button type="button" @click=${actions.openMarks}>Give marks <kbd>M</kbd></button>`
          : html`<button type="button" @click=${actions.closeMarks}>Back <kbd>M</kbd></button>`
      }
    </h2>
    ${scheme.criteria.map((criterion) => criterionView(criterion, state, view, actions))}
    <p class="total">${total(scheme, view.marks).sentence}</p>
  </section>`;
}

function criterionView(
  criterion: Criterion,
  state: DeskState,
  view: ScriptView,
  actions: Actions,
): TemplateResult {
  const { stack, marking, initials } = state;
  const own = ownMark(stack, view, initials, criterion.id);
  const suggestion = view.suggestions.find((s) => s.criterion === criterion.id);
  return html`<details
    class="criterion"
    data-criterion=${criterion.id}
    ?open=${own === undefined || marking === criterion.id}
  >
    <summary>
      ${criterion.name}
      <span>${markWords(criterion, own)}</span>
    </summary>
    ${levelsOf(criterion, suggestion)} ${evidenceOf(suggestion)} ${othersMarks(criterion, state, view)}
    ${markForm(criterion, own, actions)}
  </details>`;
}

/** A mark above what the scheme now gives is flagged where it stands. */
function markWords(criterion: Criterion, own: number | undefined): string {
  if (own === undefined) return 'not marked yet';
  const most = outOf(criterion);
  return own > most ? `${own}: more than ${most}, not added` : `${own} of ${most}`;
}

function levelsOf({ levels }: Criterion, suggestion: Suggestion | undefined): TemplateResult {
  return html`<ol class="levels">
    ${levels.map(
      ({ name, marks, descriptor }, i) => html`<li class=${i === suggestion?.level ? 'suggested' : ''}>
        <strong>${name}</strong> (${marks[0] === marks[1] ? marks[0] : `${marks[0]} to ${marks[1]}`}): ${descriptor}
        ${i === suggestion?.level ? html`<em>the figures speak for this level</em>` : nothing}
      </li>`,
    )}
  </ol>`;
}

function evidenceOf(suggestion: Suggestion | undefined): TemplateResult | typeof nothing {
  if (suggestion === undefined) return nothing;
  return html`<ul class="evidence">
    ${suggestion.evidence.map((sentence) => html`<li>${sentence}</li>`)}
    ${suggestion.missing.map((sentence) => html`<li class="missing">${sentence}</li>`)}
  </ul>`;
}

/** What the other marker gave, as far as it is to be seen, and what was agreed on. */
function othersMarks(
  { id }: Criterion,
  { stack, initials }: DeskState,
  { marksGiven }: ScriptView,
): TemplateResult | typeof nothing {
  if (stack?.second === undefined) return nothing;
  const others = marksGiven.filter(
    ({ criterion, by, agreed }) => criterion === id && (agreed || by !== initials),
  );
  if (others.length === 0)
    return stack.second === 'blind'
      ? html`<p class="aside">The other marker’s mark shows when you have given yours.</p>`
      : nothing;
  return html`<p class="given-marks">
    ${others.map(({ by, marks, agreed }) => html`<span>${agreed ? 'Agreed' : (by ?? 'Before')}: ${marks}.</span> `)}
  </p>`;
}

function markForm(criterion: Criterion, own: number | undefined, actions: Actions): TemplateResult {
  return html`<form
    class="mark-form"
    @submit=${(event: SubmitEvent) => {
      event.preventDefault();
      const field = (event.target as HTMLFormElement).elements.namedItem('marks') as HTMLInputElement;
      void actions.giveMarkAndGoOn(criterion.id, field.value === '' ? null : Number(field.value));
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
        .value=${own === undefined ? '' : String(own)}
      />
    </label>
    of ${outOf(criterion)} <button>Give</button>
  </form>`;
}
