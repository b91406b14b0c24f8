/**
 * `npm run fuzz`: 100,000 damaged texts, XML files and archives through every door. `-- --runs 5000 --seed 7` takes
 * fewer, or repeats a run.
 */
import { performance } from 'node:perf_hooks';
import { parseArgs } from 'node:util';
import fc from 'fast-check';
import { damaged, damages, seedlings } from '../support/mutate.ts';
import { survive } from '../support/survival.ts';

const SECONDS = 2;
const MEBIBYTES = 512;

const { values } = parseArgs({ options: { runs: { type: 'string' }, seed: { type: 'string' } } });
const numRuns = Number(values.runs ?? 100_000);
const seed = Number(values.seed ?? Date.now() | 0);
const seeds = seedlings();
console.log(`${numRuns} damaged files, from ${seeds.length} whole ones; seed ${seed}`);

const fates: Record<string, number> = {};
let done = 0;
let slowest = 0;
let slowestFile = '';
let most = 0;
const began = performance.now();
const result = fc.check(
  fc.property(damages(seeds), (damage) => {
    const file = damaged(seeds, damage);
    // Processor time, so that a busy machine does not look like a hang.
    const from = process.cpuUsage();
    const fate = `${file.kind} ${survive(file)}`;
    const used = process.cpuUsage(from);
    const took = (used.user + used.system) / 1_000_000;
    if (took > slowest) {
      slowest = took;
      slowestFile = `${file.name} ${JSON.stringify(damage.mutations)}`;
    }
    if (took > SECONDS) throw new Error(`took ${took.toFixed(1)} s`);
    fates[fate] = (fates[fate] ?? 0) + 1;
    done++;
    if (done % 500 === 0) most = Math.max(most, process.memoryUsage().rss);
    if (done % 10_000 === 0)
      console.log(`${done} after ${((performance.now() - began) / 1000).toFixed(0)} s`);
    if (most > MEBIBYTES * 1024 * 1024) throw new Error(`grew to ${(most / 1024 / 1024).toFixed(0)} MiB`);
  }),
  { seed, numRuns },
);
console.table(fates);
console.log(
  `slowest ${slowest.toFixed(2)} s (limit ${SECONDS}: ${slowestFile.slice(0, 200)}); largest ${(most / 1024 / 1024).toFixed(0)} MiB (limit ${MEBIBYTES})`,
);
if (result.failed) {
  console.log(`FAILED after ${result.numRuns} files; repeat with --seed ${result.seed}`);
  const [damage] = result.counterexample ?? [];
  if (damage) console.log(seeds[damage.base]!.name, JSON.stringify(damage.mutations));
  console.log(result.errorInstance);
  process.exitCode = 1;
} else {
  console.log(`all ${numRuns} survived`);
}
