/** Plain definitions and plants of the family *chords*: how chords follow and how their notes move on. */
import type { Score } from '../../../src/score/score.ts';
import { openSixths } from './augmented-sixths.ts';
import { oneNoteChanges, withPitch } from './edits.ts';
import {
  beatAt,
  degree,
  fifths,
  harmonies,
  hasSeventh,
  isApplied,
  isDominant,
  isFull,
  isMinor,
  isSettled,
  leadingNote,
  nameAt,
  namesIn,
  nearest,
  notesOf,
  overLabels,
  renamed,
  tonicOf,
  weight,
} from './harmonic.ts';
import { ALL, following, type Plain, type PlainNote, phraseEndsBetween, sounding } from './plain.ts';
import type { Label, Piece, Place, Planter } from './planter.ts';
import type { Random } from './random.ts';

/** A note of the key counted in fifths from the tonic: 0 tonic, 1 dominant, -1 subdominant, 2 supertonic … */
function inKey(label: Label, place: number): string {
  return nameAt(fifths(tonicOf(label)) + place);
}

type Step = readonly [Label, Label];

/** Neighbouring labels of one key, no phrase end between them. */
function steps(plain: Plain, piece: Piece): readonly Step[] {
  const labels = harmonies(piece);
  return labels.slice(1).flatMap((next, i): Step[] => {
    const label = labels[i]!;
    const joined = label.until === next.at && label.key === next.key;
    return joined && !phraseEndsBetween(plain, label.at, next.at) ? [[label, next]] : [];
  });
}

/** The stretch sounds exactly this triad, root in the bass at its beginning. */
function isTriad(plain: Plain, label: Label, root: string, third: string, fifth: string): boolean {
  const names = namesIn(plain, label);
  return (
    isFull(plain, label.at) &&
    label.until - label.at >= beatAt(plain, label.at) &&
    sounding(plain, 'B', label.at)?.name === root &&
    names.has(third) &&
    [...names].every((name) => name === root || name === third || name === fifth)
  );
}

function pair([a, b]: Step): Place {
  return { at: a.at, until: b.until, voices: [] };
}

/** Every note of a label renamed by place in the key (counted in fifths from the tonic), the bass to the new root. */
function recast(
  piece: Piece,
  label: Label,
  root: number,
  to: Readonly<Record<number, number>>,
): Score | undefined {
  const tonic = fifths(tonicOf(label));
  return renamed(piece, label, (note) => {
    if (note.voice === 'B') return nameAt(tonic + root);
    const place = to[fifths(note.name) - tonic];
    return place === undefined ? undefined : nameAt(tonic + place);
  });
}

const isMajorTonic = (label: Label | undefined) =>
  label !== undefined && degree(label) === 'I' && !hasSeventh(label);
const isRootDominant = (label: Label | undefined) =>
  label !== undefined && degree(label) === 'V' && !isApplied(label) && label.bass === label.root;

/** A note that should move in one way, and the note that follows it. */
interface Motion {
  readonly note: PlainNote;
  readonly next: PlainNote;
}

/** The notes of this name that a chord ends with, each with the different note that follows it in its voice. */
function departures(plain: Plain, label: Label, name: string): Motion[] {
  return ALL.flatMap((voice) => {
    const note = sounding(plain, voice, label.until - 1);
    const next = note && following(plain, note);
    return note?.name === name && next !== undefined && next.at === label.until && next.name !== name
      ? [{ note, next }]
      : [];
  });
}

function moved({ note, next }: Motion): Place {
  return { at: note.at, until: next.until, voices: [note.voice] };
}

/** Changes of the note that follows a note of this name at a label's end. */
function spoil(name: (label: Label, next: Label) => string | undefined): Planter['tries'] {
  return (piece, random) => {
    const labels = harmonies(piece);
    const targets = new Set(
      labels.slice(1).flatMap((next, i) => {
        const wanted = name(labels[i]!, next);
        return wanted === undefined
          ? []
          : departures(piece.plain, labels[i]!, wanted).map((motion) => motion.next);
      }),
    );
    return oneNoteChanges(piece, random, { only: (note) => targets.has(note), pitches: 'chord' });
  };
}

const leadingNoteTo = (label: Label, next: Label) =>
  isDominant(label) && label.key === next.key && next.root === tonicOf(label) && !hasSeventh(next)
    ? leadingNote(label)
    : undefined;
const seventhTo = (label: Label, next: Label) =>
  hasSeventh(label) && label.root !== next.root ? notesOf(label)?.seventh : undefined;

export const PROGRESSIONS: readonly Planter[] = [
  {
    rule: 'stray-six-four',
    family: 'chords',
    definition:
      'a triad over its fifth, whose bass is reached and left by leap to other notes, between other chords',
    tries: (piece, random) =>
      overLabels(
        piece,
        random,
        (label) => !hasSeventh(label) && notesOf(label) !== undefined && label.quality !== 'diminished',
        (label) => renamed(piece, label, (note) => (note.voice === 'B' ? notesOf(label)!.fifth : undefined)),
      ),
    find: (plain, piece) => strayBasses(plain, piece),
  },
  {
    rule: 'weak-six-four',
    family: 'chords',
    definition:
      'tonic over the fifth of the key, reached from another bass note, then the dominant over the same bass on a stronger beat',
    tries: (piece, random) =>
      overLabels(
        piece,
        random,
        (label, next) => /^[Ii]$/.test(degree(label)) && isRootDominant(next) && label.key === next?.key,
        (label, next) => renamed(piece, label, (note) => (note.voice === 'B' ? next!.root : undefined)),
      ),
    find: (plain, piece) =>
      steps(plain, piece)
        .filter(
          ([a, b]) =>
            /^[Ii]$/.test(degree(a)) &&
            isRootDominant(b) &&
            weight(plain, a.at) < weight(plain, b.at) &&
            weight(plain, a.at) > 0 &&
            sounding(plain, 'B', a.at - 1)?.name !== b.root &&
            plain.voices.B.every((n) => n.at >= a.until || n.until <= a.at || n.name === b.root) &&
            [...namesIn(plain, a)].every((name) => Object.values(notesOf(a) ?? {}).includes(name)) &&
            namesIn(plain, a).has(a.root),
        )
        .map(pair),
  },
  {
    rule: 'backward-step',
    family: 'chords',
    definition:
      'in major, the key being settled, a dominant in root position, then the subdominant in root position, in one phrase',
    tries: (piece, random) =>
      overLabels(
        piece,
        random,
        (label, _next, previous) =>
          isMajorTonic(label) && isRootDominant(previous) && label.key === previous?.key,
        (label) => recast(piece, label, -1, { 4: -1, 1: 3 }),
      ),
    find: (plain, piece) =>
      steps(plain, piece)
        .filter(
          ([a, b]) =>
            isRootDominant(a) &&
            !isMinor(a) &&
            isSettled(piece, b) &&
            isTriad(plain, b, inKey(b, -1), inKey(b, 3), inKey(b, 0)) &&
            sounding(plain, 'B', a.until - 1)?.name === a.root,
        )
        .map(pair),
  },
  {
    rule: 'mediant-out-of-place',
    family: 'chords',
    definition:
      'in major, the key being settled, the mediant triad in root position, then the dominant in root position',
    tries: (piece, random) =>
      overLabels(
        piece,
        random,
        (label, next) => isMajorTonic(label) && isRootDominant(next) && label.key === next?.key,
        (label) => recast(piece, label, 4, { 0: 5 }),
      ),
    find: (plain, piece) =>
      steps(plain, piece)
        .filter(
          ([a, b]) =>
            !isMinor(a) &&
            isSettled(piece, a) &&
            isRootDominant(b) &&
            isTriad(plain, a, inKey(a, 4), inKey(a, 1), inKey(a, 5)),
        )
        .map(pair),
  },
  {
    rule: 'supertonic-out-of-place',
    family: 'chords',
    definition:
      'in major, the key being settled, the supertonic triad in root position, then the tonic triad in root position',
    tries: (piece, random) =>
      overLabels(
        piece,
        random,
        (label, next) =>
          isRootDominant(label) && isMajorTonic(next) && next?.bass === next?.root && label.key === next?.key,
        (label) => recast(piece, label, 2, { 1: -1, 5: 3 }),
      ),
    find: (plain, piece) =>
      steps(plain, piece)
        .filter(
          ([a, b]) =>
            !isMinor(a) &&
            isSettled(piece, a) &&
            isTriad(plain, a, inKey(a, 2), inKey(a, -1), inKey(a, 3)) &&
            isTriad(plain, b, inKey(b, 0), inKey(b, 4), inKey(b, 1)),
        )
        .map(pair),
    // Before a phrase's last chord it is a cadence that fails.
    alsoNamed: ['no-cadence'],
  },
  {
    rule: 'submediant-out-of-place',
    family: 'chords',
    definition:
      'in major, the key being settled, the subdominant in root position, then the submediant triad in root position',
    tries: (piece, random) =>
      overLabels(
        piece,
        random,
        (label, _next, previous) =>
          isMajorTonic(label) &&
          previous?.key === label.key &&
          degree(previous) === 'IV' &&
          previous.bass === previous.root,
        (label) => recast(piece, label, 3, { 1: 3 }),
      ),
    find: (plain, piece) =>
      steps(plain, piece)
        .filter(
          ([a, b]) =>
            !isMinor(b) &&
            isSettled(piece, b) &&
            degree(a) === 'IV' &&
            !isApplied(a) &&
            sounding(plain, 'B', a.until - 1)?.name === a.root &&
            isTriad(plain, b, inKey(b, 3), inKey(b, 0), inKey(b, 4)),
        )
        .map(pair),
  },
  {
    rule: 'unresolved-leading-note',
    family: 'chords',
    definition:
      'the leading note of a dominant goes neither up a semitone nor, in an inner voice, down a third, nor is it lowered, when the tonic follows',
    tries: spoil(leadingNoteTo),
    find: (plain, piece) =>
      steps(plain, piece).flatMap(([a, b]) => {
        const name = leadingNoteTo(a, b);
        return name === undefined
          ? []
          : departures(plain, a, name)
              .filter(({ note, next }) => next.midi !== note.midi + 1)
              // Lowered, it is the seventh of a new dominant.
              .filter(({ note, next }) => next.place !== note.place)
              .filter(
                ({ note, next }) => note.voice === 'S' || note.voice === 'B' || note.place - next.place !== 2,
              )
              .map(moved);
      }),
  },
  {
    rule: 'unresolved-seventh',
    family: 'chords',
    definition:
      'the seventh of a chord does not go down a step when the harmony changes (a 4/3 may rise by step)',
    tries: spoil(seventhTo),
    find: (plain, piece) =>
      steps(plain, piece).flatMap(([a, b]) => {
        const name = seventhTo(a, b);
        return name === undefined
          ? []
          : departures(plain, a, name)
              .filter(({ note, next }) => note.place - next.place !== 1)
              .filter(({ note, next }) => a.bass !== notesOf(a)?.fifth || next.place - note.place !== 1)
              .map(moved);
      }),
  },
  {
    rule: 'unresolved-augmented-sixth',
    family: 'chords',
    definition:
      'the upper note of an augmented sixth does not rise by a semitone, nor the lower one fall by one',
    tries: (piece, random) => augmentedSixths(piece, random),
    find: (plain) =>
      ALL.flatMap((upper, i) => ALL.slice(i + 1).flatMap((lower) => openSixths(plain, upper, lower))),
  },
  {
    rule: 'minor-scale-degrees',
    family: 'chords',
    definition: 'in minor the raised sixth degree goes down by step, not coming from the raised seventh',
    tries: (piece, random) =>
      overLabels(
        piece,
        random,
        (label) => isMinor(label) && !isApplied(label),
        (label) =>
          renamed(piece, label, (note) => (note.name === inKey(label, -4) ? inKey(label, 3) : undefined)),
      ),
    find: (plain, piece) =>
      harmonies(piece)
        .filter((label) => isMinor(label) && !isApplied(label))
        .flatMap((label) =>
          ALL.flatMap((voice) =>
            plain.voices[voice].flatMap((note) => {
              const before = plain.voices[voice][note.index - 1];
              const next = following(plain, note);
              if (note.at < label.at || note.until > label.until || note.name !== inKey(label, 3)) return [];
              if (next === undefined || note.place - next.place !== 1) return [];
              if (before?.name === inKey(label, 5) || next.name !== inKey(label, 1)) return [];
              return [{ at: note.at, until: next.until, voices: [voice] }];
            }),
          ),
        ),
  },
  {
    rule: 'unraised-leading-note',
    family: 'chords',
    definition:
      'in minor a phrase ends with dominant and tonic in root position, and the seventh degree is unraised',
    tries: (piece, random) =>
      overLabels(
        piece,
        random,
        (label) => isMinor(label) && isRootDominant(label),
        (label) =>
          renamed(piece, label, (note) => (note.name === leadingNote(label) ? inKey(label, -2) : undefined)),
      ),
    find: (plain, piece) =>
      steps(plain, piece)
        .filter(
          ([a, b]) =>
            isMinor(a) &&
            isRootDominant(a) &&
            degree(b) === 'i' &&
            b.bass === b.root &&
            phraseEndsBetween(plain, b.at, b.until) &&
            namesIn(plain, a).has(inKey(a, -2)) &&
            !namesIn(plain, a).has(leadingNote(a)),
        )
        .map(pair),
  },
];

function strayBasses(plain: Plain, piece: Piece): Place[] {
  const labels = harmonies(piece);
  return labels.flatMap((label, i) => {
    const notes = notesOf(label);
    const [before, after] = [labels[i - 1], labels[i + 1]];
    if (!notes || hasSeventh(label) || !before || !after || label.quality === 'diminished') return [];
    if (before.root === label.root || after.root === label.root) return [];
    if (phraseEndsBetween(plain, label.at - 1, label.at)) return [];
    const bass = plain.voices.B.filter((note) => note.at < label.until && note.until > label.at);
    const [first, last] = [bass[0], bass.at(-1)];
    if (!first || !last || bass.some((note) => note.name !== notes.fifth)) return [];
    const [from, to] = [plain.voices.B[first.index - 1], plain.voices.B[last.index + 1]];
    if (!from || !to || first.at < label.at || last.until > label.until) return [];
    // An octave down on the dominant, it is the cadential six-four.
    if (to.name === notes.fifth) return [];
    const isLeap = (a: PlainNote, b: PlainNote) => Math.abs(a.place - b.place) > 1;
    const bare = [...namesIn(plain, label)].every((name) => Object.values(notes).includes(name));
    return isLeap(from, first) &&
      isLeap(last, to) &&
      bare &&
      namesIn(plain, label).has(notes.root) &&
      namesIn(plain, label).has(notes.third)
      ? [{ at: label.at, until: label.until, voices: ['B'] as const }]
      : [];
  });
}

/** Subdominant sixths of minor before the dominant: the note that becomes the augmented sixth, and where it goes. */
function* augmentedSixths(piece: Piece, random: Random): Generator<Score> {
  const labels = harmonies(piece);
  for (const i of random.shuffled(labels.map((_, index) => index))) {
    const [label, next] = [labels[i]!, labels[i + 1]];
    if (!next || !isMinor(label) || degree(label) !== 'iv' || degree(next) !== 'V') continue;
    if (label.bass !== inKey(label, -4)) continue;
    const raised = nameAt(fifths(label.root) + 7);
    const altered = renamed(piece, label, (note) => (note.name === label.root ? raised : undefined));
    if (altered === undefined) continue;
    for (const { next: goal } of departures(piece.plain, label, label.root)) {
      for (const name of random.shuffled(Object.values(notesOf(next) ?? {}))) {
        if (name !== undefined && name !== next.root)
          yield withPitch(altered, goal, nearest(name, goal.pitch));
      }
    }
  }
}
