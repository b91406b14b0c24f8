/**
 * Where voices are still to be written, two or three notes allow many chords and keys; what stands around them tells
 * which are likely. The network says so, and the search weighs it beside all else.
 */
import type { Grid } from '../model/grid.ts';
import type { Leaning } from '../model/leaning.ts';
import { factsOf, placeFrom } from './facts.ts';
import { keyTold, ROOTS, run, TOLD, TYPES } from './network.ts';

/**
 * What a beat's logarithm of likelihood counts beside the weights, by which chorales with voices taken away are read
 * best; atoms beyond a beat count as one.
 */
const WORTH = { key: 0.5, root: 1, type: 0.8 } as const;
/** The same where all voices sing, in a piece that is not finished: they need it less. */
const ALL_SING = 0.3;
/** The logarithm of likelihood of a key too far away to be told. */
const FAR = -8;

/** Nothing where all is written: the search alone reads that best. */
export function leaningOf(grid: Grid, parameters: () => Float64Array): Leaning | undefined {
  if (!grid.unfinished || grid.atoms === 0) return undefined;
  const { told } = run(parameters(), factsOf(grid));
  const share = Float64Array.from({ length: grid.atoms }, (_, a) => {
    const beats = Math.min(1, (grid.until[a]! - grid.at[a]!) / grid.beat);
    return beats * (grid.few[a]! < 0 ? ALL_SING : 1);
  });
  const rootOver = toldOver(told, share, ROOTS);
  const typeOver = toldOver(told, share, TYPES);
  return {
    chord: (from, to, { root, type }) =>
      WORTH.root * rootOver(from, to, placeFrom(grid.signature[from]!, root)) +
      WORTH.type * typeOver(from, to, type),
    key: (atom, { tonic, mode }) => {
      const at = keyTold(grid.signature[atom]!, tonic, mode);
      return WORTH.key * share[atom]! * (at < 0 ? FAR : told[atom * TOLD + at]!);
    },
  };
}

/** What is told of each of a group over the atoms `from` to before `to`, each atom times its share. */
function toldOver(
  told: Float64Array,
  share: Float64Array,
  { from: first, size }: { readonly from: number; readonly size: number },
): (from: number, to: number, which: number) => number {
  /** By atom and which of the group: the sum over the atoms before. */
  const sums = new Float64Array((share.length + 1) * size);
  for (let a = 0; a < share.length; a++)
    for (let i = 0; i < size; i++)
      sums[(a + 1) * size + i] = sums[a * size + i]! + share[a]! * told[a * TOLD + first + i]!;
  return (from, to, which) => sums[to * size + which]! - sums[from * size + which]!;
}
