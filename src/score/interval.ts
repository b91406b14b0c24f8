import { type NoteName, type Pitch, pitchClass, semitone, staffPlace, stepIndex } from './pitch.ts';

/**
 * The way from one pitch to another, by spelling: staff steps (0 = same place) and semitones, both signed,
 * negative downwards. C4 to F#4 is `{ steps: 3, semitones: 6 }`, C4 to Gb4 `{ steps: 4, semitones: 6 }`.
 */
export interface Interval {
  readonly steps: number;
  readonly semitones: number;
}

export type IntervalQuality =
  | 'perfect'
  | 'major'
  | 'minor'
  | 'augmented'
  | 'diminished'
  | 'doubly augmented'
  | 'doubly diminished';

/** Semitones of the perfect or major interval for 0 to 6 steps. */
const NATURAL_SIZE = [0, 2, 4, 5, 7, 9, 11] as const;
const PERFECT_STEPS: ReadonlySet<number> = new Set([0, 3, 4]);

export function intervalBetween(from: Pitch, to: Pitch): Interval {
  return { steps: staffPlace(to) - staffPlace(from), semitones: semitone(to) - semitone(from) };
}

/** The interval from a lower note name up to the next higher place of another: 0 to 6 steps. */
export function intervalUp(from: NoteName, to: NoteName): Interval {
  const steps = (((stepIndex(to.step) - stepIndex(from.step)) % 7) + 7) % 7;
  let semitones = (((pitchClass(to) - pitchClass(from)) % 12) + 12) % 12;
  // B sharp above C is an augmented seventh of 12 semitones, C flat above C a diminished unison of -1.
  const natural = NATURAL_SIZE[steps]!;
  if (semitones - natural > 6) semitones -= 12;
  if (natural - semitones > 6) semitones += 12;
  return { steps, semitones };
}

/** The interval made ascending. A diminished unison (C to Cb) counts as an augmented one the other way. */
function upwards(interval: Interval): Interval {
  const down = interval.steps < 0 || (interval.steps === 0 && interval.semitones < 0);
  return down ? { steps: -interval.steps, semitones: -interval.semitones } : interval;
}

/** Ascending and within an octave: a twelfth becomes a fifth, an octave a unison (0 steps, 0 semitones). */
export function simple(interval: Interval): Interval {
  const up = upwards(interval);
  const octaves = Math.floor(up.steps / 7);
  return { steps: up.steps - 7 * octaves, semitones: up.semitones - 12 * octaves };
}

/** Names by how far an interval is from its natural size, from -3 on. */
const PERFECT_QUALITIES = [
  undefined,
  'doubly diminished',
  'diminished',
  'perfect',
  'augmented',
  'doubly augmented',
] as const;
const MAJOR_QUALITIES = [
  'doubly diminished',
  'diminished',
  'minor',
  'major',
  'augmented',
  'doubly augmented',
] as const;

/** Quality by spelling; direction and octaves do not matter. `undefined` beyond doubly altered. */
export function intervalQuality(interval: Interval): IntervalQuality | undefined {
  const { steps, semitones } = simple(interval);
  const qualities = PERFECT_STEPS.has(steps) ? PERFECT_QUALITIES : MAJOR_QUALITIES;
  return qualities[semitones - NATURAL_SIZE[steps]! + 3];
}

const NUMBER_NAMES = ['unison', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'octave'] as const;

/** The name in words: `perfect fifth`, `augmented second`, `octave`, `minor tenth`. Direction is not told. */
export function intervalName(interval: Interval): string {
  const up = upwards(interval);
  const numberName = NUMBER_NAMES[up.steps] ?? ordinal(up.steps + 1);
  const quality = intervalQuality(up);
  if (quality === 'perfect' && up.steps % 7 === 0) return numberName;
  return quality === undefined ? numberName : `${quality} ${numberName}`;
}

function ordinal(n: number): string {
  const words: Record<number, string> = {
    9: 'ninth',
    10: 'tenth',
    11: 'eleventh',
    12: 'twelfth',
    13: 'thirteenth',
    14: 'fourteenth',
    15: 'fifteenth',
    16: 'sixteenth',
    17: 'seventeenth',
    18: 'eighteenth',
    19: 'nineteenth',
  };
  return words[n] ?? `${n}th`;
}

/** True for a perfect fifth or its compounds, by spelling. */
export function isPerfectFifth(interval: Interval): boolean {
  return isSimply(interval, 4, 7);
}

/** True for a diminished fifth or its compounds, by spelling. */
export function isDiminishedFifth(interval: Interval): boolean {
  return isSimply(interval, 4, 6);
}

/** True for a perfect octave or its compounds; a unison is not one. */
export function isOctave(interval: Interval): boolean {
  return interval.steps !== 0 && isSimply(interval, 0, 0);
}

/** What {@link simple} would make of it, without making it: asked of every pair of tones. */
function isSimply({ steps, semitones }: Interval, simpleSteps: number, simpleSemitones: number): boolean {
  const sign = steps < 0 || (steps === 0 && semitones < 0) ? -1 : 1;
  const octaves = Math.floor((sign * steps) / 7);
  return sign * steps - 7 * octaves === simpleSteps && sign * semitones - 12 * octaves === simpleSemitones;
}

export function isUnison(interval: Interval): boolean {
  return interval.steps === 0 && interval.semitones === 0;
}
