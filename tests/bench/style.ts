/**
 * How far the profile of style can be trusted: `npm run bench:style`.
 * 1. Bands made from other tunes: how many chorales lie within them (aim: 85 to 95 %).
 * 2. Weak work made from chorales: how much of it lies outside where it should (aim: 95 %).
 * 3. What the profile can't do: tell a machine's imitations from the masters'.
 * 4. Precedents from other tunes: for how many phrase ends there are five (aim: 90 %), and how often the close that
 *    stands there is among the first three (aim: 85 %).
 */

import { MEASURES } from '../../src/style/list.ts';
import type { Music } from '../../src/style/measure.ts';
import { musicOf } from '../../src/style/music.ts';
import { precedentsFor, sameClose } from '../../src/style/precedents.ts';
import { styleOfMusic } from '../../src/style/profile.ts';
import { corpusPresent } from './harmony-corpus.ts';
import { closesOf } from './style-closes.ts';
import { quantilesOf, readStyleCorpus, type StylePiece, valuesOf } from './style-corpus.ts';
import { machineMade } from './style-machine.ts';
import { WEAKNESSES, weakened } from './style-weak.ts';

const FOLDS = 5;

if (!corpusPresent()) console.log('Skipped: the open chorales are not at ../shared/corpus/chorales.');
else {
  const pieces = readStyleCorpus();
  heldOut(pieces);
  weakWork(pieces);
  machineMade(pieces);
  closesFound(pieces);
}

function heldOut(pieces: readonly StylePiece[]): void {
  console.log(
    `\nWithin nine tenths, bands from other tunes (${pieces.length} chorales, ${FOLDS} folds), per cent`,
  );
  const share = (musics: (piece: StylePiece) => readonly Music[]) => {
    const within: Record<string, [number, number]> = {};
    for (let fold = 0; fold < FOLDS; fold++) {
      const bands = valuesOf(pieces.filter(({ tune }) => tune % FOLDS !== fold).flatMap(musics));
      const tested = valuesOf(pieces.filter(({ tune }) => tune % FOLDS === fold).flatMap(musics));
      for (const { id } of MEASURES) {
        const [low, high] = quantilesOf(bands[id]!, [5, 95]);
        const inside = tested[id]!.filter((value) => value >= low! && value <= high!).length;
        const [n, of] = within[id] ?? [0, 0];
        within[id] = [n + inside, of + tested[id]!.length];
      }
    }
    return within;
  };
  const whole = share((piece) => [piece.music]);
  const runs = share((piece) => piece.runs);
  const percent = ([n, of]: [number, number]) => ((100 * n) / of).toFixed(1).padStart(6);
  for (const { id } of MEASURES)
    console.log(`  ${id.padEnd(22)} whole ${percent(whole[id]!)}   runs of phrases ${percent(runs[id]!)}`);
}

function weakWork(pieces: readonly StylePiece[]): void {
  console.log('\nOutside the band, per cent of pieces: chorales as they are, and made weak');
  console.log(`  ${''.padEnd(22)} ${['as it is', ...WEAKNESSES].map((word) => word.padStart(9)).join('')}`);
  const columns = [
    pieces.map(({ music }) => music),
    ...WEAKNESSES.map((weakness) => pieces.map(({ analysis }) => musicOf(weakened(analysis, weakness)))),
  ].map(outsideShares);
  for (const { id } of MEASURES)
    console.log(
      `  ${id.padEnd(22)} ${columns.map((column) => (column[id] ?? 0).toFixed(1).padStart(9)).join('')}`,
    );
}

function outsideShares(musics: readonly Music[]): Record<string, number> {
  const counts: Record<string, number> = {};
  let told = 0;
  for (const music of musics) {
    const style = styleOfMusic(music);
    if (style.kind !== 'told') continue;
    told++;
    for (const { measure, outside } of style.values)
      if (outside !== undefined) counts[measure.id] = (counts[measure.id] ?? 0) + 1;
  }
  return Object.fromEntries(Object.entries(counts).map(([id, n]) => [id, (100 * n) / told]));
}

function closesFound(pieces: readonly StylePiece[]): void {
  const all = closesOf(pieces);
  let five = 0;
  let first = 0;
  for (const { tune, close } of all) {
    const others = all.filter((other) => other.tune !== tune).map((other) => other.close);
    const { total, closes } = precedentsFor(close, others);
    if (total >= 5) five++;
    if (closes.slice(0, 3).some((way) => sameClose(way, close))) first++;
  }
  const percent = (n: number) => ((100 * n) / all.length).toFixed(1);
  console.log(`\nPrecedents from other tunes, ${all.length} phrase ends`);
  console.log(`  five or more           ${percent(five)} %`);
  console.log(`  among the first three  ${percent(first)} %`);
}
