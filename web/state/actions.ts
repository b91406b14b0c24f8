/** What a person can do, as changes of the page's state. Nothing here draws, keeps or sounds: that follows the state. */

import type { Step } from '../../src/score/pitch.ts';
import { barAt, placeAt, printPlace } from '../../src/score/place.ts';
import { endOf, type Score, VOICE_WORDS, VOICES, type VoiceName } from '../../src/score/score.ts';
import type { Ticks } from '../../src/score/time.ts';
import { nearestPitch, pitchAtPlace, spelt } from '../../src/writing/pitches.ts';
import {
  alter,
  type Change,
  type Content,
  eventAt,
  moveByOctaves,
  moveBySteps,
  setLength,
  toggleFermata,
  toggleTie,
  write,
} from '../../src/writing/write.ts';
import { barPlace, chosenLength, neighbourVoice, nextPlace, placeBefore, withinScore } from './caret.ts';
import type { BeatLength, Mixer, PageState, Settings, Shown, Side, Source, View } from './page.ts';
import type { Store } from './store.ts';
import { changed, redone, spansOf, undone, type Work, workFromScore, workFromText } from './work.ts';

export type Actions = ReturnType<typeof createActions>;

export function createActions(store: Store<PageState>, now: () => number = Date.now) {
  const score = (): Score => store.get().history.now.score;

  const say = (text: string, kind: 'said' | 'refused' | 'failed' = 'said'): void =>
    store.update((state) => ({ ...state, notice: { text, kind } }));

  /** Takes up a new state of the work, by whatever hand it was made. */
  const adopt = (work: Work, by: 'stave' | 'text', said: string): void =>
    store.update((state) => ({
      ...state,
      history: changed(state.history, work, by, now()),
      caret: withinScore(work.score, state.caret),
      notice: { text: said, kind: 'said' },
    }));

  /** True where the stave may be written on: the text beside it must be read whole, or some of it would be lost. */
  const staveIsOpen = (): boolean => {
    const [problem] = store.get().history.now.problems;
    if (problem === undefined) return true;
    say(
      `The text can't be read whole (line ${problem.line}, column ${problem.column}). Mend it first, or undo, so that nothing of it is lost.`,
      'refused',
    );
    return false;
  };

  const mayWrite = (voice: VoiceName): boolean => {
    if (!staveIsOpen()) return false;
    if (!store.get().exercise.locked.includes(voice)) return true;
    say(`The ${VOICE_WORDS[voice]} is locked. Unlock it to change it.`, 'refused');
    return false;
  };

  const apply = (change: Change, moveCaret = false): void => {
    if (change.kind === 'refused') {
      say(change.said, 'refused');
      return;
    }
    adopt(workFromScore(change.score), 'stave', change.said);
    const { caret } = change;
    if (moveCaret && caret !== undefined)
      store.update((state) => ({ ...state, caret: { ...state.caret, at: caret } }));
  };

  const lengthHere = (): Ticks => {
    const { caret, length, dotted } = store.get();
    return chosenLength(score(), Math.min(caret.at, Math.max(0, endOf(score()) - 1)), length, dotted);
  };

  const keyHere = () => barAt(score(), Math.min(store.get().caret.at, endOf(score()))).key;

  const writeHere = (content: Content): void => {
    const { caret } = store.get();
    if (mayWrite(caret.voice)) apply(write(score(), caret.voice, caret.at, lengthHere(), content), true);
  };

  /** The note that a key for changing notes means: at the caret, or else the one just written before it. */
  const target = (): Ticks => {
    const { caret } = store.get();
    const here = eventAt(score(), caret.voice, caret.at);
    if (here?.kind === 'note') return caret.at;
    const before = caret.at > 0 ? eventAt(score(), caret.voice, caret.at - 1) : undefined;
    return before?.kind === 'note' ? before.at : caret.at;
  };

  const moveTo = (at: Ticks, keepStretch = false): void =>
    store.update((state) => ({
      ...state,
      caret: { ...state.caret, at },
      stretch: keepStretch ? state.stretch : undefined,
      notice: undefined,
    }));

  return {
    say,

    // Writing
    writeLetter(step: Step) {
      const { caret } = store.get();
      if (score().bars.length === 0) return say('There is no bar to write in. Add one first.', 'refused');
      writeHere({ kind: 'note', pitch: nearestPitch(score(), caret.voice, caret.at, step, keyHere()) });
    },
    writeKey(midi: number) {
      if (score().bars.length > 0) writeHere({ kind: 'note', pitch: spelt(midi, keyHere()) });
    },
    /** Writes at a place of the staff: C4 is 28. */
    writeAtPlace(voice: VoiceName, at: Ticks, place: number) {
      store.update((state) => ({ ...state, caret: { voice, at } }));
      writeHere({ kind: 'note', pitch: pitchAtPlace(place, keyHere()) });
    },
    writeRest: () => writeHere({ kind: 'rest' }),
    erase() {
      const { caret } = store.get();
      if (!mayWrite(caret.voice)) return;
      const here = eventAt(score(), caret.voice, caret.at);
      if (here === undefined) return;
      apply(write(score(), caret.voice, here.at, here.duration, { kind: 'gap' }));
    },
    eraseBefore() {
      const { caret } = store.get();
      const before = caret.at > 0 ? eventAt(score(), caret.voice, caret.at - 1) : undefined;
      if (before === undefined || !mayWrite(caret.voice)) return;
      apply(write(score(), caret.voice, before.at, before.duration, { kind: 'gap' }));
      moveTo(before.at);
    },
    step(steps: number) {
      const { caret } = store.get();
      if (mayWrite(caret.voice)) apply(moveBySteps(score(), caret.voice, target(), steps));
    },
    octave(octaves: number) {
      const { caret } = store.get();
      if (mayWrite(caret.voice)) apply(moveByOctaves(score(), caret.voice, target(), octaves));
    },
    accidental(alteration: 1 | -1 | 0) {
      const { caret } = store.get();
      if (mayWrite(caret.voice)) apply(alter(score(), caret.voice, target(), alteration));
    },
    tie() {
      const { caret } = store.get();
      if (mayWrite(caret.voice)) apply(toggleTie(score(), caret.voice, target(), lengthHere()));
    },
    fermata() {
      if (!staveIsOpen()) return;
      const { locked } = store.get().exercise;
      apply(
        toggleFermata(
          score(),
          VOICES.filter((voice) => !locked.includes(voice)),
          target(),
        ),
      );
    },
    relength() {
      const { caret } = store.get();
      if (mayWrite(caret.voice)) apply(setLength(score(), caret.voice, target(), lengthHere()));
    },
    setLength(length: BeatLength) {
      store.update((state) => ({ ...state, length, dotted: false }));
      say(`Length: ${lengthWords(length)}`);
    },
    toggleDotted() {
      store.update((state) => ({ ...state, dotted: !state.dotted }));
      say(store.get().dotted ? 'Dotted' : 'Not dotted');
    },
    /** Any other change of the score: bars, headings. */
    rewrite(change: (score: Score) => Score, said: string) {
      if (staveIsOpen()) adopt(workFromScore(change(score())), 'stave', said);
    },
    undo() {
      const { past } = store.get().history;
      if (past.length === 0) return say('There is nothing to undo.', 'refused');
      store.update((state) => {
        const history = undone(state.history);
        return { ...state, history, caret: withinScore(history.now.score, state.caret) };
      });
      say('Undone');
    },
    redo() {
      const { future } = store.get().history;
      if (future.length === 0) return say('There is nothing to redo.', 'refused');
      store.update((state) => {
        const history = redone(state.history);
        return { ...state, history, caret: withinScore(history.now.score, state.caret) };
      });
      say('Redone');
    },

    // Text
    typeText(text: string) {
      if (text === store.get().history.now.text) return;
      const work = workFromText(text);
      store.update((state) => ({
        ...state,
        history: changed(state.history, work, 'text', now()),
        caret: withinScore(work.score, state.caret),
        notice: undefined,
      }));
    },
    /** Gives up what can't be read of the text, so that the stave can be written on again. */
    dropUnread() {
      adopt(
        workFromScore(score()),
        'stave',
        'The text now says what is on the stave. Undo brings the old text back.',
      );
    },
    /** The caret goes to the note that stands at this place of the text. */
    followText(line: number, column: number) {
      const span = spansOf(store.get().history.now)
        .filter((s) => s.line === line && s.column <= column)
        .at(-1);
      if (span) store.update((state) => ({ ...state, caret: { voice: span.voice, at: span.at } }));
    },

    // Caret
    move(direction: 1 | -1) {
      const { caret } = store.get();
      moveTo(direction > 0 ? nextPlace(score(), caret) : placeBefore(score(), caret));
    },
    moveBar(direction: 1 | -1) {
      moveTo(barPlace(score(), store.get().caret.at, direction));
    },
    moveToEnd(end: 'start' | 'end') {
      moveTo(end === 'start' ? 0 : endOf(score()));
    },
    moveVoice(direction: 1 | -1) {
      store.update((state) => ({
        ...state,
        caret: { ...state.caret, voice: neighbourVoice(state.caret.voice, direction) },
        notice: undefined,
      }));
    },
    setCaret(voice: VoiceName, at: Ticks) {
      store.update((state) => ({
        ...state,
        caret: withinScore(state.history.now.score, { voice, at }),
        stretch: undefined,
        notice: undefined,
      }));
    },
    /** True where the caret stands on (or just behind) a note that may be changed. */
    canChangeNote(): boolean {
      const { caret, exercise } = store.get();
      return (
        !exercise.locked.includes(caret.voice) && eventAt(score(), caret.voice, target())?.kind === 'note'
      );
    },
    stretchBy(direction: 1 | -1) {
      const { caret, stretch } = store.get();
      const to = direction > 0 ? nextPlace(score(), caret) : placeBefore(score(), caret);
      // The caret stands at one end of the stretch; the other end stays.
      const anchor =
        stretch === undefined ? caret.at : caret.at === stretch.from ? stretch.until : stretch.from;
      store.update((state) => ({
        ...state,
        caret: { ...state.caret, at: to },
        stretch: to === anchor ? undefined : { from: Math.min(anchor, to), until: Math.max(anchor, to) },
      }));
      const chosen = store.get().stretch;
      if (chosen)
        say(
          `Chosen: ${printPlace(placeAt(score(), chosen.from))} to ${printPlace(placeAt(score(), chosen.until))}`,
        );
    },
    setStretch(stretch: PageState['stretch']) {
      store.update((state) => ({ ...state, stretch }));
    },

    // What is looked at
    show(view: View, rule?: string) {
      store.update((state) => ({
        ...state,
        view,
        rule: rule === '' ? undefined : (rule ?? state.rule),
        notice: undefined,
      }));
    },
    setSide: (side: Side) => store.update((state) => ({ ...state, side })),
    choose(id: string | undefined) {
      store.update((state) => {
        const finding = state.reviewed?.review.findings.find((f) => f.id === id);
        const voice = finding?.voices.at(-1) ?? state.caret.voice;
        return {
          ...state,
          chosen: id,
          side: id === undefined ? state.side : 'marks',
          caret: finding ? { voice, at: finding.tones.at(-1)?.at ?? finding.from } : state.caret,
        };
      });
    },
    openHint(id: string) {
      store.update((state) => ({
        ...state,
        hints: { ...state.hints, [id]: Math.min(3, (state.hints[id] ?? 0) + 1) },
      }));
    },
    setNote(id: string, note: string) {
      store.update((state) => {
        const { [id]: _old, ...others } = state.exercise.notes;
        const notes = note.trim() === '' ? others : { ...others, [id]: note };
        return { ...state, exercise: { ...state.exercise, notes } };
      });
    },
    toggleLock(voice: VoiceName) {
      const locked = store.get().exercise.locked.includes(voice);
      store.update((state) => ({
        ...state,
        exercise: {
          ...state.exercise,
          locked: locked
            ? state.exercise.locked.filter((v) => v !== voice)
            : [...state.exercise.locked, voice],
        },
      }));
      say(`The ${VOICE_WORDS[voice]} is ${locked ? 'open to changes' : 'locked'}.`);
    },
    /** The file's lines given out to the voices in another way; undo takes it back. */
    giveVoices(work: Work, source: Source) {
      store.update((state) => ({
        ...state,
        exercise: { ...state.exercise, source },
        history: changed(state.history, work, 'file', now()),
        notice: { text: 'The voices are given out anew.', kind: 'said' },
      }));
    },
    setBrief: (brief: string) =>
      store.update((state) => ({ ...state, exercise: { ...state.exercise, brief } })),
    setOtherSeconds: (otherSeconds: number) =>
      store.update((state) => ({ ...state, exercise: { ...state.exercise, otherSeconds } })),
    set(settings: Partial<Settings>) {
      store.update((state) => ({ ...state, settings: { ...state.settings, ...settings } }));
    },
    setShown(shown: Partial<Shown>) {
      store.update((state) => ({
        ...state,
        settings: { ...state.settings, shown: { ...state.settings.shown, ...shown } },
      }));
    },
    setMixer: (mixer: Partial<Mixer>) =>
      store.update((state) => ({ ...state, mixer: { ...state.mixer, ...mixer } })),
  };
}

/** `one beat`, `two beats`, `half a beat`. */
export function lengthWords({ numerator, denominator }: BeatLength): string {
  if (denominator === 1)
    return numerator === 1 ? 'one beat' : `${['', '', 'two', 'three', 'four'][numerator]} beats`;
  return denominator === 2 ? 'half a beat' : denominator === 3 ? 'a third of a beat' : 'a quarter of a beat';
}
