/**
 * How much two scripts share of the voices that their writers added to the same tune. It raises a question and
 * accuses nobody: friends work together, teachers show a bar on the board, and a plain tune has plain answers.
 */
import { alignBars, transpositionBetween } from './align.ts';
import {
  likeBars,
  type PitchCode,
  type Sounding,
  type SoundingBar,
  soundingTime,
  timeInCommon,
} from './bar-notes.ts';
import { ADDED, type AddedVoice, type LikenessPrint, printedBars } from './fingerprint.ts';

/** A print made ready to be compared with many others. */
export interface Comparable {
  readonly print: LikenessPrint;
  readonly bars: readonly SoundingBar[];
  /** For each bar its tune, counted from its own first note, and that note: equal for a transposed tune. */
  readonly tune: readonly { readonly shape: string; readonly from: PitchCode }[];
}

export function comparable(print: LikenessPrint): Comparable {
  const bars = printedBars(print);
  const tune = bars.map(({ notes }) => {
    const from = notes.S[0]?.code ?? 0;
    return { shape: lineKey(notes.S, from), from };
  });
  return { print, bars, tune };
}

/** A line as text, its pitches counted from some pitch: equal for lines that are the same but for transposition. */
function lineKey(notes: readonly Sounding[], from: PitchCode): string {
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
  const { by, pairs } = answeringBars(a, b);
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
      const [own, other] = [x.notes[voice], y.notes[voice]];
      // What one of them left unwritten is not compared.
      if (own.length === 0 || other.length === 0) continue;
      asked++;
      const { same, together } = timeInCommon(own, other, by);
      const time = soundingTime(own) + soundingTime(other) - together;
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

interface Answering {
  readonly by: PitchCode;
  /** Indices of the bars that have the same tune. */
  readonly pairs: readonly (readonly [number, number])[];
}

/** Where so many bars of two tunes agree at their own places, no bar was put in or left out. */
const MOSTLY = 0.6;

/** Which bars answer to each other, by the tune. Two scripts of one brief mostly stand bar against bar. */
function answeringBars(a: Comparable, b: Comparable): Answering {
  const steps = new Map<PitchCode, number>();
  if (a.bars.length === b.bars.length)
    for (const [i, x] of a.tune.entries()) {
      const y = b.tune[i]!;
      if (x.shape === y.shape && x.shape !== '')
        steps.set(y.from - x.from, (steps.get(y.from - x.from) ?? 0) + 1);
    }
  for (const [by, bars] of steps)
    if (bars >= MOSTLY * a.bars.length)
      return {
        by,
        pairs: a.bars.flatMap((bar, i) =>
          (likeBars(bar, b.bars[i]!, ['S'], by) ?? 0) >= SAME_TUNE ? [[i, i] as const] : [],
        ),
      };
  const by = transpositionBetween(a.bars, b.bars, ['S']);
  const pairs = alignBars(a.bars, b.bars, ['S'], by).bars.flatMap(({ a: i, b: j, likeness }) =>
    i === undefined || j === undefined || likeness < SAME_TUNE ? [] : [[i, j] as const],
  );
  return { by, pairs };
}
