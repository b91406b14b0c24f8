/** Who doubles what: stretches of a chord in which two voices or more sound the same note name. */
import { type NoteName, sameNoteName } from '../../score/pitch.ts';
import { VOICES } from '../../score/score.ts';
import { type Slice, type Tone, toneIn } from '../../score/texture.ts';
import type { Ticks } from '../../score/time.ts';
import type { Analysis } from '../analysis.ts';
import { isPassingBy } from './ornamental.ts';
import type { Voicing } from './voicing.ts';

export interface Doubling {
  readonly from: Ticks;
  readonly until: Ticks;
  /** By voice from the top and then in time. */
  readonly tones: readonly Tone[];
}

/**
 * The stretches of a chord in which this note sounds in two voices or more. Notes that only pass by (see
 * {@link isPassingBy}) do not count: the ear follows their line, not their share in the chord.
 */
export function doublingsOf(analysis: Analysis, voicing: Voicing, note: NoteName): readonly Doubling[] {
  const { at, until } = voicing.chord;
  return doublingsIn(analysis, { at, until, slices: voicing.slices }, note);
}

/** The same for any stretch of slices. */
export function doublingsIn(
  analysis: Analysis,
  stretch: { readonly at: Ticks; readonly until: Ticks; readonly slices: readonly Slice[] },
  note: NoteName,
): readonly Doubling[] {
  const found: { from: Ticks; until: Ticks; tones: Set<Tone> }[] = [];
  for (const slice of stretch.slices) {
    const tones = VOICES.flatMap((voice) => {
      const tone = toneIn(slice, voice);
      if (tone === undefined || !sameNoteName(tone.pitch, note)) return [];
      return isPassingBy(analysis.texture, tone) ? [] : [tone];
    });
    if (tones.length < 2) continue;
    const open = found.at(-1);
    if (open?.until === slice.at) {
      open.until = slice.until;
      for (const tone of tones) open.tones.add(tone);
    } else found.push({ from: slice.at, until: slice.until, tones: new Set(tones) });
  }
  return found.map(({ from, until, tones }) => ({
    from: Math.max(from, stretch.at),
    until: Math.min(until, stretch.until),
    tones: [...tones].sort((a, b) => VOICES.indexOf(a.voice) - VOICES.indexOf(b.voice) || a.at - b.at),
  }));
}
