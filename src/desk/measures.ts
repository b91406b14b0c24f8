/** Figures that a mark scheme can rest on, each with the sentence that a teacher can check against the score. */

import { capitalised, listed } from '../english/words.ts';
import { FAMILIES, type Family } from '../rules/rule.ts';
import { printBar, printBars, UPBEAT } from '../score/place.ts';
import type { Counts } from './counts.ts';
import { type JudgedFinding, standingFindings } from './decisions.ts';
import { styleEvidence } from './script-style.ts';

/** What can be measured, and how it counts. */
const MEASURES = {
  'faults a phrase': 'Standing faults divided by phrases; may be narrowed to families.',
  'queries a phrase': 'Standing queries divided by phrases; may be narrowed to families.',
  'phrases with a fault': 'Share of phrases in which a fault stands, 0 to 1; may be narrowed to families.',
  'phrases closed': 'Share of phrases that end in a cadence, 0 to 1.',
  'kinds of cadence': 'How many different kinds of cadence.',
  'non-harmony notes a phrase': 'Non-harmony notes that are explained, divided by phrases.',
  'kinds of non-harmony note': 'How many different kinds of them.',
  suspensions: 'How many suspensions.',
  'different chords': 'How many different chords, inversions together.',
  'inverted chords': 'Share of chords that are inverted, 0 to 1.',
  'seventh chords': 'How many seventh chords.',
  'chromatic chords': 'How many applied and specially named chords.',
  'keys visited': 'How many keys.',
  'counts outside the model':
    'How many counts of style lie below or above nine of the model’s chorales in ten; to be shown, it makes no level.',
  'beats written': 'Share of the beats of all four voices that is written, 0 to 1.',
} as const;
export type Measure = keyof typeof MEASURES;
/** What is told in hundredths: a scheme writes 0.95, and a sentence says 95 %. */
export const SHARES: ReadonlySet<Measure> = new Set([
  'phrases with a fault',
  'phrases closed',
  'inverted chords',
  'beats written',
]);
export const MEASURE_NAMES = Object.keys(MEASURES) as [Measure, ...Measure[]];

/** What is looked at: the script's counts and its findings as they stand under the teacher's decisions. */
export interface Ground {
  readonly counts: Counts;
  readonly findings: readonly JudgedFinding[];
}

export interface Measured {
  readonly value: number;
  /** With the places, as a sentence. */
  readonly sentence: string;
}

/** Measures one thing. `families` narrows what is about faults and queries. */
export function measure(what: Measure, ground: Ground, families: readonly Family[] = FAMILIES): Measured {
  return METERS[what](ground, families);
}

type Meter = (ground: Ground, families: readonly Family[]) => Measured;

const METERS: Readonly<Record<Measure, Meter>> = {
  'faults a phrase': (ground, families) => aPhrase(ground, families, 'fault', 'faults'),
  'queries a phrase': (ground, families) => aPhrase(ground, families, 'query', 'queries'),
  'phrases with a fault': phrasesWithFault,
  'phrases closed': ({ counts }) => phrasesClosed(counts),
  'kinds of cadence': ({ counts }) => cadenceKinds(counts),
  'non-harmony notes a phrase': ({ counts }) => ornamentsAPhrase(counts),
  'kinds of non-harmony note': ({ counts: { ornaments, bars } }) =>
    kindsOf(ornaments, 'kind of non-harmony note', 'kinds of non-harmony note', bars?.ornaments),
  suspensions: ({ counts: { ornaments, bars } }) =>
    howMany(ornaments.suspension ?? 0, 'suspension', bars?.ornaments.suspension),
  'different chords': ({ counts }) =>
    kindsOf(asPrinted(counts.chords.kinds), 'different chord', 'different chords'),
  'inverted chords': ({ counts: { chords, bars } }) => ({
    value: chords.all === 0 ? 0 : chords.inverted / chords.all,
    sentence: `${chords.inverted} of ${many(chords.all, 'chord')} inverted${inBars(bars?.inverted)}.`,
  }),
  'seventh chords': ({ counts: { chords, bars } }) =>
    howMany(chords.sevenths, 'seventh chord', bars?.sevenths),
  'chromatic chords': ({ counts: { chords, bars } }) =>
    howMany(chords.chromatic, 'applied or chromatic chord', bars?.chromatic),
  'keys visited': ({ counts: { keys } }) => ({
    value: keys.length,
    sentence: `${manyAtStart(keys.length, 'key')}${keys.length === 0 ? '' : `: ${listed(keys)}`}.`,
  }),
  'counts outside the model': ({ counts }) => styleEvidence(counts.style ?? {}),
  'beats written': ({ counts }) => {
    const value = 1 - counts.unwritten;
    // Rounded down, so that a script with one beat missing is never said to be whole.
    return { value, sentence: `${Math.floor(value * 100)} % of the beats are written.` };
  },
};

/** As many as a share is taken of: never none. */
function phraseCount({ phrases }: Counts): number {
  return Math.max(1, phrases.length);
}

function howMany(value: number, noun: string, bars: readonly string[] | undefined): Measured {
  return { value, sentence: `${manyAtStart(value, noun)}${inBars(bars)}.` };
}

function phrasesClosed(counts: Counts): Measured {
  const closed = counts.phrases.filter(({ cadence }) => cadence !== undefined);
  const open = counts.phrases.filter(({ cadence }) => cadence === undefined);
  const rest =
    open.length === 0
      ? ''
      : ` Not closed: ${listed(open.map(({ lastBar }) => `the one to ${printBar(lastBar)}`))}.`;
  return {
    value: closed.length / phraseCount(counts),
    sentence: `${closed.length} of ${many(counts.phrases.length, 'phrase')} ${closed.length === 1 ? 'ends' : 'end'} in a cadence.${rest}`,
  };
}

function cadenceKinds({ phrases }: Counts): Measured {
  const closed = phrases.filter(({ cadence }) => cadence !== undefined);
  const barsOf = grouped(
    closed,
    ({ cadence }) => cadence!,
    ({ lastBar }) => lastBar,
  );
  const kinds = tally(closed.map(({ cadence }) => cadence!));
  return kindsOf(kinds, 'kind of cadence', 'kinds of cadence', barsOf);
}

function ornamentsAPhrase(counts: Counts): Measured {
  const all = Object.values(counts.ornaments).reduce((sum, n) => sum + n, 0);
  const value = all / phraseCount(counts);
  return {
    value,
    sentence: `${manyAtStart(all, 'non-harmony note')} in ${many(counts.phrases.length, 'phrase')}${countedAs(counts.ornaments, counts.bars?.ornaments)}: ${rounded(value)} a phrase.`,
  };
}

function concerning(
  { findings }: Ground,
  families: readonly Family[],
  severity: 'fault' | 'query',
): JudgedFinding[] {
  return standingFindings(findings).filter(
    (finding) => finding.severity === severity && families.includes(finding.family),
  );
}

function aPhrase(
  ground: Ground,
  families: readonly Family[],
  severity: 'fault' | 'query',
  plural: string,
): Measured {
  const found = concerning(ground, families, severity);
  const each = ground.counts.phrases.map(
    ({ from, until }) => found.filter((finding) => finding.from >= from && finding.from < until).length,
  );
  const about = families.length === FAMILIES.length ? '' : ` (${families.join(', ')})`;
  const where = `in ${many(ground.counts.phrases.length, 'phrase')}`;
  const value = found.length / phraseCount(ground.counts);
  if (found.length === 0) return { value, sentence: `No ${plural}${about} ${where}.` };
  const barsOf = grouped(
    found,
    ({ name }) => name,
    ({ bar }) => bar,
  );
  const names = countedAs(tally(found.map(({ name }) => name)), barsOf);
  const byPhrase = each.length > 1 ? ` By phrase: ${each.join(', ')}.` : '';
  return {
    value,
    sentence: `${found.length} ${found.length === 1 ? severity : plural}${about} ${where}, ${rounded(value)} a phrase:${names.replace(/^ \((.*)\)$/, ' $1')}.${byPhrase}`,
  };
}

function phrasesWithFault(ground: Ground, families: readonly Family[]): Measured {
  const found = concerning(ground, families, 'fault');
  const touched = ground.counts.phrases.filter(({ from, until }) =>
    found.some((finding) => finding.from >= from && finding.from < until),
  );
  const where =
    touched.length === 0
      ? ''
      : ` (${listed(touched.map(({ firstBar, lastBar }) => bars(firstBar, lastBar)))})`;
  return {
    value: touched.length / phraseCount(ground.counts),
    sentence: `A fault stands in ${touched.length === 0 ? 'none' : touched.length} of ${many(ground.counts.phrases.length, 'phrase')}${where}.`,
  };
}

function bars(first: string, last: string): string {
  if (first === last) return printBar(first);
  return first === UPBEAT ? `the upbeat to ${printBar(last)}` : `bars ${first}–${last}`;
}

function kindsOf(
  kinds: Readonly<Record<string, number>>,
  one: string,
  several: string,
  barsOf?: BarsByKind,
): Measured {
  const value = Object.keys(kinds).length;
  const kindWords = value === 1 ? one : several;
  return { value, sentence: `${value === 0 ? 'No' : value} ${kindWords}${countedAs(kinds, barsOf)}.` };
}

type BarsByKind = Readonly<Record<string, readonly string[]>>;

/** The bars of each kind, each bar once. */
function grouped<T>(items: readonly T[], kind: (item: T) => string, bar: (item: T) => string): BarsByKind {
  const bars: Record<string, string[]> = {};
  for (const item of items) {
    bars[kind(item)] ??= [];
    const its = bars[kind(item)]!;
    if (!its.includes(bar(item))) its.push(bar(item));
  }
  return bars;
}

/** The most bars that a sentence lists. */
const MOST_BARS = 6;

/** ` in bar 3`, ` in bars 1, 4 and 7`, ` in bars 1, 2, 3, 4, 5, 6 and 2 others`; nothing where they are not known. */
function inBars(numbers: readonly string[] = []): string {
  return numbers.length === 0 ? '' : ` in ${printBars(numbers, MOST_BARS)}`;
}

/** Chords by their labels as a reader knows them: `vii°`, where plain text has `viio`. */
function asPrinted(chords: Readonly<Record<string, number>>): Record<string, number> {
  return Object.fromEntries(
    Object.entries(chords).map(([label, n]) => [label.replaceAll(/(?<=[iv])o/g, '°'), n]),
  );
}

/** The most entries that a sentence lists. */
const MOST_LISTED = 8;

/** ` (7 × passing in bars 1 and 3, 1 × suspension in bar 4)`; nothing where there are none. */
function countedAs(kinds: Readonly<Record<string, number>>, barsOf: BarsByKind = {}): string {
  const entries = Object.entries(kinds).sort((a, b) => b[1] - a[1]);
  if (entries.length === 0) return '';
  const shown = entries.slice(0, MOST_LISTED).map(([kind, n]) => `${n} × ${kind}${inBars(barsOf[kind])}`);
  return ` (${shown.join(', ')}${entries.length > MOST_LISTED ? ' …' : ''})`;
}

function tally(items: readonly string[]): Record<string, number> {
  const counts: Record<string, number> = {};
  for (const item of items) counts[item] = (counts[item] ?? 0) + 1;
  return counts;
}

function many(n: number, noun: string): string {
  return `${n === 0 ? 'no' : n} ${noun}${n === 1 ? '' : 's'}`.replace(
    /^no (?=non-harmony|susp|seventh|applied|key)/,
    'No ',
  );
}

/** The same at the beginning of a sentence. */
function manyAtStart(n: number, noun: string): string {
  return capitalised(many(n, noun));
}

function rounded(value: number): string {
  return String(Math.round(value * 100) / 100);
}
