/** Where a note that wants to move goes: questions about tendency notes, whatever rule asks them. */
import { intervalBetween } from '../score/interval.ts';
import { nextTone } from '../score/motion.ts';
import { samePitch } from '../score/pitch.ts';
import { barAt } from '../score/place.ts';
import type { Texture, Tone } from '../score/texture.ts';
import { beatLength } from '../score/time.ts';

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
 * repeated notes, or the one after a single decorating note shorter than a beat.
 */
export function resolutionOf(texture: Texture, tone: Tone, pull: Pull): Tone | undefined {
  let next = nextTone(texture, tone);
  while (next !== undefined && samePitch(next.pitch, tone.pitch)) next = nextTone(texture, next);
  if (next === undefined || followsPull(tone, next, pull)) return next;
  const unit = beatLength(barAt(texture.score, next.at).metre);
  if (next.until - next.at >= unit) return undefined;
  const after = nextTone(texture, next);
  return after !== undefined && followsPull(tone, after, pull) ? after : undefined;
}

/** The next tone of the voice that is not the same pitch again; undefined where a rest, a gap or the end comes first. */
export function departure(texture: Texture, tone: Tone): Tone | undefined {
  let next = nextTone(texture, tone);
  while (next !== undefined && samePitch(next.pitch, tone.pitch)) next = nextTone(texture, next);
  return next;
}
