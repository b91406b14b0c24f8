/** The feedback sheets, one pupil to a sheet, made to be printed. */
import { html, nothing, type TemplateResult } from 'lit';
import { addressOf, ROUTES } from '../../../src/desk/wire.ts';
import type { SheetView, Stack } from '../../../src/desk/wire-shapes.ts';
import { printVoices } from '../../../src/report/sentences.ts';
import { UPBEAT } from '../../../src/score/place.ts';
import { letterOf, markedScore } from '../marked-score.ts';
import { type DeskState, type Place, SHOWN_AT_ONCE } from '../state.ts';
import { pageLinks } from './pages.ts';

export function sheetsPage(
  { sheets, stack }: DeskState,
  place: Extract<Place, { view: 'sheets' }>,
): TemplateResult {
  if (stack === undefined || sheets === undefined) {
    return html`<p class="empty">Writing the sheets…</p>`;
  }
  const { shown, total } = sheets;
  const unseen = shown.filter(({ seen }) => !seen).length;
  return html`
    <header class="bar no-print">
      <h1>Sheets</h1>
      <button type="button" class="main" @click=${() => window.print()}>Print</button>
      <a href=${addressOf(ROUTES.sheetsPdf, { params: { id: stack.id }, query: { after: place.after } })} download>${shown.length < total ? 'These' : 'All'} as PDF</a>
      <label><input type="checkbox" checked @change=${toggle('without-marks', false)} /> with marks</label>
      <label><input type="checkbox" @change=${toggle('with-list', true)} /> with every mark, on a second page</label>
      ${
        unseen === 0
          ? nothing
          : html`<p class="wrong unseen-count" role="status">
              Nobody has looked at ${unseen} of these ${shown.length} scripts yet. What only the program has found is
              printed as such.
            </p>`
      }
      ${pageLinks(place, shown.length, total, SHOWN_AT_ONCE.sheets)}
    </header>
    <div class="sheets" data-count=${shown.length}>${shown.map((sheet) => sheetView(sheet, stack))}</div>
  `;
}

/** Sets a class on the page while a box is ticked, or while it is not. */
function toggle(name: string, ticked: boolean): (event: Event) => void {
  return ({ target }) =>
    document.body.classList.toggle(name, (target as HTMLInputElement).checked === ticked);
}

/** `25 November 2026` */
const DATE = new Intl.DateTimeFormat('en-GB', { dateStyle: 'long' });

function barWords(bar: string): string {
  return bar === UPBEAT ? 'Upbeat' : `Bar ${bar}`;
}

/** A pupil must know what a person has said and what only a program has. */
function undecidedNote({ seen, findings }: SheetView): TemplateResult | typeof nothing {
  if (!seen)
    return html`<p class="unseen">Your teacher has not looked at this yet: what stands here was found by the program.</p>`;
  return findings.some(({ standing }) => standing === 'open')
    ? html`<p class="unseen">Not everything here has been decided by your teacher yet.</p>`
    : nothing;
}

function sheetView(sheet: SheetView, stack: Stack): TemplateResult {
  const { script, feedback, score, findings, remarks, since, given } = sheet;
  return html`<article class="sheet">
    <header>
      <h1>${script.candidate ?? script.file}</h1>
      <p>${sheet.title}${sheet.key === '' ? '' : `, ${sheet.key}`} · draft ${script.draft} · ${stack.name} · ${DATE.format(new Date())}</p>
    </header>
    ${undecidedNote(sheet)}
    ${score === undefined ? nothing : markedScore({ score, findings, remarks, whole: true }, undefined, `Your score with ${findings.length} marks`)}
    <div class="columns">
      <section>
        <h2>What came off well</h2>
        <ul>
          ${feedback.strengths.map((sentence) => html`<li>${sentence}</li>`)}
        </ul>
      </section>
      <section>
        <h2>To work on</h2>
        <ol>
          ${feedback.toWorkOn.map(
            ({ sentence, hint, why }) => html`<li>
              <strong>${sentence}</strong> ${why} <em>${hint}</em>
            </li>`,
          )}
        </ol>
        ${
          feedback.style.length === 0
            ? nothing
            : html`<h2>Beside the model</h2>
                <ul>
                  ${feedback.style.map((sentence) => html`<li>${sentence}</li>`)}
                </ul>`
        }
      </section>
    </div>
    ${
      remarks.length === 0
        ? nothing
        : html`<section>
            <h2>From your teacher</h2>
            <ul class="lettered">
              ${remarks.map((remark, i) => html`<li><span class="tag own">${letterOf(i)}</span> ${remark.text}</li>`)}
            </ul>
          </section>`
    }
    ${
      findings.length === 0
        ? nothing
        : html`<section class="full-list">
            <h2>The marks on the score</h2>
            <ol class="marks-list">
              ${findings.map(
                ({ message, bar, voices, severity, standing }) => html`<li class=${severity}>
                  ${barWords(bar)}${voices.length > 0 ? `, ${printVoices(voices)}` : ''}: ${message}
                  ${standing === 'open' ? html`<em class="unseen">Found by the program; your teacher has not decided.</em>` : nothing}
                </li>`,
              )}
            </ol>
          </section>`
    }
    ${since === undefined ? nothing : html`<p>Since your last draft: ${since.summary}</p>`}
    ${given === undefined || given.departures.length === 0 ? nothing : html`<p>${given.summary}</p>`}
    <p class="marks-given">
      ${sheet.marks.map(({ criterion, marks }) => {
        const named = stack.scheme.criteria.find(({ id }) => id === criterion);
        return html`<span>${named?.name ?? criterion}: ${marks}</span> `;
      })}
      ${sheet.marks.length === 0 ? nothing : html`<strong>${sheet.total.sentence}</strong>`}
    </p>
  </article>`;
}
