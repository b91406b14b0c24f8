/** Plain definitions and plants of the family *spacing and range*. */
import type { VoiceName } from '../../../src/score/score.ts';
import { oneNoteChanges } from './edits.ts';
import { type Plain, type PlainNote, phraseEndsBetween, sounding } from './plain.ts';
import type { Place, Planter } from './planter.ts';

/** Ranges printed in most handbooks, as MIDI numbers: S C4–G5, A G3–D5, T C3–G4, B E2–D4 (from memory). */
const RANGES: Readonly<Record<VoiceName, readonly [number, number]>> = {
  S: [60, 79],
  A: [55, 74],
  T: [48, 67],
  B: [40, 62],
};
const NEXT_BELOW: readonly (readonly [VoiceName, VoiceName])[] = [
  ['S', 'A'],
  ['A', 'T'],
  ['T', 'B'],
];

/** Each note of the upper voice against each note of the lower that sounds with it. */
function meetings(plain: Plain, upper: VoiceName, lower: VoiceName): [PlainNote, PlainNote][] {
  return plain.voices[upper].flatMap((high) =>
    plain.voices[lower]
      .filter((low) => low.at < high.until && high.at < low.until)
      .map((low): [PlainNote, PlainNote] => [high, low]),
  );
}

function together([high, low]: readonly [PlainNote, PlainNote]): Place {
  return {
    at: Math.max(high.at, low.at),
    until: Math.min(high.until, low.until),
    voices: [high.voice, low.voice],
  };
}

export const SPACING: readonly Planter[] = [
  {
    rule: 'voice-range',
    family: 'spacing and range',
    definition: 'a note outside the range that most handbooks print for its voice',
    tries: (piece, random) => oneNoteChanges(piece, random, { anyRange: true }),
    find: (plain) =>
      Object.values(plain.voices).flatMap((notes) =>
        notes
          .filter((note) => note.midi < RANGES[note.voice][0] || note.midi > RANGES[note.voice][1])
          .map((note) => ({ at: note.at, until: note.until, voices: [note.voice] })),
      ),
  },
  {
    rule: 'voice-spacing',
    family: 'spacing and range',
    definition: 'soprano and alto, or alto and tenor, more than an octave apart',
    tries: (piece, random) => oneNoteChanges(piece, random),
    find: (plain) =>
      NEXT_BELOW.slice(0, 2).flatMap(([upper, lower]) =>
        meetings(plain, upper, lower)
          .filter(([high, low]) => high.midi - low.midi > 12)
          .map(together),
      ),
  },
  {
    rule: 'voice-crossing',
    family: 'spacing and range',
    definition: 'a voice sounds below the voice printed under it',
    tries: (piece, random) => oneNoteChanges(piece, random),
    find: (plain) =>
      NEXT_BELOW.flatMap(([upper, lower]) =>
        meetings(plain, upper, lower)
          .filter(([high, low]) => high.midi < low.midi)
          .map(together),
      ),
  },
  {
    rule: 'voice-overlap',
    family: 'spacing and range',
    definition:
      'a voice goes past the note its neighbour has just left, by more than a major third, to another chord',
    tries: (piece, random) => oneNoteChanges(piece, random),
    find: (plain, { labels }) =>
      NEXT_BELOW.flatMap(([upper, lower]) =>
        plain.voices[upper].flatMap((high) => {
          const low = sounding(plain, lower, high.at);
          const highBefore = sounding(plain, upper, high.at - 1);
          const lowBefore = sounding(plain, lower, high.at - 1);
          if (!low || !highBefore || !lowBefore || low.at !== high.at) return [];
          if (phraseEndsBetween(plain, high.at - 1, high.at)) return [];
          if (highBefore.midi < lowBefore.midi || high.midi < low.midi) return [];
          // Inside one chord the voices only change places in it.
          if (!labels.some((label) => label.at === high.at)) return [];
          if (low.midi - highBefore.midi <= 4 && lowBefore.midi - high.midi <= 4) return [];
          return [{ at: lowBefore.at, until: high.until, voices: [upper, lower] }];
        }),
      ),
  },
];
