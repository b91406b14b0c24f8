/** The tunes dealt out over folds, and a table for each learnt from the other folds. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { FEATURES } from '../../src/harmony/reading/model/layout.ts';
import type { PhraseWeights } from '../../src/harmony/reading/phrase-search.ts';
import type { Piece } from './harmony-corpus.ts';
import { learn, TRAINING } from './harmony-learning.ts';
import { learnPhrases } from './phrase-learning.ts';

export const FOLDS = 5;

/** The tunes dealt out over the folds, so that no tune is in two. */
export function foldOf(pieces: readonly Piece[]): Map<string, number> {
  const tunes = [...new Set(pieces.map((piece) => piece.tune))];
  return new Map(pieces.map((piece) => [piece.name, (tunes.indexOf(piece.tune) * 7919) % FOLDS]));
}

/**
 * For each piece, by name, weights learnt from the other folds. Where the variable FOLD_TABLES names a folder, tables
 * found there are used and new ones are kept there: learning takes minutes, and many measures want the same tables.
 */
export function foldWeights(pieces: readonly Piece[]): Map<string, Float64Array> {
  const folds = foldOf(pieces);
  const tables = Array.from({ length: FOLDS }, (_, fold) => {
    const rest = pieces.filter(({ name }) => folds.get(name) !== fold);
    const table = kept(fold) ?? learn(rest, TRAINING);
    keep(fold, table);
    process.stderr.write(`fold ${fold + 1} of ${FOLDS}\n`);
    return table;
  });
  return new Map(pieces.map(({ name }) => [name, tables[folds.get(name)!]!]));
}

/** For each piece, by name, what to weigh phrase ends by, learnt from the other folds. */
export function foldPhraseWeights(pieces: readonly Piece[]): Map<string, PhraseWeights> {
  const folds = foldOf(pieces);
  const tables = Array.from({ length: FOLDS }, (_, fold) =>
    learnPhrases(pieces.filter(({ name }) => folds.get(name) !== fold)),
  );
  return new Map(pieces.map(({ name }) => [name, tables[folds.get(name)!]!]));
}

function place(fold: number): string | undefined {
  const folder = process.env.FOLD_TABLES;
  return folder === undefined ? undefined : `${folder}/fold-${fold}.weights`;
}

function kept(fold: number): Float64Array | undefined {
  const file = place(fold);
  if (file === undefined || !existsSync(file)) return undefined;
  const bytes = new Uint8Array(readFileSync(file));
  const table = new Float64Array(bytes.buffer);
  if (table.length !== FEATURES) throw new Error(`${file} was learnt for another layout: delete it.`);
  return table;
}

function keep(fold: number, table: Float64Array): void {
  const file = place(fold);
  if (file !== undefined) writeFileSync(file, new Uint8Array(table.buffer));
}
