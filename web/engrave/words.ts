/** Words in and under the score: how a chord label is set, and how wide words are. */
import type { OrnamentKind } from '../../src/harmony/analysis.ts';
import { figuresOfLine } from '../../src/harmony/words/figured-bass.ts';

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
  const bare = figuresOfLine(label);
  if (bare !== undefined) {
    stack(
      bare,
      add,
      () => x,
      (to) => (x = to),
    );
    return { runs, width: x };
  }
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
    if (figures.length > 1) {
      x += 1;
      stack(
        [...figures],
        add,
        () => x,
        (to) => (x = to),
      );
    } else add(figures, FIGURE, -6);
    add(inversion, BASE - 2);
  }
  return { runs, width: x };
}

/** Figures one above the other, the last one on the baseline's level. */
function stack(
  figures: readonly string[],
  add: (text: string, size: number, y?: number, signs?: boolean) => void,
  at: () => number,
  move: (x: number) => void,
): void {
  const start = at();
  let widest = 0;
  for (const [i, figure] of figures.entries()) {
    move(start);
    const y = -10 + (i - figures.length + 2) * 9 + (figures.length > 2 ? 2 : 0);
    const [, sign = '', number = ''] = /^([#bn]?)(.*)$/.exec(figure)!;
    if (sign !== '') add(SIGNS[sign]!, FIGURE + 1, y - 3, true);
    add(number, FIGURE, y);
    widest = Math.max(widest, at() - start);
  }
  move(start + widest);
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
  const match = /^([A-G])([#b]*)/.exec(name);
  if (!match) return { runs: [{ text: name, x: 0, y: 0, size }], width: measure(name, size) };
  const [head, letter = '', signs = ''] = match;
  const rest = name.slice(head.length);
  const runs: Run[] = [{ text: letter, x: 0, y: 0, size }];
  let x = measure(letter, size);
  for (const sign of signs) {
    runs.push({ text: SIGNS[sign]!, x: x + 0.5, y: -4, size: size + 2, signs: true });
    x += measure(SIGNS[sign]!, size + 2, true) + 1;
  }
  runs.push({ text: rest.trim(), x: x + 3, y: 0, size });
  return { runs, width: x + 3 + measure(rest.trim(), size) };
}

/** Labels and plain words set one after the other on one baseline. */
export function setInLine(parts: readonly (string | SetLabel)[], measure: Measure, size: number): SetLabel {
  const runs: Run[] = [];
  let width = 0;
  for (const part of parts) {
    const label =
      typeof part === 'string'
        ? { runs: [{ text: part, x: 0, y: 0, size }], width: measure(part, size) }
        : part;
    for (const run of label.runs) runs.push({ ...run, x: run.x + width });
    width += label.width;
  }
  return { runs, width };
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
