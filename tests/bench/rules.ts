/**
 * `npm run bench:rules [-- RULE…] [--plants=50] [--seed=1] [--trial]`
 *
 * (1) Planted faults: open chorales altered in one note, or few, so that exactly one fault arises, by a plain
 * definition of the bench's own; how many of them the rule finds, and by what name. (2) Quiet on masters: what the
 * rules say about the unaltered chorales. Beats are crotchets. With `--trial`: what trying every note would add to how
 * causes are settled, and what it costs; slow.
 */
import { CHORALE } from '../../src/profiles/profile.ts';
import { reviewScore } from '../../src/review/review.ts';
import { PLANTERS } from './rules/all.ts';
import { corpusIsThere, readPieces } from './rules/corpus.ts';
import { measure, plantsFor, unplanted } from './rules/plant.ts';
import { printPlanted, printQuiet, printSlips } from './rules/print.ts';
import { listen } from './rules/quiet.ts';
import { printTrials, trialOf } from './rules/trial.ts';

if (!corpusIsThere()) {
  console.log('No chorales at ../shared/corpus/chorales: nothing to measure.');
  process.exit(0);
}

const named = process.argv.slice(2).filter((word) => !word.startsWith('--'));
const option = (name: string, otherwise: number) => {
  const word = process.argv.find((w) => w.startsWith(`--${name}=`));
  return word === undefined ? otherwise : Number(word.slice(name.length + 3));
};
const wanted = option('plants', 50);
const seed = option('seed', 1);

const pieces = readPieces();
const planters = PLANTERS.filter((planter) => named.length === 0 || named.includes(planter.rule));
const plants = planters.map((planter, i) => ({
  planter,
  plants: plantsFor(planter, pieces, wanted, seed + i),
}));
const results = plants.map(({ planter, plants }) => measure(planter, plants));
printPlanted(results, named.length === 0 ? unplanted(PLANTERS) : []);
printSlips(results);
if (process.argv.includes('--trial'))
  printTrials(
    plants.flatMap(({ plants }) => plants.map((plant) => trialOf(plant, reviewScore(plant.score, CHORALE)))),
  );
printQuiet(listen(pieces), pieces.length);
