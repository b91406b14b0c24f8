/** Words under the music, each kind in a lane of its own: figured bass, numerals, keys, cadences. Pure. */

import type { Cadence, Chord } from '../../src/harmony/analysis.ts';
import { figuredBass } from '../../src/harmony/words/figured-bass.ts';
import { numeral, printKey } from '../../src/harmony/words/labels.ts';
import { secondKey, secondNumerals } from '../../src/harmony/words/seconds.ts';
import { VOICES, type WrittenFigure } from '../../src/score/score.ts';
import type { Ticks } from '../../src/score/time.ts';
import type { PlannedBar, Sign } from './bars.ts';
import { type Box, type SystemGeometry, xAt } from './geometry.ts';
import type { Layers, Marks } from './input.ts';
import type { LabelRoom, LabelRooms } from './spacing.ts';
import {
  LYRIC_SIZE,
  type Measure,
  type SetLabel,
  setChordLabel,
  setFigures,
  setInLine,
  setKeyName,
} from './words.ts';

export type LaneName = 'figures' | 'numerals' | 'keys' | 'seconds' | 'cadences';

/** Words placed: a box that nothing else may overlap, and the label in it. */
export interface PlacedWords {
  readonly kind: LaneName | 'ornament' | 'bar';
  readonly box: Box;
  readonly x: number;
  /** The baseline. */
  readonly y: number;
  readonly label: SetLabel;
  /** For a key, and a chord that lasts over a barline: how far its line goes on, and whether the key goes on beyond this system. */
  readonly line?: { readonly from: number; readonly to: number; readonly goesOn: boolean };
  /** Carried over from the system before. */
  readonly carried?: true;
}

/** Half a note head: labels are centred on the heads above. */
const HALF_HEAD = 6;
const WORD_SIZE = 13;

type ChordLabel = (chord: Chord) => string;
export const plainNumeral: ChordLabel = (chord) => numeral(chord.roman, chord.key);

/**
 * Tells the room that a bar's labels want beside one another, so that spacing can give it. A bar is measured once: the
 * same bar has the same answer.
 */
export function labelRooms(
  marks: Marks,
  layers: Layers,
  label: ChordLabel,
  measure: Measure,
): (bar: PlannedBar) => LabelRooms {
  const chords = layers.numerals || layers.figuredBass ? marks.chords : [];
  const chordAt = new Map(chords.map((chord) => [chord.at, chord]));
  const figuresAt = new Map(marks.figures?.map(({ at, figures }) => [at, figures]));
  const roomsAt = (bar: PlannedBar, at: Ticks): LabelRoom[] => {
    const rooms: LabelRoom[] = [];
    const add = (lane: LaneName | 'lyrics', width: number) =>
      rooms.push({ lane, left: Math.max(0, width / 2 - HALF_HEAD), right: width / 2 + HALF_HEAD });
    const chord = chordAt.get(at);
    if (chord && layers.numerals) add('numerals', setChordLabel(label(chord), measure).width);
    const heard = chord && layers.figuredBass ? figuredBass(chord, bar.key.fifths) : [];
    const figures = marks.figures === undefined ? heard : (figuresAt.get(at) ?? []);
    if (figures.length > 0) add('figures', setFigures(figures, measure).width);
    for (const sign of layers.lyrics ? signsWithWords(bar, at) : []) {
      const widths = (sign.lyrics ?? []).map((syllable) => measure(syllable, LYRIC_SIZE));
      if (widths.length > 0) add('lyrics', Math.max(...widths));
    }
    return rooms;
  };
  const known = new WeakMap<PlannedBar, LabelRooms>();
  return (bar) => {
    const rooms =
      known.get(bar) ??
      bar.columns.flatMap((at) => {
        const here = roomsAt(bar, at);
        return here.length === 0 ? [] : [[at, here] as const];
      });
    known.set(bar, rooms);
    return rooms;
  };
}

function signsWithWords(bar: PlannedBar, at: Ticks): readonly Sign[] {
  return VOICES.flatMap((voice) => bar.signs[voice].filter((sign) => sign.at === at && sign.lyrics));
}

/** Given figures; where there are none, the harmony's if they are switched on. */
function figuresShown(bars: readonly PlannedBar[], marks: Marks, layers: Layers): readonly WrittenFigure[] {
  if (marks.figures !== undefined) return marks.figures;
  if (!layers.figuredBass) return [];
  return marks.chords.flatMap((chord) => {
    const figures = figuredBass(chord, fifthsAt(bars, chord.at));
    return figures.length === 0 ? [] : [{ at: chord.at, figures }];
  });
}

function fifthsAt(bars: readonly PlannedBar[], at: Ticks): number {
  return bars.find((bar) => at >= bar.at && at < bar.at + bar.duration)?.key.fifths ?? 0;
}

export interface LaneInput {
  readonly bars: readonly PlannedBar[];
  readonly geometry: SystemGeometry;
  readonly marks: Marks;
  readonly layers: Layers;
  readonly label: ChordLabel;
  readonly measure: Measure;
  /** The y under all notes and the marks near them. */
  readonly below: number;
}

/** Lays the lanes out under the system, those that are switched on and have something to say here. */
export function layLanes(input: LaneInput): { words: PlacedWords[]; lowest: number } {
  const { layers } = input;
  const words: PlacedWords[] = [];
  let y = input.below + 8;
  const lane = (items: readonly Item[], ascent: number, height: number) => {
    if (items.length === 0) return;
    const rows = pack(items, y + ascent, ascent, height);
    words.push(...rows.words);
    y = rows.lowest + 5;
  };
  const items = figureItems(input);
  if (items.length > 0) {
    const lines = Math.max(1, ...items.map(({ label }) => label.runs.length));
    lane(items, 11, 11 * Math.min(lines, 4));
  }
  if (layers.numerals) lane(numeralItems(input), 17, 20);
  if (layers.cadences) lane(cadenceItems(input), 11, 15);
  if (layers.keys) lane(keyItems(input), 11, 15);
  if (layers.keys) lane(secondItems(input), 17, 20);
  return { words, lowest: Math.max(y, input.below) };
}

interface Item {
  readonly kind: LaneName;
  /** Wanted left end. */
  readonly x: number;
  readonly label: SetLabel;
  readonly line?: { readonly to: number; readonly goesOn: boolean };
  readonly carried?: true;
}

/** Items from left to right; one that would run into its neighbour goes to a second row. */
function pack(
  items: readonly Item[],
  baseline: number,
  ascent: number,
  height: number,
): { words: PlacedWords[]; lowest: number } {
  const ends: number[] = [];
  const words = items.map((item): PlacedWords => {
    const end = item.x + item.label.width;
    let row = ends.findIndex((taken) => taken + 5 <= item.x);
    if (row < 0) row = ends.length;
    ends[row] = end;
    const y = baseline + row * height;
    const box = { x: item.x, y: y - ascent, width: item.label.width, height };
    const { kind, x, label, line, carried } = item;
    return {
      kind,
      box,
      x,
      y,
      label,
      ...(line ? { line: { from: end + 4, ...line } } : {}),
      ...(carried ? { carried } : {}),
    };
  });
  return { words, lowest: baseline - ascent + Math.max(1, ends.length) * height };
}

function span({ bars }: Pick<LaneInput, 'bars'>): { from: Ticks; until: Ticks } {
  const last = bars.at(-1)!;
  return { from: bars[0]!.at, until: last.at + last.duration };
}

function here<T extends { readonly at: Ticks }>(input: LaneInput, all: readonly T[]): T[] {
  const { from, until } = span(input);
  return all.filter(({ at }) => at >= from && at < until);
}

function centred(input: LaneInput, kind: LaneName, at: Ticks, label: SetLabel): Item {
  const x = xAt(input.geometry, at) + HALF_HEAD - label.width / 2;
  return { kind, x: Math.max(2, Math.min(x, input.geometry.width - label.width - 2)), label };
}

function numeralItems(input: LaneInput): Item[] {
  const { from, until } = span(input);
  const chords = input.marks.chords.filter((chord) => chord.at < until && chord.until > from);
  const items = chords.map((chord) => {
    const carried = chord.at < from;
    const label = setChordLabel(input.label(chord), input.measure);
    const item = centred(input, 'numerals', Math.max(chord.at, from), label);
    return carried ? { ...item, carried: true as const } : item;
  });
  return items.map((item, i) => lasting(input, item, chords[i]!, items[i + 1]));
}

/** A chord that is held over a barline is not named again: a line after its numeral shows that it lasts. */
function lasting(input: LaneInput, item: Item, chord: Chord, next: Item | undefined): Item {
  const { from, until } = span(input);
  const barlines = input.bars.filter(({ at }) => at > chord.at && at < chord.until);
  if (barlines.length === 0 && chord.until <= until) return item;
  if (chord.at < from && chord.until <= (input.bars[0]?.columns[1] ?? until)) return item;
  const to = Math.min(next ? next.x - 6 : Number.POSITIVE_INFINITY, lineEnd(input, chord.until));
  return { ...item, line: { to, goesOn: true } };
}

function lineEnd(input: LaneInput, until: Ticks): number {
  return until > span(input).until ? input.geometry.right : endX(input, until);
}

function figureItems(input: LaneInput): Item[] {
  return here(input, figuresShown(input.bars, input.marks, input.layers)).map(({ at, figures }) =>
    centred(input, 'figures', at, setFigures(figures, input.measure)),
  );
}

function cadenceItems(input: LaneInput): Item[] {
  return here(input, input.marks.cadences).map((cadence) => {
    const text = cadenceWords(cadence);
    const label = { runs: [{ text, x: 0, y: 0, size: WORD_SIZE }], width: input.measure(text, WORD_SIZE) };
    return centred(input, 'cadences', cadence.at, label);
  });
}

/** `perfect`, `phrygian`, `perfect (tierce)`. */
export function cadenceWords(cadence: Pick<Cadence, 'kind' | 'phrygian' | 'tierce'>): string {
  const name = cadence.phrygian ? 'phrygian' : cadence.kind;
  return cadence.tierce ? `${name} (tierce)` : name;
}

function keyItems(input: LaneInput): Item[] {
  const { from, until } = span(input);
  const regions = input.marks.keys.filter((region) => region.from < until && region.until > from);
  return regions.map((region, i): Item => {
    const label = setKeyName(printKey(region.key), input.measure, WORD_SIZE);
    const carried = region.from < from;
    const begin = carried ? input.geometry.left : xAt(input.geometry, region.from);
    const x = Math.min(begin, input.geometry.width - label.width - 4);
    const next = regions[i + 1];
    const goesOn = region.until > until;
    const to = next
      ? xAt(input.geometry, next.from) - 6
      : goesOn
        ? input.geometry.right
        : endX(input, region.until);
    return { kind: 'keys', x, label, line: { to, goesOn }, ...(carried ? { carried: true as const } : {}) };
  });
}

/** `also F major: ii6–V–I` where the stretch begins, its line as far as it goes. */
function secondItems(input: LaneInput): Item[] {
  const { from, until } = span(input);
  const { measure, geometry, marks } = input;
  return marks.seconds.flatMap((second): Item[] => {
    const first = marks.chords[second.chords[0]!.index];
    if (first === undefined || first.at < from || first.at >= until) return [];
    const name = secondKey(marks, second);
    const numerals = secondNumerals(second, ({ index, roman }) => {
      const heard = { ...marks.chords[index]!, key: second.key, roman };
      const label = input.label(heard);
      // The figures of a bass are the same in every key.
      return /[IViv]/.test(label) ? label : plainNumeral(heard);
    });
    const chords = numerals.flatMap((one, i) => [...(i > 0 ? ['–'] : []), setChordLabel(one, measure)]);
    const key = name === undefined ? [] : [setKeyName(name, measure, WORD_SIZE), ': '];
    const label = setInLine(['also ', ...key, ...chords], measure, WORD_SIZE);
    const x = Math.max(2, Math.min(xAt(geometry, first.at), geometry.width - label.width - 4));
    return [
      { kind: 'seconds', x, label, line: { to: lineEnd(input, second.until), goesOn: second.until > until } },
    ];
  });
}

function endX({ geometry }: LaneInput, until: Ticks): number {
  const last = geometry.bars.at(-1);
  return last && until >= last.until ? geometry.right - 4 : xAt(geometry, until) - 4;
}
