/** The worksheet: exercises on A4, with room on the staves to write on paper. Drawn for the printer, seen as a preview. */
import { html, nothing, type TemplateResult } from 'lit';
import type { Brief } from '../../../src/brief/brief.ts';
import { sittingInWords } from '../../../src/brief/helps.ts';
import { capitalised } from '../../../src/english/words.ts';
import { printKeySignature } from '../../../src/notation/index.ts';
import { printTempo, withSigns } from '../../../src/report/sentences.ts';
import type { Score } from '../../../src/score/score.ts';
import { NO_LAYERS, NO_MARKS } from '../../engrave/index.ts';
import { type Drawn, engraved } from '../../panels/engraved.ts';

/** Large enough to write among the notes: a staff is 13 mm high on paper. */
const SCALE = 1.2;

const drawings = new WeakMap<Score, Drawn>();

/** The same data for the same score, so that nothing is drawn twice. */
function drawingOf(score: Score): Drawn {
  const known = drawings.get(score);
  if (known !== undefined) return known;
  const { figures } = score;
  const drawn: Drawn = {
    score,
    marks: { ...NO_MARKS, ...(figures && { figures }) },
    layers: { ...NO_LAYERS, lyrics: true, barNumbers: score.bars.length > 4 },
    scale: SCALE,
  };
  drawings.set(score, drawn);
  return drawn;
}

export function worksheet(briefs: readonly Brief[], given: string): TemplateResult {
  return html`<article class="worksheet" aria-label="Worksheet">
    <p class="candidate">Candidate</p>
    ${briefs.map((brief, i) => exercise(brief, briefs.length === 1 ? undefined : i + 1, given))}
  </article>`;
}

function exercise(brief: Brief, number: number | undefined, given: string): TemplateResult {
  const { score } = brief;
  const first = score.bars[0];
  const facts =
    first === undefined
      ? []
      : [
          withSigns(printKeySignature(first.key)),
          ...(score.tempo === undefined ? [] : [printTempo(score.tempo, first.metre)]),
        ];
  const sitting = sittingInWords(brief);
  return html`<section class="exercise">
    <h2>${number === undefined ? '' : `${number}. `}${score.title === '' ? 'Exercise' : score.title}</h2>
    <p>${capitalised(brief.task)}. ${facts.join(', ')}. ${given}</p>
    ${number === undefined && sitting !== '' ? html`<p class="sitting">${sitting}</p>` : nothing}
    ${engraved(drawingOf(score), `${score.title}: what is given, and empty staves`)}
  </section>`;
}
