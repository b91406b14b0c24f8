/**
 * Compares our keys and chords with a musicologist's, weighted by duration: `npm run bench:harmony`.
 * The committed weights have seen these pieces, so what counts is the cross-validated line: there every piece is
 * read with weights learnt from other tunes only. `-- --committed` leaves the cross-validation out.
 */
import { analyse } from '../../src/harmony/analyse.ts';
import type { Analysis } from '../../src/harmony/analysis.ts';
import { CHORD_TYPES } from '../../src/harmony/chord-types.ts';
import { printCalibration } from './harmony-calibration.ts';
import { corpusPresent, type Piece, readCorpus } from './harmony-corpus.ts';
import { FOLDS, foldLearnt } from './harmony-folds.ts';
import {
  type Agreement,
  add,
  compare,
  type Difference,
  NOTHING,
  printAgreement,
  type Reading,
  readingsOf,
} from './harmony-measure.ts';

const HEADING = ' root  chord   bass    key    all';

/** Each piece read with weights learnt from the other folds. */
function crossValidated(pieces: readonly Piece[]): Map<string, Analysis> {
  const learnt = foldLearnt(pieces);
  return new Map(pieces.map(({ name, texture }) => [name, analyse(texture, learnt.get(name))]));
}

function report(
  title: string,
  pieces: readonly Piece[],
  readings: ReadonlyMap<string, readonly Reading[]>,
): void {
  const chords = new Map<string, number>();
  const keys = new Map<string, number>();
  const rows = pieces.map((piece) => {
    const count = (difference: Difference) => confuse(difference, chords, keys);
    return { piece, agreement: compare(piece.labels, readings.get(piece.name)!, count) };
  });
  const total = rows.reduce<Agreement>((sum, { agreement }) => add(sum, agreement), NOTHING);
  console.log(`\n${title}: ${pieces.length} chorales, ${Math.round(total.total)} crotchets, per cent`);
  console.log(`${' '.repeat(12)}${HEADING}`);
  console.log(`total       ${printAgreement(total)}`);
  console.log('\nby piece');
  for (const { piece, agreement } of rows)
    console.log(`  ${piece.name}       ${printAgreement(agreement)}  ${piece.title}`);
  console.log('\nten worst');
  const share = ({ agreement }: (typeof rows)[number]) => agreement.all / agreement.total;
  for (const { piece, agreement } of [...rows].sort((a, b) => share(a) - share(b)).slice(0, 10))
    console.log(`  ${piece.name}       ${printAgreement(agreement)}  ${piece.title}`);
  printConfusions('chords (human → ours), per cent of all time', chords, total.total);
  printConfusions(
    'keys (human → ours, distance on the line of fifths), per cent of all time',
    keys,
    total.total,
  );
}

function confuse(
  { from, until, human, ours }: Difference,
  chords: Map<string, number>,
  keys: Map<string, number>,
) {
  const bump = (map: Map<string, number>, name: string) => map.set(name, (map.get(name) ?? 0) + until - from);
  if (ours === undefined) {
    bump(chords, `${human.figure} → no chord`);
    return;
  }
  if (ours.tonic !== human.tonic || ours.mode !== human.mode) {
    const modes = ['major', 'minor'];
    const distance = ours.tonic - human.tonic;
    bump(keys, `${modes[human.mode]} → ${modes[ours.mode]} ${distance > 0 ? '+' : ''}${distance}`);
  }
  const type = CHORD_TYPES[ours.type]!;
  const bass = ours.root + type.offsets[ours.inversion]!;
  const same =
    ours.root === human.root &&
    type.quality === human.quality &&
    type.offsets.length > 3 === human.seventh &&
    bass === human.bass;
  if (same) return;
  // Both told as a human would hear them side by side: type, and where our root and bass stand to the human root.
  const humanType = human.type < 0 ? human.quality : CHORD_TYPES[human.type]!.name;
  const distance = ours.root - human.root;
  const place = distance === 0 ? 'same root' : `root ${distance > 0 ? '+' : ''}${distance}`;
  bump(chords, `${humanType} → ${type.name}, ${place}${bass === human.bass ? '' : ', other bass'}`);
}

function printConfusions(title: string, counts: ReadonlyMap<string, number>, total: number): void {
  console.log(`\n${title}`);
  for (const [name, length] of [...counts].sort((a, b) => b[1] - a[1]).slice(0, 20))
    console.log(`  ${((100 * length) / total).toFixed(2).padStart(5)}  ${name}`);
}

function main(): void {
  if (!corpusPresent()) {
    console.log('No chorales at ../shared/corpus: nothing to compare with.');
    return;
  }
  const pieces = readCorpus();
  const committed = new Map(pieces.map((piece) => [piece.name, readingsOf(analyse(piece.texture))]));
  report('Committed weights (they have seen these pieces)', pieces, committed);
  if (!process.argv.includes('--committed')) {
    const analyses = crossValidated(pieces);
    const readings = new Map([...analyses].map(([name, analysis]) => [name, readingsOf(analysis)]));
    report(`Cross-validated over tunes, ${FOLDS} folds`, pieces, readings);
    printCalibration(pieces, analyses);
  }
  console.log('\nTo compare with, as published beside the corpus:');
  console.log(`${' '.repeat(22)}${HEADING}`);
  console.log('two people agree on    97.5   93.4   91.7   97.1   90.4   (81 chorales)');
  console.log('a plain recipe         86.0   78.0   77.8   61.3   47.9   (60 other chorales)');
}

if (process.argv[1]?.endsWith('harmony.ts')) main();
