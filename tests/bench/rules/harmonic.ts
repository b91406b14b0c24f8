/** What the plain definitions ask of the published analysis: the notes of a label, and who sings them. */
import type { NoteName, Pitch } from '../../../src/score/pitch.ts';
import type { Score, VoiceName } from '../../../src/score/score.ts';
import type { Ticks } from '../../../src/score/time.ts';
import { isSingable, withPitch } from './edits.ts';
import { ALL, barOf, midiOf, nameOf, type Plain, type PlainNote, QUARTER, sounding } from './plain.ts';
import type { Label, Piece } from './planter.ts';
import type { Random } from './random.ts';

const LETTERS = 'FCGDAEB';

/** Place on the line of fifths, C = 0. */
export function fifths(name: string): number {
  return LETTERS.indexOf(name[0]!) - 1 + 7 * (name.split('#').length - name.split('b').length);
}

export function nameAt(place: number): string {
  const letter = LETTERS[(((place + 1) % 7) + 7) % 7]!;
  const sharps = Math.floor((place + 1) / 7);
  return letter + (sharps > 0 ? '#' : 'b').repeat(Math.abs(sharps));
}

function noteOf(name: string): NoteName {
  return {
    step: name[0] as NoteName['step'],
    alteration: name.split('#').length - name.split('b').length,
  };
}

export interface Triad {
  readonly root: string;
  readonly third: string;
  readonly fifth: string;
  readonly seventh: string | undefined;
}

const THIRDS: Readonly<Record<string, number>> = { major: 4, minor: -3, diminished: -3, augmented: 4 };
const FIFTHS: Readonly<Record<string, number>> = { major: 1, minor: 1, diminished: -6, augmented: 8 };

/** The figure without its applied part: `V6/5` of `V6/5/V`. */
function ownFigure(label: Label): string {
  return label.figure.replace(/\/[#b]*[ivIV]+[o%ø+]?.*$/, '');
}

export function isApplied(label: Label): boolean {
  return ownFigure(label) !== label.figure;
}

export function hasSeventh(label: Label): boolean {
  return /7|6\/5|4\/3|2/.test(ownFigure(label));
}

/** The notes of a label, spelt; undefined for what is no plain triad or seventh chord. */
export function notesOf(label: Label): Triad | undefined {
  const third = THIRDS[label.quality];
  const fifth = FIFTHS[label.quality];
  if (third === undefined || fifth === undefined || !/^[A-G][#b]*$/.test(label.root)) return undefined;
  const root = fifths(label.root);
  const seventh = sevenths(label);
  return {
    root: label.root,
    third: nameAt(root + third),
    fifth: nameAt(root + fifth),
    seventh: seventh === undefined ? undefined : nameAt(root + seventh),
  };
}

function sevenths(label: Label): number | undefined {
  if (!hasSeventh(label)) return undefined;
  if (/maj/.test(label.figure)) return 5;
  return label.quality === 'diminished' && !/[ø%]/.test(label.figure) ? -9 : -2;
}

/** The roman part of the figure: `V` of `V6/5`, `viio` of `viio6`. */
export function degree(label: Label): string {
  return /^[#b]*[ivIV]+[oø%+]?/.exec(label.figure)?.[0] ?? '';
}

export function tonicOf(label: Label): string {
  return label.key[0]!.toUpperCase() + label.key.slice(1);
}

export function isMinor(label: Label): boolean {
  return label.key[0] === label.key[0]!.toLowerCase();
}

/** The leading note of the label's own key. */
export function leadingNote(label: Label): string {
  return nameAt(fifths(tonicOf(label)) + 5);
}

/** True for V, V7, viio and viio7 of the key itself, in any inversion. */
export function isDominant(label: Label): boolean {
  return !isApplied(label) && /^(V|viio|viiø|vii%)(?![iI])/.test(label.figure);
}

/** Neighbouring labels that name the same chord, made one. */
export function harmonies(piece: Piece): readonly Label[] {
  const merged: Label[] = [];
  for (const label of piece.labels) {
    const last = merged.at(-1);
    if (
      last !== undefined &&
      last.until === label.at &&
      last.root === label.root &&
      last.quality === label.quality &&
      last.key === label.key &&
      hasSeventh(last) === hasSeventh(label)
    )
      merged[merged.length - 1] = { ...last, until: label.until };
    else merged.push(label);
  }
  return merged;
}

/**
 * The key is settled where a label stands: the two harmonies before it and the two after it are in the same key, and
 * so does the piece end. Elsewhere a changed chord may be heard as a turn to another key, and be no fault there.
 */
export function isSettled(piece: Piece, label: Label): boolean {
  const labels = harmonies(piece);
  const i = labels.findIndex(({ at }) => at === label.at);
  const around = labels.slice(Math.max(0, i - 2), i + 3);
  return labels.at(-1)?.key === label.key && around.every(({ key }) => key === label.key);
}

/** All notes that sound in a stretch, in part or whole. */
function notesIn(plain: Plain, at: Ticks, until: Ticks): PlainNote[] {
  return ALL.flatMap((voice) => plain.voices[voice].filter((note) => note.at < until && note.until > at));
}

/** The note names that sound in a stretch. */
export function namesIn(plain: Plain, { at, until }: { at: Ticks; until: Ticks }): Set<string> {
  return new Set(notesIn(plain, at, until).map((note) => note.name));
}

/** All four voices sing at this moment. */
export function isFull(plain: Plain, at: Ticks): boolean {
  return ALL.every((voice) => sounding(plain, voice, at) !== undefined);
}

export function beatAt(plain: Plain, at: Ticks): Ticks {
  return (4 * QUARTER) / (barOf(plain, at)?.metre.unit ?? 4);
}

/** 3 the first beat, 2 the third of four, 1 another beat, 0 off the beat. */
export function weight(plain: Plain, at: Ticks): 0 | 1 | 2 | 3 {
  const bar = barOf(plain, at);
  if (bar === undefined) return 0;
  const into = at - bar.at + bar.offset;
  const beat = beatAt(plain, at);
  if (into === 0) return 3;
  if (into % beat !== 0) return 0;
  return bar.metre.beats % 4 === 0 && into === 2 * beat ? 2 : 1;
}

/** The pitch of this name nearest to another pitch. */
export function nearest(name: string, to: Pitch): Pitch {
  const note = noteOf(name);
  const around = [-1, 0, 1].map((by) => ({ ...note, octave: to.octave + by }));
  return around.reduce((best, pitch) =>
    Math.abs(midiOf(pitch) - midiOf(to)) < Math.abs(midiOf(best) - midiOf(to)) ? pitch : best,
  );
}

/**
 * The score with the notes of a stretch renamed: each note name by the function, to the nearest pitch of its new name.
 * Undefined where a note to be changed reaches beyond the stretch or a voice could not sing the new one.
 */
export function renamed(
  { score, plain }: Piece,
  { at, until }: { at: Ticks; until: Ticks },
  rename: (note: PlainNote) => string | undefined,
): Score | undefined {
  let altered = score;
  for (const note of notesIn(plain, at, until)) {
    const name = rename(note);
    if (name === undefined || name === note.name) continue;
    if (note.at < at || note.until > until) return undefined;
    const pitch = nearest(name, note.pitch);
    if (!isSingable(note.voice, pitch)) return undefined;
    altered = withPitch(altered, note, pitch);
  }
  return altered === score ? undefined : altered;
}

/** Tries a change on each label that is wanted, in an order of chance. */
export function* overLabels(
  piece: Piece,
  random: Random,
  wanted: (label: Label, next: Label | undefined, previous: Label | undefined) => boolean,
  change: (label: Label, next: Label | undefined, previous: Label | undefined) => Score | undefined,
): Generator<Score> {
  const labels = harmonies(piece);
  const places = labels.map((_, i) => i).filter((i) => wanted(labels[i]!, labels[i + 1], labels[i - 1]));
  for (const i of random.shuffled(places)) {
    const score = change(labels[i]!, labels[i + 1], labels[i - 1]);
    if (score !== undefined) yield score;
  }
}

/** Pairs of voices that sound this name at the same time within a stretch, each note at least half a beat long. */
export function doublings(
  plain: Plain,
  { at, until }: { at: Ticks; until: Ticks },
  name: string,
): { at: Ticks; until: Ticks; voices: VoiceName[]; notes: PlainNote[] }[] {
  const half = beatAt(plain, at) / 2;
  const notes = notesIn(plain, at, until).filter((note) => note.name === name);
  return notes.flatMap((a, i) =>
    notes.slice(i + 1).flatMap((b) => {
      const from = Math.max(a.at, b.at, at);
      const to = Math.min(a.until, b.until, until);
      return a.voice !== b.voice && to - from >= half
        ? [{ at: from, until: to, voices: [a.voice, b.voice], notes: [a, b] }]
        : [];
    }),
  );
}

export { nameOf };
