/** Where two markers differ, and the mark that they agree on. */
import { html, nothing, type TemplateResult } from 'lit';
import { outOf, type Scheme } from '../../../src/desk/index.ts';
import type { DifferencesView } from '../../../src/desk/wire-shapes.ts';
import { counted } from '../../../src/english/words.ts';
import type { Actions } from '../actions.ts';
import { type DeskState, hashOf, type Place, SHOWN_AT_ONCE } from '../state.ts';
import { pageLinks } from './pages.ts';

type Differing = DifferencesView['scripts'][number];

export function differencesPage(
  { differences, stack }: DeskState,
  place: Extract<Place, { view: 'differences' }>,
  actions: Actions,
): TemplateResult {
  if (differences === undefined || stack === undefined) return html`<p class="empty">Comparing marks…</p>`;
  const { total, scripts } = differences;
  return html`
    <h1>Two markers</h1>
    <p>
      ${total === 0 ? 'Wherever both have marked, the marks are the same or agreed on.' : `${counted(total, 'script')} where the marks differ. Look at ${total === 1 ? 'it' : 'each'} together, and write the mark you agree on: it stands whatever either gave.`}
    </p>
    ${
      scripts.length === 0
        ? nothing
        : html`<div class="wide-table"><table class="queue">
            <thead>
              <tr><th>Candidate</th><th>Criterion</th><th>Marks given</th><th>Agreed mark</th></tr>
            </thead>
            <tbody>
              ${scripts.map((script) => rowsOf(script, stack.scheme, actions))}
            </tbody>
          </table></div>`
    }
    ${pageLinks(place, scripts.length, total, SHOWN_AT_ONCE.differences)}
  `;
}

function rowsOf(script: Differing, scheme: Scheme, actions: Actions): TemplateResult[] {
  const name = `${script.candidate ?? `script ${script.id}`}, draft ${script.draft}`;
  return script.differences.map(({ criterion, marks }, i) => {
    const known = scheme.criteria.find(({ id }) => id === criterion);
    return html`<tr>
      <td>${i === 0 ? html`<a href=${hashOf({ view: 'script', script: script.id })}>${name}</a>` : nothing}</td>
      <td>${known?.name ?? criterion}</td>
      <td>${marks.map(({ by, marks: number }) => html`<span class="given-mark">${by ?? 'no initials'}: ${number}</span> `)}</td>
      <td>
        <form
          class="mark-form"
          @submit=${(event: SubmitEvent) => {
            event.preventDefault();
            const text = String(new FormData(event.target as HTMLFormElement).get('agreed'));
            void actions.agreeOn(script, criterion, Number(text));
          }}
        >
          <input
            name="agreed"
            type="number"
            min="0"
            max=${known === undefined ? nothing : outOf(known)}
            step="0.5"
            required
            aria-label=${`Agreed mark for ${name}, ${known?.name ?? criterion}`}
          />
          <button>Agree</button>
        </form>
      </td>
    </tr>`;
  });
}
