/**
 * How much two scripts share of the voices that their writers added to the same tune. It raises a question and
 * accuses nobody: friends work together, teachers show a bar on the board, and a plain tune has plain answers.
 */
import { alignBars, transpositionBetween } from './align.ts';
import { commonTime, type PitchCode, type Sounding, type SoundingBar } from './bar-notes.ts';
import { ADDED, type AddedVoice, type LikenessPrint, printedBars } from './print.ts';

/** A print made ready to be compared with many others. */
export interface Comparable {
  readonly print: LikenessPrint;
  readonly bars: readonly SoundingBar[];
  /** The tune from its first note on, whatever its key: two scripts of one brief have the same. */
  readonly tune: string;
  readonly firstCode: PitchCode;
}

export function comparable(print: LikenessPrint): Comparable {
  const bars = printedBars(print);
  const firstCode = bars.flatMap((bar) => bar.notes.S)[0]?.code ?? 0;
  const tune = bars.map((bar) => lineKey(bar.notes.S, firstCode)).join('|');
  return { print, bars, tune, firstCode };
}

/** A line as text, its pitches counted from some pitch: equal for lines that are the same but for transposition. */
export function lineKey(notes: readonly Sounding[], from: PitchCode): string {
  return notes.map(({ onset, duration, code }) => `${onset},${duration},${code - from}`).join(' ');
}

export interface AgreeingBar {
  /** Printed numbers in either script. */
  readonly first: string;
  readonly second: string;
  /** The added voices that are the same throughout the bar, from the top. */
  readonly voices: readonly AddedVoice[];
}

export interface Likeness {
  /** Bars of the same tune in which both have added something. */
  readonly compared: number;
  /** How much of the added voices' time in these bars is the same, 0 to 1. */
  readonly share: number;
  /** The same for each voice by itself; absent where nothing was compared. */
  readonly byVoice: Readonly<Partial<Record<AddedVoice, number>>>;
  /** Bars in which some added voice is the same throughout, in order. */
  readonly bars: readonly AgreeingBar[];
  /** Bars in which all added voices are. */
  readonly wholeBars: number;
  /** The most of these that follow one another. */
  readonly longestRun: number;
}

/** A bar belongs to the same tune where its soprano is the same for this share of the time. */
const SAME_TUNE = 0.75;

/** Compares two scripts, bar for bar of the tune; a transposed script is compared as transposed back. */
export function likenessOf(a: Comparable, b: Comparable): Likeness {
  const sameTune = a.tune === b.tune;
  const by = sameTune ? b.firstCode - a.firstCode : transpositionBetween(a.bars, b.bars, ['S']);
  const pairs = sameTune
    ? a.bars.map((_, i) => [i, i] as const)
    : alignBars(a.bars, b.bars, ['S'], by).bars.flatMap(({ a: i, b: j, likeness }) =>
        i === undefined || j === undefined || likeness < SAME_TUNE ? [] : [[i, j] as const],
      );
  const common = { A: 0, T: 0, B: 0 };
  const all = { A: 0, T: 0, B: 0 };
  const bars: AgreeingBar[] = [];
  let compared = 0;
  let wholeBars = 0;
  let run = 0;
  let longestRun = 0;
  for (const [i, j] of pairs) {
    const [x, y] = [a.bars[i]!, b.bars[j]!];
    const voices: AddedVoice[] = [];
    let asked = 0;
    for (const voice of ADDED) {
      const time = timeOfBoth(x.notes[voice], y.notes[voice]);
      if (time === 0) continue;
      asked++;
      const same = commonTime(x.notes[voice], y.notes[voice], by);
      common[voice] += same;
      all[voice] += time;
      if (same === time) voices.push(voice);
    }
    if (asked === 0) continue;
    compared++;
    if (voices.length > 0)
      bars.push({ first: a.print.bars[i]!.number, second: b.print.bars[j]!.number, voices });
    const whole = asked === ADDED.length && voices.length === asked;
    run = whole ? run + 1 : 0;
    longestRun = Math.max(longestRun, run);
    if (whole) wholeBars++;
  }
  const time = all.A + all.T + all.B;
  const byVoice: Partial<Record<AddedVoice, number>> = {};
  for (const voice of ADDED) if (all[voice] > 0) byVoice[voice] = common[voice] / all[voice];
  return {
    compared,
    share: time === 0 ? 0 : (common.A + common.T + common.B) / time,
    byVoice,
    bars,
    wholeBars,
    longestRun,
  };
}

/** The time in which either sounds, where both sound at all: what one left unwritten is not compared. */
function timeOfBoth(a: readonly Sounding[], b: readonly Sounding[]): number {
  if (a.length === 0 || b.length === 0) return 0;
  let time = 0;
  let until = 0;
  const notes = [...a, ...b].sort((x, y) => x.onset - y.onset);
  for (const { onset, duration } of notes) {
    const end = onset + duration;
    if (end <= until) continue;
    time += end - Math.max(onset, until);
    until = end;
  }
  return time;
}
