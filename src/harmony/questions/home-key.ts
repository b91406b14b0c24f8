/** The one key a whole piece is said to be in. */
import { noteNameAtFifths } from '../../score/pitch.ts';
import type { KeySignature } from '../../score/score.ts';
import type { Analysis, Key } from '../analysis.ts';
import { sameKey } from '../key.ts';
import { keyFacts } from '../tonal.ts';

/**
 * The key of the whole piece: what the exercise states. Where it states no mode, the key in which the music ends, if
 * the signature is that key's (or, for a minor key, the older one with a flat fewer); else, of that key and the two
 * the signature can mean, the one it spends longest in: a piece may close in the dominant, and an old one may have a
 * signature of another mode.
 */
export function homeKey({ texture, keys }: Analysis): Key {
  const signature = texture.score.bars[0]?.key ?? { fifths: 0 };
  if (signature.mode !== undefined) return keyOfSignature(signature, signature.mode);
  const own = [keyOfSignature(signature, 'major'), keyOfSignature(signature, 'minor')];
  const last = keys.at(-1)?.key;
  if (last === undefined) return own[0]!;
  const fewer = signature.fifths - keyFacts(last).signature;
  if (fewer === 0 || (fewer === 1 && last.mode === 'minor')) return last;
  const spent = (key: Key) =>
    keys.filter((region) => sameKey(region.key, key)).reduce((sum, { from, until }) => sum + until - from, 0);
  return [...own, last].reduce((best, key) => (spent(key) > spent(best) ? key : best));
}

function keyOfSignature({ fifths }: KeySignature, mode: Key['mode']): Key {
  return { tonic: noteNameAtFifths(fifths + (mode === 'minor' ? 3 : 0)), mode };
}
