/** What a chord does in its key. */
import { sameNoteName } from '../../score/pitch.ts';
import type { Chord } from '../analysis.ts';

/** V, V7, viio, viio7 and the like, of the local key or (unless `own` is asked for) of another degree. */
export function isDominant(chord: Chord, own = false): boolean {
  const { roman } = chord;
  if (own && roman.applied !== undefined) return false;
  if (roman.special !== undefined) return false;
  return (
    (roman.degree === 5 && roman.alteration === 0 && roman.quality !== 'minor') ||
    (roman.degree === 7 && roman.quality === 'diminished')
  );
}

/** The tonic triad of the local key (a tierce de Picardie included), in any inversion. */
export function isTonic(chord: Chord): boolean {
  const { roman } = chord;
  return (
    roman.degree === 1 && roman.alteration === 0 && roman.applied === undefined && roman.seventh === undefined
  );
}

/** Same root, quality and seventh: the harmony has not changed, whatever the inversion or key. */
export function sameHarmony(a: Chord, b: Chord): boolean {
  return sameNoteName(a.root, b.root) && a.quality === b.quality && a.roman.seventh === b.roman.seventh;
}
