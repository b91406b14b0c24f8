/**
 * `npm run bench`: how long reading and reviewing take (`speed.ts`), and the consecutives found in open chorales beside
 * the published counts.
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
import { printSpeed } from './speed.ts';

const FOLDER = fileURLToPath(new URL('../../../shared/corpus/chorales', import.meta.url));

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

printSpeed(files.map(({ bytes }) => bytes));
printConsecutives();

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
