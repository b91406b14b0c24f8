/** Changing one sound of a score, and cutting some of its bars out of it. Both give a new score. */
import type { Pitch } from './pitch.ts';
import { byVoice, type Score, type VoiceEvent } from './score.ts';
import type { Tone } from './texture.ts';
import type { Ticks } from './time.ts';

/** The score with one tone, that is with all the notes tied in it, at another pitch. */
export function withTone(score: Score, tone: Pick<Tone, 'voice' | 'at' | 'until'>, pitch: Pitch): Score {
  const events = score.voices[tone.voice].map((event) =>
    event.kind === 'note' && event.at >= tone.at && event.at < tone.until ? { ...event, pitch } : event,
  );
  return { ...score, voices: { ...score.voices, [tone.voice]: events } };
}

function untied(event: VoiceEvent): VoiceEvent {
  if (event.kind !== 'note') return event;
  const { tied: _tied, ...loose } = event;
  return loose;
}

/**
 * Bars `first` to `last` (indices, both included) as a score of their own, which begins at 0; add `shift` to its times to
 * have those of the whole. Ties that lead out of it are cut.
 */
export function excerpt(
  score: Score,
  first: number,
  last: number,
): { readonly score: Score; readonly shift: Ticks } {
  const bars = score.bars.slice(first, last + 1);
  const from = bars[0];
  const to = bars.at(-1);
  if (from === undefined || to === undefined) throw new RangeError(`There are no bars ${first} to ${last}.`);
  const shift = from.at;
  const end = to.at + to.duration;
  return {
    shift,
    score: {
      title: score.title,
      ...(from.tempo === undefined ? {} : { tempo: from.tempo }),
      bars: bars.map((bar, index) => ({ ...bar, index, at: bar.at - shift })),
      voices: byVoice((voice) =>
        score.voices[voice]
          .filter((event) => event.at >= shift && event.at < end)
          .map((event) => {
            const moved = { ...event, at: event.at - shift };
            return event.at + event.duration >= end ? untied(moved) : moved;
          }),
      ),
      remarks: [],
    },
  };
}
