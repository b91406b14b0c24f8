/** Beginning an exercise, and adding or taking away bars. */
import { buildScore, type DraftBar, type DraftEvent } from '../score/build.ts';
import { type Bar, byVoice, type KeySignature, type Score, type VoiceName } from '../score/score.ts';
import { barLength, type Metre, type Ticks } from '../score/time.ts';
import { draftOf, emptyBar } from './draft.ts';

export interface NewExercise {
  readonly title: string;
  readonly key: KeySignature;
  readonly metre: Metre;
  /** Crotchets a minute. */
  readonly tempo?: number;
  /** Length of the upbeat, 0 for none. */
  readonly upbeat: Ticks;
  /** Full bars, the upbeat not counted. */
  readonly bars: number;
}

/** An exercise in which nothing is written yet. */
export function emptyScore(wanted: NewExercise): Score {
  const bars: DraftBar[] = [];
  if (wanted.upbeat > 0) bars.push(emptyBar(wanted.metre, wanted.key, wanted.upbeat));
  for (let i = 0; i < wanted.bars; i++) bars.push(emptyBar(wanted.metre, wanted.key));
  return buildScore({
    title: wanted.title,
    ...(wanted.tempo === undefined ? {} : { tempo: wanted.tempo }),
    bars,
  });
}

/** The score with empty bars at its end, in the metre and key of the last one (4/4 in C where there is none). */
export function addBars(score: Score, count: number): Score {
  const draft = draftOf(score);
  const last = score.bars.at(-1);
  const metre = last?.metre ?? { beats: 4, unit: 4 };
  const key = last?.key ?? { fifths: 0, mode: 'major' as const };
  const more = Array.from({ length: count }, () => emptyBar(metre, key));
  return buildScore({ ...draft, bars: [...draft.bars, ...more] });
}

/** The score with one empty bar put in before the bar at `index`; later bars are numbered anew. */
export function insertBar(score: Score, index: number): Score {
  const draft = draftOf(score);
  const model = score.bars[Math.min(index, score.bars.length - 1)];
  if (model === undefined) return addBars(score, 1);
  const tempo = model.tempo === undefined ? {} : { tempo: model.tempo };
  const bars = renumbered([
    ...draft.bars.slice(0, index),
    { ...emptyBar(model.metre, model.key), ...tempo },
    ...draft.bars.slice(index),
  ]);
  return buildScore({ ...draft, bars });
}

/** The score without the bar at `index`; later bars are numbered anew. The last bar left is never taken away. */
export function removeBar(score: Score, index: number): Score {
  if (score.bars.length < 2 || score.bars[index] === undefined) return score;
  const draft = draftOf(score);
  return buildScore({ ...draft, bars: renumbered(draft.bars.filter((_, i) => i !== index)) });
}

/** Bars without their numbers, save where a number says more than a count ("12a"). */
function renumbered(bars: readonly DraftBar[]): DraftBar[] {
  return bars.map((bar) => {
    if (bar.number === undefined || !/^\d+$/.test(bar.number)) return bar;
    const { number: _number, ...rest } = bar;
    return rest;
  });
}

/** What stands above the exercise. */
export interface Heading {
  readonly title: string;
  /** Crotchets a minute from the beginning, as far as the old tempo held. */
  readonly tempo: number | undefined;
}

/** The score under another heading. */
export function withHeading(score: Score, { title, tempo }: Heading): Score {
  const { tempo: _tempo, ...draft } = draftOf(score);
  const bars = inTempo(score, draft.bars, 0, tempo);
  return buildScore({ ...draft, title, bars, ...(tempo === undefined ? {} : { tempo }) });
}

/** The score at another tempo, in crotchets a minute, from a bar on, as far as the old one held. */
export function withTempo(score: Score, index: number, tempo: number): Score {
  const draft = draftOf(score);
  return buildScore({ ...draft, bars: inTempo(score, draft.bars, index, tempo) });
}

function inTempo(
  score: Score,
  drafts: readonly DraftBar[],
  index: number,
  tempo: number | undefined,
): DraftBar[] {
  const until = regionEnd(score, index, (a, b) => a.tempo === b.tempo);
  return drafts.map((bar, i) => {
    if (i < index || i >= until) return bar;
    const { tempo: _tempo, ...rest } = bar;
    return tempo === undefined ? rest : { ...rest, tempo };
  });
}

/** The score in another key signature from a bar on, as far as the old one held. The notes stay. */
export function withKey(score: Score, index: number, key: KeySignature): Score {
  const until = regionEnd(score, index, (a, b) => a.key.fifths === b.key.fifths && a.key.mode === b.key.mode);
  const draft = draftOf(score);
  const bars = draft.bars.map((bar, i) => (i >= index && i < until ? { ...bar, key } : bar));
  return buildScore({ ...draft, bars });
}

/**
 * The score in another metre from a bar on, as far as the old one held: the music is barred anew, a note that comes to
 * lie over a barline is written as two, tied, and the last bar is filled up with what is still to be written. A
 * sentence where that can't be done: repeats stand in the way.
 */
export function withMetre(score: Score, index: number, metre: Metre): Score | string {
  const until = regionEnd(
    score,
    index,
    (a, b) => a.metre.beats === b.metre.beats && a.metre.unit === b.metre.unit,
  );
  const old = score.bars.slice(index, until);
  const [first] = old;
  if (first === undefined) return 'There is no bar there.';
  if (old.some((bar) => bar.repeatStart || bar.repeatEnd || bar.ending !== undefined))
    return 'The metre can’t be changed over bars that are repeated. Change it in the text.';
  const draft = draftOf(score);
  // An upbeat stays one, where it is shorter than the new bar.
  const upbeat =
    first.duration < barLength(first.metre) && first.offset > 0 && first.duration < barLength(metre);
  const kept = upbeat ? [{ ...draft.bars[index]!, metre }] : [];
  const from = index + kept.length;
  const lines = byVoice((voice) =>
    lineOf(draft.bars.slice(from, until), score.bars.slice(from, until), voice),
  );
  const barred = score.bars.slice(from, until);
  const length = barred.reduce((sum, bar) => sum + bar.duration, 0);
  const fresh: DraftBar[] = [];
  for (let at = 0; at < length; at += barLength(metre)) {
    const voices = byVoice((voice) => ({
      events: cut(lines[voice], at, at + barLength(metre)),
      closed: false,
    }));
    // Key and tempo are those that hold where the bar begins; a change inside it waits for the next barline.
    const { key, tempo } = barred.findLast((bar) => bar.at - barred[0]!.at <= at) ?? first;
    fresh.push({ metre, key, ...(tempo === undefined ? {} : { tempo }), voices });
  }
  const bars = [...draft.bars.slice(0, index), ...kept, ...fresh, ...draft.bars.slice(until)];
  return buildScore({ ...draft, bars: renumbered(bars) });
}

/** The first bar after `index` that is not like it. */
function regionEnd(score: Score, index: number, alike: (a: Bar, b: Bar) => boolean): number {
  const first = score.bars[index];
  let until = index;
  while (first !== undefined && score.bars[until] !== undefined && alike(first, score.bars[until]!)) until++;
  return until;
}

/** A voice's events of several bars one after another, each bar filled up to its length. */
function lineOf(drafts: readonly DraftBar[], bars: readonly Bar[], voice: VoiceName): DraftEvent[] {
  return drafts.flatMap((draft, i) => {
    const events = draft.voices[voice]?.events ?? [];
    const missing = bars[i]!.duration - events.reduce((sum, event) => sum + event.duration, 0);
    return missing > 0 ? [...events, { kind: 'gap' as const, duration: missing }] : [...events];
  });
}

/** The part of a line between two moments; a note that goes on after it is tied. */
function cut(line: readonly DraftEvent[], from: Ticks, until: Ticks): DraftEvent[] {
  const pieces: DraftEvent[] = [];
  let at = 0;
  for (const event of line) {
    const [start, end] = [Math.max(at, from), Math.min(at + event.duration, until)];
    if (start < end) {
      const goesOn = event.kind === 'note' && end < at + event.duration;
      pieces.push({ ...event, duration: end - start, ...(goesOn ? { tied: true as const } : {}) });
    }
    at += event.duration;
  }
  return pieces;
}
