/** Which part of a piece can be measured: the beats in which all four voices are written. */
import type { Analysis } from '../harmony/analysis.ts';
import { type Bar, type Score, VOICES } from '../score/score.ts';
import { lastBegun } from '../score/search.ts';
import type { Tone } from '../score/texture.ts';
import { beatLength, type Ticks } from '../score/time.ts';
import type { Beat, Music } from './measure.ts';

/** The beat as it is felt: the metre's own, or three of them in compound time. */
export function feltBeat(bar: Bar): Ticks {
  const { beats } = bar.metre;
  const compound = bar.metre.unit >= 8 && beats >= 3 && beats % 3 === 0;
  return beatLength(bar.metre) * (compound ? 3 : 1);
}

/** Makes an analysis ready to be measured. Pure. */
export function musicOf(analysis: Analysis): Music {
  const { score } = analysis.texture;
  const gaps = VOICES.flatMap((voice) => score.voices[voice].filter((event) => event.kind === 'gap'));
  const missing = gaps
    .map((gap) => ({ from: gap.at, until: gap.at + gap.duration }))
    .sort((a, b) => a.from - b.from);
  const beats: Beat[] = [];
  let next = 0;
  for (const beat of beatsOf(score)) {
    while (next < missing.length && missing[next]!.until <= beat.from) next++;
    const gap = missing.slice(next, next + VOICES.length).some(({ from }) => from < beat.until);
    if (!gap && !isSilent(analysis, beat)) beats.push(beat);
  }
  return { analysis, beats, written: (at) => beatAt(beats, at) !== undefined };
}

function beatsOf(score: Score): Beat[] {
  return score.bars.flatMap((bar) => {
    const length = feltBeat(bar);
    const beats: Beat[] = [];
    let from = bar.at;
    while (from < bar.at + bar.duration) {
      const until = Math.min(bar.at + bar.duration, from + length - ((from - bar.at + bar.offset) % length));
      beats.push({ from, until });
      from = until;
    }
    return beats;
  });
}

function isSilent({ texture }: Analysis, beat: Beat): boolean {
  return VOICES.every((voice) =>
    texture.tones[voice].every((tone) => tone.at >= beat.until || tone.until <= beat.from),
  );
}

/** The beat a moment lies in; undefined where that beat is not wholly written. */
export function beatAt(beats: readonly Beat[], at: Ticks): Beat | undefined {
  const beat = beats[lastBegun(beats, at, ({ from }) => from)];
  return beat !== undefined && at < beat.until ? beat : undefined;
}

/** A voice's tones that begin in written beats, each with the one before it where that too is written. */
export function movesIn(music: Music, voice: Tone['voice']): { readonly from: Tone; readonly to: Tone }[] {
  const tones = music.analysis.texture.tones[voice];
  return tones.slice(1).flatMap((to, i) => {
    const from = tones[i]!;
    return from.until === to.at && music.written(from.at) && music.written(to.at) ? [{ from, to }] : [];
  });
}

/** Tones of a voice that begin within a written beat but not on it. */
export function offBeatTones({ analysis, beats }: Music, voice: Tone['voice']): readonly Tone[] {
  return analysis.texture.tones[voice].filter((tone) => {
    const beat = beatAt(beats, tone.at);
    return beat !== undefined && beat.from !== tone.at;
  });
}
