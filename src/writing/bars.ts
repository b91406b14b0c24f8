/** Beginning an exercise, and adding or taking away bars. */
import { buildScore, type DraftBar } from '../score/build.ts';
import type { KeySignature, Score } from '../score/score.ts';
import type { Metre, Ticks } from '../score/time.ts';
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
  const bars = renumbered([
    ...draft.bars.slice(0, index),
    emptyBar(model.metre, model.key),
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

/** What stands above the exercise: title, tempo, key signature and metre. */
export interface Heading {
  readonly title: string;
  readonly tempo: number | undefined;
  readonly key: KeySignature;
}

/** The score under another heading. The key signature is changed where it was the first bar's; the notes stay. */
export function withHeading(score: Score, heading: Heading): Score {
  const first = score.bars[0]?.key;
  const { tempo: _tempo, ...draft } = draftOf(score);
  const bars = draft.bars.map((bar) =>
    first !== undefined && bar.key.fifths === first.fifths && bar.key.mode === first.mode
      ? { ...bar, key: heading.key }
      : bar,
  );
  return buildScore({
    ...draft,
    title: heading.title,
    ...(heading.tempo === undefined ? {} : { tempo: heading.tempo }),
    bars,
  });
}
