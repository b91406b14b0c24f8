/**
 * A score as bare notes, worked out here from the written events and nothing else, so that the plain definitions
 * share no code with the texture, the analysis or the rules.
 */
import type { Pitch } from '../../../src/score/pitch.ts';
import type { Bar, Score, VoiceName } from '../../../src/score/score.ts';
import type { Ticks } from '../../../src/score/time.ts';

export const QUARTER: Ticks = 10_080;
export const ALL: readonly VoiceName[] = ['S', 'A', 'T', 'B'];

/** A sound: a written note, or several tied ones. */
export interface PlainNote {
  readonly voice: VoiceName;
  /** Position in the voice. */
  readonly index: number;
  readonly at: Ticks;
  readonly until: Ticks;
  readonly pitch: Pitch;
  /** MIDI number; C4 is 60. */
  readonly midi: number;
  /** Staff places above C0; C4 is 28. */
  readonly place: number;
  /** `F#`, `Bb`. */
  readonly name: string;
  readonly fermata: boolean;
}

export interface Plain {
  readonly score: Score;
  readonly voices: Readonly<Record<VoiceName, readonly PlainNote[]>>;
  /** Every moment at which some voice begins or stops a note, in order. */
  readonly moments: readonly Ticks[];
  /** Every moment that is a beat of the metre (a crotchet in 4/4, a minim in 3/2). */
  readonly beats: readonly Ticks[];
  /** Where the sound under a fermata in the soprano stops. */
  readonly phraseEnds: readonly Ticks[];
  readonly end: Ticks;
}

const SEMITONES: Readonly<Record<string, number>> = { C: 0, D: 2, E: 4, F: 5, G: 7, A: 9, B: 11 };

export function midiOf(pitch: Pitch): number {
  return 12 * (pitch.octave + 1) + SEMITONES[pitch.step]! + pitch.alteration;
}

export function placeOf(pitch: Pitch): number {
  return 7 * pitch.octave + 'CDEFGAB'.indexOf(pitch.step);
}

export function nameOf(pitch: Pick<Pitch, 'step' | 'alteration'>): string {
  return pitch.step + (pitch.alteration > 0 ? '#' : 'b').repeat(Math.abs(pitch.alteration));
}

export function plainOf(score: Score): Plain {
  const voices = {
    S: notesOf(score, 'S'),
    A: notesOf(score, 'A'),
    T: notesOf(score, 'T'),
    B: notesOf(score, 'B'),
  };
  const last = score.bars.at(-1);
  const end = last === undefined ? 0 : last.at + last.duration;
  const moments = new Set<Ticks>();
  for (const voice of ALL) for (const note of voices[voice]) moments.add(note.at).add(note.until);
  return {
    score,
    voices,
    moments: [...moments].sort((a, b) => a - b),
    beats: score.bars.flatMap(beatsOf),
    phraseEnds: voices.S.filter((note) => note.fermata).map((note) => note.until),
    end,
  };
}

function beatsOf(bar: Bar): Ticks[] {
  const unit = (4 * QUARTER) / bar.metre.unit;
  const first = bar.at + ((unit - (bar.offset % unit)) % unit);
  const beats: Ticks[] = [];
  for (let at = first; at < bar.at + bar.duration; at += unit) beats.push(at);
  return beats;
}

function notesOf(score: Score, voice: VoiceName): PlainNote[] {
  const notes: PlainNote[] = [];
  let open: { at: Ticks; fermata: boolean } | undefined;
  for (const event of score.voices[voice]) {
    if (event.kind !== 'note') continue;
    open ??= { at: event.at, fermata: false };
    open.fermata ||= event.fermata === true;
    if (event.tied) continue;
    notes.push({
      voice,
      index: notes.length,
      at: open.at,
      until: event.at + event.duration,
      pitch: event.pitch,
      midi: midiOf(event.pitch),
      place: placeOf(event.pitch),
      name: nameOf(event.pitch),
      fermata: open.fermata,
    });
    open = undefined;
  }
  return notes;
}

/** The note a voice sounds at a moment. */
export function sounding(plain: Plain, voice: VoiceName, at: Ticks): PlainNote | undefined {
  const notes = plain.voices[voice];
  let low = 0;
  let high = notes.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (notes[middle]!.at <= at) low = middle;
    else high = middle - 1;
  }
  const note = notes[low];
  return note !== undefined && note.at <= at && at < note.until ? note : undefined;
}

/** The note that follows in the same voice without a break. */
export function following(plain: Plain, note: PlainNote): PlainNote | undefined {
  const next = plain.voices[note.voice][note.index + 1];
  return next !== undefined && next.at === note.until ? next : undefined;
}

/** True where a phrase ends under a fermata between two moments. */
export function phraseEndsBetween(plain: Plain, from: Ticks, to: Ticks): boolean {
  return plain.phraseEnds.some((end) => end > from && end <= to);
}

/** The bar a moment falls in. */
export function barOf(plain: Plain, at: Ticks): Bar | undefined {
  return plain.score.bars.findLast((bar) => bar.at <= at);
}
