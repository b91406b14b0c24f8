/**
 * Learns the weight table of `src/harmony/model/weights.ts` from the open chorales and writes it.
 * Run with `npx tsx tests/bench/harmonyTraining.ts`; the same corpus gives the same table.
 */
import { writeFileSync } from 'node:fs';
import { printTable } from '../../src/harmony/model/table.ts';
import { readCorpus } from './harmonyCorpus.ts';
import { learn, TRAINING } from './harmonyLearning.ts';

const target = new URL('../../src/harmony/model/weights.ts', import.meta.url);
const weights = learn(readCorpus(), TRAINING);
writeFileSync(
  target,
  `/**
 * The weights of the reading, by family of features and by name (see layout.ts). Written by
 * tests/bench/harmonyTraining.ts, not by hand: averaged perceptrons over the open chorales and their human
 * analyses (D. Tymoczko and colleagues, as published in the When in Rome meta-corpus). Only sums are compared, so
 * the unit has no meaning; greater is likelier.
 */
export const TABLE = \`
${printTable(weights, 2)}
\`;
`,
);
