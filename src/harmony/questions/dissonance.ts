/** Which notes rub against each other, by the intervals between them. */
import { intervalBetween, intervalQuality, simple } from '../../score/interval.ts';
import { VOICES } from '../../score/score.ts';
import { type Slice, type Tone, toneIn } from '../../score/texture.ts';

/**
 * True where two tones are dissonant: seconds, sevenths, augmented and diminished intervals; a fourth only when the
 * lower tone is the bass of the texture.
 */
function isDissonant(a: Tone, b: Tone, bass: Tone | undefined): boolean {
  const interval = intervalBetween(a.pitch, b.pitch);
  const { steps } = simple(interval);
  const quality = intervalQuality(interval);
  if (steps === 1 || steps === 6) return true;
  if (quality !== 'perfect' && quality !== 'major' && quality !== 'minor') return true;
  return steps === 3 && (a === bass || b === bass);
}

/** The tones of the other voices that a tone is dissonant with in a slice, from the top. */
export function clashesWith(slice: Slice, tone: Tone): readonly Tone[] {
  const bass = toneIn(slice, 'B');
  return VOICES.flatMap((voice) => {
    const other = toneIn(slice, voice);
    return other !== undefined && other !== tone && isDissonant(tone, other, bass) ? [other] : [];
  });
}
