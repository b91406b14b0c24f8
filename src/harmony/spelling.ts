/** Whether notes are spelt as their chord and key ask. */
import { fifthsPlace, type NoteName, noteNameAtFifths } from '../score/pitch.ts';
import type { Key } from './analysis.ts';
import { CHORD_TYPES } from './chordTypes.ts';
import { keyFacts } from './tonal.ts';

/** Chords by the distances of their members from the root on the line of fifths, sorted, so that sets can be compared. */
const STACKS = new Set(CHORD_TYPES.map((type) => [...type.offsets].sort((a, b) => a - b).join(' ')));

/** True where the notes, as spelt, are exactly the members of a triad, a seventh chord or an augmented sixth. */
export function isChordAsSpelt(notes: readonly NoteName[]): boolean {
  const places = [...new Set(notes.map(fifthsPlace))].sort((a, b) => a - b);
  return places.some((root) => STACKS.has(places.map((place) => place - root).join(' ')));
}

/** The same sound under the other usual name: Ab for G#, C for B#. Undefined beyond single accidentals. */
export function otherSpelling(note: NoteName): NoteName | undefined {
  const place = fifthsPlace(note);
  const other = noteNameAtFifths(note.alteration > 0 ? place - 12 : note.alteration < 0 ? place + 12 : place);
  return note.alteration !== 0 && Math.abs(other.alteration) <= 1 ? other : undefined;
}

/** True for a note of the key's scale; in minor, of any of its three forms. */
export function belongsToKey(note: NoteName, key: Key): boolean {
  const { scale, harmonic, melodic } = keyFacts(key);
  return [scale, harmonic, melodic].some((form) =>
    form.some((name) => name.step === note.step && name.alteration === note.alteration),
  );
}
