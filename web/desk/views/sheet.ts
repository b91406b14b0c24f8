/** One pupil's sheet, made for one side of A4. */
import { html, nothing, type TemplateResult } from 'lit';
import { numbersOf, outOf } from '../../../src/desk/index.ts';
import type { SheetOptions } from '../../../src/desk/sheet-options.ts';
import type { SheetView, Stack } from '../../../src/desk/wire-shapes.ts';
import { capitalised, listed } from '../../../src/english/words.ts';
import { printVoices } from '../../../src/report/sentences.ts';
import { letterOf, markedScore, placed } from '../marked-score.ts';
import { barInWords } from '../places.ts';
import { progressPicture } from './progress.ts';

/** `25 November 2026` */
const DATE = new Intl.DateTimeFormat('en-GB', { dateStyle: 'long' });

export function sheetView(sheet: SheetView, stack: Stack, { parts }: SheetOptions): TemplateResult {
  const { script, score, findings, remarks, since, given } = sheet;
  return html`<article class="sheet" data-script=${script.id} data-name=${`${script.candidate ?? script.file} draft ${script.draft}`}>
    <header>
      <h1>${script.candidate ?? script.file}</h1>
      <p>${sheet.title}${sheet.key === '' ? '' : `, ${sheet.key}`} · draft ${script.draft} · ${stack.name} · ${DATE.format(new Date())}</p>
    </header>
    ${undecidedNote(sheet)} ${overallPart(sheet)}
    ${score === undefined ? nothing : markedScore({ score, findings, remarks, whole: true }, undefined, `Your score with ${findings.length} marks`)}
    ${feedbackPart(sheet)} ${remarksPart(sheet)}
    <div class="sheet-foot">
      <div>
        ${since === undefined ? nothing : html`<p>Since your last draft: ${since.summary}</p>`}
        ${given === undefined || given.departures.length === 0 ? nothing : html`<p>${given.summary}</p>`}
        ${parts.includes('marks') ? marksPart(sheet, stack) : nothing}
        ${parts.includes('markers') && sheet.markers.length > 0 ? html`<p class="markers">Marked by ${listed(sheet.markers)}.</p>` : nothing}
      </div>
      ${progressPicture(sheet.drafts)}
    </div>
    ${parts.includes('list') ? listPart(sheet) : nothing}
  </article>`;
}

/** A pupil must know what a person has said and what only a program has. */
function undecidedNote({ seen, findings }: SheetView): TemplateResult | typeof nothing {
  if (!seen)
    return html`<p class="unseen">Your teacher has not looked at this yet: what stands here was found by the program.</p>`;
  return findings.some(({ standing }) => standing === 'open')
    ? html`<p class="unseen">Not everything here has been decided by your teacher yet.</p>`
    : nothing;
}

/** What the teacher says of the whole: before anything else. */
function overallPart({ remarks }: SheetView): TemplateResult | typeof nothing {
  const overall = remarks.filter(({ from }) => from === undefined);
  if (overall.length === 0) return nothing;
  return html`<section class="overall">${overall.map(({ text }) => html`<p>${text}</p>`)}</section>`;
}

function feedbackPart({ feedback, findings }: SheetView): TemplateResult {
  const numbers = numbersOf(findings);
  const inScore = (ids: readonly string[]): string => {
    const shown = [...new Set(ids.flatMap((id) => numbers.get(id) ?? []))];
    return shown.length === 0 ? '' : `(${listed(shown.map(String))} in the score)`;
  };
  return html`<div class="columns">
    <section>
      <h2>What came off well</h2>
      ${
        feedback.strengths.length === 0
          ? html`<p>Write on: there is not enough yet to tell.</p>`
          : html`<ul>${feedback.strengths.map((sentence) => html`<li>${sentence}</li>`)}</ul>`
      }
      ${
        feedback.style.length === 0
          ? nothing
          : html`<h2>Beside the model</h2>
              <ul>${feedback.style.map((sentence) => html`<li>${sentence}</li>`)}</ul>`
      }
    </section>
    <section>
      <h2>To work on</h2>
      ${
        feedback.toWorkOn.length === 0
          ? html`<p>Nothing stands against it.</p>`
          : html`<ol>
              ${feedback.toWorkOn.map(
                ({ sentence, hint, why, findings: ids }) => html`<li>
                  <strong>${sentence}</strong> ${inScore(ids)} ${why} <em>${hint}</em>
                </li>`,
              )}
            </ol>`
      }
    </section>
  </div>`;
}

function remarksPart({ remarks }: SheetView): TemplateResult | typeof nothing {
  const own = placed(remarks);
  if (own.length === 0) return nothing;
  return html`<section class="from-teacher">
    <h2>From your teacher</h2>
    <ul class="lettered">
      ${own.map(({ text }, i) => html`<li><span class="tag own">${letterOf(i)}</span> ${text}</li>`)}
    </ul>
  </section>`;
}

function marksPart({ marks, total }: SheetView, { scheme }: Stack): TemplateResult | typeof nothing {
  if (marks.length === 0) return nothing;
  const rows = scheme.criteria.flatMap((criterion) => {
    const given = marks.find((mark) => mark.criterion === criterion.id);
    return given === undefined ? [] : [{ criterion, given }];
  });
  return html`<div class="marks-given">
    <dl>
      ${rows.map(
        ({ criterion, given }) =>
          html`<div><dt>${criterion.name}</dt><dd>${given.marks} of ${outOf(criterion)}</dd></div>`,
      )}
    </dl>
    <p><strong>${total.sentence}</strong></p>
  </div>`;
}

function listPart({ findings }: SheetView): TemplateResult | typeof nothing {
  if (findings.length === 0) return nothing;
  const numbers = numbersOf(findings);
  return html`<section class="full-list">
    <h2>The marks on the score</h2>
    <ol class="marks-list">
      ${findings.map(
        ({
          id,
          message,
          bar,
          voices,
          severity,
          standing,
        }) => html`<li class=${severity} value=${numbers.get(id)!}>
          ${capitalised(barInWords(bar))}${voices.length > 0 ? `, ${printVoices(voices)}` : ''}: ${message}
          ${standing === 'open' ? html`<em class="unseen">Found by the program; your teacher has not decided.</em>` : nothing}
        </li>`,
      )}
    </ol>
  </section>`;
}
