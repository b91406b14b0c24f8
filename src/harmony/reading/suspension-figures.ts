/** The figures of a suspension: `4–3`, `7–6`, `9–8`, `2–3`. */
import { type Pitch, staffPlace } from '../../score/pitch.ts';
import { VOICES } from '../../score/score.ts';
import { sliceAt, type Texture, type Tone, toneIn } from '../../score/texture.ts';
import type { Ticks } from '../../score/time.ts';

/**
 * Counts from the bass; for a suspension in the bass, to the voice above that it rubs against (a second, else a
 * fourth or seventh, else the tenor's). Undefined where no other voice sounds to count from.
 */
export function suspensionFigures(
  texture: Texture,
  tone: Tone,
  at: Ticks,
  resolution: Tone,
): string | undefined {
  const before = sliceAt(texture, at);
  const after = sliceAt(texture, resolution.at);
  if (before === undefined || after === undefined) return undefined;
  const others = VOICES.filter((voice) => voice !== tone.voice);
  const sounding = others.flatMap((voice) => {
    const first = toneIn(before, voice);
    const second = toneIn(after, voice);
    return first && second ? [{ first: first.pitch, second: second.pitch }] : [];
  });
  const lowest = sounding.at(-1);
  if (lowest === undefined) return undefined;
  if (staffPlace(lowest.first) <= staffPlace(tone.pitch) && tone.voice !== 'B') {
    const from = number(lowest.first, tone.pitch);
    const to = number(lowest.second, resolution.pitch);
    // A second above the bass that falls to its unison or octave is called 9–8, wherever it lies.
    return from === 2 && to === 1 ? '9–8' : `${from === 2 && to === 8 ? 9 : from}–${to === 1 ? 8 : to}`;
  }
  const pair =
    [2, 4, 7].flatMap((wanted) => sounding.filter(({ first }) => number(tone.pitch, first) === wanted))[0] ??
    lowest;
  return `${number(tone.pitch, pair.first)}–${number(resolution.pitch, pair.second)}`;
}

/** The interval's number from a lower pitch to a higher one, brought within 2 to 8; a unison is 1. */
function number(low: Pitch, high: Pitch): number {
  const places = staffPlace(high) - staffPlace(low);
  if (places === 0) return 1;
  const within = ((places % 7) + 7) % 7;
  return within === 0 ? 8 : within + 1;
}
