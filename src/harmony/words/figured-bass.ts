/** Figured bass with its accidentals: what a player would read under the bass of a chord. */
import { type NoteName, noteNameAtFifths, stepIndex } from '../../score/pitch.ts';
import type { Chord } from '../analysis.ts';
import { membersOf } from '../questions/moments.ts';

/** Numbers always written, by inversion: triads, then sevenths. Common practice, no source. */
const TRIADS: readonly (readonly number[])[] = [[], [6], [6, 4], []];
const SEVENTHS: readonly (readonly number[])[] = [[7], [6, 5], [4, 3], [4, 2]];

/**
 * The figures from the top, as in {@link WrittenFigure}: `['6', '5']`, `['#']`, `['6', '#4']`. A note that the key
 * signature does not give carries `#`, `b` or `n`, and is written even where its figure would be left out; an
 * altered third is its sign alone.
 *
 * @param signature sharps positive, flats negative
 */
export function figuredBass(chord: Pick<Chord, 'members' | 'bass' | 'roman'>, signature: number): string[] {
  const usual = (chord.members.seventh === undefined ? TRIADS : SEVENTHS)[chord.roman.inversion]!;
  const figures = new Map<number, string>(usual.map((number) => [number, '']));
  for (const note of membersOf(chord)) {
    const number = ((stepIndex(note.step) - stepIndex(chord.bass.step) + 7) % 7) + 1;
    if (number > 1 && note.alteration !== signatureAlteration(note, signature))
      figures.set(number, note.alteration === 0 ? 'n' : note.alteration > 0 ? '#' : 'b');
  }
  return [...figures]
    .sort(([a], [b]) => b - a)
    .map(([number, sign]) => (number === 3 && sign !== '' ? sign : `${sign}${number}`));
}

/** How the signature alters a note's step. */
function signatureAlteration(note: NoteName, signature: number): number {
  // The seven notes of a signature lie side by side on the line of fifths, from F (one fifth below C) on.
  for (let place = signature - 1; place <= signature + 5; place++) {
    const given = noteNameAtFifths(place);
    if (given.step === note.step) return given.alteration;
  }
  return 0;
}
