/** When each note sounds, in seconds: pure, so that it can be tested without a loudspeaker. */

import { midiNumber } from '../../src/score/pitch.ts';
import { barAt } from '../../src/score/place.ts';
import { type ByVoice, byVoice, endOf, type Score, VOICES, type VoiceName } from '../../src/score/score.ts';
import { tempoMarks } from '../../src/score/tempo.ts';
import { textureOf } from '../../src/score/texture.ts';
import { beatLength, CROTCHET, type Ticks } from '../../src/score/time.ts';

/** A chorale's pace where the exercise doesn't say: crotchets a minute. */
export const USUAL_TEMPO = 72;

/** A note under a fermata lasts so many times its length; a singer's habit, no source. */
const FERMATA_STRETCH = 1.6;

/** Moments of the score against seconds from its start, fermatas drawn out. */
export interface Timeline {
  secondsAt(at: Ticks): number;
  ticksAt(seconds: number): Ticks;
}

export interface Sounding {
  readonly voice: VoiceName;
  /** Hertz, A4 = 440, equal temperament. */
  readonly frequency: number;
  readonly from: number;
  readonly until: number;
}

interface Leg {
  readonly at: Ticks;
  readonly until: Ticks;
  readonly seconds: number;
  /** Seconds for one tick. */
  readonly pace: number;
}

/** `tempo`: crotchets a minute at the beginning, by choice; later ones of the score are as much quicker or slower. */
export function timelineOf(score: Score, tempo: number): Timeline {
  const legs = legsOf(score, tempo);
  const last = legs.at(-1);
  return {
    secondsAt(at) {
      const leg = legs.find((l) => at < l.until) ?? last;
      return leg === undefined ? 0 : leg.seconds + (Math.min(at, leg.until) - leg.at) * leg.pace;
    },
    ticksAt(seconds) {
      const leg = legs.findLast((l) => l.seconds <= seconds) ?? legs[0];
      return leg === undefined ? 0 : Math.min(leg.until, leg.at + (seconds - leg.seconds) / leg.pace);
    },
  };
}

function legsOf(score: Score, tempo: number): Leg[] {
  const legs: Leg[] = [];
  let seconds = 0;
  let open: { at: Ticks; held: boolean; tempo: number } | undefined;
  const close = (until: Ticks): void => {
    if (open === undefined || until <= open.at) return;
    const pace = (60 / open.tempo / CROTCHET) * (open.held ? FERMATA_STRETCH : 1);
    legs.push({ at: open.at, until, seconds, pace });
    seconds += (until - open.at) * pace;
  };
  const changes = tempoMarks(score).map(({ bar }) => bar.at);
  for (const { at: from, until, fermata: held } of textureOf(score).slices) {
    // Notes tied over a barline make one slice.
    for (const at of [from, ...changes.filter((change) => change > from && change < until)]) {
      const now = tempoAt(score, at, tempo);
      if (open?.held === held && open.tempo === now) continue;
      close(at);
      open = { at, held, tempo: now };
    }
  }
  close(endOf(score));
  return legs;
}

/** Crotchets a minute at a moment, where the piece begins at this tempo. */
function tempoAt(score: Score, at: Ticks, opening: number): number {
  const written = score.tempo ?? USUAL_TEMPO;
  return opening * ((barAt(score, at).tempo ?? written) / written);
}

/** Every tone that begins or goes on between two moments, cut to them. Seconds count from `from`. */
export function soundingsOf(score: Score, timeline: Timeline, from: Ticks, until: Ticks): Sounding[] {
  const start = timeline.secondsAt(from);
  const { tones } = textureOf(score);
  return VOICES.flatMap((voice) =>
    tones[voice]
      .filter((tone) => tone.until > from && tone.at < until)
      .map((tone) => ({
        voice,
        frequency: frequencyOf(midiNumber(tone.pitch)),
        from: timeline.secondsAt(Math.max(tone.at, from)) - start,
        until: timeline.secondsAt(Math.min(tone.until, until)) - start,
      })),
  ).sort((a, b) => a.from - b.from);
}

export function frequencyOf(midi: number): number {
  return 440 * 2 ** ((midi - 69) / 12);
}

/** A bar of clicks before a moment: seconds from the first click, and how long they last together. */
export function countInFor(
  score: Score,
  at: Ticks,
  tempo: number,
): {
  readonly clicks: readonly { readonly at: number; readonly strong: boolean }[];
  readonly seconds: number;
} {
  const bar = barAt(score, at);
  const beat = (beatLength(bar.metre) / CROTCHET) * (60 / tempoAt(score, at, tempo));
  const into = Math.floor((at - bar.at + bar.offset) / beatLength(bar.metre)) % bar.metre.beats;
  // Enough beats that the music enters where it stands in its bar: an upbeat of one in 4/4 has three clicks.
  const beats = into === 0 ? bar.metre.beats : into;
  return {
    clicks: Array.from({ length: beats }, (_, i) => ({ at: i * beat, strong: i === 0 })),
    seconds: beats * beat,
  };
}

/** How loud each voice sounds, 0 to 1, when some are heard alone. */
export function loudness(
  volume: ByVoice<number>,
  alone: readonly VoiceName[],
  muted: readonly VoiceName[] = [],
): Readonly<Record<VoiceName, number>> {
  const heard = (voice: VoiceName) => (alone.length > 0 ? alone.includes(voice) : !muted.includes(voice));
  return byVoice((voice) => (heard(voice) ? volume[voice] : 0));
}

/** A click on each beat from one moment to another: seconds from `from`, the first beat of a bar strong. */
export function beatsIn(
  score: Score,
  timeline: Timeline,
  from: Ticks,
  until: Ticks,
): { readonly at: number; readonly strong: boolean }[] {
  const start = timeline.secondsAt(from);
  return score.bars.flatMap((bar) => {
    const beat = beatLength(bar.metre);
    const first = Math.ceil(bar.offset / beat);
    const last = Math.ceil((bar.offset + bar.duration) / beat);
    return Array.from({ length: last - first }, (_, i) => ({
      at: bar.at - bar.offset + (first + i) * beat,
      strong: (first + i) % bar.metre.beats === 0,
    }))
      .filter(({ at }) => at >= from && at < until)
      .map(({ at, strong }) => ({ at: timeline.secondsAt(at) - start, strong }));
  });
}

/** The first notes that sound from a moment on, from the bass up: what a choir is given before it sings. */
export function startingNotes(
  score: Score,
  from: Ticks,
): { readonly voice: VoiceName; readonly frequency: number }[] {
  const { tones } = textureOf(score);
  return [...VOICES].reverse().flatMap((voice) => {
    const first = tones[voice].find((tone) => tone.until > from);
    return first === undefined ? [] : [{ voice, frequency: frequencyOf(midiNumber(first.pitch)) }];
  });
}
