/** Blank bars: a voice that rests through a whole bar in which another sings is still to be written there. */
import { remembered } from './remember.ts';
import { byVoice, type Gap, type Score, VOICES, type VoiceEvent, type VoiceName } from './score.ts';
import { stretchesWithin } from './search.ts';
import { barLength } from './time.ts';

/**
 * The score with gaps for such rests, and for those that lead into them or out of them while another voice sings: in a
 * chorale no voice is silent so long, and a blank bar is often filled with a rest. The same score where there are none.
 * Worked out once.
 */
export const withBlanks: (score: Score) => Score = remembered((score) => {
  const bars = spansOf(score);
  const gone = new Set(
    VOICES.flatMap((voice) =>
      runsOf(score.voices[voice]).filter((run) => isBlank(score, bars, voice, run)),
    ).flat(),
  );
  if (gone.size === 0) return score;
  return {
    ...score,
    voices: byVoice((voice) =>
      score.voices[voice].map((event) =>
        gone.has(event) && othersSing(score, voice, event) ? asGap(event) : event,
      ),
    ),
  };
});

/** Stretches of rests and gaps one after the other. */
function runsOf(events: readonly VoiceEvent[]): VoiceEvent[][] {
  const runs: VoiceEvent[][] = [];
  let open = false;
  for (const event of events) {
    if (event.kind === 'note') open = false;
    else if (open) runs.at(-1)!.push(event);
    else {
      runs.push([event]);
      open = true;
    }
  }
  return runs.filter((run) => run.some(({ kind }) => kind === 'rest'));
}

function isBlank(
  score: Score,
  bars: ReturnType<typeof spansOf>,
  voice: VoiceName,
  run: readonly VoiceEvent[],
): boolean {
  const from = run[0]!.at;
  const last = run.at(-1)!;
  return stretchesWithin(bars, from, last.at + last.duration).some(
    (bar) =>
      bar.at >= from &&
      bar.until <= last.at + last.duration &&
      bar.until - bar.at >= bar.full &&
      othersSing(score, voice, { at: bar.at, duration: bar.until - bar.at }),
  );
}

function spansOf({ bars }: Score) {
  return bars.map(({ at, duration, metre }) => ({ at, until: at + duration, full: barLength(metre) }));
}

function othersSing(
  { voices }: Score,
  voice: VoiceName,
  { at, duration }: Pick<VoiceEvent, 'at' | 'duration'>,
): boolean {
  return VOICES.some(
    (other) =>
      other !== voice &&
      voices[other].some(
        (event) => event.kind === 'note' && event.at < at + duration && event.at + event.duration > at,
      ),
  );
}

function asGap({ at, duration }: VoiceEvent): Gap {
  return { kind: 'gap', at, duration };
}
