/** A key's notes by their degrees, for writing in any key at once. Degrees count from 0, the tonic. */
import { noteNameAtFifths, type Pitch, STEPS, semitone, stepIndex } from '../score/pitch.ts';
import type { KeySignature } from '../score/score.ts';
import { signatureAlteration } from '../score/signature.ts';

/** A degree, 0 to 6, raised by a semitone or as the signature has it. */
export interface Degree {
  readonly degree: number;
  readonly raised: boolean;
}

/** A note by its staff steps above the tonic nearest below C4, so that steps and leaps are plain differences. */
export interface Sung extends Degree {
  /** Staff place as `octave * 7 + step`. */
  readonly place: number;
}

export type Mode = 'major' | 'minor';

export interface PracticeKey extends KeySignature {
  readonly mode: Mode;
}

function tonicStep({ fifths, mode }: PracticeKey): number {
  return stepIndex(noteNameAtFifths(fifths + (mode === 'minor' ? 3 : 0)).step);
}

export function degreeAt(key: PracticeKey, place: number): number {
  return (((place - tonicStep(key)) % 7) + 7) % 7;
}

export function pitchOf(key: PracticeKey, { place, raised }: Pick<Sung, 'place' | 'raised'>): Pitch {
  const step = STEPS[((place % 7) + 7) % 7]!;
  const alteration = signatureAlteration(key.fifths, step) + (raised ? 1 : 0);
  return { step, alteration, octave: Math.floor(place / 7) };
}

/** The places a degree has from one semitone to another, both included. */
export function placesOf(key: PracticeKey, degree: Degree, low: number, high: number): number[] {
  const places: number[] = [];
  for (let place = 14; place < 49; place++) {
    const at = semitone(pitchOf(key, { place, raised: degree.raised }));
    if (degreeAt(key, place) === degree.degree && at >= low && at <= high) places.push(place);
  }
  return places;
}
