/**
 * Reads the compact text notation.
 *
 * ```
 * text    = { line }
 * line    = blank | "#" remark | header | voice
 * header  = ("title" | "key" | "metre" | "tempo" | "upbeat" | "bar" | "ending" | "figures") ":" value
 * voice   = ("S" | "A" | "T" | "B") ":" { item | barline }
 * barline = "|" | "||" | "|:" | ":|"
 * item    = sound { length | "!" | "_" | "'" | "~" }
 * sound   = pitch | "r" | "?" | "=" | "(" { (pitch | "r" | "?" | "=") { "!" | "_" } } ")"
 * pitch   = letter [ "#" | "##" | "b" | "bb" ] [ octave ]
 * length  = "*" number [ "/" number ] | "/" number
 * ```
 *
 * - One sound is one beat, the beat being the metre's lower figure. `*2` makes it two beats, `/2` half a beat,
 *   `*3/2` one and a half. The sounds in a bracket share one beat equally, or as many as its length says: `(C5 D5 E5)*2`.
 * - An octave left out is that of the voice's last written note. Accidentals are always written: `F` is F natural.
 * - `=` holds the sound before it; after a barline it is tied to it. `_` ties a note to the next one.
 * - `r` is a rest, `?` a beat not written yet, `!` a fermata. `'` says that a phrase ends with this note of the
 *   melody, `~` that none does; where neither they nor fermatas say so, the reading finds the ends itself.
 * - Lines of one voice follow on from each other. A new system begins where a letter comes round again; its voices
 *   begin where the voice of its first line stands, and a voice that lags has gaps up to there.
 * - `key`, `metre` and `tempo` between systems hold from the next bar on; `upbeat`, `bar` and `ending` speak of the next bar only
 *   (`upbeat: 1` makes it one beat long).
 * - `figures: 1:2 6, 2:1 6/5` are the figures under the bass, each at its bar and beat; it may stand anywhere.
 */
import { harmless } from '../english/words.ts';
import type { Problem } from '../refusal/refusal.ts';
import { buildScore, type DraftBar } from '../score/build.ts';
import { byVoice, type KeySignature, type Score, VOICES, type VoiceName } from '../score/score.ts';
import { lastBegun } from '../score/search.ts';
import { barLength, beatLength, type Metre, scaleTicks, type Ticks } from '../score/time.ts';
import { inOrder, momentOf, type PlacedFigure, parseFigures } from './figures.ts';
import {
  HEADER_EXPECTS,
  HEADER_NAMES,
  type HeaderName,
  parseBeats,
  parseKeySignature,
  parseMetre,
  parseTempo,
} from './headers.ts';
import {
  excerpt,
  NOTATION_LIMITS,
  type Position,
  type TextAround,
  type VoiceBar,
  VoiceWriter,
} from './voice.ts';

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

/** Reads a text whole: it never throws, and goes on after each thing it cannot read. */
export function readNotation(text: string, options: NotationOptions = {}): NotationReading {
  return new Reader(options.extraHeaders ?? []).read(text);
}

interface BarHeaders {
  upbeat?: Ticks;
  number?: string;
  ending?: string;
  repeatStart?: boolean;
  repeatEnd?: boolean;
}

/** What holds from a bar on, until something else does. */
interface From<T> {
  readonly bar: number;
  readonly value: T;
}

class Reader implements TextAround {
  private readonly problems: Problem[] = [];
  private readonly headers: ExtraHeader[] = [];
  private readonly barHeaders: BarHeaders[] = [];
  private readonly metres: From<Metre>[] = [];
  private readonly keys: From<KeySignature>[] = [];
  private readonly figures: (PlacedFigure & { readonly line: number })[] = [];
  private readonly voices: Record<VoiceName, VoiceWriter>;
  private readonly tempos: From<number>[] = [];
  /** Read, while it isn't known yet whether a system begins after it. */
  private pendingTempo: number | undefined;
  private title = '';
  line = 1;
  /** Voices with a line in the system being read, and the voice of the last line. */
  private readonly inSystem = new Set<VoiceName>();
  private lastVoice: VoiceName | undefined;
  private systemStart: Position = { bar: 0, ticks: 0 };

  constructor(private readonly extraHeaders: readonly string[]) {
    this.voices = byVoice(() => new VoiceWriter(this));
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
    const colon = line.indexOf(':');
    const name = line.slice(0, Math.max(0, colon)).trim();
    const column = line.length - line.trimStart().length + 1;
    if (!/^[A-Za-z][A-Za-z -]*$/.test(name)) {
      this.problem(
        column,
        `This line begins with "${excerpt(trimmed)}"; a voice (S:, A:, T: or B:) or a header such as "key: G major" was expected.`,
      );
      return;
    }
    const voice = VOICES.find((v) => v === name);
    if (voice !== undefined) this.readVoice(voice, line, colon + 1);
    else this.readHeader(name, line.slice(colon + 1).trim(), column);
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
      this.title = harmless(value.replace(/\s+/g, ' '));
      return true;
    }
    if (header === 'tempo') {
      this.pendingTempo = parseTempo(value) ?? this.pendingTempo;
      return parseTempo(value) !== undefined;
    }
    if (header === 'figures') {
      const figures = this.figures.length > NOTATION_LIMITS.events ? undefined : parseFigures(value);
      this.figures.push(...(figures ?? []).map((figure) => ({ ...figure, line: this.line })));
      return figures !== undefined;
    }
    const bar = this.startOfNextSystem();
    const next = this.barMarks(bar);
    switch (header) {
      case 'key': {
        const key = parseKeySignature(value);
        if (key !== undefined) this.keys.push({ bar, value: key });
        return key !== undefined;
      }
      case 'metre': {
        const metre = parseMetre(value);
        if (metre !== undefined) this.metres.push({ bar, value: metre });
        return metre !== undefined;
      }
      case 'upbeat': {
        const beats = parseBeats(value);
        const metre = this.metreOf(bar);
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

  /** The bar that follows everything written so far; a bar under way counts as written. Never an earlier one than before. */
  private startOfNextSystem(): number {
    const bar = Math.max(...VOICES.map((voice) => this.voices[voice].barsWritten()));
    this.inSystem.clear();
    this.lastVoice = undefined;
    this.systemStart = { bar, ticks: 0 };
    return bar;
  }

  barMarks(bar: number): BarHeaders {
    while (this.barHeaders.length <= bar) this.barHeaders.push({});
    return this.barHeaders[bar]!;
  }

  metreOf(bar: number): Metre {
    return holdingAt(this.metres, bar) ?? { beats: 4, unit: 4 };
  }

  private keyOf(bar: number): KeySignature {
    return holdingAt(this.keys, bar) ?? { fifths: 0 };
  }

  /**
   * A tempo that stands between the lines of one system, or after the last, doesn't divide them: it speaks of the
   * system. `begins`: the next line begins a new one.
   */
  private settleTempo(begins: boolean): void {
    if (this.pendingTempo === undefined) return;
    const bar = begins ? this.startOfNextSystem() : this.systemStart.bar;
    this.tempos.push({ bar, value: this.pendingTempo });
    this.pendingTempo = undefined;
  }

  private readVoice(voice: VoiceName, line: string, from: number): void {
    const writer = this.voices[voice];
    this.settleTempo(this.inSystem.has(voice) || this.inSystem.size === 0);
    if (this.inSystem.has(voice) && this.lastVoice !== voice) {
      this.inSystem.clear();
      this.systemStart = writer.position();
    }
    this.inSystem.add(voice);
    this.lastVoice = voice;
    writer.catchUp(this.systemStart);
    writer.readLine(line, from);
  }

  expected(bar: number): Ticks {
    return this.barHeaders[bar]?.upbeat ?? barLength(this.metreOf(bar));
  }

  problem(column: number, message: string): void {
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
    this.settleTempo(false);
    const count = Math.max(0, ...VOICES.map((voice) => this.voices[voice].barsWritten()));
    const bars = Array.from({ length: count }, (_, i): DraftBar => {
      const said = this.barHeaders[i] ?? {};
      const voices: Partial<Record<VoiceName, VoiceBar>> = {};
      for (const voice of VOICES) {
        const written = this.voices[voice].bars[i];
        if (written) voices[voice] = written;
      }
      const tempo = holdingAt(this.tempos, i);
      return {
        metre: this.metreOf(i),
        key: this.keyOf(i),
        ...(tempo === undefined ? {} : { tempo }),
        voices,
        ...(said.number === undefined ? {} : { number: said.number }),
        ...(said.upbeat === undefined ? {} : { short: said.upbeat }),
        ...(said.ending === undefined ? {} : { ending: said.ending }),
        ...(said.repeatStart ? { repeatStart: true } : {}),
        ...(said.repeatEnd ? { repeatEnd: true } : {}),
      };
    });
    const opening = holdingAt(this.tempos, 0);
    const built = buildScore({
      title: this.title,
      ...(opening === undefined ? {} : { tempo: opening }),
      bars,
    });
    const score = this.withFigures(built);
    return { score, problems: this.problems, headers: this.headers, spans: this.spansIn(score) };
  }

  /** Bars have their numbers and beats only when all are read. */
  private withFigures(score: Score): Score {
    const figures = this.figures.flatMap((figure) => {
      const at = momentOf(score, figure);
      if (at !== undefined) return [{ at, figures: figure.figures }];
      this.line = figure.line;
      this.problem(1, `There is no beat ${figure.beat} in a bar ${figure.bar} to put figures under.`);
      return [];
    });
    this.problems.sort((a, b) => a.line - b.line);
    return figures.length === 0 ? score : { ...score, figures: inOrder(figures) };
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

function holdingAt<T>(said: readonly From<T>[], bar: number): T | undefined {
  return said[lastBegun(said, bar, (one) => one.bar)]?.value;
}
