/**
 * `npm run bench`: open chorales reviewed per second, read and reviewed apart, and the consecutives found in them
 * beside the published counts.
 *
 * Sources. 18 parallel-fifth passages in the 371 chorales: G. Fitsioris and D. Conklin, "Parallel successions of
 * perfect fifths in the Bach chorales", CIM 2008. 46 consecutives of all kinds in about 410 chorales, 26 of them
 * across a fermata, 13 with non-harmony notes, 7 between chords: L. Dahn, 2016.
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Consecutive, consecutivesIn } from '../../src/harmony/questions/consecutives.ts';
import { openScore } from '../../src/open/open.ts';
import { CHORALE } from '../../src/profiles/profile.ts';
import { printVoices } from '../../src/report/sentences.ts';
import { type Review, reviewScore } from '../../src/review/review.ts';
import { placeAt, printPlace } from '../../src/score/place.ts';
import type { Score } from '../../src/score/score.ts';

const FOLDER = fileURLToPath(new URL('../../../shared/corpus/chorales', import.meta.url));
const ROUNDS = 5;

if (!existsSync(FOLDER)) {
  console.log('No chorales at ../shared/corpus/chorales: nothing to measure.');
  process.exit(0);
}

const files = readdirSync(FOLDER)
  .filter((name) => name.endsWith('.mxl'))
  .map((name) => ({ name, bytes: readFileSync(`${FOLDER}/${name}`) }));

const read = files.map(({ name, bytes }) => ({ name, opened: openScore(bytes) }));
for (const { name, opened } of read) {
  if (!opened.ok) console.log(`${name} could not be read: ${opened.message}`);
}
const scores = read.flatMap(({ name, opened }) => (opened.ok ? [{ name, score: opened.score }] : []));
const reviews = scores.map(({ name, score }) => ({ name, review: reviewScore(score, CHORALE) }));

printSpeed();
printConsecutives();

function printSpeed(): void {
  const reading: number[] = [];
  const reviewing: number[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    for (const { bytes } of files) reading.push(timed(() => openScore(bytes)));
    for (const { score } of scores) reviewing.push(timed(() => reviewScore(score, CHORALE)));
  }
  const perFile = mean(reading) + mean(reviewing);
  console.log(`${files.length} chorales, ${scores.length} read; ${ROUNDS} rounds after one to warm up`);
  console.log(
    `  reading    mean ${ms(mean(reading))}, median ${ms(median(reading))}, worst ${ms(Math.max(...reading))}`,
  );
  console.log(
    `  reviewing  mean ${ms(mean(reviewing))}, median ${ms(median(reviewing))}, worst ${ms(Math.max(...reviewing))}`,
  );
  console.log(`  ${(1000 / perFile).toFixed(0)} chorales read and reviewed per second on one core`);
}

function printConsecutives(): void {
  const found = reviews.flatMap(({ name, review }) =>
    parallelsOf(review).map((consecutive) => ({ name, score: review.score, consecutive })),
  );
  const across = found.filter(({ consecutive }) => consecutive.acrossFermata);
  const inside = found.filter(({ consecutive }) => !consecutive.acrossFermata);
  const ornamental = inside.filter(({ consecutive }) => consecutive.ornaments.length > 0);
  const betweenChords = inside.filter(({ consecutive }) => consecutive.ornaments.length === 0);
  const fifths = found.filter(({ consecutive }) => consecutive.interval === 'fifth');
  const row = (what: string, here: number, published: string) =>
    console.log(`  ${what.padEnd(46)}${String(here).padStart(5)}   ${published}`);
  console.log(`\nParallel fifths, octaves and unisons from chord to chord in ${scores.length} chorales`);
  row('parallel fifths', fifths.length, '18 passages in 371 chorales (Fitsioris and Conklin 2008)');
  row('consecutives of all kinds', found.length, '46 in about 410 (Dahn 2016), of which');
  row('across a fermata', across.length, '26');
  row('with non-harmony notes', ornamental.length, '13');
  row('between chords', betweenChords.length, '7');
  for (const { name, score, consecutive } of betweenChords) print(name, score, consecutive);
}

/** Similar motion, directly from one chord to another: a change of position inside one chord is not counted. */
function parallelsOf(review: Review): Consecutive[] {
  return consecutivesIn(review.analysis).filter(
    ({ motion, way, changeOfPosition }) => motion === 'similar' && way === 'direct' && !changeOfPosition,
  );
}

function print(name: string, score: Score, { interval, pair, from }: Consecutive): void {
  console.log(`      ${name} ${printPlace(placeAt(score, from))}: ${interval}s between ${printVoices(pair)}`);
}

function timed(run: () => void): number {
  const start = performance.now();
  run();
  return performance.now() - start;
}

function mean(numbers: readonly number[]): number {
  return numbers.reduce((sum, n) => sum + n, 0) / numbers.length;
}

function median(numbers: readonly number[]): number {
  return numbers.toSorted((a, b) => a - b)[numbers.length >> 1] ?? 0;
}

function ms(milliseconds: number): string {
  return `${milliseconds.toFixed(2)} ms`;
}
