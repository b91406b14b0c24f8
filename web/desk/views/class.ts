/** The class: what is commonest, bars for the board, what to practise next. Nobody is named. */
import { html, nothing, type TemplateResult } from 'lit';
import { readNotation } from '../../../src/notation/index.ts';
import { NO_LAYERS, NO_MARKS } from '../../engrave/index.ts';
import { type Drawn, engraved } from '../../panels/engraved.ts';
import type { DeskState } from '../state.ts';

export function classPage({ classView }: DeskState): TemplateResult {
  if (classView === undefined) return html`<p class="empty">Counting…</p>`;
  const { summary, rules, board, good, practise, style, scripts } = classView;
  return html`
    <h1>The class</h1>
    <p>${summary}</p>
    ${
      practise.length === 0
        ? nothing
        : html`<section>
            <h2>To practise next</h2>
            <ol>
              ${practise.map(({ sentence }) => html`<li>${sentence}</li>`)}
            </ol>
          </section>`
    }
    <section>
      <h2>Commonest</h2>
      <table class="queue">
        <thead>
          <tr>
            <th>What</th>
            <th>Scripts, of ${scripts}</th>
            <th>Places</th>
          </tr>
        </thead>
        <tbody>
          ${rules.map(
            ({ name, scripts: inScripts, places }) => html`<tr>
              <td>${name}</td>
              <td>${inScripts}</td>
              <td>${places}</td>
            </tr>`,
          )}
        </tbody>
      </table>
    </section>
    ${
      style.length === 0
        ? nothing
        : html`<section>
            <h2>Beside the model</h2>
            <ul>
              ${style.map((sentence) => html`<li>${sentence}</li>`)}
            </ul>
          </section>`
    }
    ${bars('For the board: what went wrong', board)} ${bars('For the board: what came off well', good)}
  `;
}

function bars(
  title: string,
  shown: readonly { readonly text: string; readonly message: string }[],
): TemplateResult | typeof nothing {
  if (shown.length === 0) return nothing;
  return html`<section>
    <h2>${title}</h2>
    <div class="board">
      ${shown.map(
        ({ text, message }) => html`<figure>
          ${engraved(drawnOf(text), message)}
          <figcaption>${message}</figcaption>
        </figure>`,
      )}
    </div>
  </section>`;
}

/** Drawn once for each text: the same data again draws nothing anew. */
const drawings = new Map<string, Drawn>();

function drawnOf(text: string): Drawn {
  const known = drawings.get(text);
  if (known !== undefined) return known;
  if (drawings.size > 100) drawings.clear();
  const drawn: Drawn = { score: readNotation(text).score, marks: NO_MARKS, layers: NO_LAYERS, scale: 0.85 };
  drawings.set(text, drawn);
  return drawn;
}
