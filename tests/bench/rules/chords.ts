/** Plain definitions and plants of the family *chords*: what is in a chord. How chords follow is in `progressions.ts`. */
import type { Score } from '../../../src/score/score.ts';
import { oneNoteChanges, withPitch } from './edits.ts';
import {
  beatAt,
  degree,
  doublings,
  fifths,
  harmonies,
  hasSeventh,
  isApplied,
  isDominant,
  isFull,
  leadingNote,
  nameAt,
  nameOf,
  namesIn,
  nearest,
  notesOf,
  overLabels,
  renamed,
} from './harmonic.ts';
import { ALL, following, type Plain, type PlainNote, phraseEndsBetween, sounding } from './plain.ts';
import type { Label, Piece, Place, Planter } from './planter.ts';
import type { Random } from './random.ts';

/** Labels of a beat or more with all four voices singing. */
function wholeChords(plain: Plain, piece: Piece): readonly Label[] {
  return harmonies(piece).filter(
    (label) => label.until - label.at >= beatAt(plain, label.at) && isFull(plain, label.at),
  );
}

function everyVoice(label: Label): Place {
  return { at: label.at, until: label.until, voices: [] };
}

/** The note lies within a label, and this is the label. */
function labelOf(piece: Piece, note: PlainNote): Label | undefined {
  return harmonies(piece).find((label) => note.at >= label.at && note.until <= label.until);
}

function previous(plain: Plain, note: PlainNote): PlainNote | undefined {
  const before = plain.voices[note.voice][note.index - 1];
  return before !== undefined && before.until === note.at ? before : undefined;
}

function leaps(from: PlainNote | undefined, to: PlainNote | undefined): boolean {
  return from !== undefined && to !== undefined && Math.abs(to.place - from.place) > 1;
}

/** One note in a label given the name that `which` asks for there. */
function oneNoteTo(which: (label: Label) => string | undefined): Planter['tries'] {
  return (piece, random) =>
    oneNoteChanges(piece, random, {
      to: (pitch, note) => {
        const label = labelOf(piece, note);
        return label !== undefined && which(label) === nameOf(pitch);
      },
    });
}

/** Root and third sound at this moment and the chord lasts a beat, so that it is what it is. */
function isPlain(plain: Plain, label: Label, at: number): boolean {
  const notes = notesOf(label);
  const names = ALL.map((voice) => sounding(plain, voice, at)?.name);
  return (
    notes !== undefined &&
    label.until - label.at >= beatAt(plain, label.at) &&
    names.includes(notes.root) &&
    names.includes(notes.third)
  );
}

function doubled(
  which: (label: Label) => string | undefined,
  unless: (plain: Plain, notes: readonly PlainNote[]) => boolean = () => false,
): Planter['find'] {
  return (plain, piece) =>
    harmonies(piece).flatMap((label) => {
      const name = which(label);
      return name === undefined
        ? []
        : doublings(plain, label, name)
            .filter(({ at }) => isPlain(plain, label, at))
            .filter(({ notes }) => !unless(plain, notes));
    });
}

const leadingNoteOf = (label: Label) => (isDominant(label) ? leadingNote(label) : undefined);
const seventhOf = (label: Label) => notesOf(label)?.seventh;
const majorThirdOf = (label: Label) =>
  label.quality === 'major' &&
  degree(label) !== 'VI' &&
  !hasSeventh(label) &&
  !isDominant(label) &&
  !isApplied(label) &&
  label.bass === label.root
    ? notesOf(label)?.third
    : undefined;
const diminishedRootOf = (label: Label) =>
  label.quality === 'diminished' && !hasSeventh(label) ? label.root : undefined;

/** Passing by: off the beat, shorter than a beat, reached and left by step. */
function passesBy(plain: Plain, note: PlainNote): boolean {
  const before = previous(plain, note);
  const after = following(plain, note);
  return (
    note.until - note.at < beatAt(plain, note.at) &&
    before !== undefined &&
    after !== undefined &&
    !leaps(before, note) &&
    !leaps(note, after)
  );
}

export const CHORDS: readonly Planter[] = [
  {
    rule: 'missing-root',
    family: 'chords',
    // With its third in the bass it could pass for a triad on that third without its fifth, which is allowed.
    definition: 'a triad of a beat or more in which only third and fifth are sung, the fifth in the bass',
    tries: (piece, random) =>
      overLabels(
        piece,
        random,
        (label) => !hasSeventh(label) && notesOf(label) !== undefined,
        (label) => {
          const { root, third, fifth } = notesOf(label)!;
          return renamed(piece, label, (note) =>
            note.voice === 'B'
              ? fifth
              : note.name === root
                ? random.below(2) === 0
                  ? third
                  : fifth
                : undefined,
          );
        },
      ),
    find: (plain, piece) =>
      wholeChords(plain, piece)
        .filter((label) => {
          const notes = notesOf(label);
          const names = namesIn(plain, label);
          return (
            notes !== undefined &&
            names.size === 2 &&
            names.has(notes.third) &&
            names.has(notes.fifth) &&
            sounding(plain, 'B', label.at)?.name === notes.fifth
          );
        })
        .map(everyVoice),
  },
  {
    rule: 'missing-third',
    family: 'chords',
    definition: 'a triad of a beat or more in which only root and fifth are sung',
    tries: (piece, random) =>
      overLabels(
        piece,
        random,
        (label) => !hasSeventh(label) && notesOf(label) !== undefined,
        (label) => {
          const { root, third, fifth } = notesOf(label)!;
          return renamed(piece, label, (note) =>
            note.name === third ? (random.below(2) === 0 ? root : fifth) : undefined,
          );
        },
      ),
    find: (plain, piece) =>
      wholeChords(plain, piece)
        .filter((label) => {
          const notes = notesOf(label);
          const names = [...namesIn(plain, label)];
          return (
            notes !== undefined &&
            names.includes(notes.root) &&
            names.every((name) => name === notes.root || name === notes.fifth)
          );
        })
        .map(everyVoice),
  },
  {
    rule: 'doubled-leading-note',
    family: 'chords',
    definition: 'two voices with the leading note of a dominant chord, neither of them in passing',
    tries: oneNoteTo(leadingNoteOf),
    find: doubled(leadingNoteOf, (plain, notes) => notes.some((note) => passesBy(plain, note))),
  },
  {
    rule: 'doubled-seventh',
    family: 'chords',
    definition: 'two voices with the seventh of a chord, neither of them in passing',
    tries: oneNoteTo(seventhOf),
    find: doubled(seventhOf, (plain, notes) => notes.some((note) => passesBy(plain, note))),
  },
  {
    rule: 'doubled-third',
    family: 'chords',
    definition:
      'two voices with the third of a major triad in root position (no dominant), one of them at least by leap',
    tries: oneNoteTo(majorThirdOf),
    // A chord may be the tonic to one reader and the dominant to another.
    alsoNamed: ['doubled-leading-note'],
    find: doubled(
      majorThirdOf,
      (plain, notes) =>
        notes.some((note) => passesBy(plain, note) || note.voice === 'B') ||
        notes.some((note) => sounding(plain, 'B', note.at)?.name === note.name) ||
        notes.every((note) => !leaps(previous(plain, note), note) && !leaps(note, following(plain, note))),
    ),
  },
  {
    rule: 'doubled-diminished-root',
    family: 'chords',
    definition: 'two voices with the root of a diminished triad, neither of them in passing',
    // The root of the triad on the seventh degree is the leading note.
    alsoNamed: ['doubled-leading-note'],
    tries: oneNoteTo(diminishedRootOf),
    find: doubled(diminishedRootOf, (plain, notes) => notes.some((note) => passesBy(plain, note))),
  },
  {
    rule: 'diminished-root-position',
    family: 'chords',
    definition: 'a diminished triad of a beat or more with its root in the bass from beginning to end',
    tries: (piece, random) =>
      overLabels(
        piece,
        random,
        (label) => diminishedRootOf(label) !== undefined,
        (label) => renamed(piece, label, (note) => (note.voice === 'B' ? label.root : undefined)),
      ),
    find: (plain, piece) =>
      wholeChords(plain, piece)
        .filter(
          (label) =>
            diminishedRootOf(label) !== undefined &&
            plain.voices.B.every(
              (note) => note.at >= label.until || note.until <= label.at || note.name === label.root,
            ) &&
            namesIn(plain, label).has(notesOf(label)!.fifth) &&
            [...namesIn(plain, label)].every((name) => Object.values(notesOf(label)!).includes(name)),
        )
        .map((label) => ({ at: label.at, until: label.until, voices: ['B'] as const })),
  },
  {
    rule: 'unprepared-seventh',
    family: 'chords',
    definition:
      'the seventh of a chord that is no dominant, a beat or more long and over its root, reached by leap from the chord before',
    tries: (piece, random) =>
      oneNoteChanges(piece, random, {
        only: (note) => {
          const next = following(piece.plain, note);
          const label = next && labelOf(piece, next);
          return label !== undefined && secondarySeventh(label) === next!.name;
        },
      }),
    find: (plain, piece) =>
      harmonies(piece).flatMap((label) => {
        const seventh = secondarySeventh(label);
        if (seventh === undefined) return [];
        return Object.values(plain.voices).flatMap((notes) =>
          notes
            .filter(
              (note) =>
                note.name === seventh &&
                note.at === label.at &&
                leaps(previous(plain, note), note) &&
                previous(plain, note)?.name !== seventh,
            )
            .filter((note) => !phraseEndsBetween(plain, note.at - 1, note.at))
            .filter(
              (note) => note.until - note.at >= beatAt(plain, note.at) && isPlain(plain, label, note.at),
            )
            .map((note) => ({ at: note.at, until: note.until, voices: [note.voice] })),
        );
      }),
  },
  {
    rule: 'misspelt-note',
    family: 'chords',
    definition: 'a chord note of a beat or more written under the other name of its key on the keyboard',
    // Misspelling can make an augmented sixth that then does not resolve.
    alsoNamed: ['unresolved-augmented-sixth'],
    tries: (piece, random) => respellings(piece, random),
    find: (plain, piece) => harmonies(piece).flatMap((label) => misspelt(plain, label)),
  },
];

/** The same key of the keyboard by its other name, single accidentals only. */
function otherName(name: string): string | undefined {
  const place = fifths(name);
  const other = nameAt(name.includes('#') ? place - 12 : place + 12);
  return other.length <= 2 ? other : undefined;
}

function* respellings(piece: Piece, random: Random): Generator<Score> {
  const notes = ALL.flatMap((voice) => piece.plain.voices[voice].filter((note) => note.name.length > 1));
  for (const note of random.shuffled(notes)) {
    const name = otherName(note.name);
    if (name !== undefined) yield withPitch(piece.score, note, nearest(name, note.pitch));
  }
}

function misspelt(plain: Plain, label: Label): Place[] {
  const notes = notesOf(label);
  if (notes === undefined) return [];
  const names = [notes.root, notes.third, notes.fifth, ...(notes.seventh ? [notes.seventh] : [])];
  return ALL.flatMap((voice) =>
    plain.voices[voice]
      .filter((note) => note.at >= label.at && note.until <= label.until)
      .filter((note) => note.until - note.at >= beatAt(plain, note.at))
      .filter((note) => names.some((name) => otherName(name) === note.name || otherName(note.name) === name))
      .map((note) => ({ at: note.at, until: note.until, voices: [voice] })),
  );
}

function secondarySeventh(label: Label): string | undefined {
  return isDominant(label) || isApplied(label) || /^[#b]*(V|vii)/.test(degree(label))
    ? undefined
    : notesOf(label)?.seventh;
}
