/** The marks, numbered as on the stave; one of them open. */
import { html, nothing, type TemplateResult } from 'lit';
import { guard } from 'lit/directives/guard.js';
import { repeat } from 'lit/directives/repeat.js';
import { capitalised } from '../../src/english/words.ts';
import { placesInWords } from '../../src/report/mark-words.ts';
import { count, printVoices, withSigns } from '../../src/report/sentences.ts';
import { leftOut, summarise, toWriteListed, toWriteTold } from '../../src/report/summary.ts';
import { hintsFor } from '../../src/review/hints.ts';
import { firstToMend, type Mark, marksOf, type Slip } from '../../src/review/marks.ts';
import type { Finding } from '../../src/review/review.ts';
import type { Severity } from '../../src/rules/rule.ts';
import { barAt, placeAt, printBars, printPlace } from '../../src/score/place.ts';
import type { Score } from '../../src/score/score.ts';
import { isShown } from '../engrave/index.ts';
import { withholds } from '../state/brief.ts';
import { givenVoices } from '../state/page.ts';
import type { Panel } from './context.ts';
import { WITHHELD } from './seen.ts';
import { voicesForm } from './voices-form.ts';
import { hasWaysOut, lastHint, waysOutView } from './ways-out.ts';

/** Made anew only where something it is made from has changed: most of what a hand does is of no concern to it. */
export function marksPanel(panel: Panel): TemplateResult {
  const { reviewed, settings, history, exercise, asking, chosen, hints, waysOut } = panel.state;
  const { bars, remarks } = history.now.score;
  const from = [reviewed, settings, exercise, asking, chosen, hints, waysOut, bars.length === 0, remarks];
  return html`${guard(from, () => marksView(panel))}`;
}

function marksView(panel: Panel): TemplateResult {
  const { reviewed, settings, history } = panel.state;
  if (history.now.score.bars.length === 0)
    return html`<div class="empty">
      <p>There is nothing to look at yet.</p>
      <p>Paste an exercise anywhere on this page, drop a file on it, or begin a new one under Exercises.</p>
    </div>`;
  if (reviewed === undefined) return html`<p class="empty">Reading the harmony…</p>`;
  const { review } = reviewed;
  if (withholds(panel.state, 'marks'))
    return html`<p class="empty">${WITHHELD}</p>
      ${unwrittenView(toWriteTold(review))} ${remarksOfReader(panel)}`;
  const marks = marksOf(review.findings).filter(({ slips: [{ finding }] }) =>
    isShown({ ...settings.shown, remarks: true }, finding.rule.family, finding.severity),
  );
  const others = marks.filter(({ severity }) => severity !== 'remark');
  const remarks = marks.filter(({ severity }) => severity === 'remark');
  const hidden = new Set(review.findings.flatMap(({ mark }) => mark ?? [])).size - marks.length;
  return html`
    ${voicesRead(panel)}
    <p class="verdict">${summarise(review).sentence}</p>
    ${hidden === 0 ? nothing : html`<p class="aside">${hidden} more not shown; choose what is under Show.</p>`}
    ${
      review.switchedOff.length === 0
        ? nothing
        : html`<p class="aside">The profile “${review.profile.name}” leaves out: ${leftOut(review, [...reviewed.rules.values()])}.</p>`
    }
    ${others.length > 1 ? orderChoice(panel) : nothing} ${markLists(panel, others)}
    ${remarks.length === 0 ? nothing : remarksView(panel, remarks)} ${unwrittenView(toWriteListed(review))} ${remarksOfReader(panel)}
  `;
}

function orderChoice({ state, actions }: Panel): TemplateResult {
  const { byBar } = state.settings;
  return html`<button type="button" class="quiet order" aria-keyshortcuts="M" @click=${actions.toggleOrder}>
    ${byBar ? 'Listed by bar. What costs most first' : 'What costs most first. By bar'} <kbd>M</kbd>
  </button>`;
}

/** What costs most first, with what to begin with set apart; or slip by slip from bar to bar. */
function markLists(panel: Panel, marks: readonly Mark[]): TemplateResult {
  if (panel.state.settings.byBar) {
    const single = marks.flatMap((mark) =>
      mark.slips.map((slip): Mark => ({ ...mark, severity: slip.finding.severity, slips: [slip] })),
    );
    return markList(
      panel,
      single.sort((a, b) => a.slips[0].finding.from - b.slips[0].finding.from || a.number - b.number),
    );
  }
  const first = firstToMend(marks);
  if (first.length === 0) return markList(panel, marks);
  return html`
    <h2 class="marks-head">First to mend</h2>
    ${markList(panel, first)}
    <h2 class="marks-head">After that</h2>
    ${markList(panel, marks.slice(first.length))}
  `;
}

function markList(panel: Panel, marks: readonly Mark[]): TemplateResult {
  return html`<ol class="marks">
    ${repeat(
      marks,
      ({ slips: [{ finding }] }) => finding.id,
      (mark) => markView(panel, mark),
    )}
  </ol>`;
}

/** Remarks only inform: they are closed, here and on the stave, until they are asked for. */
function remarksView(panel: Panel, remarks: readonly Mark[]): TemplateResult {
  const { state, actions } = panel;
  const open = state.settings.shown.remarks;
  const number = remarks.reduce((sum, { slips }) => sum + slips.length, 0);
  return html`<section class="remark-list">
    <button
      type="button"
      class="quiet"
      aria-expanded=${open}
      @click=${() => actions.setShown({ remarks: !open })}
    >
      ${open ? 'Close the remarks' : `Show ${count(number, 'remark')}`}
    </button>
    ${open ? markList(panel, remarks) : nothing}
  </section>`;
}

function unwrittenView(unwritten: readonly string[]): TemplateResult | typeof nothing {
  return unwritten.length === 0
    ? nothing
    : html`<details class="unwritten">
        <summary>Still to be written: ${unwritten.length} ${unwritten.length === 1 ? 'place' : 'places'}</summary>
        <ul>
          ${unwritten.map((sentence) => html`<li>${sentence}</li>`)}
        </ul>
      </details>`;
}

function markView(panel: Panel, mark: Mark): TemplateResult {
  const { state, actions, commands } = panel;
  const { slips, number, severity } = mark;
  const [{ finding }] = slips;
  const chosen = slips.find(
    (slip) => slip.finding.id === state.chosen || slip.follows.some(({ id }) => id === state.chosen),
  );
  const noted = slips.every((slip) => state.exercise.notes[slip.finding.id] !== undefined);
  return html`<li class="mark ${severity} ${chosen ? 'open' : ''} ${noted ? 'noted' : ''}">
    <button
      type="button"
      class="mark-head"
      data-finding=${finding.id}
      aria-expanded=${chosen !== undefined}
      @click=${(event: MouseEvent) => {
        actions.choose(chosen ? undefined : finding.id);
        if (!chosen) commands.scrollToFinding(finding.id);
        // With the mouse the keyboard stays where one writes; a key that opened it reads on here.
        if (event.detail > 0) commands.focusStave();
      }}
    >
      <span class="tag ${severity}">${number}</span>
      <span class="mark-title"
        ><span class="mark-name">${finding.rule.name}</span>
        <span class="mark-place">${slips.length === 1 ? placeOf(panel, finding) : placesOf(panel, slips)}</span></span
      >
      <span class="severity">${severity}</span>
    </button>
    ${chosen && slips.length > 1 ? placeChoice(panel, mark, chosen) : nothing}
    ${chosen ? markBody(panel, chosen) : nothing}
  </li>`;
}

/** `3 places: bars 1, 2 and 4`. */
function placesOf({ state }: Panel, slips: readonly Slip[]): string {
  const score = state.reviewed?.review.score;
  if (score === undefined) return '';
  const bars = slips.map(({ finding }) => barAt(score, finding.from).number);
  return `${slips.length} places: ${printBars(bars)}`;
}

/** The places of a repeated slip, to go from one to the next. */
function placeChoice(panel: Panel, { slips, severity }: Mark, chosen: Slip): TemplateResult {
  const { actions, commands } = panel;
  return html`<ul class="places">
    ${slips.map(
      (slip) => html`<li>
        <button
          type="button"
          data-finding=${slip === slips[0] ? nothing : slip.finding.id}
          aria-current=${slip === chosen ? 'true' : nothing}
          @click=${(event: MouseEvent) => {
            actions.choose(slip.finding.id);
            commands.scrollToFinding(slip.finding.id);
            if (event.detail > 0) commands.focusStave();
          }}
        >
          ${placeOf(panel, slip.finding)}${slip.finding.severity === severity ? '' : ` (${slip.finding.severity})`}
        </button>
      </li>`,
    )}
  </ul>`;
}

function placeOf({ state }: Panel, finding: Finding): string {
  const score = state.reviewed?.review.score;
  const place = score === undefined ? '' : printPlace(placeAt(score, finding.from));
  return finding.voices.length === 0 ? place : `${place}, ${printVoices(finding.voices)}`;
}

function markBody(panel: Panel, { finding, follows }: Slip): TemplateResult {
  const { actions, commands, state } = panel;
  const { rule } = finding;
  const analysis = state.reviewed?.review.analysis;
  const hints = analysis === undefined ? rule.hints : hintsFor(analysis, finding, givenVoices(state));
  const shown = withholds(panel.state, 'hints') ? 0 : (state.hints[finding.id] ?? 0);
  const steps = [hints[0], hints[1], lastHint(panel, finding, hints[2])];
  const openNext = () => {
    actions.openHint(finding.id);
    // Trying every note takes a moment: it is asked for with the last hint alone.
    if (shown === 2 && hasWaysOut(panel, finding)) commands.findWaysOut(finding.id);
  };
  const two = finding.voices.length === 2;
  return html`<div class="mark-body">
    <p class="message">${withSigns(finding.message)}</p>
    <p class="why">${rule.why}</p>
    ${follows.length === 0 ? nothing : followsView(panel, follows)}
    ${shown === 0 ? nothing : html`<ol class="hints" role="status">${steps.slice(0, shown).map((hint) => html`<li>${withSigns(hint)}</li>`)}</ol>`}
    <div class="mark-commands">
      ${
        shown < 3 && !withholds(panel.state, 'hints')
          ? html`<button type="button" @click=${openNext}>
              ${shown === 0 ? 'A hint' : `Hint ${shown + 1} of 3`}
            </button>`
          : nothing
      }
      ${
        finding.voices.length > 0 && !withholds(panel.state, 'playback')
          ? html`<button type="button" @click=${() => commands.playVoices(finding.voices, finding.from, finding.until)}>
              ${two ? 'Hear just these two voices' : finding.voices.length === 1 ? 'Hear this voice' : 'Hear this place'}
            </button>`
          : nothing
      }
      <a class="button" href="#rules/${rule.id}">The rule</a>
    </div>
    ${waysOutView(panel, finding, shown === 3)}
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

/** What mending this slip mends as well: told, but not counted as work of its own. */
function followsView(panel: Panel, follows: readonly Finding[]): TemplateResult {
  return html`<details class="follows">
    <summary>${follows.length === 1 ? 'One more thing follows' : `${follows.length} more things follow`} from it</summary>
    <ul>
      ${follows.map(
        (each) => html`<li>
          <strong>${each.rule.name}</strong> (${each.severity}), ${placeOf(panel, each)}. ${withSigns(each.message)}
        </li>`,
      )}
    </ul>
  </details>`;
}

/** The same list for paper: every mark with what happened there, and nothing to press. */
export function printedList(panel: Panel): TemplateResult | typeof nothing {
  const { reviewed, settings } = panel.state;
  if (reviewed === undefined) return nothing;
  const { review } = reviewed;
  const marks = marksOf(review.findings).filter(({ slips: [{ finding }] }) =>
    isShown(settings.shown, finding.rule.family, finding.severity),
  );
  const severities = SEVERITIES.filter((severity) => marks.some((mark) => mark.severity === severity));
  const withheld = withholds(panel.state, 'marks');
  const unwritten = withheld ? toWriteTold(review) : toWriteListed(review);
  return html`<section class="printed" aria-hidden="true">
    ${withheld ? nothing : html`<p class="verdict">${summarise(review).sentence}</p>`}
    ${
      severities.length === 0
        ? nothing
        : html`<p class="legend">
            ${severities.map((severity) => html`<span><span class="tag ${severity}">1</span> ${LEGEND[severity]}</span>`)}
          </p>`
    }
    <ol class="marks">
      ${marks.map((mark) => printedMark(panel, review.score, mark))}
    </ol>
    ${unwritten.length === 0 ? nothing : html`<p>${unwritten.join(' ')}</p>`}
  </section>`;
}

const SEVERITIES: readonly Severity[] = ['fault', 'query', 'remark'];
const LEGEND: Readonly<Record<Severity, string>> = {
  fault: 'fault: it breaks the style',
  query: 'query: worth a second look',
  remark: 'remark: it informs',
};

function printedMark(panel: Panel, score: Score, mark: Mark): TemplateResult {
  const { number, severity, slips } = mark;
  const { notes } = panel.state.exercise;
  return html`<li class="mark ${severity}">
    <span class="tag ${severity}">${number}</span>
    <div>
      <strong>${slips[0].finding.rule.name}</strong>, ${severity}
      ${placesInWords(score, mark).map(({ sentence, follows }, index) => {
        const note = notes[slips[index]!.finding.id];
        return html`<p>
            ${withSigns(capitalised(sentence))} ${note === undefined ? nothing : html`Meant so: “${note}”`}
          </p>
          ${follows === '' ? nothing : html`<p class="from-it">${withSigns(follows)}</p>`}`;
      })}
    </div>
  </li>`;
}

/** Which voices were read, where that was a guess or a part was set aside: everything else hangs on it. */
function voicesRead(panel: Panel): TemplateResult | typeof nothing {
  const { remarks } = panel.state.history.now.score;
  const told = remarks.flatMap(({ about, message }) => (about === 'voices' ? [message] : []));
  const how = isDoubtful(panel) ? panel.state.exercise.source!.assignment.how : undefined;
  if (told.length === 0 && how === undefined) return nothing;
  // A file that was refused at first has its reason here alone.
  const untold = how !== undefined && !told.includes(how);
  return html`<section class="voices-read">
    <h2>Voices</h2>
    ${[...(untold ? [how] : []), ...told].map((message) => html`<p>${message}</p>`)}
    ${how === undefined ? nothing : voicesForm(panel, untold)}
  </section>`;
}

/** Where the voices were a guess at first the form stays in its place while they are put right. */
function isDoubtful({ state }: Panel): boolean {
  return state.exercise.source?.doubtful === true;
}

/** What else the reader noticed in the file. */
function remarksOfReader(panel: Panel): TemplateResult | typeof nothing {
  const remarks = panel.state.history.now.score.remarks.filter(({ about }) => about === undefined);
  const { source } = panel.state.exercise;
  if (remarks.length === 0 && (source === undefined || isDoubtful(panel))) return nothing;
  return html`<section class="reader-remarks">
    <h2>Noticed while reading</h2>
    <ul>
      ${remarks.map(
        ({ message, line, column }) =>
          html`<li>${line === undefined ? nothing : html`<span class="place">Line ${line}${column === undefined ? '' : `, column ${column}`}:</span> `}${message}</li>`,
      )}
    </ul>
    ${isDoubtful(panel) ? nothing : voicesForm(panel, false)}
  </section>`;
}
