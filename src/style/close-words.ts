/** A close in a sentence. */
import { CADENCE_NAMES } from '../harmony/words/words.ts';
import type { Close } from './close.ts';

/** `perfect cadence in the home key`, `imperfect cadence in the key of V`. */
export function closeInWords({ key, kind }: Pick<Close, 'key' | 'kind'>): string {
  return `${CADENCE_NAMES[kind]} in ${key === 'I' || key === 'i' ? 'the home key' : `the key of ${key}`}`;
}
