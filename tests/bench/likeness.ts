/**
 * Derives `src/desk/independent.ts`: how much independent harmonisations of one tune agree, from the open chorales
 * that set the same tune more than once. `tsx tests/bench/likeness.ts` prints the file's content.
 *
 * Two chorales set the same tune when their sopranos, crotchet by crotchet and whatever the key, agree in 90 % of the
 * shorter one or more. Chorales that agree in all voices throughout are the same piece printed twice, and are left out.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { likeness, type Skeleton, skeletonOf } from '../../src/desk/likeness.ts';
import { openScore } from '../../src/open/open.ts';

const FOLDER = fileURLToPath(new URL('../../../shared/corpus/chorales', import.meta.url));
const SAME_TUNE = 0.9;
/** The same piece twice, not two harmonisations. */
const SAME_PIECE = 0.8;

const skeletons = readdirSync(FOLDER)
  .filter((name) => name.endsWith('.mxl'))
  .flatMap((name): { name: string; skeleton: Skeleton }[] => {
    const opened = openScore(readFileSync(`${FOLDER}/${name}`));
    return opened.ok ? [{ name, skeleton: skeletonOf(opened.score) }] : [];
  });

const found: { pair: string; share: number; longest: number }[] = [];
let doubles = 0;
for (const [i, a] of skeletons.entries()) {
  for (const b of skeletons.slice(i + 1)) {
    if (tuneShare(a.skeleton.tune, b.skeleton.tune) < SAME_TUNE) continue;
    const { share, longest } = likeness(a.skeleton, b.skeleton);
    if (share >= SAME_PIECE) doubles++;
    else found.push({ pair: `${a.name} ${b.name}`, share, longest });
  }
}
found.sort((a, b) => b.share - a.share);
console.error(`${found.length} pairs of one tune, ${doubles} pieces printed twice set aside`);
for (const { pair, share, longest } of found.slice(0, 20))
  console.error(`  ${pair} ${share.toFixed(3)} ${longest}`);
console.log(`/**
 * How much independent harmonisations of one tune agree: ${found.length} pairs of open chorales that set the same tune,
 * each with the share of crotchets in which alto, tenor and bass all agree, and the longest unbroken agreement in
 * crotchets. Derived by tests/bench/likeness.ts from the 196 open chorales; sorted, so that nothing says which is which.
 */
export const INDEPENDENT: { readonly shares: readonly number[]; readonly runs: readonly number[] } = {
  shares: ${JSON.stringify(found.map(({ share }) => Number(share.toFixed(3))))},
  runs: ${JSON.stringify(found.map(({ longest }) => longest).sort((a, b) => b - a))},
};`);

/** Share of the shorter tune that is common to both, in order. */
function tuneShare(a: readonly string[], b: readonly string[]): number {
  let previous = new Array<number>(b.length + 1).fill(0);
  for (const step of a) {
    const row = [0];
    for (const [j, other] of b.entries()) {
      row.push(step === other ? previous[j]! + 1 : Math.max(previous[j + 1]!, row[j]!));
    }
    previous = row;
  }
  return previous[b.length]! / Math.min(a.length, b.length);
}
