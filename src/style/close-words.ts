/** A close in a sentence. */
import type { CadenceKind } from '../harmony/analysis.ts';
import type { Close } from './close.ts';

const KIND_WORDS: Readonly<Record<CadenceKind, string>> = {
  perfect: 'perfect cadence',
  imperfect: 'imperfect cadence',
  plagal: 'plagal cadence',
  interrupted: 'interrupted cadence',
};

/** `perfect cadence in the home key`, `imperfect cadence in the key of V`. */
export function closeInWords({ key, kind }: Pick<Close, 'key' | 'kind'>): string {
  return `${KIND_WORDS[kind]} in ${key === 'I' || key === 'i' ? 'the home key' : `the key of ${key}`}`;
}
