/**
 * Dissonances by the notes alone: tones dissonant with another voice on a beat or halfway to the next, with the way in
 * and the way out, whatever chord they are taken for.
 */
import { intervalBetween } from '../../score/interval.ts';
import { nextTone, phraseBreaks, previousTone } from '../../score/motion.ts';
import { semitone, staffPlace } from '../../score/pitch.ts';
import { remembered } from '../../score/remember.ts';
import { VOICES } from '../../score/score.ts';
import { type Slice, sliceAt, type Texture, type Tone, toneIn } from '../../score/texture.ts';

/** A tone that is a second or seventh from other voices on a beat or half beat, between the tones before and after it. */
export interface BareDissonance {
  readonly slice: Slice;
  readonly before: Tone;
  readonly tone: Tone;
  readonly after: Tone;
  /** What it is dissonant against, from the top. */
  readonly against: readonly Tone[];
}

/** All bare dissonances on the beats and half beats of a texture, by time and then by voice. Not across a phrase end. Worked out once. */
export const bareDissonances: (texture: Texture) => readonly BareDissonance[] = remembered((texture) => {
  const breaks = phraseBreaks(texture);
  return texture.slices.flatMap((slice) => {
    if (slice.strength < 1 || breaks.has(slice.at)) return [];
    return VOICES.flatMap((voice): BareDissonance[] => {
      const tone = toneIn(slice, voice);
      if (tone === undefined) return [];
      const before = tone.at < slice.at ? tone : previousTone(texture, tone);
      const after = nextTone(texture, tone);
      if (before === undefined || after === undefined || breaks.has(after.at)) return [];
      const against = VOICES.flatMap((other): Tone[] => {
        const against = other === voice ? undefined : toneIn(slice, other);
        return against !== undefined && isRub(tone, against) ? [against] : [];
      });
      return against.length === 0 ? [] : [{ slice, before, tone, after, against }];
    });
  });
});

/** The tone was there already, held or struck again at the same pitch: prepared as a suspension is. */
export function isPrepared({ before, tone }: BareDissonance): boolean {
  return before === tone || semitone(before.pitch) === semitone(tone.pitch);
}

/** What it is dissonant against, or a bass a fourth below, is still there when the tone moves on: the tone itself gives way. */
export function givesWay({ slice, tone, after, against }: BareDissonance): boolean {
  const bass = toneIn(slice, 'B');
  const fourth =
    bass !== undefined &&
    bass.until > after.at &&
    (staffPlace(tone.pitch) - staffPlace(bass.pitch)) % 7 === 3;
  return fourth || against.some((other) => other.until > after.at);
}

/**
 * What it is dissonant against is left only to be struck again, at the same pitch, as the tone moves on; unless that
 * note was held over and steps down, so that it is the one that gives way.
 */
export function isMetAgain(texture: Texture, { slice, after, against }: BareDissonance): boolean {
  const then = sliceAt(texture, after.at);
  return against.some((other) => {
    const again = then && toneIn(then, other.voice);
    if (again === undefined || semitone(again.pitch) !== semitone(other.pitch)) return false;
    const [before, next] = [previousTone(texture, other), nextTone(texture, other)];
    const held =
      other.at < slice.at || (before !== undefined && semitone(before.pitch) === semitone(other.pitch));
    return !held || next === undefined || placesTo(other, next) !== -1;
  });
}

/** Second, seventh or ninth by letter. */
function isRub(a: Tone, b: Tone): boolean {
  const places = Math.abs(staffPlace(a.pitch) - staffPlace(b.pitch)) % 7;
  return places === 1 || places === 6;
}

/** The way from one tone to another in staff places, signed. */
export function placesTo(from: Tone, to: Tone): number {
  return intervalBetween(from.pitch, to.pitch).steps;
}
