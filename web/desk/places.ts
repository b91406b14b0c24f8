/** Places in a score, in words. */
import type { ScriptView } from '../../src/desk/wire-shapes.ts';
import { printBars } from '../../src/score/place.ts';
import { crotchets } from '../../src/score/time.ts';

/** `bar 3`; an upbeat's number means nothing to a singer. */
export function barInWords(bar: string): string {
  return printBars([bar]);
}

/** `bar 3, beat 2` of a place given in crotchets; of none, the whole script. */
export function placeIn({ score }: ScriptView, { from }: { readonly from?: number | undefined }): string {
  if (from === undefined) return 'the whole script';
  const bar = score?.bars.findLast(({ at }) => crotchets(at) <= from + 1e-9);
  if (bar === undefined) return 'the beginning';
  const beat = (from - crotchets(bar.at) + crotchets(bar.offset)) / (4 / bar.metre.unit) + 1;
  return `${barInWords(bar.number)}, beat ${beatInWords(beat)}`;
}

/** A beat as a number of at most two decimals. */
export function beatInWords(beat: number): string {
  return String(Math.round(beat * 100) / 100);
}
