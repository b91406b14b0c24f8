/** Degrees of a key, the leading note above all, and the keys that applied chords point to. */
import { fifthsPlace, type NoteName, noteNameAtFifths, sameNoteName, stepIndex } from '../../score/pitch.ts';
import type { Chord, Degree, Key } from '../analysis.ts';
import { keyFacts } from '../tonal.ts';
import { membersOf } from './members.ts';

/** A note's place in a key: degree 1 to 7, and how far it is altered from the scale (natural minor in minor). */
export function degreeOf(note: NoteName, key: Key): { readonly degree: number; readonly alteration: number } {
  const { scale } = keyFacts(key);
  const index = (stepIndex(note.step) - stepIndex(scale[0]!.step) + 7) % 7;
  return { degree: index + 1, alteration: note.alteration - scale[index]!.alteration };
}

/** The seventh degree a semitone below the tonic: raised in minor. */
export function leadingNoteOf(key: Key): NoteName {
  return keyFacts(key).harmonic[6]!;
}

/** True for the leading note of the key by name, in any octave. */
export function isLeadingNote(note: NoteName, key: Key): boolean {
  return sameNoteName(note, leadingNoteOf(key));
}

/**
 * The leading note a chord contains: the local key's, or for an applied chord that of the degree it points to
 * (F# in V/V of C major). Undefined where the chord has none: only major-third dominants and leading-note chords do.
 */
export function leadingNoteIn(chord: Chord): NoteName | undefined {
  const goal = chord.roman.applied === undefined ? chord.key : appliedKey(chord.key, chord.roman.applied);
  const leading = leadingNoteOf(goal);
  return membersOf(chord).find((name) => sameNoteName(name, leading));
}

/** The key whose tonic triad an applied chord points to: G major for V/V in C major. */
export function appliedKey(key: Key, applied: Degree): Key {
  return { tonic: degreeRoot(key, applied), mode: applied.quality === 'minor' ? 'minor' : 'major' };
}

/** The root of a degree, spelt: the raised seventh for a diminished chord on 7 in minor, else the natural one. */
function degreeRoot(key: Key, degree: Degree): NoteName {
  const { scale, harmonic } = keyFacts(key);
  const raised = degree.degree === 7 && degree.quality === 'diminished';
  const plain = (raised ? harmonic : scale)[degree.degree - 1]!;
  return noteNameAtFifths(fifthsPlace(plain) + 7 * degree.alteration);
}
