/** Writing on the stave and in the text: each change a pure function from the state to the next. */
import { printPitch, type Step } from '../../src/score/pitch.ts';
import { barAt } from '../../src/score/place.ts';
import {
  endOf,
  type KeySignature,
  type Score,
  VOICE_WORDS,
  VOICES,
  type VoiceName,
} from '../../src/score/score.ts';
import type { Ticks } from '../../src/score/time.ts';
import {
  copyPassage,
  type Extent,
  erasePassage,
  movePassage,
  type Passage,
  pastePassage,
} from '../../src/writing/passage.ts';
import { nearestPitch, pitchAtPlace, spelt } from '../../src/writing/pitches.ts';
import * as stave from '../../src/writing/write.ts';
import { givenLost } from './brief.ts';
import { refuse, say } from './notice.ts';
import type { BeatLength, Caret, PageState } from './page.ts';
import { chosenLength, withinScore } from './places.ts';
import { changed, type Hand, redone, undone, type Work, workFromScore, workFromText } from './work.ts';

const NO_BAR = 'There is no bar to write in. Add one first.';

/** Takes up a new state of the work. `when` tells bursts of typing apart; only the text needs it. */
function adopt(state: PageState, work: Work, by: Hand, when = 0): PageState {
  const history = changed(state.history, work, by, when);
  return { ...state, history, caret: withinScore(work.score, state.caret) };
}

/**
 * Why the stave may not be written on, or undefined where it may: the text beside it must be read whole, or some of
 * it would be lost.
 */
function whyStaveIsShut({ history }: PageState): string | undefined {
  const [problem] = history.now.problems;
  return (
    problem &&
    `The text can't be read whole (line ${problem.line}, column ${problem.column}). Mend it first, or undo, so that nothing of it is lost.`
  );
}

function whyVoiceIsShut(state: PageState, voice: VoiceName): string | undefined {
  const locked = state.exercise.locked.includes(voice);
  return (
    whyStaveIsShut(state) ??
    (locked ? `The ${VOICE_WORDS[voice]} is locked. Unlock it to change it.` : undefined)
  );
}

/** Makes a change in the caret's voice, unless that is shut. */
function change(
  state: PageState,
  make: (score: Score, voice: VoiceName) => stave.Change,
  moveCaret = false,
): PageState {
  const shut = whyVoiceIsShut(state, state.caret.voice);
  if (shut !== undefined) return refuse(state, shut);
  return taken(state, make(state.history.now.score, state.caret.voice), moveCaret);
}

/** Changes all that is chosen, voices that are shut left alone. */
function changeStretch(
  state: PageState,
  stretch: Extent,
  make: (score: Score, extent: Extent) => stave.Change,
): PageState {
  const open = stretch.voices.filter((voice) => whyVoiceIsShut(state, voice) === undefined);
  if (open.length === 0) return refuse(state, whyVoiceIsShut(state, stretch.voices[0]!)!);
  return taken(state, make(state.history.now.score, { ...stretch, voices: open }));
}

function taken(state: PageState, made: stave.Change, moveCaret = false): PageState {
  if (made.kind === 'refused') return refuse(state, made.said);
  const lost = givenLost(state, state.history.now.score, made.score);
  if (lost !== undefined)
    return refuse(
      state,
      `${printPitch(lost.pitch)} in bar ${barAt(made.score, lost.at).number} was given, so it is locked.`,
    );
  const next = say(adopt(state, workFromScore(made.score), 'stave'), made.said);
  return moveCaret && made.caret !== undefined ? { ...next, caret: { ...next.caret, at: made.caret } } : next;
}

/** The length chosen, in ticks, by the beat at the caret. */
function lengthHere({ history, caret, length, dotted }: PageState): Ticks {
  const { score } = history.now;
  return chosenLength(score, Math.min(caret.at, Math.max(0, endOf(score) - 1)), length, dotted);
}

function keyHere({ history, caret }: PageState): KeySignature {
  const { score } = history.now;
  return barAt(score, Math.min(caret.at, endOf(score))).key;
}

/** The note that a key for changing notes means: at the caret, or else the one just written before it. */
function target({ history, caret }: PageState): Ticks {
  const { score } = history.now;
  const here = stave.eventAt(score, caret.voice, caret.at);
  if (here?.kind === 'note') return caret.at;
  const before = caret.at > 0 ? stave.eventAt(score, caret.voice, caret.at - 1) : undefined;
  return before?.kind === 'note' ? before.at : caret.at;
}

/** True where something is chosen, or the caret stands on (or just behind) a note that may be changed. */
export function canChangeNote(state: PageState): boolean {
  const { caret, exercise, history } = state;
  if (state.stretch) return true;
  const there = stave.eventAt(history.now.score, caret.voice, target(state));
  return !exercise.locked.includes(caret.voice) && there?.kind === 'note';
}

function writeHere(state: PageState, content: stave.Content): PageState {
  return change(
    state,
    (score, voice) => stave.write(score, voice, state.caret.at, lengthHere(state), content),
    true,
  );
}

/** Writes the nearest note of that name. */
export function writeLetter(state: PageState, step: Step): PageState {
  const { history, caret } = state;
  const { score } = history.now;
  if (score.bars.length === 0) return refuse(state, NO_BAR);
  const pitch = nearestPitch(score, caret.voice, caret.at, step, keyHere(state));
  return writeHere(state, { kind: 'note', pitch });
}

/** Writes what was played on a keyboard: a MIDI number, middle C being 60. */
export function writeKey(state: PageState, midi: number): PageState {
  if (state.history.now.score.bars.length === 0) return refuse(state, NO_BAR);
  return writeHere(state, { kind: 'note', pitch: spelt(midi, keyHere(state)) });
}

/** Writes at a place of the staff: C4 is 28. */
export function writeAtPlace(state: PageState, voice: VoiceName, at: Ticks, place: number): PageState {
  const there = { ...state, caret: { voice, at } };
  return writeHere(there, { kind: 'note', pitch: pitchAtPlace(place, keyHere(there)) });
}

/** Takes the note at a place up or down to another place of the staff, spelt as the key signature says. */
export function dragNote(state: PageState, caret: Caret, steps: number): PageState {
  return step({ ...state, caret, stretch: undefined }, steps);
}

/** Keeps what is chosen, to be pasted elsewhere. */
export function copy(state: PageState): PageState {
  const { stretch, history } = state;
  if (stretch === undefined)
    return refuse(state, 'Choose what to copy first: Shift with ← or →, or draw over it.');
  return say({ ...state, copied: copyPassage(history.now.score, stretch) }, 'Copied');
}

/** Writes a passage at the caret, or at the beginning of what is chosen. */
export function paste(state: PageState, passage: Passage): PageState {
  const { history, caret, stretch, exercise } = state;
  const shut = whyStaveIsShut(state);
  if (shut !== undefined) return refuse(state, shut);
  const at = stretch?.from ?? caret.at;
  const made = pastePassage(history.now.score, passage, caret.voice, at, exercise.locked);
  return taken({ ...state, stretch: undefined }, made, true);
}

export function writeRest(state: PageState): PageState {
  return writeHere(state, { kind: 'rest' });
}

export function erase(state: PageState): PageState {
  if (state.stretch) return changeStretch(state, state.stretch, erasePassage);
  const here = stave.eventAt(state.history.now.score, state.caret.voice, state.caret.at);
  if (here === undefined) return state;
  return change(state, (score, voice) => stave.write(score, voice, here.at, here.duration, { kind: 'gap' }));
}

export function eraseBefore(state: PageState): PageState {
  if (state.stretch) return changeStretch(state, state.stretch, erasePassage);
  const { caret, history } = state;
  const before = caret.at > 0 ? stave.eventAt(history.now.score, caret.voice, caret.at - 1) : undefined;
  if (before === undefined) return state;
  const next = change(state, (score, voice) =>
    stave.write(score, voice, before.at, before.duration, { kind: 'gap' }),
  );
  return next.history === history
    ? next
    : { ...next, caret: { ...caret, at: before.at }, stretch: undefined };
}

export function step(state: PageState, steps: number): PageState {
  if (state.stretch)
    return changeStretch(state, state.stretch, (score, extent) => movePassage(score, extent, { steps }));
  return change(state, (score, voice) => stave.moveBySteps(score, voice, target(state), steps));
}

export function octave(state: PageState, octaves: number): PageState {
  if (state.stretch)
    return changeStretch(state, state.stretch, (score, extent) => movePassage(score, extent, { octaves }));
  return change(state, (score, voice) => stave.moveByOctaves(score, voice, target(state), octaves));
}

export function accidental(state: PageState, alteration: 1 | -1 | 0): PageState {
  return change(state, (score, voice) => stave.alter(score, voice, target(state), alteration));
}

export function tie(state: PageState): PageState {
  return change(state, (score, voice) => stave.toggleTie(score, voice, target(state), lengthHere(state)));
}

/** A pause sign over the whole chord, locked voices left alone. */
export function fermata(state: PageState): PageState {
  const shut = whyStaveIsShut(state);
  if (shut !== undefined) return refuse(state, shut);
  const open = VOICES.filter((voice) => !state.exercise.locked.includes(voice));
  return taken(state, stave.toggleFermata(state.history.now.score, open, target(state)));
}

/**
 * Says that a phrase ends with the melody's note at the caret, or that none does there: the contrary of what the last
 * review read. It is no change of a note, so a locked melody allows it.
 */
export function togglePhraseEnd(state: PageState): PageState {
  const shut = whyStaveIsShut(state);
  if (shut !== undefined) return refuse(state, shut);
  return taken(state, stave.sayPhraseEnd(state.history.now.score, target(state), !endsPhrase(state)));
}

/** True where a phrase is read to end with the melody's note at the caret. */
export function endsPhrase(state: PageState): boolean {
  const at = target(state);
  const phrases = state.reviewed?.review.analysis.phrases ?? [];
  return phrases.some(({ goal, until }) => goal <= at && at < until);
}

/** Gives the note at the caret the length chosen. */
export function relength(state: PageState): PageState {
  return change(state, (score, voice) => stave.setLength(score, voice, target(state), lengthHere(state)));
}

export function setLength(state: PageState, length: BeatLength): PageState {
  return say({ ...state, length, dotted: false }, `Length: ${lengthWords(length)}`);
}

export function toggleDotted(state: PageState): PageState {
  return say({ ...state, dotted: !state.dotted }, state.dotted ? 'Not dotted' : 'Dotted');
}

/** Any other change of the score: bars, headings. */
export function rewrite(state: PageState, make: (score: Score) => Score, said: string): PageState {
  const shut = whyStaveIsShut(state);
  if (shut !== undefined) return refuse(state, shut);
  return say(adopt(state, workFromScore(make(state.history.now.score)), 'stave'), said);
}

export function undo(state: PageState): PageState {
  if (state.history.past.length === 0) return refuse(state, 'There is nothing to undo.');
  const history = undone(state.history);
  return say({ ...state, history, caret: withinScore(history.now.score, state.caret) }, 'Undone');
}

export function redo(state: PageState): PageState {
  if (state.history.future.length === 0) return refuse(state, 'There is nothing to redo.');
  const history = redone(state.history);
  return say({ ...state, history, caret: withinScore(history.now.score, state.caret) }, 'Redone');
}

/** The text as typed at `when` (milliseconds). */
export function typeText(state: PageState, text: string, when: number): PageState {
  if (text === state.history.now.text) return state;
  return { ...adopt(state, workFromText(text), 'text', when), notice: undefined };
}

/** Gives up what can't be read of the text, so that the stave can be written on again. */
export function dropUnread(state: PageState): PageState {
  return say(
    adopt(state, workFromScore(state.history.now.score), 'stave'),
    'The text now says what is on the stave. Undo brings the old text back.',
  );
}

const VALUE_WORDS: Readonly<Record<number, string>> = {
  1: 'semibreve',
  2: 'minim',
  4: 'crotchet',
  8: 'quaver',
  16: 'semiquaver',
};

/** `one beat`, `two beats`, `half a beat`; `quaver`. */
function lengthWords({ numerator, denominator, of }: BeatLength): string {
  if (of === 'semibreve') return VALUE_WORDS[denominator] ?? '';
  if (denominator === 1)
    return numerator === 1 ? 'one beat' : `${['', '', 'two', 'three', 'four'][numerator]} beats`;
  return denominator === 2 ? 'half a beat' : denominator === 3 ? 'a third of a beat' : 'a quarter of a beat';
}
