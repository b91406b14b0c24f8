/**
 * What a MusicXML file says, as plain data in its own order: parts, their bars, and in each bar the notes with their
 * staff and voice number. Nothing is guessed here; which of it is soprano, alto, tenor and bass is settled later.
 */

import type { Pitch } from '../score/pitch.ts';
import type { KeySignature } from '../score/score.ts';
import type { Metre, Ticks } from '../score/time.ts';

/** A written note or rest; cue notes and those not printed are `hidden`: nothing is known of them but their place. */
export interface SourceNote {
  readonly kind: 'note' | 'rest' | 'hidden';
  /** From the beginning of the bar. */
  readonly at: Ticks;
  readonly duration: Ticks;
  /** Begins or ends between two ticks (an odd tuplet); `at` and `duration` are then rounded. */
  readonly inexact?: true;
  /** As it sounds: transposition is undone. */
  readonly pitch?: Pitch;
  /** A pitch our score cannot hold (a quarter tone, a triple sharp), as a person would say it; `pitch` is then the nearest. */
  readonly oddPitch?: string;
  /** From 1. */
  readonly staff: number;
  /** As numbered in the file; empty where it is not. */
  readonly voice: string;
  /** Belongs to the chord of the note before. */
  readonly chord?: true;
  readonly stem?: 'up' | 'down';
  readonly tieStart?: true;
  readonly tieStop?: true;
  readonly fermata?: true;
  /** Our own files say where a phrase ends, or that none does. */
  readonly phrase?: 'ends' | 'goes on';
  readonly lyrics?: readonly string[];
  /** Grace notes before this note, as they sound. */
  readonly grace?: readonly Pitch[];
  /** Notes that sound in the same line at once, of which this one was taken. */
  readonly beside?: readonly SourceNote[];
  /** A rest said to last for the whole bar. */
  readonly wholeBar?: true;
  readonly line: number;
  /** The element in the text of the file. */
  readonly span: Span;
  /** For a note of a chord: the chord's first note. */
  readonly head?: Span;
}

/** A stretch of the file's text: from behind an element's opening tag to behind its closing tag, counted from 0. */
export interface Span {
  readonly inside: number;
  readonly until: number;
}

export interface SourceFigure {
  readonly at: Ticks;
  readonly figures: readonly string[];
}

export interface SourceBar {
  /** As printed; empty where the file gives none. */
  readonly number: string;
  /** The bar is not counted: an upbeat, or the second half of a split bar. */
  readonly implicit: boolean;
  /** How far the file's cursor went: notes, rests, hidden ones and spaces alike. */
  readonly length: Ticks;
  readonly notes: readonly SourceNote[];
  readonly keys: readonly { readonly at: Ticks; readonly staff: number; readonly key: KeySignature }[];
  readonly metres: readonly { readonly at: Ticks; readonly metre: Metre | 'free' }[];
  /** Crotchets a minute, each from its moment on. */
  readonly tempos: readonly { readonly at: Ticks; readonly tempo: number }[];
  readonly figures: readonly SourceFigure[];
  /** Repeats with the moment of their barline. */
  readonly repeats: readonly { readonly at: Ticks; readonly direction: 'forward' | 'backward' }[];
  /** The ending this bar begins or continues, as printed. */
  readonly ending?: string;
  /** Moments at which a barline carries a fermata; the notes that end there have it. */
  readonly fermatas: readonly Ticks[];
}

export interface SourcePart {
  readonly id: string;
  /** As printed; may be empty. */
  readonly name: string;
  readonly staves: number;
  /** Staves for tablature or without pitch. */
  readonly unpitched: ReadonlyMap<number, 'tablature' | 'percussion'>;
  /** First clef of each staff: its sign and the octaves it shifts. */
  readonly clefs: ReadonlyMap<number, { readonly sign: string; readonly octaves: number }>;
  readonly bars: readonly SourceBar[];
}

export interface SourceScore {
  readonly title: string;
  /** Written by this program: what is not printed is not yet written, and every printed rest is a rest. */
  readonly explicitSilence: boolean;
  readonly parts: readonly SourcePart[];
  /** What was noticed while reading, one sentence each. */
  readonly remarks: readonly { readonly message: string; readonly bar?: string; readonly line?: number }[];
}
