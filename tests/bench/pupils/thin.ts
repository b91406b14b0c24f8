/** Finished scores made into what a pupil may bring: pauses not typed, voices and bars still to be written. */
import { byVoice, endOf, type Score, type VoiceEvent, type VoiceName } from '../../../src/score/score.ts';
import type { Ticks } from '../../../src/score/time.ts';

/** The same notes, no pause marked. */
export function withoutFermatas(score: Score): Score {
  return {
    ...score,
    voices: byVoice((voice) =>
      score.voices[voice].map((event) => {
        if (event.kind === 'gap' || !event.fermata) return event;
        const { fermata: _fermata, ...plain } = event;
        return plain;
      }),
    ),
  };
}

/** The named voices still to be written. */
export function withoutVoices(score: Score, voices: readonly VoiceName[]): Score {
  return withGaps(score, (voice) => voices.includes(voice));
}

/** Alto, tenor and bass still to be written in some bars: `missing` is asked for each bar's index. */
export function withoutBars(score: Score, missing: (bar: number) => boolean): Score {
  return withGaps(score, (voice, at) => voice !== 'S' && missing(barIndexAt(score, at)));
}

/** A voice that stops: nothing written in it from a bar on. */
export function stopping(score: Score, stops: VoiceName, bar: number): Score {
  return withGaps(score, (voice, at) => voice === stops && barIndexAt(score, at) >= bar);
}

function barIndexAt(score: Score, at: Ticks): number {
  return score.bars.findLastIndex((bar) => bar.at <= at);
}

/** Events that `gone` names become gaps, none of them across a barline; no tie leads into one. */
function withGaps(score: Score, gone: (voice: VoiceName, at: Ticks) => boolean): Score {
  const barlines = [...score.bars.map(({ at }) => at), endOf(score)];
  return {
    ...score,
    voices: byVoice((voice) => {
      const events = score.voices[voice];
      return events.flatMap((event, i): VoiceEvent[] => {
        if (gone(voice, event.at)) return gapsBetween(event.at, event.at + event.duration, barlines);
        const next = events[i + 1];
        if (event.kind !== 'note' || !event.tied || next === undefined || !gone(voice, next.at))
          return [event];
        const { tied: _tied, ...loose } = event;
        return [loose];
      });
    }),
  };
}

function gapsBetween(from: Ticks, until: Ticks, barlines: readonly Ticks[]): VoiceEvent[] {
  const edges = [from, ...barlines.filter((at) => at > from && at < until), until];
  return edges.slice(1).map((end, i) => ({ kind: 'gap', at: edges[i]!, duration: end - edges[i]! }));
}
