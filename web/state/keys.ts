/**
 * The keys on the stave, as data: the help page prints this table and the stave obeys it, so they can't differ.
 *
 * Letters name notes, as musicians do; digits count beats, as they do in our text notation; `#`, `-` and `n` stand
 * for sharp, flat and natural (`b` being a note). Keys work while the stave has the focus.
 */
import type { Actions } from './actions.ts';

export interface KeyHelp {
  readonly keys: readonly string[];
  readonly does: string;
}

export const KEY_HELP: readonly { readonly title: string; readonly keys: readonly KeyHelp[] }[] = [
  {
    title: 'Moving about',
    keys: [
      { keys: ['←', '→'], does: 'a beat back or on (or to the next note, where it is shorter than a beat)' },
      { keys: ['Ctrl ←', 'Ctrl →'], does: 'a bar back or on' },
      { keys: ['Alt ↑', 'Alt ↓'], does: 'the voice above or below; Page Up and Page Down do the same' },
      { keys: ['↑', '↓'], does: 'the voice above or below too, where there is no note that may be changed' },
      { keys: ['Home', 'End'], does: 'the beginning or the end of the exercise' },
      { keys: ['Shift ←', 'Shift →'], does: 'choose a stretch, to hear it in a loop' },
    ],
  },
  {
    title: 'Writing',
    keys: [
      { keys: ['A … G'], does: 'the nearest note of that name, with the key signature’s sharp or flat' },
      { keys: ['1', '2', '3', '4'], does: 'notes of one, two, three or four beats from here on' },
      { keys: ['5', '6', '7'], does: 'notes of half, a quarter or a third of a beat' },
      { keys: ['.'], does: 'dotted: half as long again' },
      { keys: ['L'], does: 'give the note at the caret the length chosen' },
      { keys: ['R'], does: 'a rest' },
      { keys: ['Backspace'], does: 'erase what stands before the caret' },
      { keys: ['Delete'], does: 'erase what stands at the caret' },
    ],
  },
  {
    title: 'Changing the note at the caret (or the one just written)',
    keys: [
      { keys: ['↑', '↓'], does: 'a step up or down' },
      { keys: ['Shift ↑', 'Shift ↓'], does: 'an octave up or down' },
      { keys: ['#', '+'], does: 'sharp; again for double sharp' },
      { keys: ['-'], does: 'flat; again for double flat' },
      { keys: ['N'], does: 'natural' },
      { keys: ['T'], does: 'tie to the next note (written for you where nothing stands there yet)' },
      { keys: ['P', '!'], does: 'pause sign (fermata) over the chord' },
    ],
  },
  {
    title: 'Anything else',
    keys: [
      { keys: ['Ctrl Z'], does: 'undo, as far back as you like' },
      { keys: ['Ctrl Shift Z', 'Ctrl Y'], does: 'redo' },
      {
        keys: ['Space'],
        does: 'play from the caret, or stop; Ctrl Enter does the same anywhere on the page',
      },
      { keys: ['Enter'], does: 'open the first finding at the caret' },
      { keys: ['W'], does: 'say what sounds at the caret: voice by voice, chord and key' },
      { keys: ['Escape'], does: 'let go of the chosen finding or stretch' },
    ],
  },
];

/** What the stave's keys need that is no change of the state. */
export interface StaveKeys {
  readonly actions: Actions;
  readonly playOrStop: () => void;
  readonly openFindingAtCaret: () => void;
  readonly describeCaret: () => void;
  readonly letGo: () => void;
}

const LENGTHS: Readonly<Record<string, { numerator: number; denominator: number }>> = {
  1: { numerator: 1, denominator: 1 },
  2: { numerator: 2, denominator: 1 },
  3: { numerator: 3, denominator: 1 },
  4: { numerator: 4, denominator: 1 },
  5: { numerator: 1, denominator: 2 },
  6: { numerator: 1, denominator: 4 },
  7: { numerator: 1, denominator: 3 },
};

/** Obeys a key pressed on the stave; false where it means nothing here and the browser should have it. */
export function obeyStaveKey(event: KeyboardEvent, commands: StaveKeys): boolean {
  const { actions } = commands;
  const control = event.ctrlKey || event.metaKey;
  if (event.key.startsWith('Arrow')) return obeyArrow(event, control, actions);
  if (control) return false;
  if (event.altKey) return false;
  const key = event.key.length === 1 ? event.key.toUpperCase() : event.key;
  const length = LENGTHS[key];
  if (length) {
    actions.setLength(length);
    return true;
  }
  if (/^[A-G]$/.test(key)) {
    actions.writeLetter(key as 'A' | 'B' | 'C' | 'D' | 'E' | 'F' | 'G');
    return true;
  }
  const act = PLAIN_KEYS[key];
  act?.(commands);
  return act !== undefined;
}

function obeyArrow(event: KeyboardEvent, control: boolean, actions: Actions): boolean {
  const forward = event.key === 'ArrowRight' || event.key === 'ArrowUp' ? 1 : -1;
  if (event.key === 'ArrowLeft' || event.key === 'ArrowRight') {
    if (event.altKey) return false;
    if (control) actions.moveBar(forward);
    else if (event.shiftKey) actions.stretchBy(forward);
    else actions.move(forward);
    return true;
  }
  if (control) return false;
  const voiceDirection = forward > 0 ? -1 : 1;
  if (event.altKey) actions.moveVoice(voiceDirection);
  else if (event.shiftKey) actions.octave(forward);
  else if (actions.canChangeNote()) actions.step(forward);
  else actions.moveVoice(voiceDirection);
  return true;
}

const PLAIN_KEYS: Readonly<Record<string, (commands: StaveKeys) => void>> = {
  '.': ({ actions }) => actions.toggleDotted(),
  L: ({ actions }) => actions.relength(),
  R: ({ actions }) => actions.writeRest(),
  Backspace: ({ actions }) => actions.eraseBefore(),
  Delete: ({ actions }) => actions.erase(),
  '#': ({ actions }) => actions.accidental(1),
  '+': ({ actions }) => actions.accidental(1),
  '-': ({ actions }) => actions.accidental(-1),
  N: ({ actions }) => actions.accidental(0),
  T: ({ actions }) => actions.tie(),
  P: ({ actions }) => actions.fermata(),
  '!': ({ actions }) => actions.fermata(),
  Home: ({ actions }) => actions.moveToEnd('start'),
  End: ({ actions }) => actions.moveToEnd('end'),
  PageUp: ({ actions }) => actions.moveVoice(-1),
  PageDown: ({ actions }) => actions.moveVoice(1),
  ' ': ({ playOrStop }) => playOrStop(),
  Enter: ({ openFindingAtCaret }) => openFindingAtCaret(),
  W: ({ describeCaret }) => describeCaret(),
  Escape: ({ letGo }) => letGo(),
};
