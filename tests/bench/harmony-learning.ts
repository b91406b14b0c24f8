/** Structured averaged perceptron over the features of `src/harmony/reading/model`. */

import { featureList } from '../../src/harmony/reading/model/features.ts';
import { type Grid, gridOf } from '../../src/harmony/reading/model/grid.ts';
import { keyFeatures, phraseNotes } from '../../src/harmony/reading/model/keys.ts';
import { FEATURES, FEW_MEMBERS } from '../../src/harmony/reading/model/layout.ts';
import type { Leaning } from '../../src/harmony/reading/model/leaning.ts';
import { type Span, search } from '../../src/harmony/reading/model/search.ts';
import {
  bassFeatures,
  chordFeatures,
  LONGEST,
  loadSegment,
  newSegment,
  spanFeatures,
} from '../../src/harmony/reading/model/segment.ts';
import {
  newStanding,
  type Placed,
  placedFeatures,
  type Standing,
  standingAfter,
  stepFeatures,
} from '../../src/harmony/reading/model/transition.ts';
import { phrasesOf } from '../../src/harmony/reading/phrases.ts';
import type { VoiceName } from '../../src/score/score.ts';
import { textureOf } from '../../src/score/texture.ts';
import { CROTCHET } from '../../src/score/time.ts';
import { type Chance, chance, shuffled } from '../support/chance.ts';
import { type HumanLabel, labelInversion, type Piece } from './harmony-corpus.ts';
import { withoutVoices } from './pupils/thin.ts';

/** The label that holds at each atom's middle; the nearest one before where a chord has no type of ours. */
export function atomLabels(piece: Piece): HumanLabel[] {
  const { grid, labels } = piece;
  const usable = labels.filter((label) => label.type >= 0);
  let i = 0;
  return Array.from({ length: grid.atoms }, (_, a) => {
    const middle = (grid.at[a]! + grid.until[a]!) / 2 / CROTCHET;
    while (i + 1 < usable.length && usable[i + 1]!.from <= middle) i++;
    return usable[i]!;
  });
}

/** The human reading as a path of the search. */
export function humanPath(piece: Piece): Span[] {
  const { grid } = piece;
  const atoms = atomLabels(piece);
  const spans: Span[] = [];
  for (const [a, label] of atoms.entries()) {
    const last = spans.at(-1);
    const inversion = labelInversion(label);
    const joins =
      last !== undefined &&
      last.root === label.root &&
      last.type === label.type &&
      last.inversion === inversion &&
      last.tonic === label.tonic &&
      last.mode === label.mode &&
      grid.phraseStart[a] === 0 &&
      grid.gapBefore[a] === 0 &&
      a - last.from < LONGEST;
    if (joins) spans[spans.length - 1] = { ...last, to: a + 1 };
    else
      spans.push({
        from: a,
        to: a + 1,
        root: label.root,
        type: label.type,
        inversion,
        tonic: label.tonic,
        mode: label.mode,
      });
  }
  return spans;
}

/** Adds `factor` times the path's features. */
export function addFeatures(
  grid: Grid,
  spans: readonly Span[],
  factor: number,
  into: Map<number, number>,
): void {
  const segment = newSegment(grid);
  const phrases = phraseNotes(grid);
  const list = featureList(4096);
  const add = (index: number, value: number) => into.set(index, (into.get(index) ?? 0) + factor * value);
  let before: (Placed & { readonly standing: Standing }) | undefined;
  for (const span of spans) {
    const placed = { chord: span, key: span };
    list.count = 0;
    loadSegment(segment, span.from, span.to);
    spanFeatures(segment, list);
    chordFeatures(segment, span.root, span.type, list);
    bassFeatures(segment, span.root, span.type, span.inversion, list);
    placedFeatures(grid, span, placed, list);
    if (before !== undefined) stepFeatures(grid, span.from, before, placed, list);
    const standing =
      before === undefined ? newStanding(span, span) : standingAfter(grid, span.from, before, placed);
    before = { ...placed, standing };
    for (let k = 0; k < list.count; k++) add(list.indices[k]!, 1);
    for (let atom = span.from; atom < span.to; atom++) keyFeatures(grid, phrases, atom, span, add);
  }
}

export interface Training {
  readonly epochs: number;
  /** How much a wrong crotchet counts against the margin: chord, bass, key. */
  readonly margin: readonly [number, number, number];
  /** Deviation of the noise on chords and on keys: human readings differ, and noise keeps the weights from chasing each. */
  readonly noise: readonly [number, number];
  /** The part of every weight that each step takes back, so that what is seldom seen weighs little. */
  readonly decay: number;
  /** One run for each; their weights are averaged. */
  readonly seeds: readonly number[];
}

/** How the committed table is learnt. */
export const TRAINING: Training = {
  epochs: 6,
  margin: [0.5, 0.25, 0.5],
  noise: [1, 1],
  decay: 0.005,
  seeds: [1, 2, 3],
};

/** Learns weights from the pieces. Deterministic: the same pieces give the same weights. */
export function learn(pieces: readonly Piece[], training: Training): Float64Array {
  return learnFewVoices(pieces, learnWhole(pieces, training), training);
}

function learnWhole(pieces: readonly Piece[], training: Training): Float64Array {
  const lessons = pieces.map((piece): Lesson => {
    const features = new Map<number, number>();
    addFeatures(piece.grid, humanPath(piece), 1, features);
    return { piece, atoms: atomLabels(piece), features };
  });
  const sum = new Float64Array(FEATURES);
  for (const seed of training.seeds) {
    const weights = learnOnce(lessons, training, seed);
    for (let i = 0; i < FEATURES; i++) sum[i]! += weights[i]! / training.seeds.length;
  }
  return sum;
}

interface Lesson {
  readonly piece: Piece;
  readonly atoms: readonly HumanLabel[];
  /** Of the human path. */
  readonly features: ReadonlyMap<number, number>;
}

/** How the weights for few voices are learnt. */
const THIN_EPOCHS = 2;
/** What is taken away in turn. */
const THINNINGS: readonly (readonly VoiceName[])[] = [['T'], ['A', 'T'], ['A'], ['A', 'T']];

/**
 * The table with its families for few voices learnt too, from the same pieces with voices taken away. Nothing else in
 * it changes: what all four voices sing is read as before.
 */
export function learnFewVoices(
  pieces: readonly Piece[],
  base: Float64Array,
  training: Training,
): Float64Array {
  const lessons = pieces.flatMap((piece) =>
    THINNINGS.map((voices): Lesson => {
      const { score } = piece.texture;
      const texture = textureOf(withoutVoices(score, voices));
      const thinned = { ...piece, texture, grid: gridOf(texture, phrasesOf(texture)) };
      const features = new Map<number, number>();
      addFeatures(thinned.grid, humanPath(thinned), 1, features);
      return { piece: thinned, atoms: atomLabels(thinned), features };
    }),
  );
  return learnOnce(lessons, { ...training, epochs: THIN_EPOCHS }, 1, { base, from: FEW_MEMBERS });
}

/** An averaged perceptron whose steps shrink for features that have moved much (AdaGrad). */
function learnOnce(
  lessons: readonly Lesson[],
  training: Training,
  seed: number,
  start?: { readonly base: Float64Array; readonly from: number },
): Float64Array {
  const weights = new Float64Array(FEATURES);
  if (start !== undefined) weights.set(start.base);
  const first = start?.from ?? 0;
  const sum = new Float64Array(FEATURES);
  const squares = new Float64Array(FEATURES);
  const random = chance(seed);
  let steps = 0;
  for (let epoch = 0; epoch < training.epochs; epoch++) {
    for (const { piece, atoms, features } of shuffled(lessons, random)) {
      const path = search(piece.grid, weights, handicap(piece.grid, atoms, training, random));
      const delta = new Map(features);
      addFeatures(piece.grid, path, -1, delta);
      for (const [index, value] of delta) {
        if (value === 0 || index < first) continue;
        squares[index]! += value * value;
        weights[index]! += value / Math.sqrt(1 + squares[index]!);
      }
      for (let i = first; i < FEATURES; i++) {
        if (weights[i] === 0) continue;
        weights[i]! *= 1 - training.decay;
        sum[i]! += weights[i]!;
      }
      steps++;
    }
  }
  const learnt = sum.map((total) => total / steps);
  if (start !== undefined) learnt.set(start.base.subarray(0, first));
  return learnt;
}

/** Atoms that share one draw of the noise on a key: about a bar. */
const KEY_STRETCH = 4;

/** Makes what is wrong a little dearer to beat, and shakes everything a little. */
function handicap(
  grid: Grid,
  atoms: readonly HumanLabel[],
  { margin: [chordCost, bassCost, keyCost], noise: [chordNoise, keyNoise] }: Training,
  random: Chance,
): Leaning {
  const draws = new Map<number, number>();
  const crotchets = (atom: number) => (grid.until[atom]! - grid.at[atom]!) / CROTCHET;
  return {
    chord: (from, to, chord) => {
      let cost = 0;
      for (let atom = from; atom < to; atom++) {
        const label = atoms[atom]!;
        if (label.root !== chord.root || label.type !== chord.type) cost += chordCost * crotchets(atom);
        else if (labelInversion(label) !== chord.inversion) cost += bassCost * crotchets(atom);
      }
      return cost + chordNoise * Math.sqrt(to - from) * gaussian(random);
    },
    key: (atom, key) => {
      const label = atoms[atom]!;
      const id = Math.floor(atom / KEY_STRETCH) * 1024 + (key.tonic + 64) * 2 + key.mode;
      let draw = draws.get(id);
      if (draw === undefined) {
        draw = (keyNoise * gaussian(random)) / KEY_STRETCH;
        draws.set(id, draw);
      }
      const right = label.tonic === key.tonic && label.mode === key.mode;
      return draw + (right ? 0 : keyCost * crotchets(atom));
    },
  };
}

function gaussian(random: Chance): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}
