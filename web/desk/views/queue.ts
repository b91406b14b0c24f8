/** The queue: files dropped in, scripts to be marked. */
import { html, nothing, type TemplateResult } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import { addressOf, ROUTES } from '../../../src/desk/wire.ts';
import type { Entry, Queue } from '../../../src/desk/wire-shapes.ts';
import type { Actions } from '../actions.ts';
import { type DeskState, hashOf, type Place, SHOWN_AT_ONCE } from '../state.ts';
import { pageLinks } from './pages.ts';

export function queuePage(
  { queue, stack, taking }: DeskState,
  place: Extract<Place, { view: 'queue' }>,
  actions: Actions,
): TemplateResult {
  if (stack === undefined || queue === undefined) return html`<p class="empty">Fetching the stack…</p>`;
  return html`
    <section
      class="drop"
      @dragover=${(event: DragEvent) => event.preventDefault()}
      @drop=${(event: DragEvent) => {
        event.preventDefault();
        void actions.take([...(event.dataTransfer?.files ?? [])]);
      }}
    >
      <h1>${stack.name}</h1>
      <p>Drop files here, or a zip of them: MusicXML, MXL, ABC or text, mixed. ${fileChooser(actions)}</p>
      ${takingPart(taking)}
    </section>
    <section>
      ${
        queue.total === 0
          ? nothing
          : html`${intakePart(queue)} ${waysOn(queue, stack.id)} ${scriptsTable(queue)}
            ${pageLinks(place, queue.scripts.length, queue.total, SHOWN_AT_ONCE.queue)}`
      }
    </section>
  `;
}

function fileChooser(actions: Actions): TemplateResult {
  return html`<label class="button">
    Choose files<input
      type="file"
      multiple
      class="visually-hidden"
      @change=${(event: Event) => {
        const input = event.target as HTMLInputElement;
        void actions.take([...(input.files ?? [])]).then(() => {
          input.value = '';
        });
      }}
    />
  </label>`;
}

/** Files on their way, and what is to be said of those that have come. */
function takingPart(taking: DeskState['taking']): TemplateResult | typeof nothing {
  if (taking === undefined) return nothing;
  const { done, of, messages } = taking;
  return html`<p role="status">
      <progress max=${Math.max(1, of)} value=${done}></progress>
      ${done} of ${of} files
    </p>
    ${messages.map((message) => html`<p class="wrong">${message}</p>`)}`;
}

/** What lies on the stack, the doubtful first. */
function intakePart({ intake }: Queue): TemplateResult {
  return html`<ul class="doubts">
      ${intake.doubts.map((doubt) => html`<li>${doubt}</li>`)}
    </ul>
    <p class="intake">${intake.summary}</p>`;
}

function waysOn({ next, done, total }: Queue, id: number): TemplateResult {
  return html`<p>
    ${next === undefined ? 'All done.' : html`<a class="button" href=${hashOf({ view: 'script', script: next })}>Mark the next one</a>`}
    ${done} of ${total} done.
    <a href=${addressOf(ROUTES.markBook, { params: { id } })} download>Mark book (CSV)</a>
    <a href=${addressOf(ROUTES.everything, { params: { id } })} download>Everything (JSON)</a>
  </p>`;
}

function scriptsTable({ scripts }: Queue): TemplateResult {
  return html`<div class="wide-table"><table class="queue of-scripts">
    <thead>
      <tr>
        <th>Candidate</th>
        <th>Draft</th>
        <th>Faults</th>
        <th>Queries</th>
        <th>To decide</th>
        <th class="overruled">Overruled</th>
        <th class="file">File</th>
      </tr>
    </thead>
    <tbody>
      ${repeat(scripts, ({ id }) => id, row)}
    </tbody>
  </table></div>`;
}

function row(entry: Entry): TemplateResult {
  const name = entry.candidate ?? 'no number';
  const nameless = entry.candidate === undefined ? ' nameless' : '';
  if (entry.error !== undefined) {
    return html`<tr class=${`unreadable${nameless}`}>
      <td><a href=${hashOf({ view: 'script', script: entry.id })}>${name}</a></td>
      <td>${entry.draft}</td>
      <td colspan="4">Could not be read: ${entry.error.message}</td>
      <td class="file">${entry.file}</td>
    </tr>`;
  }
  return html`<tr class=${`${entry.done ? 'done' : ''}${nameless}`}>
    <td><a href=${hashOf({ view: 'script', script: entry.id })}>${name}</a>${entry.done ? ' ✓' : ''}</td>
    <td>${entry.draft}</td>
    <td>${entry.faults}</td>
    <td>${entry.queries}</td>
    <td>${entry.open}</td>
    <td class="overruled">${entry.overruled}</td>
    <td class="file">${entry.file}</td>
  </tr>`;
}
