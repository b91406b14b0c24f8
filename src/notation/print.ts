/** Prints a score in the compact text notation. `readNotation` gives the same score back. */
import { plainNumber } from '../score/build.ts';
import { printNoteName } from '../score/pitch.ts';
import { type Bar, type Note, type Score, VOICES, type VoiceEvent, type VoiceName } from '../score/score.ts';
import { barLength, beatLength, gcd, printMetre, type Ticks } from '../score/time.ts';
import { printFigures } from './figures.ts';
import { printKeySignature } from './headers.ts';

/** Bars a system holds before the letters are repeated. */
const BARS_A_SYSTEM = 4;

/** The most notes printed as a bracket that shares one beat. */
const MOST_SHARING = 8;

/**
 * The score as text. Lyrics and grace notes have no place in the notation and are left out; all else comes back from
 * `readNotation` as it was. The soprano is written to the end, the other voices as far as they go, unless `whole` asks
 * for every voice's lines, to be filled in.
 */
export function printNotation(score: Score, { whole = false }: { readonly whole?: boolean } = {}): string {
  const lines: string[] = [];
  if (score.title.trim() !== '') lines.push(`title: ${score.title.replace(/\s+/g, ' ').trim()}`);
  if (score.tempo !== undefined) lines.push(`tempo: ${score.tempo}`);
  lines.push(...printFigures(score));
  const parts = VOICES.map((voice) => ({ voice, events: eventsByBar(score, voice) }));
  for (const system of systemsOf(score)) {
    if (system.from > 0) lines.push('');
    lines.push(...headersBefore(score, system.from, system.apart));
    const bars = score.bars.slice(system.from, system.until);
    for (const { voice, events } of parts) {
      const wanted = bars.filter(
        (bar) => isPrinted(score, bar, voice, events) || (whole && !isCutShort(bar)),
      );
      if (wanted.length > 0) lines.push(printLine(score, voice, wanted, events));
    }
  }
  return `${lines.join('\n')}\n`;
}

interface System {
  readonly from: number;
  readonly until: number;
  /** The system must say which bar it begins with, since not all voices are written up to there. */
  readonly apart: boolean;
}

/** A system ends after four bars and before any header; a bar that is cut short stands in one of its own. */
function systemsOf(score: Score): System[] {
  const systems: System[] = [];
  let from = 0;
  const { bars } = score;
  const odd = (i: number): boolean => bars[i] !== undefined && isCutShort(bars[i]);
  for (let i = 1; i <= bars.length; i++) {
    const full = i - from === BARS_A_SYSTEM;
    if (i < bars.length && !full && !odd(i) && !odd(i - 1) && headersBefore(score, i, false).length === 0)
      continue;
    systems.push({ from, until: i, apart: from > 0 && (odd(from) || odd(from - 1)) });
    from = i;
  }
  return systems;
}

function headersBefore(score: Score, index: number, apart: boolean): string[] {
  const bar = score.bars[index]!;
  const before = score.bars[index - 1];
  const headers: string[] = [];
  // Most bars have the very key and metre of the bar before; a key pressed on the stave prints the whole text.
  if (bar.key !== before?.key) {
    const key = printKeySignature(bar.key);
    if (!before || printKeySignature(before.key) !== key) headers.push(`key: ${key}`);
  }
  if (bar.metre !== before?.metre) {
    const metre = printMetre(bar.metre);
    if (!before || printMetre(before.metre) !== metre) headers.push(`metre: ${metre}`);
  }
  if (before && bar.tempo !== undefined && before.tempo !== bar.tempo) headers.push(`tempo: ${bar.tempo}`);
  const meant = meantLength(bar);
  if (meant < barLength(bar.metre) && !lengthIsPlain(score, index)) {
    headers.push(`upbeat: ${printRatio(meant, beatLength(bar.metre))}`);
  }
  const number = plainNumber(score.bars.slice(0, index), bar.offset);
  if (apart || number !== bar.number) headers.push(`bar: ${bar.number}`);
  if (bar.ending !== undefined) headers.push(`ending: ${bar.ending}`);
  return headers;
}

/** What the bar should hold: its own length, unless a voice wrote something else. */
function meantLength(bar: Bar): Ticks {
  return bar.misfits[0]?.expected ?? bar.duration;
}

/** A short bar needs no word where the other half of a split bar, or the upbeat it gives back, makes it plain. */
function lengthIsPlain(score: Score, index: number): boolean {
  const bar = score.bars[index]!;
  const first = score.bars[0]!;
  if (bar.misfits.length > 0) return false;
  const next = score.bars[index + 1];
  const secondHalf = index > 0 && bar.offset > 0 && score.bars[index - 1]!.duration === bar.offset;
  const firstHalf = bar.offset === 0 && next?.offset === bar.duration && next.misfits.length === 0;
  const givesBackUpbeat =
    index > 0 &&
    next === undefined &&
    first.offset > 0 &&
    first.duration + bar.duration === barLength(bar.metre);
  return secondHalf || firstHalf || givesBackUpbeat;
}

type EventsByBar = ReadonlyMap<number, readonly VoiceEvent[]>;

function eventsByBar(score: Score, voice: VoiceName): EventsByBar {
  const byBar = new Map<number, VoiceEvent[]>();
  let index = 0;
  for (const event of score.voices[voice]) {
    while (score.bars[index + 1] !== undefined && event.at >= score.bars[index + 1]!.at) index++;
    const events = byBar.get(index);
    if (events) events.push(event);
    else byBar.set(index, [event]);
  }
  return byBar;
}

function isWritten(events: EventsByBar, bar: Bar): boolean {
  return events.get(bar.index)?.some((event) => event.kind !== 'gap') === true;
}

/** All who wrote here agree on less than the bar should hold. Whoever wrote nothing must not be printed. */
function isCutShort(bar: Bar): boolean {
  return bar.duration < meantLength(bar);
}

function isPrinted(score: Score, bar: Bar, voice: VoiceName, events: EventsByBar): boolean {
  if (isCutShort(bar)) return bar.misfits.some((misfit) => misfit.voice === voice);
  // Where a bar does not add up, every voice is written out, so that each is seen to be right or wrong.
  const later = (other: Bar): boolean =>
    other.index >= bar.index &&
    (isWritten(events, other) || (other.misfits.length > 0 && !isCutShort(other)));
  return voice === 'S' || score.bars.some(later);
}

function printLine(score: Score, voice: VoiceName, bars: readonly Bar[], events: EventsByBar): string {
  const words: string[] = [];
  const state: LineState = { octave: undefined };
  for (const bar of bars) {
    if (bar.repeatStart) words.push('|:');
    const before = events.get(bar.index - 1)?.at(-1);
    const heldInto = before?.kind === 'note' && before.tied === true;
    words.push(...printBar(bar, writtenEvents(bar, voice, events.get(bar.index) ?? []), heldInto, state));
    words.push(bar.repeatEnd ? ':|' : bar.index === score.bars.length - 1 ? '||' : '|');
  }
  return `${voice}: ${words.join(' ')}`;
}

/** The events as the voice wrote them: without the gap that was added because the bar does not add up. */
function writtenEvents(bar: Bar, voice: VoiceName, events: readonly VoiceEvent[]): VoiceEvent[] {
  const misfit = bar.misfits.find((m) => m.voice === voice) ?? bar.misfits[0];
  if (misfit === undefined) return [...events];
  const length = misfit.voice === voice ? misfit.written : misfit.expected;
  const end = bar.at + length;
  return events.flatMap((event) => {
    if (event.at >= end) return [];
    return event.at + event.duration > end ? [{ ...event, duration: end - event.at }] : [event];
  });
}

interface LineState {
  octave: number | undefined;
}

function printBar(bar: Bar, events: readonly VoiceEvent[], heldInto: boolean, state: LineState): string[] {
  const words: string[] = [];
  const beat = beatLength(bar.metre);
  for (let i = 0; i < events.length; ) {
    const sharing = sharingABeat(events, i, beat, bar);
    if (sharing > 0) {
      const inside = events
        .slice(i, i + sharing)
        .map(
          (event, k) => printSound(event, heldInto && i + k === 0, state) + marks(event, events[i + k + 1]),
        );
      words.push(`(${inside.join(' ')})`);
      i += sharing;
      continue;
    }
    const event = events[i]!;
    words.push(
      printSound(event, heldInto && i === 0, state) +
        printLength(event.duration, beat) +
        marks(event, events[i + 1]),
    );
    i++;
  }
  return words;
}

/** How many events from here on share one beat equally; 0 where they do not. */
function sharingABeat(events: readonly VoiceEvent[], from: number, beat: Ticks, bar: Bar): number {
  const first = events[from]!;
  const count = beat / first.duration;
  if (!Number.isInteger(count) || count < 2 || count > MOST_SHARING) return 0;
  if ((first.at - bar.at + bar.offset) % beat !== 0 || from + count > events.length) return 0;
  const group = events.slice(from, from + count);
  return group.every((event) => event.kind !== 'gap' && event.duration === first.duration) ? count : 0;
}

function printSound(event: VoiceEvent, held: boolean, state: LineState): string {
  if (event.kind === 'gap') return '?';
  if (event.kind === 'rest') return 'r';
  return held ? '=' : printWithOctave(event, state);
}

function printWithOctave(note: Note, state: LineState): string {
  const octave = note.pitch.octave === state.octave ? '' : String(note.pitch.octave);
  state.octave = note.pitch.octave;
  return printNoteName(note.pitch) + octave;
}

const PHRASE_SIGNS = { ends: "'", 'goes on': '~', unsaid: '' } as const;

/** A tie over the barline is printed as "=" after it, so only ties inside the bar need a mark. */
function marks(event: VoiceEvent, next: VoiceEvent | undefined): string {
  const tie = event.kind === 'note' && event.tied && next !== undefined ? '_' : '';
  const fermata = event.kind !== 'gap' && event.fermata ? '!' : '';
  const phrase = event.kind === 'note' ? PHRASE_SIGNS[event.phrase ?? 'unsaid'] : '';
  return tie + fermata + phrase;
}

function printLength(duration: Ticks, beat: Ticks): string {
  if (duration === beat) return '';
  const ratio = printRatio(duration, beat);
  return ratio.startsWith('1/') ? ratio.slice(1) : `*${ratio}`;
}

function printRatio(duration: Ticks, beat: Ticks): string {
  const divisor = gcd(duration, beat);
  const [numerator, denominator] = [duration / divisor, beat / divisor];
  return denominator === 1 ? String(numerator) : `${numerator}/${denominator}`;
}
