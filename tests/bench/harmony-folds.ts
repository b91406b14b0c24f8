/** The tunes dealt out over folds, and what is learnt from the other folds for each. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import type { Learnt } from '../../src/harmony/reading/harmonies.ts';
import { FEATURES } from '../../src/harmony/reading/model/layout.ts';
import type { PhraseWeights } from '../../src/harmony/reading/phrase-search.ts';
import { PARAMETERS } from '../../src/harmony/reading/thin/network.ts';
import type { Piece } from './harmony-corpus.ts';
import { learn, TRAINING } from './harmony-learning.ts';
import { learnPhrases } from './phrase-learning.ts';
import { hymnsIn } from './pupils/hymns/list.ts';
import { learnNetwork } from './thin-learning.ts';

export const FOLDS = 5;

/** The tunes dealt out over the folds, so that no tune is in two. */
export function foldOf(pieces: readonly Piece[]): Map<string, number> {
  const tunes = [...new Set(pieces.map((piece) => piece.tune))];
  return new Map(pieces.map((piece) => [piece.name, (tunes.indexOf(piece.tune) * 7919) % FOLDS]));
}

/**
 * For each piece, by name, weights and network learnt from the other folds. Where the variable FOLD_TABLES names a
 * folder, what is found there is used and new ones are kept there: learning takes minutes, and many measures want the
 * same.
 */
export function foldLearnt(pieces: readonly Piece[]): Map<string, Learnt> {
  const folds = foldOf(pieces);
  const learnt = Array.from({ length: FOLDS }, (_, fold): Learnt => {
    const rest = pieces.filter(({ name }) => folds.get(name) !== fold);
    const weights = kept(`fold-${fold}.weights`, FEATURES, () => learn(rest, TRAINING));
    const network = kept(`fold-${fold}.network`, PARAMETERS, () => learnNetwork(rest, weights));
    process.stderr.write(`fold ${fold + 1} of ${FOLDS}\n`);
    return { weights, network };
  });
  return new Map(pieces.map(({ name }) => [name, learnt[folds.get(name)!]!]));
}

/** For each piece, by name, what to weigh phrase ends by, learnt from the other folds and half of the hymn tunes. */
export function foldPhraseWeights(pieces: readonly Piece[]): Map<string, PhraseWeights> {
  const folds = foldOf(pieces);
  const tables = Array.from({ length: FOLDS }, (_, fold) =>
    learnPhrases(
      pieces.filter(({ name }) => folds.get(name) !== fold),
      hymnsIn('learnt from'),
    ),
  );
  return new Map(pieces.map(({ name }) => [name, tables[folds.get(name)!]!]));
}

/** What is in a file of the folder named by FOLD_TABLES; else learnt, and kept there. */
function kept(name: string, length: number, learnAnew: () => Float64Array): Float64Array {
  const folder = process.env.FOLD_TABLES;
  if (folder === undefined) return learnAnew();
  const file = `${folder}/${name}`;
  if (existsSync(file)) {
    const found = new Float64Array(new Uint8Array(readFileSync(file)).buffer);
    if (found.length !== length) throw new Error(`${file} was learnt for another layout: delete it.`);
    return found;
  }
  const learnt = learnAnew();
  writeFileSync(file, new Uint8Array(learnt.buffer));
  return learnt;
}
