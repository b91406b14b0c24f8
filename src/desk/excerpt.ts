/** A few bars cut out of a score, to be shown without telling whose they are. */
import { printNotation } from '../notation/index.ts';
import { buildScore } from '../score/build.ts';
import type { Score } from '../score/score.ts';
import { draftOf } from '../writing/draft.ts';

/**
 * The bars from one index to another, both included, as a score of their own: numbers, key, metre and notes as they
 * were; no title, lyrics, tempo or remarks, so that nothing tells whose work it is.
 */
export function excerptOf(score: Score, first: number, last: number): Score {
  const bars = draftOf(score).bars.slice(first, last + 1);
  return buildScore({
    title: '',
    bars: bars.map(({ tempo: _tempo, ...bar }) => ({
      ...bar,
      voices: Object.fromEntries(
        Object.entries(bar.voices).map(([voice, part]) => [
          voice,
          { ...part, events: part.events.map(({ lyrics: _lyrics, ...event }) => event) },
        ]),
      ),
    })),
  });
}

/** The same as text in our notation: `readNotation` gives the excerpt back. */
export function excerptText(score: Score, first: number, last: number): string {
  return printNotation(excerptOf(score, first, last));
}
