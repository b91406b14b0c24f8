/** Numbers as files write them, checked, and time as exact fractions of a tick. */

import { Refused } from '../refusal/refusal.ts';
import { CROTCHET, gcd } from '../score/time.ts';
import { LONGEST_CROTCHETS, VALUE_NAMES } from './note-values.ts';
import { quoted } from './quoted.ts';
import type { XmlElement } from './xml.ts';

/** A length or moment in ticks, `n / d`, reduced, `d` > 0. Whole for all but odd tuplets and sloppy files. */
export interface Exact {
  readonly n: number;
  readonly d: number;
}

export const ZERO: Exact = { n: 0, d: 1 };

/** Makes a reduced fraction. @throws {Refused} where it would no longer be exact. */
export function exact(n: number, d: number): Exact {
  if (d === 1 && Number.isSafeInteger(n)) return { n, d };
  if (!Number.isSafeInteger(n) || !Number.isSafeInteger(d) || d <= 0) {
    throw new Refused('A note begins or ends at a moment too finely divided to be counted exactly.');
  }
  const divisor = gcd(n, d);
  return { n: n / divisor, d: d / divisor };
}

export function plus(a: Exact, b: Exact): Exact {
  return a.d === 1 && b.d === 1 ? { n: a.n + b.n, d: 1 } : exact(a.n * b.d + b.n * a.d, a.d * b.d);
}

export function minus(a: Exact, b: Exact): Exact {
  return plus(a, { n: -b.n, d: b.d });
}

/** Below 0, 0 or above, as `a - b` is. */
export function compare(a: Exact, b: Exact): number {
  return a.n * b.d - b.n * a.d;
}

/** The nearest tick; exact for a whole number. Use it only where `d` is 1 or a rounded place will do. */
export function nearestTick(a: Exact): number {
  return a.d === 1 ? a.n : Math.round(a.n / a.d);
}

/** Each note value in ticks. */
const NOTE_VALUES: Readonly<Record<string, Exact>> = Object.fromEntries(
  VALUE_NAMES.map((name, i): [string, Exact] => [name, exact(CROTCHET * LONGEST_CROTCHETS, 2 ** i)]),
);

/** The length of a note value with dots, shortened by a tuplet: quaver, 0 dots, 3 in the time of 2. */
export function notatedLength(type: string, dots: number, actual: number, normal: number): Exact | undefined {
  const value = Object.hasOwn(NOTE_VALUES, type) ? NOTE_VALUES[type] : undefined;
  if (value === undefined || dots > 4) return undefined;
  return exact(value.n * (2 ** (dots + 1) - 1) * normal, value.d * 2 ** dots * actual);
}

/** A number with its element, for the sentence where it is wrong. */
export function wholeNumber(element: XmlElement, least: number, most: number, what: string): number {
  const text = element.text.trim();
  const value = /^[+-]?\d{1,9}$/.test(text) ? Number(text) : Number.NaN;
  if (!(value >= least && value <= most)) {
    throw new Refused(
      `${what} is ${quoted(text)}, where a whole number from ${least} to ${most} is needed.`,
      element,
    );
  }
  return value;
}

/** A decimal as MusicXML allows it, exactly: `2.5` is 5/2. Undefined for anything else (`1e309`, `NaN`, an empty text). */
export function decimal(text: string): Exact | undefined {
  const found = /^([+-]?)(\d{0,9})(?:\.(\d{0,6}))?0*$/.exec(text.trim());
  if (found === null) return undefined;
  const [, sign, whole = '', part = ''] = found;
  if (whole === '' && part === '') return undefined;
  const d = 10 ** part.length;
  return exact((sign === '-' ? -1 : 1) * (Number(whole || '0') * d + Number(part || '0')), d);
}
