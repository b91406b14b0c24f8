/** What is looked at, and how: views, panels, the finding chosen, settings. Pure functions from state to state. */

import { countedBeat, printTempo } from '../../src/report/sentences.ts';
import { firstMetre } from '../../src/score/place.ts';
import { say } from './notice.ts';
import type { Mixer, PageState, Settings, Shown, Side, View } from './page.ts';

/** Shows a view; `rule` chooses one in the rule browser, an empty one shows them all. */
export function show(state: PageState, view: View, rule?: string): PageState {
  const chosen = rule === undefined ? state.rule : rule === '' ? undefined : rule;
  return { ...state, view, rule: chosen, notice: undefined };
}

export function setSide(state: PageState, side: Side): PageState {
  return { ...state, side, sheet: true };
}

/** Opens a panel; the one that is open already is closed again, where it lies over the stave. */
export function turnTo(state: PageState, side: Side): PageState {
  return { ...state, side, sheet: !(state.sheet && state.side === side) };
}

/** Shows the bars that make a measure of style what it is; the same again hides them. */
export function showMeasure(state: PageState, id: string): PageState {
  return { ...state, measure: state.measure === id ? undefined : id };
}

/** Shows another of the places with room: the next, and after the last the first. */
export function nextRoom(state: PageState): PageState {
  const { room } = state;
  if (room === undefined || room.rooms === 'asked' || room.rooms.length === 0) return state;
  return { ...state, room: { ...room, shown: (room.shown + 1) % room.rooms.length } };
}

/** Opens a finding, with the caret on its last note; undefined lets the chosen one go. */
export function choose(state: PageState, id: string | undefined): PageState {
  const finding = state.reviewed?.review.findings.find((each) => each.id === id);
  const voice = finding?.voices.at(-1) ?? state.caret.voice;
  return {
    ...state,
    chosen: id,
    side: id === undefined ? state.side : 'marks',
    sheet: id !== undefined,
    caret: finding ? { voice, at: finding.tones.at(-1)?.at ?? finding.from } : state.caret,
  };
}

/** The finding and the stretch chosen are let go, and the sheet is closed. */
export function letGo(state: PageState): PageState {
  return { ...choose(state, undefined), stretch: undefined, sheet: false };
}

export function openHint(state: PageState, id: string): PageState {
  return { ...state, hints: { ...state.hints, [id]: Math.min(3, (state.hints[id] ?? 0) + 1) } };
}

export function set(state: PageState, settings: Partial<Settings>): PageState {
  return { ...state, settings: { ...state.settings, ...settings } };
}

export function setShown(state: PageState, shown: Partial<Shown>): PageState {
  return set(state, { shown: { ...state.settings.shown, ...shown } });
}

export function setMixer(state: PageState, mixer: Partial<Mixer>): PageState {
  return { ...state, mixer: { ...state.mixer, ...mixer } };
}

/** A pause longer than this begins a new tapping, in milliseconds: 30 beats a minute is the slowest. */
const TAP_PAUSE = 2_100;

/** The tempo follows the hand: the mean of the last few taps, from the second one on. */
export function tapTempo(state: PageState, when: number): PageState {
  const before = state.taps.at(-1);
  const goesOn = before !== undefined && when - before < TAP_PAUSE;
  const taps = goesOn ? [...state.taps.slice(-7), when] : [when];
  if (taps.length < 2) return say({ ...state, taps }, 'Tap again, in time.');
  const beats = Math.round((60_000 * (taps.length - 1)) / (when - taps[0]!));
  const metre = firstMetre(state.history.now.score);
  const tempo = Math.min(240, Math.max(30, beats)) * countedBeat(metre).crotchets;
  return say(setMixer({ ...state, taps }, { tempo }), printTempo(tempo, metre));
}

/** Marks by bar, or by what costs most. */
export function toggleOrder(state: PageState): PageState {
  const byBar = !state.settings.byBar;
  return say(set(state, { byBar }), byBar ? 'The marks go from bar to bar.' : 'What costs most comes first.');
}
