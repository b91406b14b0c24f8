/**
 * `npm run bench:pupils [-- SECTION…] [--committed]`
 *
 * How well what pupils write is read and judged, on open material; sections are in `pupils/list.ts` and can be chosen
 * by a word of their titles. Every chorale is read with weights learnt from other tunes only; `--committed` takes the
 * committed table, which has seen them all, and is quicker.
 */
import type { Learnt } from '../../src/harmony/reading/harmonies.ts';
import type { PhraseWeights } from '../../src/harmony/reading/phrase-search.ts';
import { corpusPresent, type Piece, readCorpus } from './harmony-corpus.ts';
import { foldLearnt, foldPhraseWeights } from './harmony-folds.ts';
import { learnPhrases } from './phrase-learning.ts';
import { type Half, hymnsIn } from './pupils/hymns/list.ts';
import { SECTIONS } from './pupils/list.ts';
import type { Bench } from './pupils/section.ts';

const words = process.argv.slice(2).filter((word) => !word.startsWith('--'));
const chosen = SECTIONS.filter(
  ({ title }) => words.length === 0 || words.some((word) => title.toLowerCase().includes(word.toLowerCase())),
);
if (!corpusPresent()) console.log('No chorales at ../shared/corpus: sections that want them say nothing.');
const pieces: Piece[] = corpusPresent() ? readCorpus() : [];

/** What the five folds teach is learnt when the first section asks for it: some minutes. */
let learnt: ReadonlyMap<string, Learnt> | undefined;
let phraseTables: ReadonlyMap<string, PhraseWeights> | undefined;
const hymnTables = new Map<Half, PhraseWeights>();
const committed = process.argv.includes('--committed');
const bench: Bench = {
  pieces,
  learntFor: (piece) => {
    if (committed) return undefined;
    learnt ??= foldLearnt(pieces);
    return learnt.get(piece.name);
  },
  phraseWeightsFor: (piece) => {
    if (committed) return undefined;
    phraseTables ??= foldPhraseWeights(pieces);
    return phraseTables.get(piece.name);
  },
  hymnWeights: (half) => {
    if (committed || pieces.length === 0) return undefined;
    const other = half === 'kept back' ? 'learnt from' : 'kept back';
    if (!hymnTables.has(half)) hymnTables.set(half, learnPhrases(pieces, hymnsIn(other)));
    return hymnTables.get(half);
  },
};

for (const { title, rows } of chosen) {
  console.log(`\n${title}`);
  for (const { material, figure, target } of rows(bench))
    console.log(`  ${material.padEnd(58)}${figure}${target === '' ? '' : `   (to reach: ${target})`}`);
}
