/** The class: what is commonest, bars for the board, what to practise next. Nobody is named. */
import { html, nothing, type TemplateResult } from 'lit';
import type { ClassView } from '../../../src/desk/wire-shapes.ts';
import { readNotation } from '../../../src/notation/index.ts';
import type { Score } from '../../../src/score/score.ts';
import { textureOf } from '../../../src/score/texture.ts';
import { CROTCHET } from '../../../src/score/time.ts';
import { type MarkedFinding, type Marks, NO_LAYERS, NO_MARKS } from '../../engrave/index.ts';
import { type Drawn, engraved } from '../../panels/engraved.ts';
import { type DeskState, hashOf } from '../state.ts';

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
            <p>
              <a class="button" href=${hashOf({ view: 'practice', rules: practise.flatMap(({ rules: ids }) => ids).join(',') })}
                >Make short exercises for these</a
              >
            </p>
          </section>`
    }
    ${found(
      'What went wrong, the commonest first',
      rules.filter(({ heavy }) => heavy),
      scripts,
    )}
    ${found(
      'Worth a second look, the commonest first',
      rules.filter(({ heavy }) => !heavy),
      scripts,
    )}
    ${
      style.length === 0
        ? nothing
        : html`<section>
            <h2>Compared with the model’s chorales</h2>
            <ul>
              ${style.map((sentence) => html`<li>${sentence}</li>`)}
            </ul>
          </section>`
    }
    ${bars('For the board: what went wrong', board)} ${bars('For the board: what came off well', good)}
  `;
}

function found(title: string, rules: ClassView['rules'], scripts: number): TemplateResult | typeof nothing {
  if (rules.length === 0) return nothing;
  return html`<section>
    <h2>${title}</h2>
    <table class="queue">
      <thead>
        <tr>
          <th>What was found</th>
          <th>In how many of ${scripts} scripts</th>
          <th>Places in all</th>
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
  </section>`;
}

type ShownBar = Pick<ClassView['board'][number], 'text' | 'message' | 'notes' | 'severity'>;

/** The notes that the excerpt is about, tied together by a sign. */
function marksOn(score: Score, { notes = [], severity = 'fault' }: ShownBar): Marks {
  const { tones } = textureOf(score);
  const marked = notes.flatMap(({ voice, at }) => {
    const ticks = Math.round(at * CROTCHET);
    return tones[voice].filter((tone) => tone.at <= ticks && ticks < tone.until);
  });
  if (marked.length === 0) return NO_MARKS;
  const finding: MarkedFinding = {
    id: 'shown',
    label: '×',
    severity,
    family: 'melody',
    voices: [...new Set(marked.map(({ voice }) => voice))],
    from: Math.min(...marked.map(({ at }) => at)),
    until: Math.max(...marked.map(({ until }) => until)),
    tones: marked,
  };
  return { ...NO_MARKS, findings: [finding] };
}

function bars(title: string, shown: readonly ShownBar[]): TemplateResult | typeof nothing {
  if (shown.length === 0) return nothing;
  return html`<section>
    <h2>${title}</h2>
    <div class="board">
      ${shown.map(
        (bar) => html`<figure>
          ${engraved(drawnOf(bar), bar.message)}
          <figcaption>${bar.message}</figcaption>
        </figure>`,
      )}
    </div>
  </section>`;
}

/** Drawn once for each text: the same data again draws nothing anew. */
const drawings = new Map<string, Drawn>();

function drawnOf(bar: ShownBar): Drawn {
  const { text } = bar;
  const key = `${text} ${bar.message}`;
  const known = drawings.get(key);
  if (known !== undefined) return known;
  if (drawings.size > 100) drawings.clear();
  const { score } = readNotation(text);
  const drawn: Drawn = { score, marks: marksOn(score, bar), layers: NO_LAYERS, scale: 0.85 };
  drawings.set(key, drawn);
  return drawn;
}
