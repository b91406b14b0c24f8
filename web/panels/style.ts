/** How like the model the exercise is, where there is room, and how the model closed: counts and places, never notes. */
import { html, nothing, svg, type TemplateResult } from 'lit';
import { capitalised, listed } from '../../src/english/words.ts';
import { barAt, printBar, UPBEAT } from '../../src/score/place.ts';
import { remembered } from '../../src/score/remember.ts';
import type { Score } from '../../src/score/score.ts';
import type { Ticks } from '../../src/score/time.ts';
import type { Close } from '../../src/style/close.ts';
import { closeInWords } from '../../src/style/close-words.ts';
import { type CloseCount, sameClose } from '../../src/style/precedents.ts';
import { type StyleValue, styleOf } from '../../src/style/profile.ts';
import { roomInWords } from '../../src/style/room-words.ts';
import { adviceOn, CAUTION, placeInWords, tooShortInWords } from '../../src/style/words.ts';
import { withholds } from '../state/brief.ts';
import type { PhrasePrecedents } from '../worker/orders.ts';
import type { Panel } from './context.ts';
import { goTo } from './go-to.ts';
import { WITHHELD } from './seen.ts';

const styleKnown = remembered(styleOf);

/** Ways of closing shown for a phrase, chords and suspensions for each, and places to look up. */
const MOST = { ways: 4, chords: 3, places: 5 };

export function stylePanel(panel: Panel): TemplateResult {
  const { reviewed } = panel.state;
  if (reviewed === undefined) return html`<p class="empty">Reading the harmony…</p>`;
  if (withholds(panel.state, 'style')) return html`<p class="empty">${WITHHELD}</p>`;
  const style = styleKnown(reviewed.review.analysis);
  return html`
    <h2>How like the model</h2>
    ${
      style.kind === 'too short'
        ? html`<p>${tooShortInWords(style)}</p>`
        : html`<p class="aside">
              Each strip shows nine of ten of the model’s chorales (thin), the middle half of them (thick), and yours
              (the diamond).
            </p>
            <ul class="measures">
              ${style.values.map((value) => measureView(panel, value))}
            </ul>
            <p class="aside">${CAUTION}</p>`
    }
    ${style.kind === 'too short' || withholds(panel.state, 'room') ? nothing : roomView(panel)} ${precedentsView(panel)}
  `;
}

function measureView(panel: Panel, value: StyleValue): TemplateResult {
  const { measure, outside } = value;
  const open = panel.state.measure === measure.id;
  const advice = adviceOn(value);
  return html`<li class=${outside === undefined ? 'measure' : 'measure outside'}>
    <button
      type="button"
      class="measure-head"
      aria-expanded=${open}
      @click=${() => panel.actions.showMeasure(measure.id)}
    >
      <span class="measure-name">${measure.name}${outside === undefined ? nothing : html` <span class="measure-side">${outside === 'low' ? 'low' : 'high'}</span>`}</span>
      ${strip(value)}
      <span class="measure-place">${placeInWords(value)}</span>
    </button>
    ${advice === undefined ? nothing : html`<p class="measure-advice">${advice}</p>`}
    ${open ? measureDetails(panel, value) : nothing}
  </li>`;
}

/** Thin line, thick line, diamond; the sentence beside it says the same. */
function strip({ value, band }: StyleValue): TemplateResult {
  const least = Math.min(band.low, value);
  const span = Math.max(band.high, value) - least || 1;
  const x = (v: number) => 6 + (188 * (v - least)) / span;
  const at = x(value);
  return html`<svg class="measure-strip" viewBox="0 0 200 16" preserveAspectRatio="xMinYMid" aria-hidden="true" focusable="false">
    ${svg`<line class="strip-nine" x1=${x(band.low)} x2=${x(band.high)} y1="8" y2="8" />
    <line class="strip-half" x1=${x(band.lower)} x2=${x(band.upper)} y1="8" y2="8" />
    <path class="strip-yours" d=${`M${at} 2 L${at + 5} 8 L${at} 14 L${at - 5} 8 Z`} />`}
  </svg>`;
}

function measureDetails(panel: Panel, { measure, where }: StyleValue): TemplateResult {
  const { score } = panel.state.history.now;
  const bars = [...new Map(where.map(({ from }) => [barAt(score, from).number, from]))];
  return html`<div class="measure-more">
    <p>${measure.definition}</p>
    <p>${measure.why}</p>
    ${
      measure.id === 'variety'
        ? nothing
        : bars.length === 0
          ? html`<p>Nowhere in this exercise.</p>`
          : html`<p>Counted in ${bars.length === 1 && bars[0]![0] === UPBEAT ? '' : 'bar '}${bars.map(([bar, at], i) => html`${i === 0 ? '' : ', '}${goTo(panel, at, bar === UPBEAT ? 'the upbeat' : bar)}`)}.</p>`
    }
  </div>`;
}

function roomView(panel: Panel): TemplateResult {
  const { room } = panel.state;
  if (room === undefined)
    return html`<h2>Where there is room</h2>
      <p>Where yours has less than the model, the page can try changes and tell the places, one at a time. What you write there is yours to find.</p>
      <p><button type="button" @click=${panel.commands.findRoom}>Look for room</button></p>`;
  if (room.rooms === 'asked') return html`<h2>Where there is room</h2><p role="status">Trying changes…</p>`;
  const { rooms, shown } = room;
  const place = rooms[shown];
  if (place === undefined)
    return html`<h2>Where there is room</h2>
      <p role="status">No place was found that would bring no new fault or query.</p>`;
  const bar = barAt(panel.state.history.now.score, place.at).number;
  return html`<h2>Where there is room</h2>
    <p role="status">
      ${rooms.length === 1 ? 'One place' : `${rooms.length} places`}. ${rooms.length === 1 ? '' : `${shown + 1}: `}${capitalised(printBar(bar))}. ${roomInWords(place)}
      ${goTo(panel, place.at)}
    </p>
    ${rooms.length === 1 ? nothing : html`<p><button type="button" @click=${panel.actions.nextRoom}>Another place</button></p>`}`;
}

function precedentsView(panel: Panel): TemplateResult {
  const { precedents, history } = panel.state;
  const head = html`<h2>How the model closed</h2>`;
  if (precedents === undefined || precedents.of !== history.now.score)
    return html`${head}<p class="empty">Looking up…</p>`;
  if (precedents.phrases.length === 0)
    return html`${head}<p>No phrase of the tune comes to an end yet. A fermata marks one.</p>`;
  return html`${head}
    <p class="aside">Chords the model used where the tune ended by the same degrees. Look them up by number in an edition of the 371 chorales.</p>
    ${precedents.phrases.map((phrase) => phraseView(panel, phrase, history.now.score))}`;
}

function phraseView(
  panel: Panel,
  { tune, own, until, found }: PhrasePrecedents,
  score: Score,
): TemplateResult {
  const at: Ticks = until - 1;
  const place = found.placed ? (tune.strong ? ', ending on a strong beat' : ', ending on a weak beat') : '';
  const ways = found.closes.slice(0, MOST.ways);
  return html`<details class="precedents">
    <summary>${capitalised(printBar(barAt(score, at).number))}: the tune goes ${found.degrees.join('–')}</summary>
    <p>${found.total} ${found.total === 1 ? 'close' : 'closes'} of the model over ${found.degrees.join('–')}${place}. ${goTo(panel, at)}</p>
    <ol class="ways">
      ${ways.map((way) => wayView(way, own))}
    </ol>
    <p>${standing(own, found.closes)}</p>
  </details>`;
}

function wayView(way: CloseCount, own: Close | undefined): TemplateResult {
  const counts = (of: CloseCount['chords']) =>
    listed(of.slice(0, MOST.chords).map(({ text, count }) => `${text} (${count})`));
  const places = way.places.slice(0, MOST.places).map(({ chorale, bar }) => `${chorale} (bar ${bar})`);
  const yours = own !== undefined && sameClose(own, way);
  return html`<li class="way">
    <b>${way.count} × ${closeInWords(way)}</b>${yours ? ', like yours' : ''}<br />
    ${counts(way.chords)}${way.suspensions.length === 0 ? '' : `; suspended ${counts(way.suspensions)}`}<br />
    <span class="aside">See ${listed(places)}.</span>
  </li>`;
}

function standing(own: Close | undefined, ways: readonly CloseCount[]): string {
  if (own === undefined) return 'Yours is not written yet, or makes no cadence.';
  return ways.some((way) => sameClose(way, own)) ? '' : `Yours, ${closeInWords(own)}, is not among them.`;
}
