/** Where in the score a moment falls: bar, beat, and how strong the metre makes it. */
import { counted, listed, mixedNumber } from '../english/words.ts';
import type { Bar, Score } from './score.ts';
import { lastBegun } from './search.ts';
import { beatLength, gcd, isCompound, type Metre, type Ticks } from './time.ts';

/** A place as a person says it: bar "3", beat 2½ is `{ bar, beat: 2, numerator: 1, denominator: 2 }`. */
export interface Place {
  readonly bar: Bar;
  /** The whole beat, from 1. An upbeat of one beat in 4/4 is beat 4. */
  readonly beat: number;
  /** The part of the beat that has passed, reduced; 0/1 on the beat. */
  readonly numerator: number;
  readonly denominator: number;
}

/** The bar that sounds at this moment; the last bar for its end. Throws on a score without bars. */
export function barAt(score: Pick<Score, 'bars'>, at: Ticks): Bar {
  const bar =
    score.bars[
      Math.max(
        0,
        lastBegun(score.bars, at, (one) => one.at),
      )
    ];
  if (bar === undefined) throw new RangeError('A score without bars has no places.');
  return bar;
}

export function placeIn(bar: Bar, at: Ticks): Place {
  const unit = beatLength(bar.metre);
  const into = at - bar.at + bar.offset;
  const rest = into % unit;
  const divisor = gcd(rest, unit);
  return { bar, beat: Math.floor(into / unit) + 1, numerator: rest / divisor, denominator: unit / divisor };
}

export function placeAt(score: Score, at: Ticks): Place {
  return placeIn(barAt(score, at), at);
}

/** The metre that a piece begins in; 4/4 where there is none yet. */
export function firstMetre({ bars }: Score): Metre {
  return bars[0]?.metre ?? { beats: 4, unit: 4 };
}

/** The beat as printed: `2`, `2½`, `3 1/6`. */
export function printBeat(place: Place): string {
  return mixedNumber(place.beat, place.numerator, place.denominator);
}

/** `bar 3, beat 2½`; `the upbeat, beat 4`. */
export function printPlace(place: Place): string {
  return `${printBar(place.bar.number)}, beat ${printBeat(place)}`;
}

/** The number that an upbeat's bar is printed with, which means nothing to a singer. */
export const UPBEAT = '0';

/** `bar 3`, `the upbeat`: a bar by its printed number. */
export function printBar(number: string): string {
  return number === UPBEAT ? 'the upbeat' : `bar ${number}`;
}

/**
 * `bar 3`, `bars 3 and 7`, `the upbeat and bar 3`, `bars 1, 2 and 4 others`; each bar once, by its printed number.
 *
 * @param most how many are named before the rest is only counted
 */
export function printBars(numbers: readonly string[], most = Number.POSITIVE_INFINITY): string {
  const different = [...new Set(numbers)];
  const bars = different.filter((number) => number !== UPBEAT);
  const named = bars
    .slice(0, most)
    .map((bar, i) => (i > 0 ? bar : `${bars.length === 1 ? 'bar' : 'bars'} ${bar}`));
  const rest = bars.length - named.length;
  const list = listed(rest === 0 ? named : [...named, counted(rest, 'other')]);
  return [...(bars.length < different.length ? ['the upbeat'] : []), ...(list === '' ? [] : [list])].join(
    ' and ',
  );
}

/**
 * How strong the metre makes a moment: 4 the first beat, 3 the middle beat of a four-beat bar (or the second main
 * beat of 6/8), 2 any other beat, 1 half-way through a beat, 0 anywhere else.
 */
export function metricalStrength(bar: Bar, at: Ticks): 0 | 1 | 2 | 3 | 4 {
  const unit = beatLength(bar.metre);
  const into = at - bar.at + bar.offset;
  if (into === 0) return 4;
  const { beats } = bar.metre;
  const compound = isCompound(bar.metre);
  const group = compound ? unit * 3 : beats % 4 === 0 ? unit * 2 : 0;
  if (group > 0 && into % group === 0) return 3;
  if (into % unit === 0) return compound ? 1 : 2;
  return into % (unit / 2) === 0 && !compound ? 1 : 0;
}
