/** The text beside the stave. What could not be read is underlined there and told below, line by line. */
import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import type { Problem, Span } from '../../src/notation/index.ts';
import { obeyKey } from '../state/keys.ts';
import { spansOf } from '../state/work.ts';
import type { Panel } from './context.ts';

export function textPanel(panel: Panel): TemplateResult {
  const { state, actions } = panel;
  const { text, problems } = state.history.now;
  const lines = text.split('\n');
  return html`
    <label class="text-label" for="notation">
      The exercise as text. It and the stave are one: change either.
      <a href="#help">How it is written</a>
    </label>
    <div class="text-editor ${problems.length > 0 ? 'troubled' : ''}">
      <div class="text-paper">
        <pre class="text-under" aria-hidden="true">${lines.map((line, i) => underLine(panel, line, i + 1))}</pre>
        <textarea
          id="notation"
          spellcheck="false"
          autocapitalize="off"
          autocomplete="off"
          wrap="off"
          rows=${Math.max(10, lines.length + 1)}
          aria-describedby="text-problems"
          aria-invalid=${problems.length > 0}
          .value=${live(text)}
          @input=${(event: Event) => actions.typeText((event.target as HTMLTextAreaElement).value)}
          @keydown=${(event: KeyboardEvent) => textKey(event, panel)}
          @keyup=${(event: Event) => follow(event, panel)}
          @click=${(event: Event) => follow(event, panel)}
        ></textarea>
      </div>
    </div>
    <div id="text-problems" class="text-problems">
      ${problems.length === 0 ? nothing : problemList(panel, problems)}
    </div>
  `;
}

function problemList({ actions }: Panel, problems: readonly Problem[]): TemplateResult {
  return html`
    <h2>${problems.length === 1 ? 'One thing could not be read' : `${problems.length} things could not be read`}</h2>
    <ol>
      ${problems.map(
        (problem) => html`<li>
          <button type="button" class="place-link" @click=${() => goTo(problem)}>
            Line ${problem.line}, column ${problem.column}
          </button>
          ${problem.message}
        </li>`,
      )}
    </ol>
    <p class="aside">
      The stave shows what could be read, with open beats for the rest.
      <button type="button" class="quiet" @click=${actions.dropUnread}>Leave out what can’t be read</button>
    </p>
  `;
}

/** One line of the layer beneath the letters: the caret's note is marked, troubles are underlined. */
function underLine({ state }: Panel, line: string, number: number): TemplateResult {
  const { problems } = state.history.now;
  const spans = spansOf(state.history.now);
  const pieces = [
    ...spans
      .filter((span) => span.line === number && isAtCaret(span, state.caret))
      .map((span) => piece(span, 'here')),
    ...problems
      .filter((problem) => problem.line === number)
      .map((problem) => ({
        from: problem.column - 1,
        length: wordLength(line, problem.column - 1),
        kind: 'trouble',
      })),
  ].sort((a, b) => a.from - b.from);
  const parts: (string | TemplateResult)[] = [];
  let at = 0;
  for (const { from, length, kind } of pieces) {
    if (from < at) continue;
    parts.push(
      line.slice(at, from),
      html`<mark class=${kind}>${line.slice(from, from + length) || ' '}</mark>`,
    );
    at = from + length;
  }
  parts.push(line.slice(at));
  return html`${parts}${'\n'}`;
}

const piece = (span: Span, kind: string) => ({ from: span.column - 1, length: span.length, kind });

function isAtCaret(span: Span, caret: Panel['state']['caret']): boolean {
  return span.voice === caret.voice && span.at === caret.at;
}

function wordLength(line: string, from: number): number {
  return Math.max(1, /^[^\s|]*/.exec(line.slice(from))?.[0].length ?? 1);
}

function textarea(): HTMLTextAreaElement | null {
  return document.querySelector('#notation');
}

function goTo({ line, column }: Problem): void {
  const area = textarea();
  if (area === null) return;
  const lines = area.value.split('\n');
  const start = lines.slice(0, line - 1).reduce((sum, l) => sum + l.length + 1, 0) + column - 1;
  area.focus();
  area.setSelectionRange(start, start + wordLength(lines[line - 1] ?? '', column - 1));
}

function follow(event: Event, { actions }: Panel): void {
  const area = event.target as HTMLTextAreaElement;
  const before = area.value.slice(0, area.selectionStart).split('\n');
  actions.followText(before.length, (before.at(-1)?.length ?? 0) + 1);
}

/** One history for text and stave: the browser's own undo knows nothing of the stave. */
function textKey(event: KeyboardEvent, { actions, commands }: Panel): void {
  if (obeyKey(event, 'page', { ...commands, actions })) event.preventDefault();
}
