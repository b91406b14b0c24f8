/**
 * The keys, as one table: a row says what its keys do, in words for the help and as the act itself, so that the two
 * can't differ. The help page prints the table; the stave and the page obey it.
 *
 * Letters name notes, as musicians do; digits count beats, as they do in our text notation; `#`, `-` and `n` stand
 * for sharp, flat and natural (`b` being a note).
 */
import { STEPS, type Step } from '../../src/score/pitch.ts';
import type { Actions } from './actions.ts';
import type { BeatLength } from './page.ts';

/** What the keys reach. */
export interface KeyCommands {
  readonly actions: Actions;
  readonly playOrStop: () => void;
  readonly openFindingAtCaret: () => void;
  readonly describeCaret: () => void;
}

/** The browser makes an event of its own of such a key (copy, paste), which the page hears. */
const BROWSER = 'browser';

type Act = ((commands: KeyCommands) => void) | typeof BROWSER;

/** Where a key works: on the stave, anywhere but in a field that is typed in, or even there. */
type Reach = 'stave' | 'page' | 'everywhere';

export interface KeyRow {
  /** What each key of the row does, by the key's name as the help prints it: `Ctrl Shift Z`, `←`, `Space`. */
  readonly keys: Readonly<Record<string, Act>>;
  /** What the help prints for the keys, where it is shorter than all of their names. */
  readonly shown?: readonly string[];
  readonly does: string;
  /** The stave, where left out. */
  readonly reach?: Reach;
  /** The row holds only where digits mean this. */
  readonly digits?: 'beats' | 'values';
  /** The row holds only while this is so. */
  readonly where?: (actions: Actions) => boolean;
}

const on =
  (act: (actions: Actions) => void): Act =>
  ({ actions }) =>
    act(actions);

const beats = (numerator: number, denominator = 1): Act => {
  const length: BeatLength = { numerator, denominator };
  return on((actions) => actions.setLength(length));
};

const value = (denominator: number): Act =>
  on((actions) => actions.setLength({ numerator: 1, denominator, of: 'semibreve' }));

const canChange = (actions: Actions): boolean => actions.canChangeNote();

export const KEYS: readonly { readonly title: string; readonly rows: readonly KeyRow[] }[] = [
  {
    title: 'Moving about',
    rows: [
      {
        keys: { '←': on((a) => a.move(-1)), '→': on((a) => a.move(1)) },
        does: 'a beat back or on (or to the next note, where it is shorter than a beat)',
      },
      {
        keys: { 'Ctrl ←': on((a) => a.moveBar(-1)), 'Ctrl →': on((a) => a.moveBar(1)) },
        does: 'a bar back or on',
      },
      {
        keys: {
          'Alt ↑': on((a) => a.moveVoice(-1)),
          'Alt ↓': on((a) => a.moveVoice(1)),
          'Page Up': on((a) => a.moveVoice(-1)),
          'Page Down': on((a) => a.moveVoice(1)),
        },
        does: 'the voice above or below',
      },
      {
        keys: { '↑': on((a) => a.moveVoice(-1)), '↓': on((a) => a.moveVoice(1)) },
        does: 'the voice above or below too, where there is no note that may be changed',
        where: (actions) => !canChange(actions),
      },
      {
        keys: { Home: on((a) => a.moveToEnd('start')), End: on((a) => a.moveToEnd('end')) },
        does: 'the beginning or the end of the exercise',
      },
      {
        keys: { 'Shift ←': on((a) => a.stretchBy(-1)), 'Shift →': on((a) => a.stretchBy(1)) },
        does: 'choose a stretch, to hear it in a loop, copy it or change it as a whole',
      },
      {
        keys: {
          'Shift Home': on((a) => a.stretchToEnd('start')),
          'Shift End': on((a) => a.stretchToEnd('end')),
        },
        does: 'choose as far as the beginning or the end',
      },
      {
        keys: { 'Alt Shift ↑': on((a) => a.stretchVoices(-1)), 'Alt Shift ↓': on((a) => a.stretchVoices(1)) },
        does: 'choose the voice above or below with it',
      },
      { keys: { 'Ctrl A': on((a) => a.chooseAll()) }, does: 'choose everything' },
    ],
  },
  {
    title: 'Writing',
    rows: [
      {
        keys: Object.fromEntries(STEPS.map((step: Step) => [step, on((a) => a.writeLetter(step))])),
        shown: ['A … G'],
        does: 'the nearest note of that name, with the key signature’s sharp or flat',
      },
      {
        digits: 'beats',
        keys: { 1: beats(1), 2: beats(2), 3: beats(3), 4: beats(4) },
        does: 'notes of one, two, three or four beats from here on',
      },
      {
        digits: 'beats',
        keys: { 5: beats(1, 2), 6: beats(1, 4), 7: beats(1, 3) },
        does: 'notes of half, a quarter or a third of a beat',
      },
      {
        digits: 'values',
        keys: { 1: value(1), 2: value(2), 4: value(4), 8: value(8), 6: value(16) },
        does: 'semibreve, minim, crotchet, quaver, semiquaver: the part of a semibreve that it is (6 for 16)',
      },
      { keys: { '.': on((a) => a.toggleDotted()) }, does: 'dotted: half as long again' },
      { keys: { L: on((a) => a.relength()) }, does: 'give the note at the caret the length chosen' },
      { keys: { R: on((a) => a.writeRest()) }, does: 'a rest' },
      { keys: { Backspace: on((a) => a.eraseBefore()) }, does: 'erase what stands before the caret' },
      { keys: { Delete: on((a) => a.erase()) }, does: 'erase what stands at the caret' },
    ],
  },
  {
    title: 'Changing the note at the caret (or the one just written), or all that is chosen',
    rows: [
      {
        keys: { '↑': on((a) => a.step(1)), '↓': on((a) => a.step(-1)) },
        does: 'a step up or down',
        where: canChange,
      },
      {
        keys: { 'Shift ↑': on((a) => a.octave(1)), 'Shift ↓': on((a) => a.octave(-1)) },
        does: 'an octave up or down',
      },
      {
        keys: { '#': on((a) => a.accidental(1)), '+': on((a) => a.accidental(1)) },
        does: 'sharp; again for double sharp',
      },
      { keys: { '-': on((a) => a.accidental(-1)) }, does: 'flat; again for double flat' },
      { keys: { N: on((a) => a.accidental(0)) }, does: 'natural' },
      {
        keys: { T: on((a) => a.tie()) },
        does: 'tie to the next note (written for you where nothing stands there yet)',
      },
      {
        keys: { P: on((a) => a.fermata()), '!': on((a) => a.fermata()) },
        does: 'pause sign (fermata) over the chord',
      },
      {
        keys: { "'": on((a) => a.togglePhraseEnd()) },
        does: 'a phrase ends here, or doesn’t, whatever is marked',
      },
    ],
  },
  {
    title: 'Anything else',
    rows: [
      { keys: { 'Ctrl Z': on((a) => a.undo()) }, does: 'undo, as far back as you like', reach: 'page' },
      {
        keys: { 'Ctrl Shift Z': on((a) => a.redo()), 'Ctrl Y': on((a) => a.redo()) },
        does: 'redo',
        reach: 'page',
      },
      {
        keys: { 'Ctrl C': BROWSER, 'Ctrl X': BROWSER, 'Ctrl V': BROWSER },
        does: 'copy or cut what is chosen, paste it at the caret',
      },
      { keys: { Space: (c) => c.playOrStop() }, does: 'play from the caret, or stop' },
      {
        keys: { 'Ctrl Enter': (c) => c.playOrStop() },
        does: 'the same, anywhere on the page',
        reach: 'everywhere',
      },
      { keys: { Enter: (c) => c.openFindingAtCaret() }, does: 'open the gravest finding at the caret' },
      {
        keys: { M: (c) => c.actions.toggleOrder() },
        does: 'list the marks from bar to bar, or again by what costs most',
      },
      {
        keys: { W: (c) => c.describeCaret() },
        does: 'say what sounds at the caret: voice by voice, chord and key',
      },
      { keys: { Escape: on((a) => a.letGo()) }, does: 'let go of the chosen finding or stretch' },
    ],
  },
];

/** The names of keys as the help prints them, where the browser's are others. */
const NAMES: Readonly<Record<string, string>> = {
  ' ': 'Space',
  ArrowLeft: '←',
  ArrowRight: '→',
  ArrowUp: '↑',
  ArrowDown: '↓',
  PageUp: 'Page Up',
  PageDown: 'Page Down',
};

type Press = Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'altKey' | 'shiftKey'>;

/** A key as the table names it. */
function nameOf({ key, ctrlKey, metaKey, altKey, shiftKey }: Press): string {
  const single = key.length === 1 && key !== ' ';
  // A sign is what it is, whatever was held to type it: `#` is Option 3 on some keyboards, `+` is shifted on most.
  if (single && !/[a-z0-9]/i.test(key) && !metaKey && (!ctrlKey || altKey)) return key;
  const control = ctrlKey || metaKey;
  const shift = shiftKey && (control || !single);
  return [
    ...(control ? ['Ctrl'] : []),
    ...(altKey ? ['Alt'] : []),
    ...(shift ? ['Shift'] : []),
    NAMES[key] ?? (single ? key.toUpperCase() : key),
  ].join(' ');
}

/**
 * Obeys a key pressed within reach; false where it means nothing here and the browser should have it. What the stave
 * doesn't know is left to the page, and so on.
 */
export function obeyKey(event: Press, reach: Reach, commands: KeyCommands): boolean {
  const name = nameOf(event);
  for (const { rows } of KEYS)
    for (const row of rows) {
      if ((row.reach ?? 'stave') !== reach || (row.digits && row.digits !== commands.actions.digits()))
        continue;
      if (row.where?.(commands.actions) === false) continue;
      const act = row.keys[name];
      if (act === undefined) continue;
      if (act === BROWSER) return false;
      act(commands);
      return true;
    }
  return false;
}
