/** Keys as values. */
import { sameNoteName } from '../score/pitch.ts';
import type { Key } from './analysis.ts';

export function sameKey(a: Key, b: Key): boolean {
  return a.mode === b.mode && sameNoteName(a.tonic, b.tonic);
}
