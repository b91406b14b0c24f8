/** Where a note that wants to move goes: questions about tendency notes, whatever rule asks them. */
import { intervalBetween } from '../../score/interval.ts';
import { nextTone } from '../../score/motion.ts';
import { sameNoteName } from '../../score/pitch.ts';
import { barAt } from '../../score/place.ts';
import { remembered } from '../../score/remember.ts';
import { type ByVoice, byVoice } from '../../score/score.ts';
import type { Texture, Tone } from '../../score/texture.ts';
import { beatLength } from '../../score/time.ts';

/** `up` a semitone as a leading note goes, `down` a tone or semitone as a seventh goes; always to the next letter. */
export type Pull = 'up' | 'down';

/** True for the step that the pull asks for. */
export function followsPull(from: Tone, to: Tone, pull: Pull): boolean {
  const { steps, semitones } = intervalBetween(from.pitch, to.pitch);
  return pull === 'up'
    ? steps === 1 && semitones === 1
    : steps === -1 && (semitones === -1 || semitones === -2);
}

/**
 * The tone that resolves a tone, or undefined where it goes elsewhere: the next tone of the voice, the one after
 * repeated notes (in any octave), or the one after a single decorating note shorter than a beat.
 */
export function resolutionOf(texture: Texture, tone: Tone, pull: Pull): Tone | undefined {
  const last = lastOfSame(texture, tone);
  const next = nextTone(texture, last);
  if (next === undefined || followsPull(last, next, pull)) return next;
  const unit = beatLength(barAt(texture.score, next.at).metre);
  if (next.until - next.at >= unit) return undefined;
  const after = nextTone(texture, next);
  return after !== undefined && followsPull(last, after, pull) ? after : undefined;
}

/** The voice leaves by more than a third, even if the resolution comes in the end: told, but hardly held against it. */
export function leapsAway(texture: Texture, tone: Tone): boolean {
  const goesTo = departure(texture, tone);
  return goesTo !== undefined && Math.abs(intervalBetween(tone.pitch, goesTo.pitch).steps) > 2;
}

/** The next tone of the voice that is another note, not the same in another octave; undefined before a rest, a gap or the end. */
export function departure(texture: Texture, tone: Tone): Tone | undefined {
  return nextTone(texture, lastOfSame(texture, tone));
}

/** The last of the repeated notes that a tone begins, in whatever octaves they are. */
function lastOfSame(texture: Texture, tone: Tone): Tone {
  return lastOfEach(texture)[tone.voice][tone.index]!;
}

const lastOfEach: (texture: Texture) => ByVoice<readonly Tone[]> = remembered((texture) =>
  byVoice((voice) => lastsOfSame(texture, texture.tones[voice])),
);

function lastsOfSame(texture: Texture, tones: readonly Tone[]): Tone[] {
  const lasts = [...tones];
  for (let i = tones.length - 2; i >= 0; i--) {
    const next = nextTone(texture, tones[i]!);
    if (next !== undefined && sameNoteName(next.pitch, tones[i]!.pitch)) lasts[i] = lasts[i + 1]!;
  }
  return lasts;
}
