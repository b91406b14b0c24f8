/** Ties the engraving to the state: what is drawn follows it, and pointers and keys on the stave change it. */
import type { Chord } from '../../src/harmony/analysis.ts';
import { chordLabel, type LabelStyle } from '../../src/harmony/words/labels.ts';
import { barAt } from '../../src/score/place.ts';
import { endOf, type Score } from '../../src/score/score.ts';
import { beatLength, type Ticks } from '../../src/score/time.ts';
import { eventAt } from '../../src/writing/write.ts';
import {
  createEngraving,
  type Engraving,
  type EngravingInput,
  type Hit,
  type Marks,
} from '../engrave/index.ts';
import type { Actions } from '../state/actions.ts';
import { type KeyCommands, obeyKey } from '../state/keys.ts';
import type { Caret, PageState } from '../state/page.ts';
import type { Store } from '../state/store.ts';
import { type GestureEvents, listenToGestures } from './gestures.ts';
import { marksSeen } from './seen.ts';

export interface Stave {
  readonly engraving: Engraving;
  focus(): void;
}

/** After so many milliseconds without a note the hand rests, and all is set as if it had been written at once. */
const HAND_RESTS = 700;

export function createStave(
  element: HTMLElement,
  store: Store<PageState>,
  commands: KeyCommands,
  onDrawn: (milliseconds: number) => void,
): Stave {
  const { actions } = commands;
  const drawing = document.createElement('div');
  drawing.className = 'drawing';
  element.append(drawing);
  const engraving = createEngraving(drawing, { onDrawn });
  listenToGestures(drawing, gesturesOn(engraving, store, actions));

  let width = 0;
  let asked = false;
  let following = false;
  let resting: number | undefined;
  /** Several changes in one turn, as a keystroke makes them, are one drawing. */
  const askToDraw = (): void => {
    if (asked) return;
    asked = true;
    requestAnimationFrame(draw);
  };
  const draw = (): void => {
    asked = false;
    const state = store.get();
    if (width === 0) return;
    engraving.update({ ...drawingOf(state, width), hold: resting !== undefined });
    engraving.select(state.chosen);
    engraving.setCaret(state.caret);
    engraving.setStretch(state.stretch);
    // Last of all: whoever asks where something stands has the page laid out on the spot.
    if (following) engraving.scrollTo({ at: state.caret.at });
    following = false;
  };

  const rest = (): void => {
    resting = undefined;
    askToDraw();
  };

  store.subscribe((state, before) => {
    const redraw =
      state.history.now !== before.history.now ||
      state.reviewed !== before.reviewed ||
      state.settings !== before.settings ||
      state.exercise.notes !== before.exercise.notes ||
      state.exercise.brief !== before.exercise.brief;
    if (state.history.now !== before.history.now) {
      clearTimeout(resting);
      resting = state.history.last.by === 'stave' ? window.setTimeout(rest, HAND_RESTS) : undefined;
    }
    if (redraw || (state.view === 'write' && before.view !== 'write')) askToDraw();
    if (state.chosen !== before.chosen) engraving.select(state.chosen);
    if (state.caret !== before.caret) {
      engraving.setCaret(state.caret);
      if (document.activeElement === element) {
        following = true;
        askToDraw();
      }
    }
    if (state.stretch !== before.stretch) engraving.setStretch(state.stretch);
  });
  // Told of the width, nobody need ask for it, which would have the page laid out before there is anything new on it.
  new ResizeObserver(([seen]) => {
    if (seen === undefined || Math.round(seen.contentRect.width) === width) return;
    width = Math.round(seen.contentRect.width);
    askToDraw();
  }).observe(drawing);
  element.addEventListener('keydown', (event) => {
    if (event.target === element && obeyKey(event, 'stave', commands)) event.preventDefault();
  });
  return {
    engraving,
    focus: () => element.focus({ preventScroll: true }),
  };
}

/** The state as the engraver takes it. What didn't change is the very same as before: by that it sees what to draw. */
function drawingOf(state: PageState, width: number): EngravingInput {
  const { score } = state.history.now;
  return {
    score,
    marks: markedWithNotes(marksSeen(state), state.exercise.notes),
    marksToCome: state.reviewed !== undefined && state.reviewed.of !== state.history.now,
    width,
    ...(state.settings.scale === 1 ? {} : { scale: state.settings.scale }),
    layers: state.settings.shown,
    chordLabel: labelling(state.settings.labels, score.bars),
  };
}

/** Findings that the pupil has a word of their own on are struck out. */
const markedWithNotes = remembering((marks: Marks, notes: PageState['exercise']['notes']): Marks => {
  if (marks.findings.every(({ id }) => notes[id] === undefined)) return marks;
  const findings = marks.findings.map((f) => (notes[f.id] === undefined ? f : { ...f, waived: true }));
  return { ...marks, findings };
});

const labelling = remembering(
  (style: LabelStyle, bars: Score['bars']) =>
    (chord: Chord): string =>
      chordLabel(chord, style, barAt({ bars }, chord.at).key.fifths),
);

/** The function, which answers what it answered last where it is asked the same again. */
function remembering<A, B, T>(ask: (a: A, b: B) => T): (a: A, b: B) => T {
  let last: { readonly a: A; readonly b: B; readonly answer: T } | undefined;
  return (a, b) => {
    if (last === undefined || last.a !== a || last.b !== b) last = { a, b, answer: ask(a, b) };
    return last.answer;
  };
}

/** What a pointer does to the music: chooses marks, writes in open boxes, moves notes, chooses stretches. */
function gesturesOn(engraving: Engraving, store: Store<PageState>, actions: Actions): GestureEvents {
  const scoreNow = () => store.get().history.now.score;
  const caretAt = (hit: Hit): Caret => ({ voice: hit.voice, at: beatAt(scoreNow(), hit.moment) });
  return {
    hitAt: (x, y) => engraving.hitTest(x, y),
    onClick: (hit) => click(hit, store, actions),
    mayDrag(hit, touch) {
      const { exercise, caret } = store.get();
      // A finger that goes over a note may only want to scroll: the note is tapped first.
      const meant = !touch || (caret.voice === hit.voice && noteStart(scoreNow(), hit) === caret.at);
      return meant && !exercise.locked.includes(hit.voice);
    },
    onDrag(hit, place, done) {
      const at = noteStart(scoreNow(), hit);
      engraving.setGhost(done ? undefined : { voice: hit.voice, at, place });
      if (done && place !== hit.place) actions.dragNote({ voice: hit.voice, at }, place - hit.place);
    },
    onSelect: (from, to) => actions.chooseBetween(caretAt(from), caretAt(to)),
    onHover(hit) {
      const box = hit && openBox(hit, store.get());
      engraving.setGhost(box && { ...box, place: hit.place });
    },
  };
}

function click(hit: Hit, store: Store<PageState>, actions: Actions): void {
  const { chosen, exercise, history } = store.get();
  const { score } = history.now;
  if (hit.finding !== undefined) {
    actions.choose(hit.finding === chosen ? undefined : hit.finding);
    return;
  }
  const box = openBox(hit, store.get());
  if (box !== undefined) {
    actions.writeAtPlace(box.voice, box.at, hit.place);
    return;
  }
  const at = hit.tone === undefined ? beatAt(score, hit.moment) : noteStart(score, hit);
  const voice = hit.gap?.voice ?? hit.voice;
  actions.setCaret(voice, at);
  if (exercise.locked.includes(voice)) actions.tellLocked(voice, at);
}

/** The open beat that a click would write on: in the box pointed at, whatever voice was chosen before. */
function openBox(hit: Hit, { history, exercise }: PageState): Caret | undefined {
  if (hit.gap === undefined || hit.finding !== undefined || exercise.locked.includes(hit.gap.voice))
    return undefined;
  return { voice: hit.gap.voice, at: Math.max(hit.gap.at, beatAt(history.now.score, hit.moment)) };
}

/** The beginning of the note that was hit. */
function noteStart(score: Score, hit: Hit): Ticks {
  return eventAt(score, hit.voice, hit.at)?.at ?? hit.at;
}

/** The beat that a moment belongs to. */
function beatAt(score: Score, moment: Ticks): Ticks {
  if (score.bars.length === 0) return 0;
  const at = Math.min(Math.max(0, moment), Math.max(0, endOf(score) - 1));
  const bar = barAt(score, at);
  const beat = beatLength(bar.metre);
  const start = bar.at - bar.offset;
  return Math.max(bar.at, start + Math.floor((at - start) / beat) * beat);
}
