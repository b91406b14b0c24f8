/** Scripts that share more than their tune explains: a question, and the grounds for it. */
import { html, nothing, type TemplateResult } from 'lit';
import { excerptOf } from '../../../src/desk/excerpt.ts';
import type { LikePairView } from '../../../src/desk/wire-shapes.ts';
import { printVoices } from '../../../src/report/sentences.ts';
import { printBars } from '../../../src/score/place.ts';
import { type Score, VOICES } from '../../../src/score/score.ts';
import { NO_LAYERS, NO_MARKS } from '../../engrave/index.ts';
import { type Drawn, engraved } from '../../panels/engraved.ts';
import type { Actions } from '../actions.ts';
import { pairKey } from '../comparing.ts';
import { type DeskState, hashOf, type PairScores, type Place, SHOWN_AT_ONCE } from '../state.ts';
import { pageLinks } from './pages.ts';

export function likenessPage(
  { likeness, pairs: shown }: DeskState,
  place: Extract<Place, { view: 'likeness' }>,
  actions: Actions,
): TemplateResult {
  if (likeness === undefined) return html`<p class="empty">Comparing…</p>`;
  const { pairs, total, compared, notice, reference } = likeness;
  const view = (pair: LikePairView): TemplateResult => pairView(pair, shown[pairKey(pair)], actions);
  return html`
    <h1>Likeness</h1>
    <p class="caution">${notice}</p>
    <p>${compared} pairs compared; ${total === 0 ? 'none is' : `${total} ${total === 1 ? 'is' : 'are'}`} worth a question.</p>
    ${pairs.map(view)} ${pageLinks(place, pairs.length, total, SHOWN_AT_ONCE.likeness)}
    ${
      reference === undefined
        ? nothing
        : html`<h2>Against the reference</h2>
            ${reference.length === 0 ? html`<p>No script is unusually like it.</p>` : reference.map(view)}`
    }
  `;
}

type Who = LikePairView['second'];

function nameOf(script: Who): string {
  return script === 'reference' ? 'the reference' : (script.candidate ?? script.file);
}

function pairView(pair: LikePairView, scores: PairScores | undefined, actions: Actions): TemplateResult {
  const { first, second, likeness, rarity } = pair;
  const whole = likeness.bars.filter(({ voices }) => voices.length === 3).map(({ first: bar }) => bar);
  const link = (script: Who): TemplateResult =>
    script === 'reference'
      ? html`the reference`
      : html`<a href=${hashOf({ view: 'script', script: script.script })}>${nameOf(script)}</a>`;
  return html`<article class="pair">
    <h3>${link(first)} and ${link(second)}</h3>
    <p>${rarity.sentence}</p>
    ${whole.length === 0 ? nothing : html`<p>Alike in all three added voices: ${printBars(whole)}.</p>`}
    ${
      likeness.bars.length === 0
        ? nothing
        : html`<button type="button" aria-expanded=${scores !== undefined} @click=${() => void actions.showPair(pair)}>
            ${scores === undefined ? 'Lay the bars side by side' : 'Put the bars away'}
          </button>`
    }
    ${scores === undefined ? nothing : sideBySide(pair, scores)}
  </article>`;
}

/** Bars that follow one another in both scripts. */
interface Stretch {
  readonly first: readonly [from: number, to: number];
  readonly second: readonly [from: number, to: number];
  /** Voices that are the same in all of its bars. */
  readonly voices: readonly string[];
}

/** More bars than this are no longer seen at one glance. */
const MOST_BARS = 4;
const MOST_STRETCHES = 6;

/** The stretches in which the two scores agree, those with the most voices first. */
function stretchesOf({ likeness }: LikePairView, { first, second }: PairScores): Stretch[] {
  const stretches: Stretch[] = [];
  for (const bar of likeness.bars) {
    const [i, j] = [indexOf(first, bar.first), indexOf(second, bar.second)];
    if (i < 0 || j < 0) continue;
    const last = stretches.at(-1);
    const goesOn =
      last !== undefined &&
      last.first[1] === i - 1 &&
      last.second[1] === j - 1 &&
      i - last.first[0] < MOST_BARS &&
      last.voices.join() === bar.voices.join();
    if (goesOn)
      stretches[stretches.length - 1] = {
        ...last,
        first: [last.first[0], i],
        second: [last.second[0], j],
      };
    else stretches.push({ first: [i, i], second: [j, j], voices: bar.voices });
  }
  return stretches.sort((a, b) => b.voices.length - a.voices.length).slice(0, MOST_STRETCHES);
}

function indexOf({ bars }: Score, number: string): number {
  return bars.findIndex((bar) => bar.number === number);
}

function sideBySide(pair: LikePairView, scores: PairScores): TemplateResult {
  return html`<div class="like-bars">
    ${stretchesOf(pair, scores).map(({ first, second, voices }) => {
      const words = `the same in ${printVoices(VOICES.filter((voice) => voices.includes(voice)))}`;
      return html`${barsOf(scores.first, first, nameOf(pair.first), words)}
      ${barsOf(scores.second, second, nameOf(pair.second), words)}`;
    })}
  </div>`;
}

function barsOf(
  score: Score,
  [from, to]: readonly [number, number],
  whose: string,
  words: string,
): TemplateResult {
  const numbers = score.bars.slice(from, to + 1).map(({ number }) => number);
  const caption = `${whose}, ${printBars(numbers)}: ${words}`;
  return html`<figure>
    ${engraved(drawnOf(score, from, to), caption)}
    <figcaption>${caption}</figcaption>
  </figure>`;
}

/** Drawn once for each stretch: the same data again draws nothing anew. */
const drawings = new WeakMap<Score, Map<string, Drawn>>();

function drawnOf(score: Score, from: number, to: number): Drawn {
  const own = drawings.get(score) ?? new Map<string, Drawn>();
  drawings.set(score, own);
  const key = `${from} ${to}`;
  const known = own.get(key);
  if (known !== undefined) return known;
  const drawn = { score: excerptOf(score, from, to), marks: NO_MARKS, layers: NO_LAYERS, scale: 0.8 };
  own.set(key, drawn);
  return drawn;
}
