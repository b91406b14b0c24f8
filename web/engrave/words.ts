/** Words in and under the score: how a chord label is set, and how wide words are. */
import type { Chord, OrnamentKind } from '../../src/harmony/analysis.ts';
import { numeral } from '../../src/harmony/words/labels.ts';
import { type NoteName, STEPS, stepIndex } from '../../src/score/pitch.ts';
import { signatureAlteration } from './accidentals.ts';

/** Width in drawing units of a text set at a size in px; `signs` for text in the music font. */
export type Measure = (text: string, size: number, signs?: boolean) => number;

/** A piece of a label: all in one size and font, at an offset from the label's left end and baseline. */
export interface Run {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly size: number;
  /** Set in the music font (sharps and flats). */
  readonly signs?: true;
}

export interface SetLabel {
  readonly runs: readonly Run[];
  readonly width: number;
}

const SIGNS: Readonly<Record<string, string>> = { '#': '\ue262', b: '\ue260', n: '\ue261' };
const DEGREE_SIGNS: Readonly<Record<string, string>> = { o: '°', ø: 'ø', '+': '+' };
/** As in engrave.css. */
export const LYRIC_SIZE = 12;
const BASE = 15;
const FIGURE = 10.5;

/** An estimate for where nothing can be measured: an average serif letter is half as wide as its size. */
export const guessWidth: Measure = (text, size) => text.length * size * 0.55;

/** Measures with a canvas in the page's fonts; answers are kept, since the same few labels come again and again. */
export function canvasMeasure(): Measure {
  const context = document.createElement('canvas').getContext('2d');
  const known = new Map<string, number>();
  return (text, size, signs) => {
    const key = `${size}${signs ? '*' : ' '}${text}`;
    let width = known.get(key);
    if (width === undefined) {
      if (context) context.font = `${size}px ${signs ? 'Bravura' : 'Academico'}, serif`;
      width = context ? context.measureText(text).width : guessWidth(text, size);
      if (known.size > 2000) known.clear();
      known.set(key, width);
    }
    return width;
  };
}

/**
 * Sets a chord label as harmony books print it: figures raised and stacked, the degree sign raised, `b` and `#` before
 * a numeral as flat and sharp. Takes every style of `labels.ts`; what it doesn't know it sets as it stands.
 */
export function setChordLabel(label: string, measure: Measure): SetLabel {
  const runs: Run[] = [];
  let x = 0;
  const add = (text: string, size: number, y = 0, signs = false) => {
    if (text === '') return;
    runs.push({ text, x, y, size, ...(signs ? { signs: true as const } : {}) });
    x += measure(text, size, signs);
  };
  for (const [i, part] of label.split('/').entries()) {
    if (i > 0) add('/', BASE);
    const match = /^([b#]*)(N|It|Fr|Ger|[ivIV]+)?([oø+]?)(\d*)([bcd]?)$/.exec(part);
    if (!match) {
      add(part, BASE);
      continue;
    }
    const [, before = '', letters = '', sign = '', figures = '', inversion = ''] = match;
    for (const each of before) add(SIGNS[each]!, 16, -5, true);
    add(letters, BASE);
    add(DEGREE_SIGNS[sign] ?? '', BASE - 2, sign === '+' ? -4 : -2);
    if (letters === '') {
      stack(
        [...figures],
        add,
        () => x,
        (to) => (x = to),
        measure,
      );
    } else if (figures.length > 1) {
      x += 1;
      stack(
        [...figures],
        add,
        () => x,
        (to) => (x = to),
        measure,
      );
    } else add(figures, FIGURE, -6);
    add(inversion, BASE - 2);
  }
  return { runs, width: x };
}

/** Figures one above the other, the last one on the baseline's level. */
function stack(
  figures: readonly string[],
  add: (text: string, size: number, y?: number) => void,
  at: () => number,
  move: (x: number) => void,
  measure: Measure,
): void {
  const start = at();
  let widest = 0;
  for (const [i, figure] of figures.entries()) {
    move(start);
    add(figure, FIGURE, -10 + (i - figures.length + 2) * 9 + (figures.length > 2 ? 2 : 0));
    widest = Math.max(widest, measure(figure, FIGURE));
  }
  move(start + widest);
}

/**
 * The figures a continuo player would read: the usual short ones, with an accidental where a note is altered against
 * the key signature (alone, for the third). From the top: `['#6', '4', '3']` is printed as three lines.
 */
export function bassFigures(chord: Chord, fifths: number): string[] {
  const plain = [...numeral(chord.roman, chord.key, 'figured bass')].map(Number);
  const members = [chord.members.root, chord.members.third, chord.members.fifth, chord.members.seventh];
  const shown: { figure: number; text: string }[] = [];
  for (const figure of [9, 8, 7, 6, 5, 4, 3, 2]) {
    const step = STEPS[(stepIndex(chord.bass.step) + figure - 1) % 7]!;
    const note = members.find((member): member is NoteName => member?.step === step);
    const altered = note !== undefined && note.alteration !== signatureAlteration(fifths, step);
    const sign = altered && note ? (note.alteration > 0 ? '#' : note.alteration < 0 ? 'b' : 'n') : '';
    if (plain.includes(figure)) shown.push({ figure, text: `${sign}${figure}` });
    else if (altered && figure < 8) shown.push({ figure, text: figure === 3 ? sign : `${sign}${figure}` });
  }
  return shown.map(({ text }) => text);
}

/** Sets figures one above the other from the baseline of the first. */
export function setFigures(figures: readonly string[], measure: Measure): SetLabel {
  let widest = 0;
  const runs: Run[] = [];
  for (const [line, figure] of figures.entries()) {
    let x = 0;
    for (const each of figure) {
      const sign = SIGNS[each];
      runs.push(
        sign === undefined
          ? { text: each, x, y: line * 11, size: 12 }
          : { text: sign, x, y: line * 11 - 4, size: 15, signs: true },
      );
      x += sign === undefined ? measure(each, 12) : measure(sign, 15, true) + 1;
    }
    widest = Math.max(widest, x);
  }
  return { runs, width: widest };
}

/** A note name as printed in words: `B♭`, `F♯`; the signs are the music font's. */
export function setKeyName(name: string, measure: Measure, size: number): SetLabel {
  const match = /^([A-G])([#b]*)(.*)$/.exec(name);
  if (!match) return { runs: [{ text: name, x: 0, y: 0, size }], width: measure(name, size) };
  const [, letter = '', signs = '', rest = ''] = match;
  const runs: Run[] = [{ text: letter, x: 0, y: 0, size }];
  let x = measure(letter, size);
  for (const sign of signs) {
    runs.push({ text: SIGNS[sign]!, x: x + 0.5, y: -4, size: size + 2, signs: true });
    x += measure(SIGNS[sign]!, size + 2, true) + 1;
  }
  runs.push({ text: rest.trim(), x: x + 3, y: 0, size });
  return { runs, width: x + 3 + measure(rest.trim(), size) };
}

/** What stands beside a non-harmony note. */
export const ORNAMENT_LETTERS: Readonly<Record<OrnamentKind, string>> = {
  passing: 'P',
  'accented passing': 'AP',
  neighbour: 'N',
  suspension: 'S',
  retardation: 'R',
  anticipation: 'A',
  échappée: 'É',
  appoggiatura: 'App',
  pedal: 'Ped',
  'changing notes': 'CN',
  unclassified: '?',
};
