/** From exact lengths to written values: dots, ties inside a bar, tuplets, and where beams break. */
import {
  barLength,
  beatLength,
  CROTCHET,
  feltBeat,
  isCompound,
  type Metre,
  type Ticks,
} from '../../src/score/time.ts';

/** A written value: `base` 4 is a crotchet, 0.5 a breve. */
export interface Value {
  readonly base: number;
  readonly dots: 0 | 1 | 2;
}

/** One written sign of a longer length, from `at` (ticks from the beginning of a full bar). */
export interface Piece {
  readonly at: Ticks;
  readonly duration: Ticks;
  readonly value: Value;
}

const BASES = [0.5, 1, 2, 4, 8, 16, 32, 64, 128] as const;
/** The 128th note, the shortest value written; every dyadic length is a multiple of it. */
const SHORTEST: Ticks = CROTCHET / 32;

/** The length of a value: a dotted crotchet is 15,120 ticks. */
export function valueLength({ base, dots }: Value): Ticks {
  const plain = (4 * CROTCHET) / base;
  return dots === 0 ? plain : dots === 1 ? plain * 1.5 : plain * 1.75;
}

const BY_LENGTH = new Map<Ticks, Value>();
for (const base of BASES) {
  for (const dots of [2, 1, 0] as const) {
    const length = valueLength({ base, dots });
    // Two dots on values of a quaver or less are never wanted here; ties read better.
    if (Number.isInteger(length) && !(dots === 2 && base > 4)) BY_LENGTH.set(length, { base, dots });
  }
}

/** True where a length can be written without a tuplet. */
function isPlain(length: Ticks): boolean {
  return length % SHORTEST === 0;
}

/** Lengths by which a bar is divided, from the coarsest: half bar or groups of three, beats, half beats … */
function grid(metre: Metre): Ticks[] {
  const beat = beatLength(metre);
  const levels: Ticks[] = [];
  if (isCompound(metre)) levels.push(beat * 3);
  else if (metre.beats % 4 === 0) levels.push(beat * 2);
  for (let unit = beat; unit >= SHORTEST && Number.isInteger(unit); unit /= 2) levels.push(unit);
  return levels;
}

/**
 * A note's length as signs to be tied. One sign where one will do (a syncopation is written as heard, save that in a
 * compound metre no sign hides the main beat); otherwise cut at the strongest place inside.
 * `at` counts from the beginning of a full bar. A length that cannot be written is given its nearest shorter value.
 */
export function noteValues(at: Ticks, duration: Ticks, metre: Metre): Piece[] {
  const whole = BY_LENGTH.get(duration);
  if (whole && !hidesMainBeat(at, duration, metre)) return [{ at, duration, value: whole }];
  const end = at + duration;
  for (const unit of grid(metre)) {
    const first = (Math.floor(at / unit) + 1) * unit;
    if (first >= end) continue;
    const last = (Math.ceil(end / unit) - 1) * unit;
    const cut = BY_LENGTH.has(last - at) ? last : first;
    return [...noteValues(at, cut - at, metre), ...noteValues(cut, end - cut, metre)];
  }
  return [{ at, duration, value: whole ?? nearestValue(duration) }];
}

function hidesMainBeat(at: Ticks, duration: Ticks, metre: Metre): boolean {
  if (!isCompound(metre)) return false;
  const group = beatLength(metre) * 3;
  const crosses = Math.floor(at / group) !== Math.floor((at + duration - 1) / group);
  return crosses && (at % group !== 0 || duration % group !== 0);
}

function nearestValue(duration: Ticks): Value {
  let best: Value = { base: 128, dots: 0 };
  let length = 0;
  for (const [candidate, value] of BY_LENGTH) {
    if (candidate <= duration && candidate > length) [best, length] = [value, candidate];
  }
  return best;
}

/**
 * A rest's length as signs: each begins where the metre lets a value of its size begin, so that every beat shows.
 * A rest that fills the bar is one sign, whatever the metre (see `wholeBar`).
 */
export function restValues(at: Ticks, duration: Ticks, metre: Metre): Piece[] {
  const pieces: Piece[] = [];
  const beat = beatLength(metre);
  const end = at + duration;
  let from = at;
  while (from < end) {
    const piece = longestRest(from, end, metre, beat);
    if (piece === undefined) {
      pieces.push({ at: from, duration: end - from, value: nearestValue(end - from) });
      break;
    }
    pieces.push(piece);
    from += piece.duration;
  }
  return pieces;
}

function longestRest(from: Ticks, end: Ticks, metre: Metre, beat: Ticks): Piece | undefined {
  if (isCompound(metre) && from % (beat * 3) === 0 && end - from >= beat * 3) {
    const value = BY_LENGTH.get(beat * 3);
    if (value) return { at: from, duration: beat * 3, value };
  }
  for (const base of BASES) {
    const length = valueLength({ base, dots: 0 });
    const longerThanBeat = length > beat;
    const mayBegin =
      from % length === 0 && (!longerThanBeat || (metre.beats % 4 === 0 && length <= beat * 2));
    if (mayBegin && from + length <= end) return { at: from, duration: length, value: { base, dots: 0 } };
  }
  return undefined;
}

/** A rest of the whole bar is written as a semibreve rest (a breve rest in 4/2 and longer). */
export function wholeBarRest(metre: Metre): Value {
  return { base: barLength(metre) >= 8 * CROTCHET ? 0.5 : 1, dots: 0 };
}

/** A tuplet: `count` signs' worth in the time of `inTimeOf`. */
export interface TupletRatio {
  readonly count: number;
  readonly inTimeOf: number;
}

const RATIOS: readonly TupletRatio[] = [
  { count: 3, inTimeOf: 2 },
  { count: 5, inTimeOf: 4 },
  { count: 7, inTimeOf: 4 },
  { count: 9, inTimeOf: 8 },
  { count: 15, inTimeOf: 8 },
];

export interface TupletSpan {
  /** Indices into the lengths given: first and last. */
  readonly first: number;
  readonly last: number;
  readonly ratio: TupletRatio;
}

/**
 * Finds the tuplets among a voice's lengths in one bar: each begins at the first length that no dot or tie can write
 * and ends where the sum can be written again. A stretch that fits no ratio known is left out (drawn at its nearest
 * values, without a bracket).
 */
export function findTuplets(durations: readonly Ticks[]): TupletSpan[] {
  const spans: TupletSpan[] = [];
  let i = 0;
  while (i < durations.length) {
    if (isPlain(durations[i]!)) {
      i++;
      continue;
    }
    const first = i;
    let sum = 0;
    do sum += durations[i++]!;
    while (i < durations.length && !isPlain(sum));
    const members = durations.slice(first, i);
    const ratio = RATIOS.find(({ count, inTimeOf }) =>
      members.every((duration) => BY_LENGTH.has((duration * count) / inTimeOf)),
    );
    if (ratio) spans.push({ first, last: i - 1, ratio });
  }
  return spans;
}

/** The value written for a length inside a tuplet. */
export function tupletValue(duration: Ticks, { count, inTimeOf }: TupletRatio): Value {
  return BY_LENGTH.get((duration * count) / inTimeOf) ?? nearestValue(duration);
}

/**
 * The length after which a beam must break: a crotchet in metres of crotchets and minims (a chorale is read beat by
 * beat), the group of three in compound metres, the whole bar in 3/8.
 */
export function beamUnit(metre: Metre): Ticks {
  if (isCompound(metre)) return feltBeat(metre);
  if (metre.unit === 8 && metre.beats === 3) return barLength(metre);
  return CROTCHET;
}
