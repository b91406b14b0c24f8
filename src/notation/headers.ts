/** The header lines of the notation: what each may say, read and printed. */
import { capitalised } from '../english/words.ts';
import { fifthsPlace, noteNameAtFifths, parseNoteName, printNoteName } from '../score/pitch.ts';
import type { KeySignature } from '../score/score.ts';
import { tempoWithin } from '../score/tempo.ts';
import { isBeatUnit, type Metre } from '../score/time.ts';

export const HEADER_NAMES = ['title', 'key', 'metre', 'tempo', 'upbeat', 'bar', 'ending', 'figures'] as const;
export type HeaderName = (typeof HEADER_NAMES)[number];

/** Most sharps or flats a signature can have. */
const MOST_FIFTHS = 7;

/** Reads `G major`, `F# minor`, `2 flats`, `1 sharp`, `no sharps or flats`; undefined for anything else. */
export function parseKeySignature(text: string): KeySignature | undefined {
  const counted = /^(\d) (sharp|flat)s?$/i.exec(text);
  if (counted) {
    const count = Number(counted[1]);
    if (count > MOST_FIFTHS) return undefined;
    return { fifths: counted[2]!.toLowerCase() === 'sharp' || count === 0 ? count : -count };
  }
  if (/^no sharps or flats$/i.test(text)) return { fifths: 0 };
  const named = /^(\S+)\s+(major|minor)$/i.exec(text);
  if (!named) return undefined;
  const word = named[1]!;
  const tonic = parseNoteName(capitalised(word));
  if (tonic === undefined) return undefined;
  const mode = named[2]!.toLowerCase() === 'major' ? 'major' : 'minor';
  const fifths = fifthsPlace(tonic) - (mode === 'minor' ? 3 : 0);
  return Math.abs(fifths) > MOST_FIFTHS ? undefined : { fifths, mode };
}

/** The inverse of {@link parseKeySignature}. */
export function printKeySignature(key: KeySignature): string {
  if (key.mode !== undefined) {
    const tonic = noteNameAtFifths(key.fifths + (key.mode === 'minor' ? 3 : 0));
    return `${printNoteName(tonic)} ${key.mode}`;
  }
  if (key.fifths === 0) return 'no sharps or flats';
  const count = Math.abs(key.fifths);
  return `${count} ${key.fifths > 0 ? 'sharp' : 'flat'}${count === 1 ? '' : 's'}`;
}

/** Reads `3/4`, at most 32 beats; undefined for anything else. */
export function parseMetre(text: string): Metre | undefined {
  const match = /^(\d{1,2})\s*\/\s*(\d{1,2})$/.exec(text);
  if (!match) return undefined;
  const metre = { beats: Number(match[1]), unit: Number(match[2]) };
  return metre.beats >= 1 && metre.beats <= 32 && isBeatUnit(metre.unit) ? metre : undefined;
}

/** Reads a tempo in crotchets a minute, 5 to 1,000, in whole or decimal figures. */
export function parseTempo(text: string): number | undefined {
  if (!/^\d{1,4}(\.\d{1,3})?$/.test(text)) return undefined;
  return tempoWithin(Number(text));
}

/** Reads a number of beats as a fraction: `1`, `1/2`, `3/2`. */
export function parseBeats(text: string): { numerator: number; denominator: number } | undefined {
  const match = /^(\d{1,5})(?:\/(\d{1,5}))?$/.exec(text);
  if (!match) return undefined;
  const numerator = Number(match[1]);
  const denominator = match[2] === undefined ? 1 : Number(match[2]);
  return numerator > 0 && denominator > 0 ? { numerator, denominator } : undefined;
}

/** True where a line of the text begins with one of these names (in small letters) and a colon. */
export function hasHeader(text: string, names: readonly string[]): boolean {
  return text.split(/[\r\n]/).some((line) => {
    const colon = line.indexOf(':');
    return colon >= 0 && names.includes(line.slice(0, colon).trim().toLowerCase());
  });
}

/** What each header expects, for complaints: "such as …". */
export const HEADER_EXPECTS: Readonly<Record<HeaderName, string>> = {
  title: 'a title',
  key: 'a key such as "G major", "F# minor" or "2 flats"',
  metre: 'a metre such as 4/4, 3/4 or 3/2',
  tempo: 'crotchets a minute, a number from 5 to 1000',
  upbeat: 'the length of the upbeat in beats, such as 1 or 1/2, shorter than a bar',
  bar: 'the number printed at the next bar, such as 12 or 12a',
  ending: 'the number of the ending the next bar belongs to, such as 1 or "1, 2"',
  figures: 'figures under the bass, each after its bar and beat, such as "1:2 6, 2:1 6/5"',
};
