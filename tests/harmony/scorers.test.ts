/** The search adds its scores up in pieces, for speed; here they are held against the plain sums of features. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CHORD_TYPES } from '../../src/harmony/chord-types.ts';
import { chordScorer } from '../../src/harmony/reading/model/chord-scorer.ts';
import { type Grid, gridOf } from '../../src/harmony/reading/model/grid.ts';
import { keyOdds, SHARPNESS } from '../../src/harmony/reading/model/key-odds.ts';
import type { KeyNumber } from '../../src/harmony/reading/model/keys.ts';
import { FEATURES } from '../../src/harmony/reading/model/layout.ts';
import type { End } from '../../src/harmony/reading/model/path.ts';
import { type Scorers, scorersOf } from '../../src/harmony/reading/model/scorers.ts';
import { bestReading, type Span } from '../../src/harmony/reading/model/search.ts';
import { LONGEST, loadSegment, newSegment } from '../../src/harmony/reading/model/segment.ts';
import { stepScorer } from '../../src/harmony/reading/model/step-scorer.ts';
import { parseTable } from '../../src/harmony/reading/model/table.ts';
import type { ChordNumber } from '../../src/harmony/reading/model/transition.ts';
import { vocabularyIndex } from '../../src/harmony/reading/model/vocabulary.ts';
import { TABLE } from '../../src/harmony/reading/model/weights.ts';
import { phrasesOf } from '../../src/harmony/reading/phrases.ts';
import { textureOf } from '../../src/score/texture.ts';
import { corpusPresent, readCorpus } from '../bench/harmony-corpus.ts';
import { plainChord, plainReading, plainStep } from '../support/plain-scores.ts';
import { anyScore } from '../support/scores.ts';

/** Every weight another number, so that no term can be left out or counted twice unnoticed. */
function randomWeights(seed: number): Float64Array {
  let state = seed >>> 0;
  return Float64Array.from({ length: FEATURES }, () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 31 - 1;
  });
}

const grids: fc.Arbitrary<Grid> = anyScore.map((score) => {
  const texture = textureOf(score);
  return gridOf(texture, phrasesOf(texture));
});
const seeds = fc.integer({ min: 1, max: 1_000_000 });
const keyNumbers: fc.Arbitrary<KeyNumber> = fc.record({
  tonic: fc.integer({ min: -8, max: 8 }),
  mode: fc.constantFrom(0, 1),
});
const keyLists = fc.uniqueArray(keyNumbers, {
  minLength: 2,
  maxLength: 6,
  selector: ({ tonic, mode }) => `${tonic} ${mode}`,
});
const chords: fc.Arbitrary<ChordNumber> = fc
  .record({
    root: fc.integer({ min: -10, max: 12 }),
    type: fc.integer({ min: 0, max: CHORD_TYPES.length - 1 }),
    inversion: fc.integer({ min: 0, max: 3 }),
  })
  .map((chord) => ({
    ...chord,
    inversion: chord.inversion % CHORD_TYPES[chord.type]!.offsets.length,
  }));

function endsIn(keys: number): fc.Arbitrary<End> {
  return fc.record({
    to: fc.constant(0),
    score: fc.double({ min: -50, max: 50, noNaN: true }),
    start: fc.record({
      at: fc.constant(0),
      back: fc.constant(undefined),
      chord: chords,
      key: fc.integer({ min: 0, max: keys - 1 }),
      standing: fc.record({
        age: fc.integer({ min: 1, max: 5 }),
        confirmed: fc.integer({ min: 0, max: 2 }),
        broad: fc.constantFrom(0, 1),
      }),
    }),
  });
}

/** The best of the plain sums over the ends in the same key, and over those in another. */
function plainBest(
  grid: Grid,
  weights: Float64Array,
  at: number,
  ends: readonly End[],
  keys: readonly KeyNumber[],
  chord: ChordNumber,
  key: number,
): { stay: number; move: number } {
  const best = { stay: Number.NEGATIVE_INFINITY, move: Number.NEGATIVE_INFINITY };
  for (const end of ends) {
    const from = { end, key: keys[end.start.key]! };
    const way = end.start.key === key ? 'stay' : 'move';
    best[way] = Math.max(best[way], plainStep(grid, weights, at, from, { chord, key: keys[key]! }));
  }
  return best;
}

function compareSteps(
  grid: Grid,
  weights: Float64Array,
  keys: readonly KeyNumber[],
  ends: readonly End[],
  tried: readonly ChordNumber[],
): void {
  const fast = stepScorer(grid, weights, keys);
  for (let at = 1; at < grid.atoms; at++) {
    fast.arriveAt(at, ends);
    for (const chord of tried) {
      fast.tryChord(chord);
      for (const [key, { mode, tonic }] of keys.entries()) {
        fast.best(key, vocabularyIndex(mode, chord.root - tonic, chord.type));
        const plain = plainBest(grid, weights, at, ends, keys, chord, key);
        if (fast.stay() !== undefined || plain.stay > Number.NEGATIVE_INFINITY)
          expect(fast.scores.stay).toBeCloseTo(plain.stay, 8);
        if (fast.move() !== undefined || plain.move > Number.NEGATIVE_INFINITY)
          expect(fast.scores.move).toBeCloseTo(plain.move, 8);
      }
    }
  }
}

describe('the fast scorers give the plain sums', () => {
  it('from chord to chord, whatever the grid, the weights and the ends', () => {
    fc.assert(
      fc.property(
        grids,
        seeds,
        keyLists.chain((keys) =>
          fc.tuple(fc.constant(keys), fc.array(endsIn(keys.length), { minLength: 1, maxLength: 8 })),
        ),
        fc.array(chords, { minLength: 1, maxLength: 3 }),
        (grid, seed, [keys, ends], tried) => compareSteps(grid, randomWeights(seed), keys, ends, tried),
      ),
      { numRuns: 30 },
    );
  });

  it('for one segment as one chord', () => {
    fc.assert(
      fc.property(grids, seeds, fc.array(chords, { minLength: 1, maxLength: 8 }), (grid, seed, tried) => {
        const weights = randomWeights(seed);
        const segment = newSegment(grid);
        const fast = chordScorer(segment, weights);
        for (let from = 0; from < grid.atoms; from++) {
          loadSegment(segment, from, Math.min(grid.atoms, from + 1 + (from % LONGEST)));
          fast.prepare();
          for (const chord of tried)
            expect(
              fast.chord(chord.root, chord.type) + fast.bass(chord.root, chord.type, chord.inversion),
            ).toBeCloseTo(plainChord(segment, weights, chord), 8);
        }
      }),
      { numRuns: 30 },
    );
  });
});

describe.skipIf(!corpusPresent())('on open chorales (skipped without ../shared/corpus)', () => {
  const pieces = readCorpus(['001', '066', '140', '258']);

  it('a whole reading scores the sum of its features, with the committed weights and with random ones', () => {
    for (const weights of [parseTable(TABLE), randomWeights(7)])
      for (const { grid } of pieces) {
        const { spans, score } = bestReading(scorersOf(grid, weights));
        expect(spans.length).toBeGreaterThan(10);
        expect(score).toBeCloseTo(plainReading(grid, weights, spans), 6);
      }
  });

  it('for how likely each key is: every way through the keys, counted one by one', () => {
    const weights = parseTable(TABLE);
    fc.assert(
      fc.property(grids, fc.integer({ min: 0, max: 50 }), (grid, from) => {
        const scorers = scorersOf(grid, weights);
        const { spans } = bestReading(scorers);
        const few = spans.slice(Math.min(from, Math.max(0, spans.length - 3))).slice(0, 3);
        const odds = keyOdds(scorers, few);
        const plain = plainOdds(scorers, few);
        for (const [i, one] of plain.entries()) expect(odds[i]).toBeCloseTo(one, 6);
      }),
      { numRuns: 8 },
    );
  });
});

/** By span and key: the share of all ways through the keys, each scored as a whole reading. */
function plainOdds(scorers: Scorers, spans: readonly Span[]): number[] {
  const { grid, weights, keys } = scorers;
  const count = keys.keys.length;
  const ways = spans.reduce<number[][]>(
    (all, span) => all.flatMap((way) => keys.allowed[grid.phrase[span.from]!]!.map((key) => [...way, key])),
    [[]],
  );
  const scores = ways.map((way) =>
    plainReading(
      grid,
      weights,
      spans.map((span, i) => ({ ...span, ...keys.keys[way[i]!]! })),
    ),
  );
  const top = Math.max(...scores);
  const odds = new Array<number>(spans.length * count).fill(0);
  const shares = scores.map((score) => Math.exp(SHARPNESS * (score - top)));
  const whole = shares.reduce((sum, share) => sum + share, 0);
  for (const [w, way] of ways.entries())
    for (const [i, key] of way.entries()) odds[i * count + key]! += shares[w]! / whole;
  return odds;
}
