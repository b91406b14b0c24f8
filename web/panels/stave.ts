/** Ties the engraving to the state: what is drawn follows it, and pointers and keys on the stave change it. */
import { chordLabel } from '../../src/harmony/words/labels.ts';
import { barAt } from '../../src/score/place.ts';
import { endOf, type Score } from '../../src/score/score.ts';
import { beatLength, type Ticks } from '../../src/score/time.ts';
import { createEngraving, type Engraving, type Hit, marksOf, NO_MARKS } from '../engrave/index.ts';
import type { Actions } from '../state/actions.ts';
import { type KeyCommands, obeyKey } from '../state/keys.ts';
import type { PageState } from '../state/page.ts';
import type { Store } from '../state/store.ts';

export interface Stave {
  readonly engraving: Engraving;
  focus(): void;
}

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
  const engraving = createEngraving(drawing, {
    onSelectFinding: (id) => actions.choose(id),
    onPoint: (hit, event) => point(hit, event, store, actions),
    onDrawn,
  });

  let width = 0;
  let asked = false;
  /** Several changes in one turn, as a keystroke makes them, are one drawing. */
  const askToDraw = (): void => {
    if (asked) return;
    asked = true;
    requestAnimationFrame(draw);
  };
  const draw = (): void => {
    asked = false;
    const state = store.get();
    width = drawing.clientWidth;
    if (width === 0) return;
    const { score } = state.history.now;
    const marks = state.reviewed === undefined ? NO_MARKS : marksOf(state.reviewed.review);
    const { notes } = state.exercise;
    engraving.update({
      score,
      marks: {
        ...marks,
        findings: marks.findings.map((f) => (notes[f.id] === undefined ? f : { ...f, waived: true })),
      },
      width,
      ...(state.settings.scale === 1 ? {} : { scale: state.settings.scale }),
      layers: state.settings.shown,
      chordLabel: (chord) => chordLabel(chord, state.settings.labels, barAt(score, chord.at).key.fifths),
    });
    engraving.select(state.chosen);
    engraving.setCaret(state.caret);
    engraving.setStretch(state.stretch);
  };

  store.subscribe((state, before) => {
    const redraw =
      state.history.now !== before.history.now ||
      state.reviewed !== before.reviewed ||
      state.settings !== before.settings ||
      state.exercise.notes !== before.exercise.notes;
    if (redraw || (state.view === 'write' && before.view !== 'write')) askToDraw();
    if (state.chosen !== before.chosen) engraving.select(state.chosen);
    if (state.caret !== before.caret) {
      engraving.setCaret(state.caret);
      if (document.activeElement === element) engraving.scrollTo({ at: state.caret.at });
    }
    if (state.stretch !== before.stretch) engraving.setStretch(state.stretch);
  });
  new ResizeObserver(() => {
    if (drawing.clientWidth !== width) askToDraw();
  }).observe(drawing);
  element.addEventListener('keydown', (event) => {
    if (event.target === element && obeyKey(event, 'stave', commands)) event.preventDefault();
  });
  return {
    engraving,
    focus: () => element.focus({ preventScroll: true }),
  };
}

/**
 * A pointer on a note takes the caret there. On an open beat it writes the note of the place it points to: by a
 * touch only on the second tap, since the first may be a finger that wanted to scroll.
 */
function point(hit: Hit, event: PointerEvent, store: Store<PageState>, actions: Actions): void {
  const { caret, history, exercise } = store.get();
  const { score } = history.now;
  if (hit.tone !== undefined) {
    actions.setCaret(hit.voice, hit.at);
    return;
  }
  // The voice chosen stays the one written, where it belongs to the staff that was pointed at.
  const staffVoices = hit.staff === 'treble' ? (['S', 'A'] as const) : (['T', 'B'] as const);
  const voice = staffVoices.find((v) => v === caret.voice) ?? hit.voice;
  const at = beatAt(score, hit.moment);
  const open = score.voices[voice].some((e) => e.kind === 'gap' && e.at <= at && at < e.at + e.duration);
  const aimed = event.pointerType === 'mouse' || (caret.voice === voice && caret.at === at);
  if (open && aimed && !exercise.locked.includes(voice)) actions.writeAtPlace(voice, at, hit.place);
  else actions.setCaret(voice, at);
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
