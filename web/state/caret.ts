/** Moving the caret and choosing a stretch: each a pure function from the state to the next. */
import { placeAt, printPlace } from '../../src/score/place.ts';
import { endOf, type VoiceName } from '../../src/score/score.ts';
import type { Ticks } from '../../src/score/time.ts';
import { say } from './notice.ts';
import type { PageState } from './page.ts';
import { barPlace, neighbourVoice, nextPlace, placeBefore, withinScore } from './places.ts';
import { spansOf } from './work.ts';

function moveTo(state: PageState, at: Ticks): PageState {
  return { ...state, caret: { ...state.caret, at }, stretch: undefined, notice: undefined };
}

function placeBeside({ history, caret }: PageState, direction: 1 | -1): Ticks {
  const { score } = history.now;
  return direction > 0 ? nextPlace(score, caret) : placeBefore(score, caret);
}

export function move(state: PageState, direction: 1 | -1): PageState {
  return moveTo(state, placeBeside(state, direction));
}

export function moveBar(state: PageState, direction: 1 | -1): PageState {
  return moveTo(state, barPlace(state.history.now.score, state.caret.at, direction));
}

export function moveToEnd(state: PageState, end: 'start' | 'end'): PageState {
  return moveTo(state, end === 'start' ? 0 : endOf(state.history.now.score));
}

export function moveVoice(state: PageState, direction: 1 | -1): PageState {
  const voice = neighbourVoice(state.caret.voice, direction);
  return { ...state, caret: { ...state.caret, voice }, notice: undefined };
}

export function setCaret(state: PageState, voice: VoiceName, at: Ticks): PageState {
  const caret = withinScore(state.history.now.score, { voice, at });
  return { ...state, caret, stretch: undefined, notice: undefined };
}

/** The caret goes to the note that stands at this place of the text. */
export function followText(state: PageState, line: number, column: number): PageState {
  const span = spansOf(state.history.now)
    .filter((each) => each.line === line && each.column <= column)
    .at(-1);
  return span === undefined ? state : { ...state, caret: { voice: span.voice, at: span.at } };
}

/** The stretch grows or shrinks by one place; the caret stands at one end of it, the other end stays. */
export function stretchBy(state: PageState, direction: 1 | -1): PageState {
  const { caret, stretch, history } = state;
  const to = placeBeside(state, direction);
  const anchor = stretch === undefined ? caret.at : caret.at === stretch.from ? stretch.until : stretch.from;
  const moved = { ...state, caret: { ...caret, at: to } };
  if (to === anchor) return { ...moved, stretch: undefined };
  const chosen = { from: Math.min(anchor, to), until: Math.max(anchor, to) };
  const ends = [chosen.from, chosen.until].map((at) => printPlace(placeAt(history.now.score, at)));
  return say({ ...moved, stretch: chosen }, `Chosen: ${ends.join(' to ')}`);
}

export function setStretch(state: PageState, stretch: PageState['stretch']): PageState {
  return { ...state, stretch };
}
