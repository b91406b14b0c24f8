/** One exercise as it is worked on: a score and its text, each following the other, and the way back and forth. */
import { type Problem, printNotation, readNotation, type Span } from '../../src/notation/index.ts';
import { byVoice, type Score } from '../../src/score/score.ts';

/** The score and the text beside it. Where the text has problems, the score is what could be read of it. */
export interface Work {
  readonly score: Score;
  readonly text: string;
  readonly problems: readonly Problem[];
}

/** What a text says. */
export function workFromText(text: string): Work {
  const { score, problems, spans } = readNotation(text);
  const work = { score, text, problems };
  knownSpans.set(work, spans);
  return work;
}

/** A score with its text printed from it. */
export function workFromScore(score: Score): Work {
  return { score, text: printNotation(score), problems: [] };
}

const knownSpans = new WeakMap<Work, readonly Span[]>();

/** Where each note stands in the text. Found when asked for: a key pressed on the stave need not wait for it. */
export function spansOf(work: Work): readonly Span[] {
  const known = knownSpans.get(work) ?? readNotation(work.text).spans;
  knownSpans.set(work, known);
  return known;
}

/** Earlier and later states of the work; nothing is ever dropped from it. */
export interface History {
  readonly past: readonly Work[];
  readonly now: Work;
  readonly future: readonly Work[];
  /** When the last step was taken and by what, so that typing in the text is undone in bursts, not in letters. */
  readonly last: { readonly by: Hand; readonly when: number };
}

export type Hand = 'stave' | 'text' | 'file';

/** Typing that goes on after a shorter pause than this is one step, in milliseconds. */
const BURST = 700;

export function beginHistory(work: Work): History {
  return { past: [], now: work, future: [], last: { by: 'file', when: 0 } };
}

/**
 * The same score, with every bar and event that it has in common with an earlier one taken from there, and lists of
 * them where nothing differs: an afternoon's undo steps then hold each note once, and not once a step, and whoever
 * draws or prints a step sees what is new in it.
 */
function sharing(score: Score, before: Score): Score {
  return {
    ...score,
    bars: shared(score.bars, before.bars),
    voices: byVoice((voice) => shared(score.voices[voice], before.voices[voice])),
  };
}

function shared<T extends { readonly at: number }>(now: readonly T[], before: readonly T[]): readonly T[] {
  let behind = 0;
  let all = now.length === before.length;
  const kept = now.map((one, i) => {
    while (behind < before.length && before[behind]!.at < one.at) behind++;
    const old = before[behind];
    const same = old !== undefined && old.at === one.at && sameData(old, one);
    all &&= same && behind === i;
    return same ? old : one;
  });
  return all ? before : kept;
}

function sameData(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  const names = Object.keys(a);
  return (
    names.length === Object.keys(b).length &&
    names.every((name) => sameData((a as never)[name], (b as never)[name]))
  );
}

/** The history after a change made at `when` (milliseconds). */
export function changed(history: History, work: Work, by: Hand, when: number): History {
  const sameBurst = by === 'text' && history.last.by === 'text' && when - history.last.when < BURST;
  const thrifty = { ...work, score: sharing(work.score, history.now.score) };
  const spans = knownSpans.get(work);
  if (spans) knownSpans.set(thrifty, spans);
  return {
    past: sameBurst ? history.past : [...history.past, history.now],
    now: thrifty,
    future: [],
    last: { by, when },
  };
}

export function undone(history: History): History {
  const before = history.past.at(-1);
  if (before === undefined) return history;
  return {
    past: history.past.slice(0, -1),
    now: before,
    future: [history.now, ...history.future],
    last: { by: 'file', when: 0 },
  };
}

export function redone(history: History): History {
  const [after, ...future] = history.future;
  if (after === undefined) return history;
  return { past: [...history.past, history.now], now: after, future, last: { by: 'file', when: 0 } };
}

export function titleOf(score: Score): string {
  return score.title.trim() === '' ? 'Untitled exercise' : score.title;
}
