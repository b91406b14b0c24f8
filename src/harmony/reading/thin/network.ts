/**
 * A small network that says, where voices are missing, what the notes around lean to: for each atom how likely each
 * key, root and kind of chord is. The facts of an atom are summed, then five layers look at the atoms beside it,
 * each twice as far as the one before.
 */
import { CHORD_TYPES } from '../../chord-types.ts';
import { FACTS, PLACES } from './facts.ts';

/** Numbers kept for each atom from layer to layer. */
export const WIDTH = 24;
/** How far each layer looks to both sides, in atoms. */
const REACHES = [1, 2, 4, 8, 16] as const;
/** Keys lie so far on the line of fifths from the signature's own, at most. */
const FARTHEST = 6;
const KEYS_OF_MODE = 2 * FARTHEST + 1;

/** What is told: of each group one comes true, and the network shares out the likelihood among them. */
const KEYS = { from: 0, size: 2 * KEYS_OF_MODE };
export const ROOTS = { from: KEYS.size, size: PLACES };
export const TYPES = { from: KEYS.size + PLACES, size: CHORD_TYPES.length };
export const GROUPS = [KEYS, ROOTS, TYPES] as const;
export const TOLD = TYPES.from + TYPES.size;

/** A block of parameters: where it begins, how many it has, and how many are summed in each of its sums. */
export interface Block {
  readonly from: number;
  readonly size: number;
  readonly summed: number;
}

let total = 0;
function block(size: number, summed: number): Block {
  total += size;
  return { from: total - size, size, summed };
}

/** A row of WIDTH for each fact. */
export const EMBEDDING = block(FACTS * WIDTH, 1);
export const EMBEDDING_BIAS = block(WIDTH, 1);
/** For each layer: what it looks at (before, at and after the atom; then from, to), and how it mixes what it saw. */
export const LAYERS = REACHES.map((reach) => ({
  reach,
  look: block(3 * WIDTH * WIDTH, 3 * WIDTH),
  lookBias: block(WIDTH, 3 * WIDTH),
  mix: block(WIDTH * WIDTH, WIDTH),
  mixBias: block(WIDTH, WIDTH),
}));
export const TELLING = block(WIDTH * TOLD, WIDTH);
export const TELLING_BIAS = block(TOLD, WIDTH);
export const BLOCKS: readonly Block[] = [
  EMBEDDING,
  EMBEDDING_BIAS,
  ...LAYERS.flatMap(({ look, lookBias, mix, mixBias }) => [look, lookBias, mix, mixBias]),
  TELLING,
  TELLING_BIAS,
];
/** All parameters, in one array. */
export const PARAMETERS = total;

/** What went through the network: atoms × WIDTH before each layer and after the last, atoms × WIDTH seen in each, and what is told. */
export interface Run {
  readonly states: readonly Float64Array[];
  readonly seen: readonly Float64Array[];
  /** Atoms × TOLD: the logarithm of each likelihood. */
  readonly told: Float64Array;
}

/**
 * Runs the network over a piece.
 *
 * @param facts of each atom ({@link factsOf})
 * @param masks while learning: for each layer what is seen is multiplied by this
 */
export function run(
  parameters: Float64Array,
  facts: readonly (readonly number[])[],
  masks?: readonly Float64Array[],
): Run {
  const atoms = facts.length;
  const states = [embed(parameters, facts)];
  const seen: Float64Array[] = [];
  for (const [l, layer] of LAYERS.entries()) {
    const before = states[l]!;
    const sight = new Float64Array(atoms * WIDTH);
    const after = before.slice();
    const mask = masks?.[l];
    for (let a = 0; a < atoms; a++) {
      const row = sight.subarray(a * WIDTH, (a + 1) * WIDTH);
      start(row, parameters, layer.lookBias);
      for (let side = 0; side < 3; side++) {
        const b = a + (side - 1) * layer.reach;
        if (b >= 0 && b < atoms)
          multiply(parameters, layer.look.from + side * WIDTH * WIDTH, before, b * WIDTH, row);
      }
      for (let i = 0; i < WIDTH; i++) {
        if (row[i]! < 0) row[i] = 0;
        else if (mask !== undefined) row[i]! *= mask[a * WIDTH + i]!;
      }
      const sum = after.subarray(a * WIDTH, (a + 1) * WIDTH);
      for (let i = 0; i < WIDTH; i++) sum[i]! += parameters[layer.mixBias.from + i]!;
      multiply(parameters, layer.mix.from, sight, a * WIDTH, sum);
    }
    seen.push(sight);
    states.push(after);
  }
  return { states, seen, told: tell(parameters, states.at(-1)!, atoms) };
}

function embed(parameters: Float64Array, facts: readonly (readonly number[])[]): Float64Array {
  const state = new Float64Array(facts.length * WIDTH);
  for (const [a, list] of facts.entries()) {
    const row = state.subarray(a * WIDTH, (a + 1) * WIDTH);
    start(row, parameters, EMBEDDING_BIAS);
    for (const fact of list) {
      const from = EMBEDDING.from + fact * WIDTH;
      for (let i = 0; i < WIDTH; i++) row[i]! += parameters[from + i]!;
    }
    for (let i = 0; i < WIDTH; i++) if (row[i]! < 0) row[i] = 0;
  }
  return state;
}

function tell(parameters: Float64Array, state: Float64Array, atoms: number): Float64Array {
  const told = new Float64Array(atoms * TOLD);
  for (let a = 0; a < atoms; a++) {
    const row = told.subarray(a * TOLD, (a + 1) * TOLD);
    start(row, parameters, TELLING_BIAS);
    multiply(parameters, TELLING.from, state, a * WIDTH, row);
    for (const { from, size } of GROUPS) {
      let top = Number.NEGATIVE_INFINITY;
      for (let i = from; i < from + size; i++) top = Math.max(top, row[i]!);
      let sum = 0;
      for (let i = from; i < from + size; i++) sum += Math.exp(row[i]! - top);
      const whole = top + Math.log(sum);
      for (let i = from; i < from + size; i++) row[i]! -= whole;
    }
  }
  return told;
}

function start(row: Float64Array, parameters: Float64Array, bias: Block): void {
  for (let i = 0; i < row.length; i++) row[i] = parameters[bias.from + i]!;
}

/** Adds to `row` the WIDTH numbers of `state` from `at` on, each times its line of the matrix. */
function multiply(
  parameters: Float64Array,
  matrix: number,
  state: Float64Array,
  at: number,
  row: Float64Array,
): void {
  const size = row.length;
  for (let j = 0; j < WIDTH; j++) {
    const value = state[at + j]!;
    if (value === 0) continue;
    const line = matrix + j * size;
    for (let i = 0; i < size; i++) row[i]! += value * parameters[line + i]!;
  }
}

/** Where a key is told; -1 where it lies too far from the signature. */
export function keyTold(signature: number, tonic: number, mode: number): number {
  const distance = tonic - signature - 3 * mode + FARTHEST;
  return distance < 0 || distance >= KEYS_OF_MODE ? -1 : KEYS.from + mode * KEYS_OF_MODE + distance;
}
