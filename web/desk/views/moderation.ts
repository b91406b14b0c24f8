/** Scripts side by side in rank order, at one criterion or by total. */
import { html, nothing, type TemplateResult } from 'lit';
import type { ModerationView } from '../../../src/desk/wire-shapes.ts';
import type { Actions } from '../actions.ts';
import { markedScore } from '../marked-score.ts';
import { type DeskState, hashOf, type Place, SHOWN_AT_ONCE } from '../state.ts';
import { pageLinks } from './pages.ts';

export function moderationPage(
  { moderation, stack, beside }: DeskState,
  place: Extract<Place, { view: 'moderation' }>,
  actions: Actions,
): TemplateResult {
  if (moderation === undefined || stack === undefined) return html`<p class="empty">Laying them out…</p>`;
  return html`
    <header class="bar">
      <h1>Side by side</h1>
      <label>
        In order of
        <select
          @change=${(event: Event) =>
            actions.go({ ...place, after: 0, criterion: (event.target as HTMLSelectElement).value })}
        >
          <option value="" ?selected=${place.criterion === ''}>total</option>
          ${stack.scheme.criteria.map(
            ({ id, name }) => html`<option value=${id} ?selected=${place.criterion === id}>${name}</option>`,
          )}
        </select>
      </label>
      ${pageLinks(place, moderation.ranked.length, moderation.marked, SHOWN_AT_ONCE.moderation)}
    </header>
    ${
      moderation.ranked.length === 0
        ? html`<p class="empty">No script has ${place.criterion === '' ? 'all its marks' : 'a mark at this criterion'} yet.</p>`
        : html`<div class="side-by-side" tabindex="0" role="region" aria-label="Scripts in order">
            ${moderation.ranked.map((entry) => column(entry, beside, place.criterion))}
          </div>`
    }
    ${
      moderation.unmarked.length === 0
        ? nothing
        : html`<p>
            Not marked yet:
            ${moderation.unmarked.map(
              ({ id, candidate }) =>
                html`<a href=${hashOf({ view: 'script', script: id })}>${candidate ?? `script ${id}`}</a> `,
            )}
            ${moderation.notMarked > moderation.unmarked.length ? `and ${moderation.notMarked - moderation.unmarked.length} more` : nothing}
          </p>`
    }
  `;
}

function column(
  { rank, marks, script }: ModerationView['ranked'][number],
  beside: DeskState['beside'],
  criterion: string,
): TemplateResult {
  const view = beside[script.id];
  const suggestion = view?.suggestions.find((s) => s.criterion === criterion);
  const standing = view?.findings.filter((finding) => finding.standing !== 'overruled') ?? [];
  return html`<article>
    <h2>
      ${rank}. <a href=${hashOf({ view: 'script', script: script.id })}>${script.candidate ?? `script ${script.id}`}</a>
      <span>${marks} marks</span>
    </h2>
    <ul class="evidence">
      ${suggestion?.evidence.map((sentence) => html`<li>${sentence}</li>`)}
    </ul>
    ${
      view?.score === undefined
        ? nothing
        : markedScore(
            { score: view.score, findings: standing, remarks: view.remarks },
            undefined,
            `Score of ${script.candidate ?? 'this script'}`,
          )
    }
  </article>`;
}
