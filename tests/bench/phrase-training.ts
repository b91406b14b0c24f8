/**
 * Learns what ends a phrase from the fermatas of the open chorales and half of our hymn tunes, and writes `phrase-weights.ts`.
 * Run with `npx tsx tests/bench/phrase-training.ts`; the same corpus gives the same table.
 */
import { writeFileSync } from 'node:fs';
import { readCorpus } from './harmony-corpus.ts';
import { learnPhrases } from './phrase-learning.ts';
import { hymnsIn } from './pupils/hymns/list.ts';

const target = new URL('../../src/harmony/reading/phrase-weights.ts', import.meta.url);
const weights = [...learnPhrases(readCorpus(), hymnsIn('learnt from'))]
  .map(([name, value]) => [name, Number(value.toFixed(2))] as const)
  .filter(([, value]) => value !== 0)
  .sort(([a], [b]) => (a < b ? -1 : 1));
writeFileSync(
  target,
  `/**
 * What speaks for and against a phrase's ending, by name (see phrase-model.ts). Written by
 * tests/bench/phrase-training.ts, not by hand: an averaged perceptron over the fermatas of the open chorales and
 * the lines of hymn tunes. Only sums are compared, so the unit has no meaning.
 */
export const PHRASE_WEIGHTS: Readonly<Record<string, number>> = {
${weights.map(([name, value]) => `  '${name}': ${value},`).join('\n')}
};
`,
);
