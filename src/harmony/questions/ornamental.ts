/** Whether a tone is only in passing: questions about its length, place and neighbours, whatever its chord. */

import { nextTone, previousTone } from '../../score/motion.ts';
import { staffPlace } from '../../score/pitch.ts';
import { barAt, metricalStrength } from '../../score/place.ts';
import type { Texture, Tone } from '../../score/texture.ts';
import { feltBeat } from '../../score/time.ts';
import type { Analysis, Chord } from '../analysis.ts';

/**
 * True for a tone shorter than a beat, off the beat, that is reached and left by step: it goes by (passing or
 * neighbour note) and is not heard as a voice's share in the chord, even where it happens to belong to it.
 */
export function isPassingBy(texture: Texture, tone: Tone): boolean {
  if (!isQuick(texture, tone)) return false;
  const before = previousTone(texture, tone);
  const after = nextTone(texture, tone);
  return before !== undefined && after !== undefined && isStep(before, tone) && isStep(tone, after);
}

/** True for a tone shorter than a beat that begins off the beat. */
export function isQuick(texture: Texture, tone: Tone): boolean {
  const bar = barAt(texture.score, tone.at);
  return tone.until - tone.at < feltBeat(bar.metre) && metricalStrength(bar, tone.at) < 2;
}

/** True where one tone lies a second, by spelling, from the other. */
export function isStep(from: Tone, to: Tone): boolean {
  return Math.abs(staffPlace(to.pitch) - staffPlace(from.pitch)) === 1;
}

/** True for a tone that is reached by step and left by step (or begins or ends its line): part of a smooth line. */
export function isStepwise(texture: Texture, tone: Tone): boolean {
  const before = previousTone(texture, tone);
  const after = nextTone(texture, tone);
  return (before === undefined || isStep(before, tone)) && (after === undefined || isStep(tone, after));
}

/** True for a chord shorter than a beat that begins off the beat: it comes about as the voices pass. */
export function isFleeting(analysis: Analysis, chord: Chord): boolean {
  const bar = barAt(analysis.texture.score, chord.at);
  return chord.until - chord.at < feltBeat(bar.metre) && metricalStrength(bar, chord.at) < 2;
}
