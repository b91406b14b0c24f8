/** Plain definitions and plants of the family *dissonance*. */
import type { Score } from '../../../src/score/score.ts';
import { oneNoteChanges, withPitch } from './edits.ts';
import { beatAt, fifths, harmonies, isFull, nearest, notesOf, weight } from './harmonic.ts';
import { ALL, following, type Plain, type PlainNote, phraseEndsBetween, sounding } from './plain.ts';
import type { Label, Piece, Place, Planter } from './planter.ts';
import type { Random } from './random.ts';

function previous(plain: Plain, note: PlainNote): PlainNote | undefined {
  const before = plain.voices[note.voice][note.index - 1];
  return before !== undefined && before.until === note.at ? before : undefined;
}

function members(label: Label): readonly string[] {
  const notes = notesOf(label);
  return notes === undefined ? [] : Object.values(notes).filter((name) => name !== undefined);
}

/** Seconds, sevenths and ninths by letter with a note of another voice that sounds at this moment. */
function rubs(plain: Plain, note: PlainNote, at: number): boolean {
  return ALL.some((voice) => {
    const other = voice === note.voice ? undefined : sounding(plain, voice, at);
    if (other === undefined) return false;
    const steps = Math.abs(other.place - note.place) % 7;
    return steps === 1 || steps === 6;
  });
}

/** All that sounds belongs to one triad or seventh chord, as spelt. */
function stacksInThirds(plain: Plain, at: number): boolean {
  const places = ALL.flatMap((voice) => sounding(plain, voice, at) ?? []).map((note) => fifths(note.name));
  return places.some((root) =>
    places.every((place) => [0, 4, -3, 1, -6, 8, -2, 5, -9].includes(place - root)),
  );
}

const isLeap = (a: PlainNote, b: PlainNote) => Math.abs(a.place - b.place) > 1;

/** A note that stays while its chord changes, and then steps away: preparation, dissonance and resolution. */
interface Suspension {
  readonly label: Label;
  readonly before: PlainNote;
  readonly note: PlainNote;
  readonly resolution: PlainNote;
}

/**
 * The notes foreign to the label that begins, on a beat, prepared by the same pitch or held over, and followed by a
 * step. `down` says which way.
 */
function suspensions(plain: Plain, piece: Piece, down: boolean): Suspension[] {
  return harmonies(piece).flatMap((label) => {
    if (weight(plain, label.at) === 0 || phraseEndsBetween(plain, label.at - 1, label.at)) return [];
    return ALL.flatMap((voice): Suspension[] => {
      const note = sounding(plain, voice, label.at);
      if (note === undefined || members(label).includes(note.name)) return [];
      const before = note.at < label.at ? note : previous(plain, note);
      const resolution = following(plain, note);
      if (before === undefined || before.midi !== note.midi || resolution === undefined) return [];
      const step = note.place - resolution.place;
      if (step !== (down ? 1 : -1) || resolution.at >= label.until) return [];
      return rubs(plain, note, label.at) ? [{ label, before, note, resolution }] : [];
    });
  });
}

/** Changes of a note that belongs to a suspension of the unaltered chorale. */
function spoilt(
  which: (suspension: Suspension) => PlainNote,
  pitches: 'chord' | 'scale' = 'scale',
): Planter['tries'] {
  return (piece, random) => {
    const targets = new Set(suspensions(piece.plain, piece, true).map(which));
    return oneNoteChanges(piece, random, { only: (note) => targets.has(note), pitches });
  };
}

export const DISSONANCE: readonly Planter[] = [
  {
    rule: 'unexplained-dissonance',
    family: 'dissonance',
    definition:
      'a note of a beat or more, on the beat, foreign to its chord, a second or seventh from another voice, in no stack of thirds with what sounds, leapt to and left by leap',
    tries: (piece, random) =>
      oneNoteChanges(piece, random, {
        only: (note) =>
          note.until - note.at >= beatAt(piece.plain, note.at) && weight(piece.plain, note.at) > 0,
        limit: 20_000,
      }),
    find: (plain, piece) => {
      const labels = harmonies(piece);
      return ALL.flatMap((voice) =>
        plain.voices[voice].flatMap((note): Place[] => {
          const label = labels.find((l) => note.at >= l.at && note.until <= l.until);
          const before = previous(plain, note);
          const after = following(plain, note);
          if (!label || !before || !after || members(label).includes(note.name)) return [];
          if (note.until - note.at < beatAt(plain, note.at) || weight(plain, note.at) === 0) return [];
          if (!isLeap(before, note) || !isLeap(note, after) || !rubs(plain, note, note.at)) return [];
          if (phraseEndsBetween(plain, note.at - 1, note.until) || !isFull(plain, note.at)) return [];
          if (stacksInThirds(plain, note.at)) return [];
          return [{ at: note.at, until: note.until, voices: [voice] }];
        }),
      );
    },
    // Over three chord notes the intruder often makes a seventh of some kind, and the seventh is what goes wrong.
    alsoNamed: ['unprepared-seventh', 'unresolved-seventh', 'unprepared-suspension'],
  },
  {
    rule: 'unprepared-suspension',
    family: 'dissonance',
    definition: 'a dissonant note on the beat, foreign to its chord, that falls by step and was leapt to',
    tries: spoilt(({ before, note }) => (before === note ? note : before)),
    find: (plain, piece) =>
      harmonies(piece).flatMap((label) => {
        if (weight(plain, label.at) === 0 || phraseEndsBetween(plain, label.at - 1, label.at)) return [];
        return ALL.flatMap((voice): Place[] => {
          const note = sounding(plain, voice, label.at);
          const before = note && previous(plain, note);
          const after = note && following(plain, note);
          if (!note || !before || !after || note.at !== label.at) return [];
          if (members(label).includes(note.name) || !members(label).includes(after.name)) return [];
          if (note.place - after.place !== 1 || after.at >= label.until) return [];
          if (!isLeap(before, note) || before.name === note.name || !rubs(plain, note, note.at)) return [];
          return [{ at: note.at, until: after.until, voices: [voice] }];
        });
      }),
    alsoNamed: ['unprepared-seventh'],
  },
  {
    rule: 'upward-suspension',
    family: 'dissonance',
    definition: 'a prepared dissonance on the beat that goes up a tone into its chord',
    tries: spoilt(({ resolution }) => resolution),
    find: (plain, piece) =>
      suspensions(plain, piece, false)
        .filter(({ note, resolution }) => resolution.midi - note.midi === 2)
        .filter(({ label, resolution }) => members(label).includes(resolution.name))
        .map(({ label, note, resolution }) => ({
          at: label.at,
          until: resolution.until,
          voices: [note.voice],
        })),
    alsoNamed: ['unresolved-seventh'],
  },
  {
    rule: 'anticipated-resolution',
    family: 'dissonance',
    definition:
      'during a suspension another upper voice sings the note of resolution for half a beat or more, not in passing',
    tries: (piece, random) => doubledResolutions(piece, random),
    find: (plain, piece) =>
      suspensions(plain, piece, true).flatMap(({ label, note, resolution }) =>
        (['S', 'A', 'T'] as const).flatMap((voice): Place[] => {
          const other = voice === note.voice ? undefined : sounding(plain, voice, label.at);
          if (other?.name !== resolution.name || !members(label).includes(resolution.name)) return [];
          if (note.voice === 'B' || other.until - label.at < beatAt(plain, label.at) / 2) return [];
          return [{ at: label.at, until: resolution.until, voices: [voice] }];
        }),
      ),
  },
  {
    rule: 'accented-passing-consecutives',
    family: 'dissonance',
    definition:
      'a passing note on the beat, foreign to its chord, makes a second fifth or octave with a voice that moves with it',
    tries: (piece, random) => {
      const accents = new Set(
        accentedPassing(piece.plain, piece).flatMap(({ at }) => neighbours(piece.plain, at)),
      );
      return oneNoteChanges(piece, random, { only: (note) => accents.has(note), limit: 8000 });
    },
    find: (plain, piece) =>
      accentedPassing(plain, piece).flatMap((note) => {
        const before = previous(plain, note)!;
        return ALL.flatMap((voice): Place[] => {
          const other = voice === note.voice ? undefined : sounding(plain, voice, note.at);
          const earlier = other && previous(plain, other);
          if (!other || !earlier || other.at !== note.at || other.midi === earlier.midi) return [];
          if (earlier.until !== before.until || sounding(plain, voice, before.until - 1) !== earlier)
            return [];
          const [first, second] = [interval(before, earlier), interval(note, other)];
          const parallel = first === second && (first === 'fifth' || first === 'octave');
          const similar = note.midi > before.midi === other.midi > earlier.midi;
          return parallel && similar
            ? [{ at: Math.max(before.at, earlier.at), until: note.until, voices: [note.voice, voice] }]
            : [];
        });
      }),
    // Consecutive fifths and octaves by their own names are as right.
    alsoNamed: ['parallel-fifths', 'parallel-octaves'],
  },
];

/** Notes on a beat, foreign to the chord, that go on by step the way they came, into the chord before it ends. */
function accentedPassing(plain: Plain, piece: Piece): PlainNote[] {
  return harmonies(piece).flatMap((label) => {
    if (weight(plain, label.at) === 0 || phraseEndsBetween(plain, label.at - 1, label.at)) return [];
    return ALL.flatMap((voice) => {
      const note = sounding(plain, voice, label.at);
      const before = note && previous(plain, note);
      const after = note && following(plain, note);
      if (!note || !before || !after || note.at !== label.at || after.at >= label.until) return [];
      const [into, out] = [note.place - before.place, after.place - note.place];
      const foreign = !members(label).includes(note.name) && members(label).includes(after.name);
      return foreign && Math.abs(into) === 1 && into === out ? [note] : [];
    });
  });
}

/** The notes that sound just before a moment, and those that begin at it. */
function neighbours(plain: Plain, at: number): PlainNote[] {
  return ALL.flatMap((voice) =>
    [sounding(plain, voice, at - 1), sounding(plain, voice, at)].filter((note) => note !== undefined),
  );
}

function interval(a: PlainNote, b: PlainNote): 'fifth' | 'octave' | undefined {
  const [high, low] = a.midi >= b.midi ? [a, b] : [b, a];
  const steps = (high.place - low.place) % 7;
  const semitones = (high.midi - low.midi) % 12;
  if (steps === 4 && semitones === 7) return 'fifth';
  return steps === 0 && semitones === 0 && high.midi !== low.midi ? 'octave' : undefined;
}

function* doubledResolutions(piece: Piece, random: Random): Generator<Score> {
  for (const { label, note, resolution } of random.shuffled(suspensions(piece.plain, piece, true))) {
    for (const voice of random.shuffled(['S', 'A', 'T'] as const)) {
      const other = sounding(piece.plain, voice, label.at);
      if (voice === note.voice || other === undefined || other.at < label.at) continue;
      yield withPitch(piece.score, other, nearest(resolution.name, other.pitch));
    }
  }
}
