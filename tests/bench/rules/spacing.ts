/** Plain definitions and plants of the family *spacing and range*. */
import type { Score, VoiceName } from '../../../src/score/score.ts';
import type { Ticks } from '../../../src/score/time.ts';
import { oneNoteChanges, withPitch } from './edits.ts';
import { barOf, type Plain, type PlainNote, phraseEndsBetween, QUARTER, sounding } from './plain.ts';
import type { Piece, Place, Planter } from './planter.ts';
import type { Random } from './random.ts';

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
  {
    rule: 'held-unison',
    family: 'spacing and range',
    definition: 'two neighbouring voices on one note, without a break, for more than two beats',
    tries: (piece, random) => unisons(piece, random),
    find: (plain) =>
      NEXT_BELOW.flatMap(([upper, lower]) => {
        const places: { at: Ticks; until: Ticks; voices: readonly VoiceName[] }[] = [];
        for (const [i, at] of plain.moments.entries()) {
          const until = plain.moments[i + 1];
          const high = sounding(plain, upper, at);
          const low = sounding(plain, lower, at);
          if (until === undefined || high === undefined || high.midi !== low?.midi) continue;
          const last = places.at(-1);
          if (last?.until === at) last.until = until;
          else places.push({ at, until, voices: [upper, lower] });
        }
        return places.filter(({ at, until }) => until - at > 2 * beatAt(plain, at));
      }),
  },
];

function beatAt(plain: Plain, at: Ticks): Ticks {
  return (4 * QUARTER) / (barOf(plain, at)?.metre.unit ?? 4);
}

/** A few notes of one voice put on the notes of its neighbour, where they begin together. */
function* unisons({ plain, score }: Piece, random: Random): Generator<Score> {
  for (const [upper, lower] of random.shuffled(NEXT_BELOW)) {
    for (const start of random.shuffled(plain.voices[lower].slice(0, -4)).slice(0, 30)) {
      const notes = plain.voices[lower].slice(start.index, start.index + 3 + random.below(2));
      const pitches = notes.map((note) => sounding(plain, upper, note.at)?.pitch);
      yield notes.reduce((altered, note, i) => {
        const pitch = pitches[i];
        return pitch === undefined ? altered : withPitch(altered, note, pitch);
      }, score);
    }
  }
}
