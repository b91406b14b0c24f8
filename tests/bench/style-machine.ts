/**
 * The open chorales without fermatas beside chorales composed by a machine (O. Peracha, The JS Fake Chorales, 2021,
 * CC BY 4.0): how well measures of style, and findings, tell the two apart. Half is chance, one is always.
 */
import { analyse } from '../../src/harmony/analyse.ts';
import { profileNamed } from '../../src/profiles/list.ts';
import { reviewAnalysis } from '../../src/review/review.ts';
import type { Score } from '../../src/score/score.ts';
import { textureOf } from '../../src/score/texture.ts';
import { MEASURES } from '../../src/style/list.ts';
import { musicOf } from '../../src/style/music.ts';
import { machineMadePresent, readMachineMade } from './machine-made.ts';
import { withoutFermatas } from './pupils/thin.ts';
import type { StylePiece } from './style-corpus.ts';

/** Spelling, compass and phrase ends are left out: the conversion from MIDI settles the first, and has no fermatas. */
const LEFT_OUT = new Set(['spacing and range', 'rhythm and notation', 'cadences and phrases']);

export function machineMade(pieces: readonly StylePiece[]): void {
  if (!machineMadePresent()) {
    console.log('\nSkipped: the machine-made chorales are not at ../shared/corpus/machine-made.');
    return;
  }
  const masters = pieces.map(({ analysis }) => figuresOf(withoutFermatas(analysis.texture.score)));
  const machine = readMachineMade().map(({ score }) => figuresOf(score));
  console.log(
    `\nArea under the curve, ${masters.length} masters' chorales without fermatas against ${machine.length} made by a machine`,
  );
  for (const { id } of MEASURES) {
    const area = areaUnder(
      masters.map((m) => m[id]),
      machine.map((m) => m[id]),
    );
    console.log(`  ${id.padEnd(22)} ${Math.max(area, 1 - area).toFixed(2)}`);
  }
  const found = areaUnder(
    masters.map((m) => m.findings),
    machine.map((m) => m.findings),
  );
  console.log(`  ${'the findings'.padEnd(22)} ${found.toFixed(2)}   (faults thrice, queries once, a beat)`);
}

function figuresOf(score: Score): Record<string, number | undefined> {
  const analysis = analyse(textureOf(score));
  const music = musicOf(analysis);
  const { findings } = reviewAnalysis(analysis, profileNamed('chorale')!);
  const weight = findings
    .filter(({ rule }) => !LEFT_OUT.has(rule.family))
    .reduce((sum, { severity }) => sum + { fault: 3, query: 1, remark: 0 }[severity], 0);
  return {
    ...Object.fromEntries(MEASURES.map((measure) => [measure.id, measure.count(music).value])),
    findings: weight / Math.max(1, music.beats.length),
  };
}

/** How often one of the second has more than one of the first, ties by half. */
function areaUnder(first: readonly (number | undefined)[], second: readonly (number | undefined)[]): number {
  let sum = 0;
  let pairs = 0;
  for (const a of first)
    for (const b of second) {
      if (a === undefined || b === undefined) continue;
      pairs++;
      sum += a < b ? 1 : a === b ? 0.5 : 0;
    }
  return pairs === 0 ? Number.NaN : sum / pairs;
}
