/** Stretches of a reading for which a second key lies close. */
import { type KeyNumber, keyIndex } from './keys.ts';
import type { Span } from './search.ts';

/** A stretch of spans, from the first to the last, and the other key they may be in. */
export interface KeyDoubt extends KeyNumber {
  readonly first: number;
  readonly last: number;
}

/**
 * A key less likely than this is in doubt, and the next likeliest is told beside it; `npm run bench:harmony` prints how
 * often either is right.
 */
const SURE = 0.75;
/** The stretch goes on over neighbours that are in the other key so likely. */
const NEAR = 0.1;

/**
 * The stretches of doubt, in order of time; no span is in two.
 *
 * @param keys the keys that odds are given for
 * @param odds by span and key, as `keyOdds` gives them
 * @param known whether the vocabulary of a key has the span's chord
 */
export function keyDoubts(
  spans: readonly Span[],
  keys: readonly KeyNumber[],
  odds: Float64Array,
  known: (span: Span, key: KeyNumber) => boolean,
): KeyDoubt[] {
  const at = (i: number, k: number) => odds[i * keys.length + k]!;
  const facts = spans.map((span, i) => {
    const own = keyIndex(keys, span);
    let second = -1;
    for (const [k, key] of keys.entries())
      if (k !== own && known(span, key) && (second < 0 || at(i, k) > at(i, second))) second = k;
    return { span, own, second, doubtful: second >= 0 && at(i, own) < SURE };
  });
  const doubts: KeyDoubt[] = [];
  for (let i = 0; i < spans.length; i++) {
    const { own, second, doubtful } = facts[i]!;
    if (!doubtful) continue;
    const goesOn = (j: number) => {
      const fact = facts[j];
      if (fact === undefined || fact.own !== own || !known(fact.span, keys[second]!)) return false;
      return fact.doubtful ? fact.second === second : at(j, second) >= NEAR;
    };
    const taken = doubts.at(-1)?.last ?? -1;
    let first = i;
    while (first - 1 > taken && goesOn(first - 1)) first--;
    while (goesOn(i + 1)) i++;
    const { tonic, mode } = keys[second]!;
    doubts.push({ first, last: i, tonic, mode });
  }
  return doubts;
}
