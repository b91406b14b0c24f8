/**
 * Half-finished exercises have two or three voices, the chorales four. What lacks in a thinner chord is learnt from
 * the same chorales with inner voices taken out, all other weights left as they are.
 */
import { gridOf } from '../../src/harmony/model/grid.ts';
import { MEMBERS_PRESENT, SEGMENT_TYPES } from '../../src/harmony/model/layout.ts';
import { search } from '../../src/harmony/model/search.ts';
import { phrasesOf } from '../../src/harmony/phrases.ts';
import { endOf, VOICES, type VoiceName } from '../../src/score/score.ts';
import { textureOf } from '../../src/score/texture.ts';
import type { Piece } from './harmonyCorpus.ts';
import { addFeatures, humanPath } from './harmonyLearning.ts';

const THINNINGS: readonly (readonly VoiceName[])[] = [
  ['S', 'B'],
  ['S', 'A', 'B'],
  ['S', 'T', 'B'],
];

/** The piece with only the given voices written. */
export function thinned(piece: Piece, kept: readonly VoiceName[]): Piece {
  const { score } = piece.texture;
  const silent = [{ kind: 'rest' as const, at: 0, duration: endOf(score) }];
  const voices = { ...score.voices };
  for (const voice of VOICES) if (!kept.includes(voice)) voices[voice] = silent;
  const texture = textureOf({ ...score, voices });
  return { ...piece, texture, grid: gridOf(texture, phrasesOf(texture)) };
}

/** Learns the weights of members present among two and three voices; changes `weights` and gives it back. */
export function learnThin(pieces: readonly Piece[], weights: Float64Array): Float64Array {
  const from = MEMBERS_PRESENT;
  const until = MEMBERS_PRESENT + 2 * SEGMENT_TYPES * 16;
  const squares = new Map<number, number>();
  const sums = new Map<number, number>();
  let steps = 0;
  for (const kept of THINNINGS) {
    for (const piece of pieces) {
      const thin = thinned(piece, kept);
      const delta = new Map<number, number>();
      addFeatures(thin.grid, humanPath(thin), 1, delta);
      addFeatures(thin.grid, search(thin.grid, weights), -1, delta);
      steps++;
      for (const [index, value] of delta) {
        if (index < from || index >= until || value === 0) continue;
        const square = (squares.get(index) ?? 0) + value * value;
        squares.set(index, square);
        weights[index]! += value / Math.sqrt(1 + square);
        sums.set(index, (sums.get(index) ?? 0) + (steps * value) / Math.sqrt(1 + square));
      }
    }
  }
  for (const [index, sum] of sums) weights[index]! -= sum / (steps + 1);
  return weights;
}
