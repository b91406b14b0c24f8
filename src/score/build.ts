/**
 * From bars as a reader meets them to a {@link Score}: times are filled in, short voices padded with gaps,
 * and what does not add up is written down rather than thrown away.
 */
import type { Pitch } from './pitch.ts';
import {
  type Bar,
  byVoice,
  type KeySignature,
  type Misfit,
  type Note,
  type ReaderRemark,
  type Rest,
  type Score,
  type SpareNote,
  VOICES,
  type VoiceEvent,
  type VoiceName,
  type WrittenFigure,
} from './score.ts';
import { barLength, type Metre, type Ticks } from './time.ts';

/** A note, rest or gap before it has a place in time. */
export interface DraftEvent {
  readonly kind: 'note' | 'rest' | 'gap';
  readonly duration: Ticks;
  /** Needed for a note. */
  readonly pitch?: Pitch;
  readonly tied?: boolean;
  readonly fermata?: boolean;
  readonly phrase?: 'ends' | 'goes on';
  readonly lyrics?: readonly string[];
  readonly grace?: readonly Pitch[];
  readonly beside?: readonly SpareNote[];
}

/** What one voice wrote in one bar. */
export interface DraftVoice {
  readonly events: readonly DraftEvent[];
  /** The writer said that the bar is full (a barline was typed); if not, a short bar is merely unfinished. */
  readonly closed: boolean;
}

export interface DraftBar {
  /** The printed number, where the source gives one; else bars are counted, an upbeat being 0. */
  readonly number?: string;
  readonly metre: Metre;
  readonly key: KeySignature;
  /** Crotchets a minute from this bar on; left out where it goes on as before. */
  readonly tempo?: number;
  /** The source says that this bar is meant to be short: an upbeat, or one part of a split bar. */
  readonly short?: Ticks | true;
  readonly repeatStart?: boolean;
  readonly repeatEnd?: boolean;
  readonly ending?: string;
  /** Figures under the bass, each so many ticks from the beginning of the bar. */
  readonly figures?: readonly { readonly into: Ticks; readonly figures: readonly string[] }[];
  /** Voices that wrote nothing here may be left out. */
  readonly voices: Partial<Record<VoiceName, DraftVoice>>;
}

export interface DraftScore {
  readonly title: string;
  /** Crotchets a minute at the beginning, unless the first bar says. */
  readonly tempo?: number;
  readonly bars: readonly DraftBar[];
  readonly remarks?: readonly ReaderRemark[];
}

interface Measured {
  readonly draft: DraftBar;
  readonly full: Ticks;
  readonly written: Partial<Record<VoiceName, Ticks>>;
  readonly longest: Ticks;
  /** Every voice that wrote here wrote the same length. */
  readonly alike: boolean;
  /** They did, and at least one of them closed the bar. */
  readonly agreed: boolean;
}

/**
 * Lays the bars out in time.
 *
 * A bar is as long as its metre says, save where it is meant to be short (see `DraftBar.short`), where all
 * voices agree on a shorter length (an upbeat, a split bar, a last bar that gives back the upbeat: right; elsewhere:
 * a misfit in each voice), or where a voice wrote more than fits (the bar is stretched, and the misfit noted).
 */
export function buildScore(draft: DraftScore): Score {
  const measured = draft.bars.map(measure);
  const lastSung = draft.bars.findLastIndex(({ voices }) =>
    VOICES.some((voice) => voices[voice]?.events.some(({ kind }) => kind === 'note')),
  );
  const voices = byVoice((): VoiceEvent[] => []);
  const bars: Bar[] = [];
  const figures: WrittenFigure[] = [];
  let at: Ticks = 0;
  let heldOver: Ticks = 0;
  let tempo = draft.tempo;
  for (const [index, bar] of measured.entries()) {
    if (measured[index - 1]?.full !== bar.full) heldOver = 0;
    const { duration, fits } = extentOf(
      bar,
      measured[index + 1],
      heldOver,
      index >= lastSung ? upbeatOf(measured[0]!, bars[0]) : 0,
    );
    const offset = offsetOf(bar, duration, index === 0, heldOver);
    // A short bar in the middle may be the first half of a split one; remember what it held.
    const opens = offset === 0 && duration < bar.full && fits === duration;
    heldOver = opens ? duration : 0;
    for (const voice of VOICES)
      appendEvents(voices[voice], bar.draft.voices[voice]?.events ?? [], at, duration);
    const number = bar.draft.number ?? plainNumber(bars, offset);
    tempo = bar.draft.tempo ?? tempo;
    bars.push(barFrom(bar, { index, number, at, duration, offset, tempo, misfits: misfitsIn(bar, fits) }));
    for (const figure of bar.draft.figures ?? []) {
      if (figure.into < duration) figures.push({ at: at + figure.into, figures: figure.figures });
    }
    at += duration;
  }
  const opening = draft.bars[0]?.tempo ?? draft.tempo;
  return {
    title: draft.title,
    ...(opening === undefined ? {} : { tempo: opening }),
    bars,
    voices: byVoice((voice) => settleTies(voices[voice])),
    ...(figures.length > 0 ? { figures } : {}),
    remarks: draft.remarks ?? [],
  };
}

/**
 * How long a bar lasts, and how much fits into it without being too much or too little. `upbeat` is what the last
 * bar that is sung may give back; 0 for every other.
 */
function extentOf(
  bar: Measured,
  next: Measured | undefined,
  heldOver: Ticks,
  upbeat: Ticks,
): { readonly duration: Ticks; readonly fits: Ticks } {
  const { short } = bar.draft;
  const declared = typeof short === 'number' ? short : undefined;
  const expected = declared ?? bar.full;
  const falls = declared === undefined && bar.longest > 0 && bar.longest < expected;
  // The last barline is easily left out: what gives back the upbeat is whole without it.
  const givesBackUpbeat = upbeat > 0 && bar.alike && bar.longest + upbeat === bar.full;
  if (!falls || !(bar.agreed || givesBackUpbeat || short !== undefined)) {
    return { duration: Math.max(expected, bar.longest), fits: expected };
  }
  const completesSplit = heldOver > 0 && heldOver + bar.longest === bar.full;
  const startsSplit =
    heldOver === 0 &&
    next?.agreed === true &&
    next.full === bar.full &&
    bar.longest + next.longest === bar.full;
  const meant = short !== undefined || completesSplit || startsSplit || givesBackUpbeat;
  return { duration: bar.longest, fits: meant ? bar.longest : expected };
}

/** How long the upbeat is, as a short bar or after rests in a full one; 0 where there is none. */
function upbeatOf({ draft, full }: Measured, first: Bar | undefined): Ticks {
  if (first === undefined) return 0;
  if (first.offset > 0) return first.duration;
  const silences = VOICES.flatMap((voice) => {
    const events = draft.voices[voice]?.events ?? [];
    const sung = events.findIndex(({ kind }) => kind === 'note');
    return sung < 0 ? [] : [events.slice(0, sung).reduce((sum, { duration }) => sum + duration, 0)];
  });
  const silence = Math.min(full, ...silences);
  return silence > 0 ? full - silence : 0;
}

/** Where in a full bar this one begins. */
function offsetOf(bar: Measured, duration: Ticks, first: boolean, heldOver: Ticks): Ticks {
  if (first && bar.draft.short !== undefined && duration < bar.full) return bar.full - duration;
  return !first && heldOver > 0 && heldOver + duration === bar.full ? heldOver : 0;
}

function misfitsIn(bar: Measured, fits: Ticks): Misfit[] {
  return VOICES.flatMap((voice) => {
    const written = bar.written[voice];
    const closed = bar.draft.voices[voice]?.closed === true;
    const wrong = written !== undefined && (written > fits || (written < fits && closed));
    return wrong ? [{ voice, written, expected: fits }] : [];
  });
}

type Laid = Pick<Bar, 'index' | 'number' | 'at' | 'duration' | 'offset' | 'misfits'> & {
  readonly tempo: number | undefined;
};

function barFrom({ draft }: Measured, { misfits, tempo, ...laid }: Laid): Bar {
  return {
    ...laid,
    metre: draft.metre,
    key: draft.key,
    ...(tempo === undefined ? {} : { tempo }),
    ...(draft.repeatStart ? { repeatStart: true as const } : {}),
    ...(draft.repeatEnd ? { repeatEnd: true as const } : {}),
    ...(draft.ending === undefined ? {} : { ending: draft.ending }),
    misfits,
  };
}

/**
 * The number a bar has where none is printed: one more than the last, an upbeat being 0 and the second half of a
 * split bar having its first half's.
 */
export function plainNumber(before: readonly Bar[], offset: Ticks): string {
  const last = before.at(-1);
  if (last === undefined) return offset > 0 ? '0' : '1';
  if (offset > 0) return last.number;
  let uncounted = 0;
  for (let i = before.length - 1; i >= 0; i--) {
    const bar = before[i]!;
    if (bar.offset > 0) continue;
    if (/^\d{1,6}$/.test(bar.number)) return String(Number(bar.number) + 1 + uncounted);
    uncounted++;
  }
  return String(uncounted + 1);
}

function measure(draft: DraftBar): Measured {
  const written: Partial<Record<VoiceName, Ticks>> = {};
  let closed = false;
  for (const voice of VOICES) {
    const part = draft.voices[voice];
    if (part === undefined || part.events.length === 0) continue;
    written[voice] = part.events.reduce((sum, event) => sum + event.duration, 0);
    closed ||= part.closed;
  }
  const lengths = Object.values(written);
  const longest = Math.max(0, ...lengths);
  const alike = lengths.every((length) => length === longest);
  return {
    draft,
    full: barLength(draft.metre),
    written,
    longest,
    alike,
    agreed: closed && alike,
  };
}

/** Adds a voice's events for one bar, with a gap for what it did not write. Gaps side by side become one. */
function appendEvents(
  voice: VoiceEvent[],
  events: readonly DraftEvent[],
  barAt: Ticks,
  duration: Ticks,
): void {
  let at = barAt;
  const gap = (length: Ticks): void => {
    const last = voice.at(-1);
    if (last?.kind === 'gap' && last.at >= barAt) {
      voice[voice.length - 1] = { ...last, duration: last.duration + length };
    } else voice.push({ kind: 'gap', at, duration: length });
  };
  for (const event of events) {
    if (event.kind === 'gap') gap(event.duration);
    else voice.push(settle(event, at));
    at += event.duration;
  }
  if (at < barAt + duration) gap(barAt + duration - at);
}

function settle(event: DraftEvent, at: Ticks): Note | Rest {
  const fermata = event.fermata ? { fermata: true as const } : {};
  if (event.kind === 'rest' || event.pitch === undefined) {
    return { kind: 'rest', at, duration: event.duration, ...fermata };
  }
  return {
    kind: 'note',
    at,
    duration: event.duration,
    pitch: event.pitch,
    ...(event.tied ? { tied: true as const } : {}),
    ...fermata,
    ...(event.phrase === undefined ? {} : { phrase: event.phrase }),
    ...(event.lyrics && event.lyrics.length > 0 ? { lyrics: event.lyrics } : {}),
    ...(event.grace && event.grace.length > 0 ? { grace: event.grace } : {}),
    ...(event.beside && event.beside.length > 0 ? { beside: event.beside } : {}),
  };
}

/** A tie that leads to nothing of the same pitch is no tie: it is dropped here, so that all may trust `tied`. */
function settleTies(events: readonly VoiceEvent[]): VoiceEvent[] {
  return events.map((event, i) => {
    if (event.kind !== 'note' || !event.tied) return event;
    const next = events[i + 1];
    const holds =
      next?.kind === 'note' &&
      next.pitch.step === event.pitch.step &&
      next.pitch.alteration === event.pitch.alteration &&
      next.pitch.octave === event.pitch.octave;
    if (holds) return event;
    const { tied: _tied, ...loose } = event;
    return loose;
  });
}
