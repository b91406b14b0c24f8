/** The one key a whole piece is said to be in. */
import type { Analysis, Key } from '../harmony/analysis.ts';
import { fifthsPlace, noteNameAtFifths, sameNoteName } from '../score/pitch.ts';
import type { KeySignature } from '../score/score.ts';

/** The key a signature names where its mode is known: one sharp is G major or E minor. */
export function keyOfSignature(signature: KeySignature, mode: Key['mode']): Key {
  return { tonic: noteNameAtFifths(signature.fifths + (mode === 'minor' ? 3 : 0)), mode };
}

/**
 * The key of the whole piece: what the exercise states; else, of the two keys the signature can mean (and their
 * older spellings with one sign fewer or more), the one in which the music ends; else the one it spends longest in.
 */
export function homeKey(analysis: Analysis): Key {
  const signature = analysis.texture.score.bars[0]?.key ?? { fifths: 0 };
  if (signature.mode !== undefined) return keyOfSignature(signature, signature.mode);
  const last = analysis.keys.at(-1);
  if (last !== undefined && signatureDistance(last.key, signature) <= 1) return last.key;
  const major = keyOfSignature(signature, 'major');
  const minor = keyOfSignature(signature, 'minor');
  const spent = (key: Key) =>
    analysis.keys
      .filter((region) => region.key.mode === key.mode && sameNoteName(region.key.tonic, key.tonic))
      .reduce((sum, region) => sum + region.until - region.from, 0);
  return spent(minor) > spent(major) ? minor : major;
}

function signatureDistance(key: Key, signature: KeySignature): number {
  const own = fifthsPlace(key.tonic) - (key.mode === 'minor' ? 3 : 0);
  const first = Math.abs(own - signature.fifths);
  // Within one sign only where the piece may be written in an older, modal signature: minor with a flat
  // fewer (dorian) or major with a sharp fewer (mixolydian); a close in the dominant is not home.
  return first === 1 && !(key.mode === 'minor' && own === signature.fifths - 1) ? 2 : first;
}
