/**
 * What the model did where a phrase's tune ended alike: the closes in the open chorales, counted, with the number and
 * the bar to look them up in any edition. Numerals and figures, never notes.
 */
import type { CadenceKind } from '../harmony/analysis.ts';
import type { Close, TuneEnd } from './close.ts';
import { CLOSES } from './precedents-data.ts';

/** A close in the open chorales. */
export interface Precedent extends TuneEnd, Close {
  /** Number in the edition of 371 chorales. */
  readonly chorale: string;
  /** The bar in which the phrase ends. */
  readonly bar: string;
}

/** Fewer than these, and a shorter stretch of the tune is looked up instead. */
const ENOUGH = 8;

/** One way of closing, counted. */
export interface CloseCount {
  readonly key: string;
  readonly kind: CadenceKind;
  readonly count: number;
  /** The chords it was made with, the commonest first, and likewise the suspensions over them and the bass. */
  readonly chords: readonly Counted[];
  readonly suspensions: readonly Counted[];
  readonly bass: readonly Counted[];
  /** Where to look it up. */
  readonly places: readonly { readonly chorale: string; readonly bar: string }[];
}

export interface Counted {
  readonly text: string;
  readonly count: number;
}

export interface Precedents {
  /** The tune's last degrees that were looked for: `['3', '2', '1']`. */
  readonly degrees: readonly string[];
  /** Whether the place in the bar was asked for too. */
  readonly placed: boolean;
  readonly total: number;
  /** The commonest first. */
  readonly closes: readonly CloseCount[];
}

/** Looks a tune's end up; the longest stretch of it that has eight precedents, else the shortest. Pure. */
export function precedentsFor(tune: TuneEnd, among: readonly Precedent[] = precedents()): Precedents {
  let found: {
    readonly degrees: readonly string[];
    readonly placed: boolean;
    readonly alike: readonly Precedent[];
  };
  let length = Math.min(4, tune.degrees.length);
  do {
    const degrees = tune.degrees.slice(-length);
    const ending = among.filter((close) => close.mode === tune.mode && endsWith(close.degrees, degrees));
    const inPlace = ending.filter((close) => close.strong === tune.strong);
    const placed = inPlace.length >= ENOUGH;
    found = { degrees, placed, alike: placed ? inPlace : ending };
    length--;
  } while (found.alike.length < ENOUGH && length >= 2);
  return {
    degrees: found.degrees,
    placed: found.placed,
    total: found.alike.length,
    closes: counted(found.alike),
  };
}

function endsWith(all: readonly string[], end: readonly string[]): boolean {
  return all.length >= end.length && end.every((degree, i) => degree === all[all.length - end.length + i]);
}

/** Closes in one key by one cadence are one way, however it is made. */
export function sameClose(a: Pick<Close, 'key' | 'kind'>, b: Pick<Close, 'key' | 'kind'>): boolean {
  return a.key === b.key && a.kind === b.kind;
}

function counted(alike: readonly Precedent[]): CloseCount[] {
  const ways: Precedent[][] = [];
  for (const close of alike) {
    const way = ways.find(([first]) => sameClose(first!, close));
    if (way) way.push(close);
    else ways.push([close]);
  }
  return ways
    .map((way) => ({
      key: way[0]!.key,
      kind: way[0]!.kind,
      count: way.length,
      chords: tally(way.map(({ chords }) => chords)),
      suspensions: tally(way.flatMap(({ suspensions }) => suspensions)),
      bass: tally(way.map(({ bass }) => bass)),
      places: way.map(({ chorale, bar }) => ({ chorale, bar })),
    }))
    .sort((a, b) => b.count - a.count);
}

function tally(texts: readonly string[]): Counted[] {
  const counts = new Map<string, number>();
  for (const text of texts) counts.set(text, (counts.get(text) ?? 0) + 1);
  return [...counts].map(([text, count]) => ({ text, count })).sort((a, b) => b.count - a.count);
}

/** Every close of the open chorales that our reading and the human one call alike. Read from the table once. */
export function precedents(): readonly Precedent[] {
  known ??= CLOSES.trim().split('\n').map(readRow);
  return known;
}
let known: readonly Precedent[] | undefined;

/** One close as a row of the table. */
export function printRow(close: Precedent): string {
  const { chorale, bar, mode, degrees, strong, key, kind, chords, bass, suspensions } = close;
  return [
    chorale,
    bar,
    mode,
    degrees.join(' '),
    strong ? 'strong' : 'weak',
    key,
    kind,
    chords,
    bass,
    suspensions.join(' '),
  ].join('|');
}

function readRow(row: string): Precedent {
  const [chorale, bar, mode, degrees, place, key, kind, chords, bass, suspensions] = row.split(
    '|',
  ) as string[];
  return {
    chorale: chorale!,
    bar: bar!,
    mode: mode as Precedent['mode'],
    degrees: degrees!.split(' '),
    strong: place === 'strong',
    key: key!,
    kind: kind as CadenceKind,
    chords: chords!,
    bass: bass!,
    suspensions: suspensions === '' ? [] : suspensions!.split(' '),
  };
}
