/** The open chorales as music to be measured: whole, and in runs of phrases as long as an exercise. */
import { analyse } from '../../src/harmony/analyse.ts';
import type { Analysis } from '../../src/harmony/analysis.ts';
import { MEASURES } from '../../src/style/list.ts';
import type { Music } from '../../src/style/measure.ts';
import { musicOf } from '../../src/style/music.ts';
import { FEWEST_BEATS, LONG_FROM } from '../../src/style/profile.ts';
import { type HumanLabel, readCorpus } from './harmony-corpus.ts';

export interface StylePiece {
  readonly name: string;
  readonly tune: number;
  readonly analysis: Analysis;
  readonly music: Music;
  readonly runs: readonly Music[];
  readonly labels: readonly HumanLabel[];
}

export function readStyleCorpus(): StylePiece[] {
  return readCorpus().map(({ name, tune, texture, labels }) => {
    const analysis = analyse(texture);
    const music = musicOf(analysis);
    return { name, tune, analysis, music, runs: runsOf(music), labels };
  });
}

/** Runs of whole phrases, one after another, each the shortest that has 28 beats; those beyond an exercise's length are left out. */
function runsOf(music: Music): Music[] {
  const { phrases } = music.analysis;
  const runs: Music[] = [];
  let first = 0;
  for (let last = 0; last < phrases.length; last++) {
    const from = phrases[first]!.from;
    const until = phrases[last]!.until;
    const beats = music.beats.filter((beat) => beat.from >= from && beat.from < until);
    if (beats.length < 28 && last < phrases.length - 1) continue;
    if (beats.length >= FEWEST_BEATS && beats.length < LONG_FROM) runs.push(stretchOf(music, from, until));
    first = last + 1;
  }
  return runs;
}

/** A stretch of the music by itself, under the analysis of the whole. */
function stretchOf({ analysis, beats }: Music, from: number, until: number): Music {
  const within = (at: number) => at >= from && at < until;
  return {
    analysis: { ...analysis, phrases: analysis.phrases.filter((phrase) => within(phrase.from)) },
    beats: beats.filter((beat) => within(beat.from)),
    written: within,
  };
}

/** Values of each measure over pieces. */
export function valuesOf(pieces: readonly Music[]): Record<string, number[]> {
  return Object.fromEntries(
    MEASURES.map((measure) => [
      measure.id,
      pieces.flatMap((music) => measure.count(music).value ?? []).sort((a, b) => a - b),
    ]),
  );
}

/** The values at these percentages of sorted ones, by straight lines between neighbours. */
export function quantilesOf(sorted: readonly number[], percents: readonly number[]): number[] {
  return percents.map((percent) => {
    const place = (percent / 100) * (sorted.length - 1);
    const low = sorted[Math.floor(place)]!;
    const high = sorted[Math.ceil(place)]!;
    return low + (high - low) * (place - Math.floor(place));
  });
}
