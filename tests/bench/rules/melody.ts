/** Plain definitions and plants of the family *melody*. */
import type { VoiceName } from '../../../src/score/score.ts';
import { oneNoteChanges } from './edits.ts';
import { ALL, following, type Plain, type PlainNote, phraseEndsBetween } from './plain.ts';
import type { Place, Planter } from './planter.ts';

/** Each note with the one that follows it in its voice and phrase. */
function moves(plain: Plain, voices: readonly VoiceName[] = ALL): [PlainNote, PlainNote][] {
  return voices.flatMap((voice) =>
    plain.voices[voice].flatMap((note): [PlainNote, PlainNote][] => {
      const next = following(plain, note);
      return next === undefined || phraseEndsBetween(plain, note.at, next.at) ? [] : [[note, next]];
    }),
  );
}

function placeOfNotes(notes: readonly PlainNote[]): Place {
  return { at: notes[0]!.at, until: notes.at(-1)!.until, voices: [notes[0]!.voice] };
}

/** Staff places and semitones, both counted upwards. */
function size([a, b]: readonly [PlainNote, PlainNote]): { places: number; semitones: number } {
  const down = b.place < a.place || (b.place === a.place && b.midi < a.midi);
  return { places: Math.abs(b.place - a.place), semitones: down ? a.midi - b.midi : b.midi - a.midi };
}

export const MELODY: readonly Planter[] = [
  {
    rule: 'augmented-step',
    family: 'melody',
    definition: 'one staff place and three semitones, or more',
    tries: (piece, random) => oneNoteChanges(piece, random, { pitches: 'chromatic' }),
    find: (plain) =>
      moves(plain)
        .filter((two) => size(two).places === 1 && size(two).semitones >= 3)
        .map(placeOfNotes),
  },
  {
    rule: 'wide-leap',
    family: 'melody',
    definition: 'more than an octave from one note to the next',
    tries: (piece, random) => oneNoteChanges(piece, random),
    find: (plain) =>
      moves(plain)
        .filter((two) => size(two).places > 7)
        .map(placeOfNotes),
  },
];
