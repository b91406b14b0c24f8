/**
 * Exact musical time.
 *
 * Every moment and length is a whole number of ticks, 10,080 to the crotchet. 10,080 = 2^5 · 3^2 · 5 · 7,
 * so semibreve to demisemiquaver, triplets, quintuplets and septuplets are all whole. A length that is not
 * (an eleventh of a beat) is refused by the reader that meets it; nothing here rounds.
 */
export type Ticks = number;

/** Ticks in a crotchet. */
export const CROTCHET: Ticks = 10_080;

/** A metre as printed: `{ beats: 3, unit: 2 }` is 3/2. */
export interface Metre {
  readonly beats: number;
  readonly unit: number;
}

/** The length of one printed beat (the metre's lower figure): a crotchet in 4/4, a minim in 3/2, a quaver in 6/8. */
export function beatLength(metre: Metre): Ticks {
  return (4 * CROTCHET) / metre.unit;
}

/** The length of a full bar of this metre. */
export function barLength(metre: Metre): Ticks {
  return metre.beats * beatLength(metre);
}

/** True for metres whose beats go in threes: 6/8, 9/8, 12/4. */
export function isCompound({ beats }: Metre): boolean {
  return beats > 3 && beats % 3 === 0;
}

/** The beat that is felt, in ticks: in 6/8 and its like the dotted one. */
export function feltBeat(metre: Metre): Ticks {
  return beatLength(metre) * (isCompound(metre) ? 3 : 1);
}

/** The metre as text: `3/2`. */
export function printMetre(metre: Metre): string {
  return `${metre.beats}/${metre.unit}`;
}

/** True for the lower figures a metre may have here: 1, 2, 4, 8, 16, 32. */
export function isBeatUnit(unit: number): boolean {
  return [1, 2, 4, 8, 16, 32].includes(unit);
}

/** Ticks as crotchets. The only place where time becomes a float: use it at the edge (JSON, drawing, sound). */
export function crotchets(ticks: Ticks): number {
  return ticks / CROTCHET;
}

/** Greatest common divisor of two whole numbers, not both 0. */
export function gcd(a: number, b: number): number {
  let x = Math.abs(a);
  let y = Math.abs(b);
  while (y !== 0) [x, y] = [y, x % y];
  return x;
}

/** `ticks · numerator / denominator`, or undefined where that is no whole number of ticks. */
export function scaleTicks(ticks: Ticks, numerator: number, denominator: number): Ticks | undefined {
  const product = ticks * numerator;
  return Number.isSafeInteger(product) && product % denominator === 0 ? product / denominator : undefined;
}
