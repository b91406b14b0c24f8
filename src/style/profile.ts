/**
 * Where a piece lies among the model's chorales, measure by measure. It places and never adds up: there is no score
 * of style. Within the band is not yet good: a machine's imitations lie there too.
 */
import type { Analysis } from '../harmony/analysis.ts';
import { MEASURES } from './list.ts';
import type { Measure, Music, Stretch } from './measure.ts';
import { musicOf } from './music.ts';
import { LONG, QUANTILES, SHORT } from './profile-data.ts';

/** Fewer written beats than this say nothing: the shortest stretches of chorales that were measured. */
export const FEWEST_BEATS = 24;
/** From here on a piece is held against whole chorales; a shorter one against stretches of like length. */
export const LONG_FROM = 45;

/** What the model's chorales have: nine in ten lie from `low` to `high`, half of them from `lower` to `upper`. */
export interface Band {
  readonly low: number;
  readonly lower: number;
  readonly middle: number;
  readonly upper: number;
  readonly high: number;
}

export interface StyleValue {
  readonly measure: Measure;
  readonly value: number;
  readonly band: Band;
  /** How many of a hundred chorales have less: 0 to 100. */
  readonly percentile: number;
  /** Below or above nine chorales in ten; undefined within. */
  readonly outside?: 'low' | 'high';
  readonly where: readonly Stretch[];
}

export type Style =
  | { readonly kind: 'told'; readonly beats: number; readonly values: readonly StyleValue[] }
  | { readonly kind: 'too short'; readonly beats: number; readonly needed: number };

/** Measures an analysed piece. Pure. A piece with fewer than 24 beats written in all four voices is too short to tell. */
export function styleOf(analysis: Analysis): Style {
  return styleOfMusic(musicOf(analysis));
}

export function styleOfMusic(music: Music): Style {
  const beats = music.beats.length;
  if (beats < FEWEST_BEATS) return { kind: 'too short', beats, needed: FEWEST_BEATS };
  const table = beats < LONG_FROM ? SHORT : LONG;
  const values = MEASURES.flatMap((measure) => {
    const { value, where } = measure.count(music);
    const quantiles = table[measure.id];
    return value === undefined || quantiles === undefined ? [] : [placed(measure, value, where, quantiles)];
  });
  return { kind: 'told', beats, values };
}

/** Where a value lies in the spread that these quantiles (at `QUANTILES`) describe. */
export function placed(
  measure: Measure,
  value: number,
  where: readonly Stretch[],
  quantiles: readonly number[],
): StyleValue {
  const at = (percent: number) => quantiles[QUANTILES.indexOf(percent)]!;
  const band = { low: at(5), lower: at(25), middle: at(50), upper: at(75), high: at(95) };
  const outside = value < band.low ? 'low' : value > band.high ? 'high' : undefined;
  return {
    measure,
    value,
    band,
    percentile: percentileOf(value, quantiles),
    ...(outside === undefined ? {} : { outside }),
    where,
  };
}

/** By straight lines between the quantiles; equal quantiles count by half. */
function percentileOf(value: number, quantiles: readonly number[]): number {
  const below = quantiles.filter((q) => q < value).length;
  const upTo = quantiles.filter((q) => q <= value).length;
  if (upTo > below) return (QUANTILES[below]! + QUANTILES[upTo - 1]!) / 2;
  if (below === 0) return 0;
  if (below === quantiles.length) return 100;
  const [a, b] = [quantiles[below - 1]!, quantiles[below]!];
  const [from, until] = [QUANTILES[below - 1]!, QUANTILES[below]!];
  return from + ((value - a) / (b - a)) * (until - from);
}
