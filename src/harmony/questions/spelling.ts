/** Whether notes are spelt as their chord and key ask. */
import { fifthsPlace, type NoteName, noteNameAtFifths } from '../../score/pitch.ts';
import type { Key } from '../analysis.ts';
import { CHORD_TYPES } from '../chord-types.ts';
import { keyFacts } from '../tonal.ts';

/**
 * The root of the triad, seventh chord or augmented sixth that three notes or more, as spelt, make, of which only the
 * fifth may be missing; undefined where they make none.
 */
export function rootAsSpelt(notes: readonly NoteName[]): NoteName | undefined {
  const places = [...new Set(notes.map(fifthsPlace))];
  if (places.length < 3) return undefined;
  const root = places.find((place) =>
    CHORD_TYPES.some(
      ({ offsets }) =>
        places.includes(place + offsets[1]!) && places.every((other) => offsets.includes(other - place)),
    ),
  );
  return root === undefined ? undefined : noteNameAtFifths(root);
}

/** True where three notes or more make a chord as they are spelt. */
export function isChordAsSpelt(notes: readonly NoteName[]): boolean {
  return rootAsSpelt(notes) !== undefined;
}

/** True where one chord could have all these notes, with others that nobody sings yet. */
export function mayBecomeChord(notes: readonly NoteName[]): boolean {
  const places = notes.map(fifthsPlace);
  const lowest = Math.min(...places);
  return CHORD_TYPES.some(({ offsets }) =>
    offsets.some((own) => places.every((place) => offsets.includes(place - lowest + own))),
  );
}

/** The same sound under the other usual name: Ab for G#, C for B#. Undefined beyond single accidentals. */
export function otherSpelling(note: NoteName): NoteName | undefined {
  const place = fifthsPlace(note);
  const other = noteNameAtFifths(note.alteration > 0 ? place - 12 : note.alteration < 0 ? place + 12 : place);
  return note.alteration !== 0 && Math.abs(other.alteration) <= 1 ? other : undefined;
}

/** True for a note of the key's scale; in minor, of any of its three forms. */
export function belongsToKey(note: NoteName, key: Key): boolean {
  return keyFacts(key).places.has(fifthsPlace(note));
}
