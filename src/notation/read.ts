/**
 * Reads the compact text notation.
 *
 * ```
 * text    = { line }
 * line    = blank | "#" remark | header | voice
 * header  = ("title" | "key" | "metre" | "tempo" | "upbeat" | "bar" | "ending") ":" value
 * voice   = ("S" | "A" | "T" | "B") ":" { item | barline }
 * barline = "|" | "||" | "|:" | ":|"
 * item    = sound { length | "!" | "_" }
 * sound   = pitch | "r" | "?" | "=" | "(" { (pitch | "r" | "?" | "=") { "!" | "_" } } ")"
 * pitch   = letter [ "#" | "##" | "b" | "bb" ] [ octave ]
 * length  = "*" number [ "/" number ] | "/" number
 * ```
 *
 * - One sound is one beat, the beat being the metre's lower figure. `*2` makes it two beats, `/2` half a beat,
 *   `*3/2` one and a half. The sounds in a bracket share one beat equally, or as many as its length says: `(C5 D5 E5)*2`.
 * - An octave left out is that of the voice's last written note. Accidentals are always written: `F` is F natural.
 * - `=` holds the sound before it; after a barline it is tied to it. `_` ties a note to the next one.
 * - `r` is a rest, `?` a beat not written yet, `!` a fermata.
 * - Lines of one voice follow on from each other. A new system begins where a letter comes round again; its voices
 *   begin where the voice of its first line stands, and a voice that lags has gaps up to there.
 * - `key` and `metre` between systems hold from the next bar on; `upbeat`, `bar` and `ending` speak of the next bar only
 *   (`upbeat: 1` makes it one beat long).
 */
import { buildScore, type DraftBar, type DraftEvent } from '../score/build.ts';
import { type Pitch, parsePitch } from '../score/pitch.ts';
import { type KeySignature, type Score, VOICES, type VoiceName } from '../score/score.ts';
import { barLength, beatLength, type Metre, scaleTicks, type Ticks } from '../score/time.ts';
import {
  HEADER_EXPECTS,
  HEADER_NAMES,
  type HeaderName,
  parseBeats,
  parseKeySignature,
  parseMetre,
  parseTempo,
} from './headers.ts';
import { isBarline, type Token, tokensOf } from './tokens.ts';

/** Something that could not be read, and where. Line and column count from 1. */
export interface Problem {
  readonly message: string;
  readonly line: number;
  readonly column: number;
}

/** Where in the text a note or rest stands. */
export interface Span {
  readonly voice: VoiceName;
  readonly at: Ticks;
  readonly line: number;
  readonly column: number;
  readonly length: number;
}

export interface ExtraHeader {
  readonly name: string;
  readonly value: string;
  readonly line: number;
}

export interface NotationReading {
  /** What could be read; where something could not, a gap of one beat stands in its place. */
  readonly score: Score;
  /** Empty where all was read. In the order of the text. */
  readonly problems: readonly Problem[];
  /** Headers named in `extraHeaders`, as written. */
  readonly headers: readonly ExtraHeader[];
  readonly spans: readonly Span[];
}

export interface NotationOptions {
  /** Names of headers that a file of a kindred sort (a brief) may carry besides the notation's own. */
  readonly extraHeaders?: readonly string[];
}

/** The most characters, bars and complaints one text may have. */
export const NOTATION_LIMITS = { characters: 500_000, bars: 2_000, problems: 50, beats: 64 } as const;

/** Reads a text whole: it never throws, and goes on after each thing it cannot read. */
export function readNotation(text: string, options: NotationOptions = {}): NotationReading {
  return new Reader(options.extraHeaders ?? []).read(text);
}

interface SpannedEvent extends DraftEvent {
  readonly line: number;
  readonly column: number;
  readonly length: number;
}

type Draft = { -readonly [K in keyof SpannedEvent]: SpannedEvent[K] };

interface VoiceBar {
  events: Draft[];
  closed: boolean;
}

/** How far a voice has come. `bars[bar]` is being written. */
interface VoiceState {
  readonly bars: VoiceBar[];
  bar: number;
  octave: number | undefined;
}

interface BarHeaders {
  metre?: Metre;
  key?: KeySignature;
  upbeat?: Ticks;
  number?: string;
  ending?: string;
  repeatStart?: boolean;
  repeatEnd?: boolean;
}

interface Position {
  readonly bar: number;
  readonly ticks: Ticks;
}

class Reader {
  private readonly problems: Problem[] = [];
  private readonly headers: ExtraHeader[] = [];
  private readonly barHeaders: BarHeaders[] = [];
  private readonly voices: Record<VoiceName, VoiceState>;
  private title = '';
  private tempo: number | undefined;
  private line = 1;
  /** Voices with a line in the system being read, and the voice of the last line. */
  private readonly inSystem = new Set<VoiceName>();
  private lastVoice: VoiceName | undefined;
  private systemStart: Position = { bar: 0, ticks: 0 };

  constructor(private readonly extraHeaders: readonly string[]) {
    const empty = (): VoiceState => ({ bars: [], bar: 0, octave: undefined });
    this.voices = { S: empty(), A: empty(), T: empty(), B: empty() };
  }

  read(text: string): NotationReading {
    if (text.length > NOTATION_LIMITS.characters) {
      this.problem(
        1,
        `The text is ${text.length} characters long; at most ${NOTATION_LIMITS.characters} can be read. Is it the right file?`,
      );
    } else {
      const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\r|\n/);
      for (const [i, line] of lines.entries()) {
        this.line = i + 1;
        this.readLine(line);
      }
    }
    return this.finish();
  }

  private readLine(line: string): void {
    const trimmed = line.trim();
    if (trimmed === '' || trimmed.startsWith('#')) return;
    const match = /^(\s*)([A-Za-z][A-Za-z -]*?)\s*:/.exec(line);
    const column = line.length - line.trimStart().length + 1;
    if (!match) {
      this.problem(
        column,
        `This line begins with "${excerpt(trimmed)}"; a voice (S:, A:, T: or B:) or a header such as "key: G major" was expected.`,
      );
      return;
    }
    const name = match[2]!;
    const after = match[0].length;
    const voice = VOICES.find((v) => v === name);
    if (voice !== undefined) this.readVoice(voice, line, after);
    else this.readHeader(name, line.slice(after).trim(), column);
  }

  private readHeader(written: string, value: string, column: number): void {
    const name = written.toLowerCase();
    if (this.extraHeaders.includes(name)) {
      this.headers.push({ name, value, line: this.line });
      return;
    }
    const header = HEADER_NAMES.find((known) => known === name);
    if (header === undefined) {
      const known = [...HEADER_NAMES, ...this.extraHeaders].map((h) => `${h}:`).join(', ');
      this.problem(
        column,
        `"${excerpt(written)}:" is not known here; a voice (S:, A:, T: or B:, in capitals) or one of ${known} was expected.`,
      );
      return;
    }
    if (!this.takeHeader(header, value)) {
      this.problem(
        column,
        `"${header}: ${excerpt(value)}" could not be read; after "${header}:" ${HEADER_EXPECTS[header]} was expected.`,
      );
    }
  }

  private takeHeader(header: HeaderName, value: string): boolean {
    if (header === 'title') {
      this.title = value.replace(/\s+/g, ' ');
      return true;
    }
    if (header === 'tempo') {
      const tempo = parseTempo(value);
      if (tempo !== undefined) this.tempo = tempo;
      return tempo !== undefined;
    }
    const next = this.nextBarHeaders();
    switch (header) {
      case 'key': {
        const key = parseKeySignature(value);
        if (key !== undefined) next.key = key;
        return key !== undefined;
      }
      case 'metre': {
        const metre = parseMetre(value);
        if (metre !== undefined) next.metre = metre;
        return metre !== undefined;
      }
      case 'upbeat': {
        const beats = parseBeats(value);
        const metre = this.metreOf(this.barHeaders.indexOf(next));
        const ticks = beats && scaleTicks(beatLength(metre), beats.numerator, beats.denominator);
        if (ticks === undefined || ticks >= barLength(metre)) return false;
        next.upbeat = ticks;
        return true;
      }
      case 'bar':
        if (!/^[0-9A-Za-z.-]{1,12}$/.test(value)) return false;
        next.number = value;
        return true;
      case 'ending':
        if (!/^\d{1,2}(\s*,\s*\d{1,2})*$/.test(value)) return false;
        next.ending = value;
        return true;
    }
  }

  /** What is to be said of the bar that follows everything written so far; a bar under way counts as written. */
  private nextBarHeaders(): BarHeaders {
    const bar = Math.max(...VOICES.map((voice) => this.barsWritten(voice)));
    this.inSystem.clear();
    this.lastVoice = undefined;
    this.systemStart = { bar, ticks: 0 };
    return this.headersOf(bar);
  }

  private barsWritten(voice: VoiceName): number {
    const state = this.voices[voice];
    return state.bar + ((state.bars[state.bar]?.events.length ?? 0) > 0 ? 1 : 0);
  }

  private headersOf(bar: number): BarHeaders {
    while (this.barHeaders.length <= bar) this.barHeaders.push({});
    return this.barHeaders[bar]!;
  }

  private metreOf(bar: number): Metre {
    for (let i = Math.min(bar, this.barHeaders.length - 1); i >= 0; i--) {
      const metre = this.barHeaders[i]?.metre;
      if (metre) return metre;
    }
    return { beats: 4, unit: 4 };
  }

  private keyOf(bar: number): KeySignature {
    for (let i = Math.min(bar, this.barHeaders.length - 1); i >= 0; i--) {
      const key = this.barHeaders[i]?.key;
      if (key) return key;
    }
    return { fifths: 0 };
  }

  private readVoice(voice: VoiceName, line: string, from: number): void {
    const state = this.voices[voice];
    if (this.inSystem.has(voice) && this.lastVoice !== voice) {
      this.inSystem.clear();
      this.systemStart = this.positionOf(voice);
    }
    this.inSystem.add(voice);
    this.lastVoice = voice;
    this.catchUp(voice, this.systemStart);
    const tokens = tokensOf(line, from);
    for (const [i, token] of tokens.entries()) {
      if (isBarline(token.text)) this.barline(state, token, i === 0);
      else this.item(state, token);
    }
    // A full bar at a line's end needs no barline to be full.
    const bar = state.bars[state.bar];
    if (bar && lengthOf(bar) === this.expected(state.bar)) this.endBar(state, true);
  }

  private expected(bar: number): Ticks {
    return this.barHeaders[bar]?.upbeat ?? barLength(this.metreOf(bar));
  }

  private positionOf(voice: VoiceName): Position {
    const state = this.voices[voice];
    const bar = state.bars[state.bar];
    return { bar: state.bar, ticks: bar ? lengthOf(bar) : 0 };
  }

  /** Leaves gaps up to where the system begins. */
  private catchUp(voice: VoiceName, start: Position): void {
    const state = this.voices[voice];
    if (state.bar < start.bar) {
      state.bar = start.bar;
      while (state.bars.length < start.bar) state.bars.push({ events: [], closed: false });
    }
    const written = this.positionOf(voice);
    if (written.bar === start.bar && written.ticks < start.ticks) {
      this.append(state, {
        kind: 'gap',
        duration: start.ticks - written.ticks,
        line: this.line,
        column: 1,
        length: 0,
      });
    }
  }

  private barline(state: VoiceState, token: Token, first: boolean): void {
    const empty = (state.bars[state.bar]?.events.length ?? 0) === 0;
    if (token.text === '|:') {
      if (!empty) this.endBar(state, true);
      this.headersOf(state.bar).repeatStart = true;
      return;
    }
    const ended = empty && (first || token.text !== '|') ? state.bar - 1 : state.bar;
    if (token.text === ':|' && ended >= 0) this.headersOf(ended).repeatEnd = true;
    if (ended === state.bar) this.endBar(state, true);
  }

  private endBar(state: VoiceState, closed: boolean): void {
    const bar = this.currentBar(state);
    bar.closed = closed;
    if (state.bar + 1 >= NOTATION_LIMITS.bars) {
      this.problem(1, `More than ${NOTATION_LIMITS.bars} bars; the rest is not read.`);
      return;
    }
    state.bar++;
  }

  private currentBar(state: VoiceState): VoiceBar {
    while (state.bars.length <= state.bar) state.bars.push({ events: [], closed: false });
    return state.bars[state.bar]!;
  }

  private item(state: VoiceState, token: Token): void {
    if (token.text.startsWith('(')) {
      this.group(state, token);
      return;
    }
    const match = /^([^*/!_]+|)(.*)$/.exec(token.text)!;
    const suffix = this.suffix(match[2]!, token, match[1]!.length);
    const duration = this.durationOf(state, suffix, token);
    this.sound(state, { text: match[1]!, column: token.column }, duration, suffix, token.text.length);
  }

  /** A length in beats of the bar under way as ticks; a beat, with a complaint, where it cannot be had. */
  private durationOf(state: VoiceState, suffix: Suffix, token: Token): Ticks {
    const beat = beatLength(this.metreOf(state.bar));
    const ticks = scaleTicks(beat, suffix.numerator, suffix.denominator);
    if (ticks === undefined || ticks === 0) {
      this.problem(
        token.column,
        `The length of "${excerpt(token.text)}" is finer than can be counted; lengths such as *2, /2, /3, /4 or *3/2 were expected.`,
      );
      return beat;
    }
    if (ticks > NOTATION_LIMITS.beats * beat) {
      this.problem(
        token.column,
        `"${excerpt(token.text)}" is longer than ${NOTATION_LIMITS.beats} beats; a shorter length was expected.`,
      );
      return beat;
    }
    return ticks;
  }

  private group(state: VoiceState, token: Token): void {
    const close = token.text.lastIndexOf(')');
    if (close < 0) {
      this.problem(
        token.column,
        `The bracket "${excerpt(token.text.trim())}" is not closed; ")" was expected before the barline or the end of the line.`,
      );
    }
    const end = close < 0 ? token.text.length : close;
    const suffix = this.suffix(close < 0 ? '' : token.text.slice(close + 1), token, close + 1);
    if (suffix.fermata || suffix.tied) {
      this.problem(
        token.column + close + 1,
        '"!" and "_" belong to one note; they were expected inside the bracket.',
      );
    }
    const inner = tokensOf(token.text.slice(0, end), 1);
    const whole = this.durationOf(state, suffix, token);
    if (inner.length === 0) {
      this.problem(token.column, 'The bracket is empty; at least one note was expected between "(" and ")".');
      this.append(state, {
        kind: 'gap',
        duration: whole,
        line: this.line,
        column: token.column,
        length: token.text.length,
      });
      return;
    }
    const share = scaleTicks(whole, 1, inner.length);
    if (share === undefined) {
      this.problem(
        token.column,
        `${inner.length} notes cannot share this length exactly; 2 to 10 notes (not 11 or 13) were expected.`,
      );
      this.append(state, {
        kind: 'gap',
        duration: whole,
        line: this.line,
        column: token.column,
        length: token.text.length,
      });
      return;
    }
    for (const part of inner) {
      const column = token.column + part.column - 1;
      const match = /^([^*/!_]+|)(.*)$/.exec(part.text)!;
      const marks = this.suffix(match[2]!, { text: part.text, column }, match[1]!.length);
      if (marks.length) {
        this.problem(
          column,
          `"${excerpt(part.text)}" has a length of its own; in a bracket the notes share the time equally, so none was expected.`,
        );
      }
      this.sound(state, { text: match[1]!, column }, share, marks, part.text.length);
    }
  }

  private suffix(text: string, token: Token, offset: number): Suffix {
    let rest = text;
    let [numerator, denominator] = [1, 1];
    let [length, fermata, tied] = [false, false, false];
    while (rest !== '') {
      const match = /^(?:\*(\d{1,5})(?:\/(\d{1,5}))?|\/(\d{1,5})|(!)|(_))/.exec(rest);
      const values = match && [match[1], match[2], match[3]].map((v) => (v === undefined ? 1 : Number(v)));
      if (!match || values!.includes(0)) {
        this.problem(
          token.column + offset,
          `"${excerpt(rest)}" after "${excerpt(token.text.slice(0, offset))}" could not be read; a length (*2, /2, *3/2), "!" for a fermata or "_" for a tie was expected.`,
        );
        break;
      }
      if (match[4]) fermata = true;
      else if (match[5]) tied = true;
      else {
        numerator *= values![0]!;
        denominator *= values![1]! * values![2]!;
        length = true;
      }
      offset += match[0].length;
      rest = rest.slice(match[0].length);
    }
    return { numerator, denominator, length, fermata, tied };
  }

  private sound(state: VoiceState, token: Token, duration: Ticks, suffix: Suffix, length: number): void {
    const place = { line: this.line, column: token.column, length };
    const fermata = suffix.fermata;
    switch (token.text) {
      case 'r':
        this.append(state, { kind: 'rest', duration, fermata, ...place });
        return;
      case '?':
        this.append(state, { kind: 'gap', duration, ...place });
        return;
      case '=':
        this.hold(state, token, duration, suffix, place);
        return;
    }
    const pitch = this.pitch(state, token);
    if (pitch === undefined) this.append(state, { kind: 'gap', duration, ...place });
    else this.append(state, { kind: 'note', duration, pitch, fermata, tied: suffix.tied, ...place });
  }

  private hold(
    state: VoiceState,
    token: Token,
    duration: Ticks,
    suffix: Suffix,
    place: { line: number; column: number; length: number },
  ): void {
    const here = this.currentBar(state).events.at(-1);
    const before = here ?? lastEvent(state);
    if (before === undefined) {
      this.problem(
        token.column,
        '"=" holds the note before it, but no note stands before it; a note was expected.',
      );
      this.append(state, { kind: 'gap', duration, ...place });
    } else if (here !== undefined) {
      here.duration += duration;
      if (suffix.fermata) here.fermata = true;
      if (suffix.tied) here.tied = true;
    } else {
      if (before.kind === 'note') before.tied = true;
      this.append(state, {
        kind: before.kind,
        duration,
        ...(before.pitch ? { pitch: before.pitch } : {}),
        fermata: suffix.fermata,
        tied: suffix.tied,
        ...place,
      });
    }
  }

  private pitch(state: VoiceState, token: Token): Pitch | undefined {
    const match = /^([A-G])(##|♯♯|bb|♭♭|[#♯b♭x]|)(\d?)$/.exec(token.text);
    if (!match) {
      this.problem(token.column, this.pitchComplaint(token.text));
      return undefined;
    }
    const octave = match[3] === '' ? state.octave : Number(match[3]);
    if (octave === undefined) {
      this.problem(
        token.column,
        `"${token.text}" has no octave number, and no note stands before it to take one from; one such as "${token.text}4" was expected.`,
      );
      return undefined;
    }
    state.octave = octave;
    return parsePitch(`${match[1]}${match[2]}${octave}`);
  }

  private pitchComplaint(text: string): string {
    if (text === '')
      return 'A length or mark stands here without a note; a note such as F#4 was expected before it.';
    const capital = text[0]!.toUpperCase() + text.slice(1);
    if (/^[A-G](##|bb|[#bx]|)\d?$/.test(capital)) {
      return `"${text}" begins with a small letter; note names are capitals here, and "${capital}" was expected.`;
    }
    if (/^H/i.test(text)) {
      return `"${excerpt(text)}" is not a note name here; B stands for B natural and Bb for B flat.`;
    }
    return `"${excerpt(text)}" could not be read; a note such as F#4, Bb3 or C5, a rest r, "?" for a beat not written yet, "=" to hold, or "|" was expected.`;
  }

  private append(state: VoiceState, event: Draft): void {
    this.currentBar(state).events.push(event);
  }

  private problem(column: number, message: string): void {
    if (this.problems.length < NOTATION_LIMITS.problems)
      this.problems.push({ message, line: this.line, column });
    else if (this.problems.length === NOTATION_LIMITS.problems) {
      this.problems.push({
        message: 'There are more problems after this one; mend these first.',
        line: this.line,
        column,
      });
    }
  }

  private finish(): NotationReading {
    const count = Math.max(0, ...VOICES.map((voice) => this.barsWritten(voice)));
    const bars = Array.from({ length: count }, (_, i): DraftBar => {
      const said = this.barHeaders[i] ?? {};
      const voices: Partial<Record<VoiceName, VoiceBar>> = {};
      for (const voice of VOICES) {
        const written = this.voices[voice].bars[i];
        if (written) voices[voice] = written;
      }
      return {
        metre: this.metreOf(i),
        key: this.keyOf(i),
        voices,
        ...(said.number === undefined ? {} : { number: said.number }),
        ...(said.upbeat === undefined ? {} : { short: said.upbeat }),
        ...(said.ending === undefined ? {} : { ending: said.ending }),
        ...(said.repeatStart ? { repeatStart: true } : {}),
        ...(said.repeatEnd ? { repeatEnd: true } : {}),
      };
    });
    const score = buildScore({
      title: this.title,
      ...(this.tempo === undefined ? {} : { tempo: this.tempo }),
      bars,
    });
    return { score, problems: this.problems, headers: this.headers, spans: this.spansIn(score) };
  }

  /** Notes and rests keep their order from the text to the score, so that they can be paired off. */
  private spansIn(score: Score): Span[] {
    return VOICES.flatMap((voice) => {
      const drafts = this.voices[voice].bars
        .flatMap((bar) => bar.events)
        .filter((event) => event.kind !== 'gap');
      const events = score.voices[voice].filter((event) => event.kind !== 'gap');
      return drafts.flatMap((draft, i) => {
        const event = events[i];
        return event
          ? [{ voice, at: event.at, line: draft.line, column: draft.column, length: draft.length }]
          : [];
      });
    });
  }
}

interface Suffix {
  readonly numerator: number;
  readonly denominator: number;
  /** A length was written. */
  readonly length: boolean;
  readonly fermata: boolean;
  readonly tied: boolean;
}

function lengthOf(bar: VoiceBar): Ticks {
  return bar.events.reduce((sum, event) => sum + event.duration, 0);
}

function lastEvent(state: VoiceState): Draft | undefined {
  for (let i = state.bar; i >= 0; i--) {
    const event = state.bars[i]?.events.at(-1);
    if (event) return event;
  }
  return undefined;
}

function excerpt(text: string): string {
  return text.length > 24 ? `${text.slice(0, 24)}…` : text;
}
