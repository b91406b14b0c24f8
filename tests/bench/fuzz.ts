/**
 * `npm run fuzz`: the hardest files within the limits, whose slowest is told in processor seconds; how the time of a
 * review grows; then 100,000 damaged texts, XML files and archives through every door. `-- --runs 5000 --seed 7`
 * takes fewer, or repeats a run.
 */
import { performance } from 'node:perf_hooks';
import { parseArgs } from 'node:util';
import fc from 'fast-check';
import reviewScript from '../../server/desk/review-script.ts';
import { openBrief } from '../../src/brief/open-brief.ts';
import { decodeText } from '../../src/musicxml/index.ts';
import { openScore, readyFor } from '../../src/open/open.ts';
import { DEFAULT_PROFILE } from '../../src/profiles/list.ts';
import { jsonReview } from '../../src/report/json.ts';
import { reviewScore } from '../../src/review/review.ts';
import { damaged, damages, seedlings } from '../support/mutate.ts';
import { survive } from '../support/survival.ts';
import { everythingWrong, fermatasInEachBar, worstCases } from '../support/worst-cases.ts';

const SECONDS = 2;
const MEBIBYTES = 512;

/** Ten times the bars may take ten times as long. */
const GROWTH = 10;
const LONG_BARS = 400;

/** What costs work, wherever bytes come in: a request of the page, a brief, a script on the desk with itself as brief. */
const DOORS: Readonly<Record<string, (bytes: Uint8Array) => void>> = {
  'a review': review,
  'a brief': openBrief,
  'a script': (bytes) => {
    const brief = decodeText(bytes);
    const task = { file: 'worst', content: bytes, profile: DEFAULT_PROFILE };
    JSON.stringify(reviewScript(brief === undefined ? task : { ...task, brief }));
  },
};

const { values } = parseArgs({ options: { runs: { type: 'string' }, seed: { type: 'string' } } });
const numRuns = Number(values.runs ?? 100_000);
const seed = Number(values.seed ?? Date.now() | 0);

await readyFor('abc');
printWorst();
printGrowth();

/** What one request costs: reading, reviewing, writing the answer. */
function review(bytes: Uint8Array): void {
  const opened = openScore(bytes);
  if (opened.ok) JSON.stringify(jsonReview('worst', reviewScore(opened.score, DEFAULT_PROFILE)));
}

/** Processor seconds. Other work on the machine makes them more, never fewer: of several runs the quickest counts. */
function seconds(run: () => void, times = 2): number {
  const once = (): number => {
    const from = process.cpuUsage();
    run();
    const used = process.cpuUsage(from);
    return (used.user + used.system) / 1_000_000;
  };
  return Math.min(...Array.from({ length: times }, once));
}

function printWorst(): void {
  const took = [...worstCases()].flatMap(({ name, bytes }) =>
    Object.entries(DOORS).map(([door, enter]) => ({
      name: `${name}, as ${door}`,
      kB: Math.round(bytes.length / 1024),
      seconds: Number(seconds(() => enter(bytes)).toFixed(2)),
    })),
  );
  console.log(`The hardest files at every door; the ten slowest of ${took.length}:`);
  console.table(took.toSorted((a, b) => b.seconds - a.seconds).slice(0, 10));
  for (const { name, seconds } of took) {
    if (seconds <= SECONDS) continue;
    console.log(`FAILED: ${name} took ${seconds} s of processor; at most ${SECONDS} are allowed`);
    process.exitCode = 1;
  }
}

function printGrowth(): void {
  for (const [name, text] of [
    ['fermatas in each bar', fermatasInEachBar],
    ['everything wrong', everythingWrong],
  ] as const) {
    const [short, long] = [LONG_BARS / GROWTH, LONG_BARS].map((bars) => {
      const bytes = new TextEncoder().encode(text(bars));
      return seconds(() => review(bytes), 6);
    }) as [number, number];
    const times = long / short;
    console.log(`${name}: ${LONG_BARS} bars take ${times.toFixed(1)} times as long as ${LONG_BARS / GROWTH}`);
    if (times <= GROWTH) continue;
    console.log(`FAILED: at most ${GROWTH} times is allowed`);
    process.exitCode = 1;
  }
}

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
