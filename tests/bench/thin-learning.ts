/**
 * Learns the network of `src/harmony/reading/thin`: gradient descent (Adam with decaying steps) on pieces with voices
 * and bars taken away, towards the reading of the whole piece.
 */
import { analyse } from '../../src/harmony/analyse.ts';
import { CHORD_TYPES } from '../../src/harmony/chord-types.ts';
import { gridOf } from '../../src/harmony/reading/model/grid.ts';
import { phrasesOf } from '../../src/harmony/reading/phrases.ts';
import { factsOf, placeFrom } from '../../src/harmony/reading/thin/facts.ts';
import {
  BLOCKS,
  EMBEDDING,
  EMBEDDING_BIAS,
  GROUPS,
  keyTold,
  LAYERS,
  PARAMETERS,
  ROOTS,
  type Run,
  run,
  TELLING,
  TELLING_BIAS,
  TOLD,
  TYPES,
  WIDTH,
} from '../../src/harmony/reading/thin/network.ts';
import type { Score } from '../../src/score/score.ts';
import { type Texture, textureOf } from '../../src/score/texture.ts';
import { CROTCHET } from '../../src/score/time.ts';
import { type Chance, chance, shuffled } from '../support/chance.ts';
import type { HumanLabel, Piece } from './harmony-corpus.ts';
import { atomLabels } from './harmony-learning.ts';
import { readingsOf } from './harmony-measure.ts';
import { machineMadePresent, readMachineMade } from './machine-made.ts';
import { plainExercises } from './plain-exercises.ts';
import { stopping, withoutBars, withoutFermatas, withoutVoices } from './pupils/thin.ts';

/** What is taken away, and how often each comes. */
const THINNINGS: readonly { readonly often: number; readonly thin: (score: Score) => Score }[] = [
  { often: 1, thin: (score) => score },
  { often: 3, thin: (score) => withoutVoices(score, ['T']) },
  { often: 2, thin: (score) => withoutVoices(score, ['A']) },
  { often: 4, thin: (score) => withoutVoices(score, ['A', 'T']) },
  { often: 1.5, thin: (score) => withoutVoices(withoutFermatas(score), ['T']) },
  { often: 2, thin: (score) => withoutVoices(withoutFermatas(score), ['A', 'T']) },
  { often: 1, thin: (score) => withoutBars(score, (bar) => bar % 3 === 2) },
  { often: 1.5, thin: (score) => stopping(score, 'T', Math.floor(score.bars.length / 2)) },
];

/** What counts in a lesson: key, root, and kind of chord. */
const WORTH = [1, 1, 0.5] as const;
const EPOCHS = 50;
/** So many plain exercises, and what they are made from. */
const PLAIN = 200;
const PLAIN_SEED = 1;
/** Pieces that make one step. */
const BATCH = 6;
const STEP = 3e-3;
const LEAST_STEP = 1e-5;
const DECAY = 0.1;
/** A fact is left out, and what a layer sees is left out, by such chances: so nothing hangs on one of them. */
const FACT_LEFT_OUT = 0.15;
const SIGHT_LEFT_OUT = 0.3;
/** Nobody is quite sure: so much of the likelihood is to go to the rest. */
const DOUBT = 0.03;
const LONGEST_STEP = 1;

/** One piece, thinned in one way. */
interface Thinned {
  readonly facts: readonly (readonly number[])[];
  /** For each atom what of each group is true, or -1; and its length. */
  readonly truth: readonly (readonly number[])[];
  readonly lengths: Float64Array;
}

type Lesson = readonly Thinned[];

/** The piece as lessons, one for each thinning. */
function lessonOf(piece: Piece): Lesson {
  return THINNINGS.map(({ thin }) => thinned(piece, textureOf(thin(piece.texture.score))));
}

function thinned(piece: Piece, texture: Texture): Thinned {
  const grid = gridOf(texture, phrasesOf(texture));
  const labels = atomLabels({ ...piece, grid });
  return {
    facts: factsOf(grid),
    truth: labels.map((label, a) => {
      const signature = grid.signature[a]!;
      return [
        keyTold(signature, label.tonic, label.mode),
        ROOTS.from + placeFrom(signature, label.root),
        TYPES.from + label.type,
      ];
    }),
    lengths: Float64Array.from(labels, (_, a) => (grid.until[a]! - grid.at[a]!) / CROTCHET),
  };
}

/**
 * Learns the parameters from the pieces as people read them; from the machine-made chorales, where they are there, as
 * the search reads them whole by `weights`, since what is asked of the network is what can be told of music from a part
 * of it; and from plain exercises whose chords are known. Deterministic: the same pieces give the same parameters.
 */
export function learnNetwork(pieces: readonly Piece[], weights: Float64Array): Float64Array {
  const random = chance(1);
  const lessons = [...pieces, ...machineMadeAsRead(weights), ...plainExercises(PLAIN, PLAIN_SEED)].map(
    lessonOf,
  );
  const learner = new Learner(random);
  for (let epoch = 0; epoch < EPOCHS; epoch++) {
    const step = (STEP / 2) * (1 + Math.cos((Math.PI * epoch) / EPOCHS)) + LEAST_STEP;
    const order = shuffled(lessons, random);
    for (let i = 0; i < order.length; i += BATCH) {
      const batch = order.slice(i, i + BATCH);
      learner.learn(
        batch.map((lesson) => lesson[anyThinning(random)]!),
        step,
      );
    }
  }
  return learner.parameters;
}

function machineMadeAsRead(weights: Float64Array): Piece[] {
  if (!machineMadePresent()) return [];
  return readMachineMade().map(({ name, score }) => {
    const texture = textureOf(score);
    const labels = readingsOf(analyse(texture, { weights })).map((reading): HumanLabel => {
      const { quality, offsets } = CHORD_TYPES[reading.type]!;
      const bass = reading.root + offsets[reading.inversion]!;
      return { ...reading, bass, quality, seventh: offsets.length > 3, figure: '' };
    });
    return { name, title: name, texture, grid: gridOf(texture, phrasesOf(texture)), labels, tune: -1 };
  });
}

function anyThinning(random: Chance): number {
  let left = random() * THINNINGS.reduce((sum, { often }) => sum + often, 0);
  return Math.max(
    0,
    THINNINGS.findIndex(({ often }) => {
      left -= often;
      return left < 0;
    }),
  );
}

class Learner {
  readonly parameters = new Float64Array(PARAMETERS);
  private readonly slope = new Float64Array(PARAMETERS);
  private readonly mean = new Float64Array(PARAMETERS);
  private readonly square = new Float64Array(PARAMETERS);
  private steps = 0;

  constructor(private readonly random: Chance) {
    for (const { from, size, summed } of BLOCKS) {
      const bound = from === EMBEDDING.from ? 0.26 : from === EMBEDDING_BIAS.from ? 0 : 1 / Math.sqrt(summed);
      for (let i = from; i < from + size; i++) this.parameters[i] = bound * (2 * random() - 1);
    }
  }

  /** One step down the slope of a batch. */
  learn(batch: readonly Thinned[], step: number): void {
    this.slope.fill(0);
    const whole = batch.reduce((sum, { lengths }) => sum + lengths.reduce((a, b) => a + b, 0), 0);
    for (const piece of batch) this.addSlope(piece, whole);
    this.descend(step);
  }

  private addSlope(piece: Thinned, whole: number): void {
    const { random } = this;
    const facts = piece.facts.map((list) => list.filter(() => random() >= FACT_LEFT_OUT));
    const kept = 1 / (1 - SIGHT_LEFT_OUT);
    const masks = LAYERS.map(() =>
      Float64Array.from({ length: facts.length * WIDTH }, () => (random() < SIGHT_LEFT_OUT ? 0 : kept)),
    );
    const gone = run(this.parameters, facts, masks);
    addSlopes(this.parameters, facts, gone, masks, wrongness(piece, gone.told, whole), this.slope);
  }

  private descend(step: number): void {
    const { parameters, slope, mean, square } = this;
    this.steps++;
    let length = 0;
    for (let i = 0; i < PARAMETERS; i++) length += slope[i]! * slope[i]!;
    const shrink = Math.min(1, LONGEST_STEP / Math.sqrt(length + 1e-12));
    const [early, late] = [1 - 0.9 ** this.steps, 1 - 0.999 ** this.steps];
    for (let i = 0; i < PARAMETERS; i++) {
      const s = slope[i]! * shrink;
      mean[i] = 0.9 * mean[i]! + 0.1 * s;
      square[i] = 0.999 * square[i]! + 0.001 * s * s;
      parameters[i]! *= 1 - step * DECAY;
      parameters[i]! -= (step * (mean[i]! / early)) / (Math.sqrt(square[i]! / late) + 1e-8);
    }
  }
}

/** For each atom and thing told: how much more likely it is told than it should be, weighed by the atom's length. */
function wrongness({ truth, lengths }: Thinned, told: Float64Array, whole: number): Float64Array {
  const wrong = new Float64Array(told.length);
  for (const [a, true_] of truth.entries()) {
    const row = a * TOLD;
    for (const [g, { from, size }] of GROUPS.entries()) {
      const right = true_[g]!;
      if (right < 0) continue;
      const worth = (WORTH[g]! * lengths[a]!) / whole;
      for (let i = from; i < from + size; i++)
        wrong[row + i] = worth * (Math.exp(told[row + i]!) - DOUBT / size - (i === right ? 1 - DOUBT : 0));
    }
  }
  return wrong;
}

/** Adds to `slope` how each parameter moves what is told wrongly: backwards through the layers. */
export function addSlopes(
  parameters: Float64Array,
  facts: readonly (readonly number[])[],
  { states, seen }: Run,
  masks: readonly Float64Array[] | undefined,
  wrong: Float64Array,
  slope: Float64Array,
): void {
  const atoms = facts.length;
  const back = new Float64Array(atoms * WIDTH);
  for (let a = 0; a < atoms; a++) {
    const row = wrong.subarray(a * TOLD, (a + 1) * TOLD);
    addTo(slope, TELLING_BIAS.from, row);
    backThrough(parameters, TELLING.from, states.at(-1)!, a * WIDTH, row, slope, back);
  }
  for (let l = LAYERS.length - 1; l >= 0; l--) {
    const { reach, look, lookBias, mix, mixBias } = LAYERS[l]!;
    const sight = seen[l]!;
    const before = states[l]!;
    const mask = masks?.[l];
    const atSight = new Float64Array(atoms * WIDTH);
    for (let a = 0; a < atoms; a++) {
      const row = back.slice(a * WIDTH, (a + 1) * WIDTH);
      addTo(slope, mixBias.from, row);
      backThrough(parameters, mix.from, sight, a * WIDTH, row, slope, atSight);
    }
    for (let i = 0; i < atSight.length; i++) atSight[i] = sight[i]! > 0 ? atSight[i]! * (mask?.[i] ?? 1) : 0;
    for (let a = 0; a < atoms; a++) {
      const row = atSight.subarray(a * WIDTH, (a + 1) * WIDTH);
      addTo(slope, lookBias.from, row);
      for (let side = 0; side < 3; side++) {
        const b = a + (side - 1) * reach;
        if (b >= 0 && b < atoms)
          backThrough(parameters, look.from + side * WIDTH * WIDTH, before, b * WIDTH, row, slope, back);
      }
    }
  }
  const first = states[0]!;
  for (let a = 0; a < atoms; a++) {
    const row = back.subarray(a * WIDTH, (a + 1) * WIDTH);
    for (let i = 0; i < WIDTH; i++) if (first[a * WIDTH + i]! <= 0) row[i] = 0;
    addTo(slope, EMBEDDING_BIAS.from, row);
    for (const fact of facts[a]!) addTo(slope, EMBEDDING.from + fact * WIDTH, row);
  }
}

function addTo(slope: Float64Array, from: number, row: Float64Array): void {
  for (let i = 0; i < row.length; i++) slope[from + i]! += row[i]!;
}

/**
 * Backwards through one product with a matrix: what it does to the matrix, and to what went in. What is 0 was cut off
 * there, so nothing goes back through it.
 */
function backThrough(
  parameters: Float64Array,
  matrix: number,
  state: Float64Array,
  at: number,
  row: Float64Array,
  slope: Float64Array,
  back: Float64Array,
): void {
  const size = row.length;
  for (let j = 0; j < WIDTH; j++) {
    const value = state[at + j]!;
    if (value === 0) continue;
    const line = matrix + j * size;
    let sum = 0;
    for (let i = 0; i < size; i++) {
      const s = row[i]!;
      sum += s * parameters[line + i]!;
      slope[line + i]! += s * value;
    }
    back[at + j]! += sum;
  }
}
