/** Moving the caret and choosing a stretch: each a pure function from the state to the next. */
import { withSigns } from '../../src/report/sentences.ts';
import { printPitch } from '../../src/score/pitch.ts';
import { placeAt, printPlace } from '../../src/score/place.ts';
import { endOf, VOICE_WORDS, VOICES, type VoiceName } from '../../src/score/score.ts';
import type { Ticks } from '../../src/score/time.ts';
import type { Extent } from '../../src/writing/passage.ts';
import { eventAt } from '../../src/writing/write.ts';
import { refuse, say } from './notice.ts';
import type { Caret, PageState } from './page.ts';
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

/** Says what stands at a place of a locked voice, and how it could be changed all the same. */
export function tellLocked(state: PageState, voice: VoiceName, at: Ticks): PageState {
  const here = eventAt(state.history.now.score, voice, at);
  const what = here?.kind === 'note' ? ` ${withSigns(printPitch(here.pitch))}` : '';
  const name = VOICE_WORDS[voice];
  return refuse(
    state,
    `${name.charAt(0).toUpperCase()}${name.slice(1)}${what}: given, so it is locked. Press “Lock ${name}” to change it.`,
  );
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
  return stretchTo(state, placeBeside(state, direction));
}

/** The stretch reaches to the beginning or the end of the exercise. */
export function stretchToEnd(state: PageState, end: 'start' | 'end'): PageState {
  return stretchTo(state, end === 'start' ? 0 : endOf(state.history.now.score));
}

function stretchTo(state: PageState, to: Ticks): PageState {
  const { caret, stretch } = state;
  const anchor = stretch === undefined ? caret.at : caret.at === stretch.from ? stretch.until : stretch.from;
  const moved = { ...state, caret: { ...caret, at: to } };
  if (to === anchor) return { ...moved, stretch: undefined };
  return chosen(moved, {
    from: Math.min(anchor, to),
    until: Math.max(anchor, to),
    voices: stretch?.voices ?? [caret.voice],
  });
}

/** The stretch takes in the voice above or below the caret, or lets one go again. */
export function stretchVoices(state: PageState, direction: 1 | -1): PageState {
  const { caret, stretch } = state;
  if (stretch === undefined) return refuse(state, 'Choose a stretch first: Shift with ← or →.');
  const { voices } = stretch;
  const anchor = caret.voice === voices[0] ? voices.at(-1)! : voices[0]!;
  const voice = neighbourVoice(caret.voice, direction);
  return chosen(
    { ...state, caret: { ...caret, voice } },
    { ...stretch, voices: voicesBetween(anchor, voice) },
  );
}

/** Everything there is. */
export function chooseAll(state: PageState): PageState {
  const until = endOf(state.history.now.score);
  return until === 0 ? state : chosen(state, { from: 0, until, voices: VOICES });
}

/** The stretch between two places of the stave, as a pointer draws it: whole beats, and every voice between. */
export function chooseBetween(state: PageState, a: Caret, b: Caret): PageState {
  const { score } = state.history.now;
  const [first, last] = a.at <= b.at ? [a, b] : [b, a];
  const extent = {
    from: first.at,
    until: nextPlace(score, last),
    voices: voicesBetween(a.voice, b.voice),
  };
  return chosen({ ...state, caret: { voice: b.voice, at: first.at } }, extent);
}

function voicesBetween(a: VoiceName, b: VoiceName): VoiceName[] {
  const [from, to] = [VOICES.indexOf(a), VOICES.indexOf(b)].sort((x, y) => x - y) as [number, number];
  return VOICES.slice(from, to + 1);
}

function chosen(state: PageState, stretch: Extent): PageState {
  const { score } = state.history.now;
  const ends = [stretch.from, stretch.until].map((at) => printPlace(placeAt(score, at)));
  const voices = stretch.voices.map((voice) => VOICE_WORDS[voice]).join(', ');
  return say({ ...state, stretch }, `Chosen: ${voices}, ${ends.join(' to ')}`);
}
