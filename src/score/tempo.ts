/** The tempo, in crotchets a minute: where it is set, and how long the piece lasts by it. */
import type { Bar, Score } from './score.ts';
import { CROTCHET } from './time.ts';

/** The bars in which a tempo begins that did not hold before, with it; the first bar, where it has one, included. */
export function tempoMarks(score: Score): { readonly bar: Bar; readonly tempo: number }[] {
  return score.bars.flatMap((bar, i) =>
    bar.tempo === undefined || bar.tempo === score.bars[i - 1]?.tempo ? [] : [{ bar, tempo: bar.tempo }],
  );
}

/** How long the piece lasts, repeats and fermatas not counted, in seconds; `usual` is the tempo where none is set yet. */
export function secondsOf({ bars }: Score, usual: number): number {
  return bars.reduce((sum, bar) => sum + (bar.duration / CROTCHET) * (60 / (bar.tempo ?? usual)), 0);
}

/** A tempo as a score holds it, to a thousandth of a crotchet a minute; undefined outside 5 to 1,000. */
export function tempoWithin(crotchets: number): number | undefined {
  return crotchets >= 5 && crotchets <= 1000 ? Math.round(crotchets * 1000) / 1000 : undefined;
}
