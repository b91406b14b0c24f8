/** What the exercise shows, in sentences: strong points first, then what to work on. */
import { html, nothing, type TemplateResult } from 'lit';
import { capitalised } from '../../src/english/words.ts';
import { cadencesByBar } from '../../src/report/chords.ts';
import { strengthsOf } from '../../src/report/strengths.ts';
import { summarise } from '../../src/report/summary.ts';
import { toWorkOn } from '../../src/report/to-work-on.ts';
import { type Score, VOICES } from '../../src/score/score.ts';
import { withholds } from '../state/brief.ts';
import type { Panel } from './context.ts';
import { goTo } from './go-to.ts';
import { WITHHELD } from './seen.ts';

export function summaryPanel(panel: Panel): TemplateResult {
  const { reviewed } = panel.state;
  if (withholds(panel.state, 'numerals') || withholds(panel.state, 'marks'))
    return html`<p class="empty">${WITHHELD}</p>`;
  if (reviewed === undefined) return html`<p class="empty">Reading the harmony…</p>`;
  const { review } = reviewed;
  const strengths = strengthsOf(review);
  const work = toWorkOn(review);
  const cadences = cadencesByBar(review);
  return html`
    <h2>What works</h2>
    ${
      strengths.length === 0
        ? html`<p class="aside">${isWritten(review.score) ? 'No strong point stands out yet. What to work on next is a good place to begin.' : 'Too little is written yet to say.'}</p>`
        : html`<ul class="points">
            ${strengths.map((strength) => html`<li>${strength.sentence} ${goTo(panel, strength.at)}</li>`)}
          </ul>`
    }
    <h2>What to work on next</h2>
    ${
      work.length === 0
        ? html`<p>Nothing stands out.</p>`
        : html`<ul class="points">
            ${work.map(
              ({ sentence, at, rule }) =>
                html`<li>${sentence} ${goTo(panel, at)} <a href="#rules/${rule.id}">The rule</a></li>`,
            )}
          </ul>`
    }
    ${
      cadences.length === 0
        ? nothing
        : html`<h2>Cadences</h2>
            <ul class="points">
              ${cadences.map((cadence) => html`<li>${capitalised(cadence)}</li>`)}
            </ul>`
    }
    <h2>In all</h2>
    <p>${summarise(review).sentence}</p>
    <p class="aside">The page sees notes, not taste. Your teacher decides what is good.</p>
  `;
}

/** Every beat of every voice. */
function isWritten(score: Score): boolean {
  return (
    score.bars.length > 0 &&
    VOICES.every((voice) => score.voices[voice].every((event) => event.kind !== 'gap'))
  );
}
