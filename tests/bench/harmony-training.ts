/**
 * Learns the weight table of `src/harmony/reading/model/weights.ts` from the open chorales and writes it.
 * Run with `npx tsx tests/bench/harmony-training.ts`; the same corpus gives the same table.
 */
import { writeFileSync } from 'node:fs';
import { printTable } from '../../src/harmony/reading/model/table.ts';
import { readCorpus } from './harmony-corpus.ts';
import { learn, TRAINING } from './harmony-learning.ts';

const target = new URL('../../src/harmony/reading/model/weights.ts', import.meta.url);
const weights = learn(readCorpus(), TRAINING);
writeFileSync(
  target,
  `/**
 * The weights of the reading, by family of features and by name (see layout.ts). Written by
 * tests/bench/harmony-training.ts, not by hand: averaged perceptrons over the open chorales and their human
 * analyses (D. Tymoczko and colleagues, as published in the When in Rome meta-corpus). Only sums are compared, so
 * the unit has no meaning; greater is likelier.
 */
export const TABLE = \`
${printTable(weights, 2)}
\`;
`,
);
