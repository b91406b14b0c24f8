/** Plain definitions and plants of the family *melody*. */
import type { Score, VoiceName } from '../../../src/score/score.ts';
import { oneNoteChanges, scaleAt, withPitch } from './edits.ts';
import { ALL, barOf, following, type Plain, type PlainNote, phraseEndsBetween, sounding } from './plain.ts';
import type { Piece, Place, Planter } from './planter.ts';
import type { Random } from './random.ts';

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
  {
    rule: 'augmented-leap',
    family: 'melody',
    definition: 'three to seven staff places, and more semitones than the major or perfect interval has',
    tries: (piece, random) => oneNoteChanges(piece, random, { pitches: 'chromatic' }),
    find: (plain) =>
      moves(plain)
        .filter((two) => {
          const { places, semitones } = size(two);
          return places >= 2 && places <= 7 && semitones > LARGEST[places]!;
        })
        .map(placeOfNotes),
  },
  {
    rule: 'diminished-leap',
    family: 'melody',
    definition: 'a diminished fourth, fifth or seventh, and the next note is not a step back inside it',
    tries: (piece, random) => oneNoteChanges(piece, random, { pitches: 'chromatic' }),
    find: (plain) =>
      threes(plain)
        .filter(([a, b, c]) => {
          const { places, semitones } = size([a, b]);
          const smallest = { 3: 4, 4: 6, 6: 9 }[places];
          const stepsBack = Math.abs(c.place - b.place) === 1 && c.place > b.place !== b.place > a.place;
          // A repeated note puts the answer off; what follows then is another question.
          return semitones === smallest && !stepsBack && c.place !== b.place;
        })
        .map(placeOfNotes),
  },
  {
    rule: 'seventh-leap',
    family: 'melody',
    definition: 'six staff places and ten or eleven semitones',
    tries: (piece, random) => oneNoteChanges(piece, random),
    find: (plain) =>
      moves(plain)
        .filter((two) => size(two).places === 6 && [10, 11].includes(size(two).semitones))
        .map(placeOfNotes),
  },
  {
    rule: 'outlined-seventh',
    family: 'melody',
    definition: 'two leaps one way that come to six or eight staff places',
    tries: (piece, random) => oneNoteChanges(piece, random),
    find: (plain) =>
      threes(plain)
        .filter(([a, b, c]) => {
          const total = Math.abs(c.place - a.place);
          const leaps = Math.abs(b.place - a.place) > 1 && Math.abs(c.place - b.place) > 1;
          return leaps && b.place > a.place === c.place > b.place && (total === 6 || total === 8);
        })
        .map(placeOfNotes),
  },
  {
    rule: 'unrecovered-leap',
    family: 'melody',
    definition: 'a leap of a sixth to an octave in an upper voice, and the line goes on the same way',
    tries: (piece, random) => oneNoteChanges(piece, random, { voices: ['S', 'A', 'T'] }),
    find: (plain) =>
      threes(plain, ['S', 'A', 'T'])
        .filter(([a, b, c]) => {
          const places = Math.abs(b.place - a.place);
          return places >= 5 && places <= 7 && c.place !== b.place && c.place > b.place === b.place > a.place;
        })
        .map(placeOfNotes),
  },
  {
    rule: 'false-relation',
    family: 'melody',
    definition:
      'a letter with two accidentals in two voices, one straight after the other, and no voice makes the semitone',
    tries: (piece, random) => oneNoteChanges(piece, random, { pitches: 'chromatic' }),
    find: falseRelations,
  },
  {
    rule: 'hammered-note',
    family: 'melody',
    definition: 'alto or tenor strikes one note six times in a row or more',
    tries: (piece, random) => repeatedNotes(piece, random),
    find: (plain) =>
      (['A', 'T'] as const).flatMap((voice) =>
        runsOfOneNote(plain, voice)
          .filter((run) => run.length >= 6)
          .map((run) => ({ at: run[0]!.at, until: run.at(-1)!.until, voices: [voice] })),
      ),
  },
  {
    rule: 'repeated-bass',
    family: 'melody',
    definition:
      'the bass strikes the same note on the last beat of a bar and on the first of the next, in mid-phrase',
    tries: (piece, random) => oneNoteChanges(piece, random, { voices: ['B'] }),
    find: (plain) =>
      moves(plain, ['B'])
        .filter(([a, b]) => {
          const bar = barOf(plain, b.at);
          const opens = a.index === 0 || plain.phraseEnds.includes(a.at);
          if (barOf(plain, a.at)?.at === a.at) return false;
          return a.midi === b.midi && a.place === b.place && bar?.at === b.at && bar.offset === 0 && !opens;
        })
        .map(placeOfNotes),
  },
  {
    rule: 'circling-line',
    family: 'melody',
    definition: 'eight notes of the bass in a row within a third, one of them come to four times',
    tries: (piece, random) => circles(piece, random),
    find: (plain) => {
      const notes = plain.voices.B;
      return notes.flatMap((first, i) => {
        const eight = notes.slice(i, i + 8);
        const last = eight.at(-1)!;
        if (eight.length < 8 || phraseEndsBetween(plain, first.at, last.at)) return [];
        if (eight.some((note, k) => k > 0 && eight[k - 1]!.until !== note.at)) return [];
        const places = eight.map((note) => note.place);
        const arrivals = eight.filter((note, k) => k === 0 || eight[k - 1]!.midi !== note.midi);
        const most = Math.max(...arrivals.map((a) => arrivals.filter((b) => b.midi === a.midi).length));
        return Math.max(...places) - Math.min(...places) <= 2 && most >= 4
          ? [{ at: first.at, until: last.until, voices: ['B' as const] }]
          : [];
      });
    },
  },
];

/** Semitones of the major or perfect interval over 0 to 7 staff places. */
const LARGEST = [0, 2, 4, 5, 7, 9, 11, 12] as const;

/** Three notes in a row in one voice and phrase. */
function threes(plain: Plain, voices: readonly VoiceName[] = ALL): [PlainNote, PlainNote, PlainNote][] {
  return moves(plain, voices).flatMap(([a, b]): [PlainNote, PlainNote, PlainNote][] => {
    const c = following(plain, b);
    return c === undefined || phraseEndsBetween(plain, b.at, c.at) ? [] : [[a, b, c]];
  });
}

function falseRelations(plain: Plain): Place[] {
  const clash = (a: PlainNote, b: PlainNote) =>
    a.pitch.step === b.pitch.step && a.pitch.alteration !== b.pitch.alteration;
  return ALL.flatMap((voice) =>
    plain.voices[voice].flatMap((note): Place[] => {
      if (note.at === 0 || phraseEndsBetween(plain, note.at - 1, note.at)) return [];
      const before = ALL.flatMap((v) => sounding(plain, v, note.at - 1) ?? []);
      const others = before.filter((other) => clash(other, note));
      const made = others.some(
        (other) => other.voice === voice || sounding(plain, other.voice, note.at)?.name === note.name,
      );
      const [other] = others;
      return other === undefined || made
        ? []
        : [{ at: other.at, until: note.until, voices: [other.voice, voice] }];
    }),
  );
}

function runsOfOneNote(plain: Plain, voice: VoiceName): PlainNote[][] {
  const runs: PlainNote[][] = [];
  for (const note of plain.voices[voice]) {
    const last = runs.at(-1)?.at(-1);
    const goesOn = last && last.midi === note.midi && last.until === note.at;
    if (goesOn && !phraseEndsBetween(plain, last.at, note.at)) runs.at(-1)!.push(note);
    else runs.push([note]);
  }
  return runs;
}

/** Six notes or more of an inner voice put on one pitch: the one in the middle of them. */
function* repeatedNotes({ plain, score }: Piece, random: Random): Generator<Score> {
  for (const voice of random.shuffled(['A', 'T'] as const)) {
    const notes = plain.voices[voice];
    for (const start of random.shuffled(notes.slice(0, -7)).slice(0, 40)) {
      const run = notes.slice(start.index, start.index + 6 + random.below(3));
      const pitch = run[2]!.pitch;
      yield run.reduce((altered, note) => withPitch(altered, note, pitch), score);
    }
  }
}

/** Eight notes of the bass turned into a line that goes round its first note by step. */
function* circles({ plain, score }: Piece, random: Random): Generator<Score> {
  const notes = plain.voices.B;
  for (const start of random.shuffled(notes.slice(0, -9)).slice(0, 40)) {
    const scale = scaleAt(score, start.at);
    const around = [-1, 0, 1].map((by) => {
      const place = start.place + by;
      const name = scale[place % 7]!;
      return { ...name, octave: Math.floor(place / 7) };
    });
    const turn = [1, 0, 1, 2, 1, 0, 1, 2] as const;
    yield turn.reduce((altered, k, i) => withPitch(altered, notes[start.index + i]!, around[k]!), score);
  }
}
