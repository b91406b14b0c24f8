/**
 * The score as plain data: what is written, and nothing about how it is drawn or judged.
 * Build one with {@link buildScore}; never by hand, so that bars and voices always agree.
 */
import type { Pitch } from './pitch.ts';
import type { Metre, Ticks } from './time.ts';

/** The four voices from the top: soprano, alto, tenor, bass. */
export const VOICES = ['S', 'A', 'T', 'B'] as const;
export type VoiceName = (typeof VOICES)[number];
/** One thing for each voice. */
export type ByVoice<T> = Readonly<Record<VoiceName, T>>;

export const VOICE_WORDS: ByVoice<string> = { S: 'soprano', A: 'alto', T: 'tenor', B: 'bass' };

/** Makes one thing for each voice. */
export function byVoice<T>(make: (voice: VoiceName) => T): Record<VoiceName, T> {
  return { S: make('S'), A: make('A'), T: make('T'), B: make('B') };
}

/** What a written event may carry besides pitch and length. */
export interface EventMarks {
  /** A fermata stands over this note or rest. */
  readonly fermata?: true;
  /** Somebody said that a phrase ends with this note, or that none does, whatever fermata or long note there is. */
  readonly phrase?: 'ends' | 'goes on';
}

/** A written note; a sound held over a barline is two notes, the first of them `tied`. */
export interface Note extends EventMarks {
  readonly kind: 'note';
  readonly at: Ticks;
  readonly duration: Ticks;
  readonly pitch: Pitch;
  /** Tied to the note that follows in this voice, which has the same pitch. */
  readonly tied?: true;
  /** Lyric syllables under this note, first verse first. Kept for drawing and handing back. */
  readonly lyrics?: readonly string[];
  /** Grace notes before this note: drawn, never judged. */
  readonly grace?: readonly Pitch[];
  /** Notes that the source has in this voice besides this one, which was taken: told, never judged. */
  readonly beside?: readonly SpareNote[];
}

/** A note too many for its voice, which sounds while another note of it does. */
export interface SpareNote {
  readonly pitch: Pitch;
  /** How long after the beginning of the note that was taken. */
  readonly into: Ticks;
  readonly duration: Ticks;
}

/** A written rest: the voice is silent on purpose. */
export interface Rest extends EventMarks {
  readonly kind: 'rest';
  readonly at: Ticks;
  readonly duration: Ticks;
}

/** Not written yet. A gap never crosses a barline. */
export interface Gap {
  readonly kind: 'gap';
  readonly at: Ticks;
  readonly duration: Ticks;
}

export type VoiceEvent = Note | Rest | Gap;

/** A key signature: sharps positive, flats negative (-7 to 7), and the mode where the exercise states it. */
export interface KeySignature {
  readonly fifths: number;
  readonly mode?: 'major' | 'minor';
}

/** A voice whose written length in a bar does not fit the metre. */
export interface Misfit {
  readonly voice: VoiceName;
  /** What the voice wrote in this bar. */
  readonly written: Ticks;
  /** What the bar should hold. */
  readonly expected: Ticks;
}

export interface Bar {
  /** 0 for the first bar in the score, upbeat included. */
  readonly index: number;
  /** The number printed in the score: "0" for an upbeat, "1" for the first full bar, "12a" where a file says so. */
  readonly number: string;
  readonly at: Ticks;
  readonly duration: Ticks;
  /**
   * Where in a full bar this one begins: 0, but three beats for a one-beat upbeat in 4/4, and for the second
   * half of a bar that is split by a repeat or a line's end what the first half held.
   */
  readonly offset: Ticks;
  readonly metre: Metre;
  readonly key: KeySignature;
  /** Crotchets a minute in this bar; as in the bar before unless the exercise says otherwise, and undefined until it does. */
  readonly tempo?: number;
  readonly repeatStart?: true;
  readonly repeatEnd?: true;
  /** Numbers of the ending this bar belongs to, as printed: "1", "2", "1, 2". */
  readonly ending?: string;
  readonly misfits: readonly Misfit[];
}

/** Something the reader noticed and the person should know: a guess it made, a part it set aside. */
export interface ReaderRemark {
  readonly message: string;
  /** It says which voices were read and which were left out, so it is told before everything else. */
  readonly about?: 'voices';
  readonly bar?: string;
  readonly voice?: VoiceName;
  readonly line?: number;
  readonly column?: number;
}

/** Figures printed under the bass in the source, kept to be compared with the chords. */
export interface WrittenFigure {
  readonly at: Ticks;
  /** Figures from the top: `['6', '5']`, with `#`, `b` or `n` before a figure or alone. */
  readonly figures: readonly string[];
}

export interface Score {
  readonly title: string;
  /** Crotchets a minute at the beginning, where the exercise says so: the first bar's. */
  readonly tempo?: number;
  readonly bars: readonly Bar[];
  /** Each voice's events, in order, without holes, from 0 to the end of the last bar. */
  readonly voices: ByVoice<readonly VoiceEvent[]>;
  readonly figures?: readonly WrittenFigure[];
  /** What the reader noticed. Not part of the music: two scores are equal whatever their remarks. */
  readonly remarks: readonly ReaderRemark[];
}

/** The end of the last bar; 0 for an empty score. */
export function endOf(score: Score): Ticks {
  const last = score.bars.at(-1);
  return last ? last.at + last.duration : 0;
}
