/**
 * How much independent harmonisations of one tune agree: derives the table in `src/desk/independent.ts` from the open
 * chorales that set the same tune more than once.
 *
 *     npx tsx tests/bench/likeness.ts            prints the distribution
 *     npx tsx tests/bench/likeness.ts --write    writes the table
 *
 * Two chorales set one tune when, transposed alike, the sopranos of at least 60 % of the shorter one's bars are the
 * same for three quarters of the time. A pair that is one piece printed twice (the same catalogue number, or nine
 * tenths of the added voices alike) is no pair of independent harmonisations and is set aside, and counted.
 */
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { likenessPrint } from '../../src/desk/fingerprint.ts';
import { rarityOf } from '../../src/desk/like-pairs.ts';
import { type Comparable, comparable, type Likeness, likenessOf } from '../../src/desk/likeness.ts';
import { openScore } from '../../src/open/open.ts';

const FOLDER = fileURLToPath(new URL('../../../shared/corpus/chorales', import.meta.url));
const TABLE = fileURLToPath(new URL('../../src/desk/independent.ts', import.meta.url));
const SAME_TUNE = 0.6;
const SAME_PIECE = 0.9;

if (!existsSync(FOLDER)) {
  console.log('Skipped: the open chorales are not here (../shared/corpus/chorales).');
  process.exit(0);
}

interface Piece {
  readonly name: string;
  readonly works: readonly string[];
  readonly comparable: Comparable;
}

const pieces = readdirSync(FOLDER)
  .filter((name) => name.endsWith('.mxl'))
  .flatMap((name): Piece[] => {
    const opened = openScore(readFileSync(`${FOLDER}/${name}`));
    if (!opened.ok) return [];
    const { bwv } = JSON.parse(readFileSync(`${FOLDER}/${name.replace('.mxl', '.json')}`, 'utf8')) as {
      bwv: string;
    };
    return [
      {
        name: name.replace('.mxl', ''),
        works: String(bwv).split('='),
        comparable: comparable(likenessPrint(opened.score)),
      },
    ];
  });

interface Pair {
  readonly pair: string;
  readonly likeness: Likeness;
  readonly share: number;
  readonly wholeBars: number;
}

const pairs: Pair[] = [];
const tuneOf = new Map<string, string>();
const doubles: Likeness[] = [];
let sameWork = 0;
let alike = 0;
for (const [i, a] of pieces.entries()) {
  for (const b of pieces.slice(i + 1)) {
    const found = likenessOf(a.comparable, b.comparable);
    const shorter = Math.min(a.comparable.bars.length, b.comparable.bars.length);
    if (found.compared < SAME_TUNE * shorter) continue;
    const sameNumber = a.works.some((work) => b.works.includes(work));
    if (sameNumber || found.share >= SAME_PIECE) doubles.push(found);
    if (sameNumber) sameWork++;
    else if (found.share >= SAME_PIECE) alike++;
    else {
      const tune = tuneOf.get(a.name) ?? a.name;
      tuneOf.set(a.name, tune).set(b.name, tune);
      pairs.push({
        pair: `${a.name} ${b.name}`,
        likeness: found,
        share: found.share,
        wholeBars: found.wholeBars / found.compared,
      });
    }
  }
}
pairs.sort((a, b) => b.share - a.share);

/** The value below which a hundredth, two hundredths … of the pairs lie, in thousandths: 101 of them, the least first. */
function hundredths(values: readonly number[]): number[] {
  const sorted = [...values].sort((a, b) => a - b);
  return Array.from({ length: 101 }, (_, p) => {
    const value = sorted[Math.round((p / 100) * (sorted.length - 1))]!;
    return Math.round(value * 1000);
  });
}

const shares = hundredths(pairs.map(({ share }) => share));
const wholeBars = hundredths(pairs.map((pair) => pair.wholeBars));
const tunes = new Set(tuneOf.values()).size;
console.log(`${pieces.length} chorales; ${pairs.length} pairs of independent settings of ${tunes} tunes.`);
console.log(
  `Set aside: ${sameWork} pairs with one catalogue number, ${alike} more that agree in ${SAME_PIECE * 100} % or more.`,
);
for (const [what, values] of [
  ['added voices alike', shares],
  ['whole bars alike', wholeBars],
] as const) {
  const row = [0, 10, 25, 50, 75, 90, 95, 99, 100].map((p) => `${p} %: ${(values[p]! / 1000).toFixed(2)}`);
  console.log(`${what.padEnd(20)} ${row.join('   ')}`);
}
console.log(
  `Nearest pairs: ${pairs
    .slice(0, 8)
    .map(({ pair, share }) => `${pair} (${share.toFixed(2)})`)
    .join(', ')}`,
);

const pointedOut = (found: readonly Likeness[]) => found.filter((one) => rarityOf(one).unusual).length;
console.log(
  `By the table in use ${pointedOut(doubles)} of ${doubles.length} pieces printed twice are pointed out, and ${pointedOut(pairs.map(({ likeness }) => likeness))} of ${pairs.length} independent pairs.`,
);

if (process.argv.includes('--write')) {
  writeFileSync(
    TABLE,
    `/**
 * How much independent harmonisations of one tune agree, from the open chorales that set the same tune more than once;
 * derived by tests/bench/likeness.ts, which says how. Of all pairs p % agree in no more than \`shares[p]\` thousandths of
 * the added voices' time (\`wholeBars[p]\`: of the bars compared, those alike in all three added voices).
 */
export const INDEPENDENT: {
  /** Pairs of settings, and how many tunes they set. */
  readonly pairs: number;
  readonly tunes: number;
  readonly shares: readonly number[];
  readonly wholeBars: readonly number[];
} = {
  pairs: ${pairs.length},
  tunes: ${tunes},
  shares: ${JSON.stringify(shares)},
  wholeBars: ${JSON.stringify(wholeBars)},
};
`,
  );
  console.log(`Written: ${TABLE}`);
}
