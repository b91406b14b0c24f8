/** Key signatures: what they do to a letter, and the keys they stand for. */
import { fifthsPlace, type Step } from './pitch.ts';
import type { KeySignature } from './score.ts';

/**
 * What a signature does to a letter: 1 for F with one sharp, -1 for B with one flat.
 *
 * @param fifths sharps positive, flats negative
 */
export function signatureAlteration(fifths: number, step: Step): number {
  // The seven letters of a signature lie side by side on the line of fifths: F is the first to be raised, B to be lowered.
  return Math.floor((fifths + 5 - fifthsPlace({ step, alteration: 0 })) / 7);
}

export function sameSignature(a: KeySignature, b: KeySignature): boolean {
  return a.fifths === b.fifths && a.mode === b.mode;
}
