/**
 * Learns what the reading weighs by, `src/harmony/reading/model/weights.ts` and
 * `src/harmony/reading/thin/parameters.ts`, from the open chorales and writes both.
 * Run with `npx tsx tests/bench/harmony-training.ts` (`network` after it: the second alone); the same corpus gives the
 * same files.
 */
import { writeFileSync } from 'node:fs';
import { parseTable, printTable } from '../../src/harmony/reading/model/table.ts';
import { TABLE } from '../../src/harmony/reading/model/weights.ts';
import { printParameters } from '../../src/harmony/reading/thin/characters.ts';
import { readCorpus } from './harmony-corpus.ts';
import { learn, TRAINING } from './harmony-learning.ts';
import { learnNetwork } from './thin-learning.ts';

const reading = new URL('../../src/harmony/reading/', import.meta.url);
const pieces = readCorpus();

function writeTable(): Float64Array {
  const weights = learn(pieces, TRAINING);
  writeFileSync(
    new URL('model/weights.ts', reading),
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
  return weights;
}

const weights = process.argv[2] === 'network' ? parseTable(TABLE) : writeTable();
writeFileSync(
  new URL('thin/parameters.ts', reading),
  `/**
 * The parameters of the network for what is still to be written (see network.ts, characters.ts). Written by
 * tests/bench/harmony-training.ts, not by hand: learnt from the open chorales and their human analyses (D. Tymoczko
 * and colleagues, as published in the When in Rome meta-corpus) and from chorales composed by a machine (O. Peracha,
 * The JS Fake Chorales, 2021, CC BY 4.0) as our own search reads them, with voices and bars taken away.
 */
export const NETWORK = \`
${printParameters(learnNetwork(pieces, weights))}
\`;
`,
);
