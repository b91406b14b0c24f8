/** The Neapolitan chord by the notes alone. */
import { fifthsPlace } from '../../score/pitch.ts';
import type { Ticks } from '../../score/time.ts';
import type { Analysis, Key } from '../analysis.ts';
import { homeKey } from '../questions/home-key.ts';
import { keyAt } from '../questions/moments.ts';
import { hearingAt } from './hearing.ts';

/** The minor key, of the reading or of the piece, whose lowered second degree carries the major triad that sounds. */
export function neapolitanAt(analysis: Analysis, at: Ticks): Key | undefined {
  const heard = hearingAt(analysis.texture, at);
  if (heard?.quality !== 'major' || heard.members.seventh !== undefined) return undefined;
  return [keyAt(analysis, at), homeKey(analysis)].find(
    (key) => key?.mode === 'minor' && fifthsPlace(heard.members.root) === fifthsPlace(key.tonic) - 5,
  );
}
