/** Scripts that share more than their tune explains: a question, and the grounds for it. */
import { html, type TemplateResult } from 'lit';
import type { LikePairView } from '../../../src/desk/wire-shapes.ts';
import { listed } from '../../../src/english/words.ts';
import { type DeskState, hashOf } from '../state.ts';

export function likenessPage({ likeness }: DeskState): TemplateResult {
  if (likeness === undefined) return html`<p class="empty">Comparing…</p>`;
  const { pairs, compared, notice, reference } = likeness;
  return html`
    <h1>Likeness</h1>
    <p class="caution">${notice}</p>
    <p>${compared} pairs compared; ${pairs.length === 0 ? 'none is' : `${pairs.length} ${pairs.length === 1 ? 'is' : 'are'}`} worth a question.</p>
    ${pairs.map(pairView)}
    ${
      reference === undefined
        ? ''
        : html`<h2>Against the reference</h2>
            ${reference.length === 0 ? html`<p>No script is unusually like it.</p>` : reference.map(pairView)}`
    }
  `;
}

function pairView({ first, second, likeness, rarity }: LikePairView): TemplateResult {
  const whole = likeness.bars.filter(({ voices }) => voices.length === 3).map(({ first: bar }) => bar);
  const name = (script: LikePairView['second']): TemplateResult =>
    script === 'reference'
      ? html`the reference`
      : html`<a href=${hashOf({ view: 'script', script: script.script })}>${script.candidate ?? script.file}</a>`;
  return html`<article class="pair">
    <h3>${name(first)} and ${name(second)}</h3>
    <p>${rarity.sentence}</p>
    ${whole.length === 0 ? '' : html`<p>Alike in all three added voices: ${whole.length === 1 ? 'bar' : 'bars'} ${listed(whole)}.</p>`}
  </article>`;
}
