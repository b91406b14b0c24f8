/** Which ornaments a tone is. */
import { remembered } from '../../score/remember.ts';
import type { Tone } from '../../score/texture.ts';
import type { Ticks } from '../../score/time.ts';
import type { Analysis, Ornament } from '../analysis.ts';

/** The ornament a tone is at a moment, or at any moment where none is given; undefined where it belongs to its chord. */
export function ornamentOf(analysis: Analysis, tone: Tone, at?: Ticks): Ornament | undefined {
  const own = ornamentsByTone(analysis).get(tone) ?? [];
  return own.find((ornament) => at === undefined || (at >= ornament.at && at < ornament.until));
}

/** Each tone's ornaments, in order of time; tones that have none are left out. Worked out once. */
export const ornamentsByTone: (analysis: Analysis) => ReadonlyMap<Tone, readonly Ornament[]> = remembered(
  (analysis) => {
    const map = new Map<Tone, Ornament[]>();
    for (const ornament of analysis.ornaments) {
      const list = map.get(ornament.tone);
      if (list === undefined) map.set(ornament.tone, [ornament]);
      else list.push(ornament);
    }
    return map;
  },
);
