/** One voice of the notation being read: its sounds, one after the other, into bars. */
import { capitalised } from '../english/words.ts';
import type { DraftEvent } from '../score/build.ts';
import { type Pitch, parsePitch } from '../score/pitch.ts';
import { beatLength, type Metre, scaleTicks, type Ticks } from '../score/time.ts';
import { isBarline, type Token, tokensOf } from './tokens.ts';

/**
 * The most characters, bars, notes and rests to a voice, complaints and beats to a sound that one text may have: far
 * above any exercise, and so low that a review of the longest takes less than two seconds of processor.
 */
export const NOTATION_LIMITS = {
  characters: 200_000,
  bars: 600,
  events: 1_000,
  problems: 50,
  beats: 64,
} as const;

/** What a voice asks of the text it stands in, and tells it. */
export interface TextAround {
  /** The line being read, from 1. */
  readonly line: number;
  metreOf(bar: number): Metre;
  /** What a bar should hold. */
  expected(bar: number): Ticks;
  /** Repeat marks of a bar, to be filled in. */
  barMarks(bar: number): { repeatStart?: boolean; repeatEnd?: boolean };
  /** Notes a complaint about the line being read. */
  problem(column: number, message: string): void;
}

interface SpannedEvent extends DraftEvent {
  readonly line: number;
  readonly column: number;
  readonly length: number;
}

type Draft = { -readonly [K in keyof SpannedEvent]: SpannedEvent[K] };

export interface VoiceBar {
  events: Draft[];
  /** What the events last together. */
  ticks: Ticks;
  closed: boolean;
}

/** How far a voice has come: the bar under way, from 0, and what it holds. */
export interface Position {
  readonly bar: number;
  readonly ticks: Ticks;
}

export class VoiceWriter {
  readonly bars: VoiceBar[] = [];
  private bar = 0;
  private octave: number | undefined;
  private appended = 0;
  private last: Draft | undefined;

  constructor(private readonly text: TextAround) {}

  /** Reads the rest of a line, from a column (0-based). */
  readLine(line: string, from: number): void {
    for (const [i, token] of tokensOf(line, from).entries()) {
      if (isBarline(token.text)) this.barline(token, i === 0);
      else this.item(token);
    }
    // A full bar at a line's end needs no barline to be full.
    const bar = this.bars[this.bar];
    if (bar && bar.ticks === this.text.expected(this.bar)) this.endBar(true);
  }

  position(): Position {
    return { bar: this.bar, ticks: this.bars[this.bar]?.ticks ?? 0 };
  }

  /** Bars begun so far. */
  barsWritten(): number {
    return this.bar + ((this.bars[this.bar]?.events.length ?? 0) > 0 ? 1 : 0);
  }

  /** Leaves gaps up to where the system begins. */
  catchUp(start: Position): void {
    if (this.bar < start.bar) {
      this.bar = start.bar;
      while (this.bars.length < start.bar) this.bars.push({ events: [], ticks: 0, closed: false });
    }
    const written = this.position();
    if (written.bar === start.bar && written.ticks < start.ticks) {
      const duration = start.ticks - written.ticks;
      this.append({ kind: 'gap', duration, line: this.text.line, column: 1, length: 0 });
    }
  }

  private barline(token: Token, first: boolean): void {
    const empty = (this.bars[this.bar]?.events.length ?? 0) === 0;
    if (token.text === '|:') {
      if (!empty) this.endBar(true);
      this.text.barMarks(this.bar).repeatStart = true;
      return;
    }
    const ended = empty && (first || token.text !== '|') ? this.bar - 1 : this.bar;
    if (token.text === ':|' && ended >= 0) this.text.barMarks(ended).repeatEnd = true;
    if (ended === this.bar) this.endBar(true);
  }

  private endBar(closed: boolean): void {
    const bar = this.currentBar();
    bar.closed = closed;
    if (this.bar + 1 >= NOTATION_LIMITS.bars) {
      this.text.problem(1, `More than ${NOTATION_LIMITS.bars} bars; the rest is not read.`);
      return;
    }
    this.bar++;
  }

  private currentBar(): VoiceBar {
    while (this.bars.length <= this.bar) this.bars.push({ events: [], ticks: 0, closed: false });
    return this.bars[this.bar]!;
  }

  private item(token: Token): void {
    if (token.text.startsWith('(')) {
      this.group(token);
      return;
    }
    const sound = soundOf(token.text);
    const suffix = this.suffix(token.text.slice(sound.length), token, sound.length);
    const duration = this.durationOf(suffix, token);
    this.sound({ text: sound, column: token.column }, duration, suffix, token.text.length);
  }

  /** A length in beats of the bar under way as ticks; a beat, with a complaint, where it cannot be had. */
  private durationOf(suffix: Suffix, token: Token): Ticks {
    const beat = beatLength(this.text.metreOf(this.bar));
    const ticks = scaleTicks(beat, suffix.numerator, suffix.denominator);
    if (ticks === undefined || ticks === 0) {
      this.text.problem(
        token.column,
        `The length of "${excerpt(token.text)}" is finer than can be counted; lengths such as *2, /2, /3, /4 or *3/2 were expected.`,
      );
      return beat;
    }
    if (ticks > NOTATION_LIMITS.beats * beat) {
      this.text.problem(
        token.column,
        `"${excerpt(token.text)}" is longer than ${NOTATION_LIMITS.beats} beats; a shorter length was expected.`,
      );
      return beat;
    }
    return ticks;
  }

  private group(token: Token): void {
    const close = token.text.lastIndexOf(')');
    if (close < 0) {
      this.text.problem(
        token.column,
        `The bracket "${excerpt(token.text.trim())}" is not closed; ")" was expected before the barline or the end of the line.`,
      );
    }
    const end = close < 0 ? token.text.length : close;
    const suffix = this.suffix(close < 0 ? '' : token.text.slice(close + 1), token, close + 1);
    if (suffix.fermata || suffix.tied) {
      this.text.problem(
        token.column + close + 1,
        '"!" and "_" belong to one note; they were expected inside the bracket.',
      );
    }
    const inner = tokensOf(token.text.slice(0, end), 1);
    const whole = this.durationOf(suffix, token);
    if (inner.length === 0) {
      this.text.problem(
        token.column,
        'The bracket is empty; at least one note was expected between "(" and ")".',
      );
      this.append({
        kind: 'gap',
        duration: whole,
        line: this.text.line,
        column: token.column,
        length: token.text.length,
      });
      return;
    }
    const share = scaleTicks(whole, 1, inner.length);
    if (share === undefined) {
      this.text.problem(
        token.column,
        `${inner.length} notes cannot share this length exactly; 2 to 10 notes (not 11 or 13) were expected.`,
      );
      this.append({
        kind: 'gap',
        duration: whole,
        line: this.text.line,
        column: token.column,
        length: token.text.length,
      });
      return;
    }
    for (const part of inner) {
      const column = token.column + part.column - 1;
      const sound = soundOf(part.text);
      const marks = this.suffix(part.text.slice(sound.length), { text: part.text, column }, sound.length);
      if (marks.length) {
        this.text.problem(
          column,
          `"${excerpt(part.text)}" has a length of its own; in a bracket the notes share the time equally, so none was expected.`,
        );
      }
      this.sound({ text: sound, column }, share, marks, part.text.length);
    }
  }

  private suffix(text: string, token: Token, offset: number): Suffix {
    let rest = text;
    let [numerator, denominator] = [1, 1];
    let [length, fermata, tied] = [false, false, false];
    let phrase: Suffix['phrase'];
    while (rest !== '') {
      const match = /^(?:\*(\d{1,5})(?:\/(\d{1,5}))?|\/(\d{1,5})|(!)|(_)|(')|(~))/.exec(rest);
      const values = match && [match[1], match[2], match[3]].map((v) => (v === undefined ? 1 : Number(v)));
      if (!match || values!.includes(0)) {
        this.text.problem(
          token.column + offset,
          `"${excerpt(rest)}" after "${excerpt(token.text.slice(0, offset))}" could not be read; a length (*2, /2, *3/2), "!" for a fermata, "_" for a tie, "'" for the end of a phrase or "~" where none ends was expected.`,
        );
        break;
      }
      if (match[4]) fermata = true;
      else if (match[5]) tied = true;
      else if (match[6]) phrase = 'ends';
      else if (match[7]) phrase = 'goes on';
      else {
        numerator *= values![0]!;
        denominator *= values![1]! * values![2]!;
        length = true;
      }
      offset += match[0].length;
      rest = rest.slice(match[0].length);
    }
    return { numerator, denominator, length, fermata, tied, ...(phrase === undefined ? {} : { phrase }) };
  }

  private sound(token: Token, duration: Ticks, suffix: Suffix, length: number): void {
    const place = { line: this.text.line, column: token.column, length };
    const { fermata } = suffix;
    const phrase = suffix.phrase === undefined ? {} : { phrase: suffix.phrase };
    switch (token.text) {
      case 'r':
        this.append({ kind: 'rest', duration, fermata, ...place });
        return;
      case '?':
        this.append({ kind: 'gap', duration, ...place });
        return;
      case '=':
        this.hold(token, duration, suffix, place);
        return;
    }
    const pitch = this.pitch(token);
    if (pitch === undefined) this.append({ kind: 'gap', duration, ...place });
    else this.append({ kind: 'note', duration, pitch, fermata, tied: suffix.tied, ...phrase, ...place });
  }

  private hold(
    token: Token,
    duration: Ticks,
    suffix: Suffix,
    place: { line: number; column: number; length: number },
  ): void {
    const bar = this.currentBar();
    const here = bar.events.at(-1);
    const before = here ?? this.last;
    if (before === undefined) {
      this.text.problem(
        token.column,
        '"=" holds the note before it, but no note stands before it; a note was expected.',
      );
      this.append({ kind: 'gap', duration, ...place });
    } else if (here !== undefined) {
      here.duration += duration;
      bar.ticks += duration;
      if (suffix.fermata) here.fermata = true;
      if (suffix.tied) here.tied = true;
      if (suffix.phrase !== undefined) here.phrase = suffix.phrase;
    } else {
      if (before.kind === 'note') before.tied = true;
      this.append({
        kind: before.kind,
        duration,
        ...(before.pitch ? { pitch: before.pitch } : {}),
        fermata: suffix.fermata,
        tied: suffix.tied,
        ...(suffix.phrase === undefined ? {} : { phrase: suffix.phrase }),
        ...place,
      });
    }
  }

  private pitch(token: Token): Pitch | undefined {
    const match = /^([A-G])(##|♯♯|bb|♭♭|[#♯b♭x]|)(\d?)$/.exec(token.text);
    if (!match) {
      this.text.problem(token.column, this.pitchComplaint(token.text));
      return undefined;
    }
    const octave = match[3] === '' ? this.octave : Number(match[3]);
    if (octave === undefined) {
      this.text.problem(
        token.column,
        `"${token.text}" has no octave number, and no note stands before it to take one from; one such as "${token.text}4" was expected.`,
      );
      return undefined;
    }
    this.octave = octave;
    return parsePitch(`${match[1]}${match[2]}${octave}`);
  }

  private pitchComplaint(text: string): string {
    if (text === '')
      return 'A length or mark stands here without a note; a note such as F#4 was expected before it.';
    const capital = capitalised(text);
    if (/^[A-G](##|bb|[#bx]|)\d?$/.test(capital)) {
      return `"${text}" begins with a small letter; note names are capitals here, and "${capital}" was expected.`;
    }
    if (/^H/i.test(text)) {
      return `"${excerpt(text)}" is not a note name here; B stands for B natural and Bb for B flat.`;
    }
    return `"${excerpt(text)}" could not be read; a note such as F#4, Bb3 or C5, a rest r, "?" for a beat not written yet, "=" to hold, or "|" was expected.`;
  }

  private append(event: Draft): void {
    this.appended++;
    if (this.appended === NOTATION_LIMITS.events + 1) {
      this.text.problem(
        event.column,
        `More than ${NOTATION_LIMITS.events.toLocaleString('en-GB')} notes and rests in one voice; the rest is not read. Split the text into shorter ones.`,
      );
    }
    if (this.appended > NOTATION_LIMITS.events) return;
    const bar = this.currentBar();
    bar.events.push(event);
    bar.ticks += event.duration;
    this.last = event;
  }
}

interface Suffix {
  readonly numerator: number;
  readonly denominator: number;
  /** A length was written. */
  readonly length: boolean;
  readonly fermata: boolean;
  readonly tied: boolean;
  readonly phrase?: 'ends' | 'goes on';
}

/** What stands before a length or mark. */
function soundOf(text: string): string {
  const end = text.search(/[*/!_'~]/);
  return end < 0 ? text : text.slice(0, end);
}

/** A piece of the text for a complaint, cut where it is long. */
export function excerpt(text: string): string {
  return text.length > 24 ? `${text.slice(0, 24)}…` : text;
}
