/**
 * Chorales with their fermatas taken out, beside the same chorales with them: are the same phrases found, with the
 * same cadence in the same key, and does the report stay as quiet?
 */
import { analyse } from '../../../src/harmony/analyse.ts';
import type { Analysis } from '../../../src/harmony/analysis.ts';
import { printKey } from '../../../src/harmony/words/labels.ts';
import { CHORALE } from '../../../src/profiles/profile.ts';
import { reviewAnalysis } from '../../../src/review/review.ts';
import { endOf } from '../../../src/score/score.ts';
import { textureOf } from '../../../src/score/texture.ts';
import { crotchets } from '../../../src/score/time.ts';

import type { Piece } from '../harmony-corpus.ts';
import { type Agreement, add, compare, NOTHING, readingsOf } from '../harmony-measure.ts';
import { type Bench, percent, type Row, type Section } from './section.ts';
import { withoutFermatas } from './thin.ts';

export const FERMATAS_REMOVED: Section = {
  title: 'Chorales with the fermatas taken out',
  rows: measure,
};

/** Phrase ends of one kind in both readings: by place alone, and with cadence and key. */
interface Ends {
  readonly marked: number;
  readonly told: number;
  readonly shared: number;
}

interface Heard {
  beats: number;
  faults: number;
  queries: number;
  agreement: Agreement;
}

function measure({ pieces, learntFor, phraseWeightsFor }: Bench): Row[] {
  // A piece without any fermata has nothing to be compared with.
  const marked = pieces.filter(({ texture }) => texture.slices.some(({ fermata }) => fermata));
  const full: Heard = { beats: 0, faults: 0, queries: 0, agreement: NOTHING };
  const bare: Heard = { beats: 0, faults: 0, queries: 0, agreement: NOTHING };
  let places: Ends = { marked: 0, told: 0, shared: 0 };
  let closes: Ends = { marked: 0, told: 0, shared: 0 };
  for (const piece of marked) {
    const learnt = learntFor(piece);
    const withMarks = analyse(piece.texture, learnt);
    const without = analyse(textureOf(withoutFermatas(piece.texture.score)), learnt, phraseWeightsFor(piece));
    listen(full, piece, withMarks);
    listen(bare, piece, without);
    places = count(places, placesOf(withMarks), placesOf(without));
    closes = count(closes, closesOf(withMarks), closesOf(without));
  }
  const per100 = (n: number, { beats }: Heard) => ((100 * n) / Math.max(beats, 1)).toFixed(2);
  return [
    row('phrase ends found', percent(places.shared, places.marked), ''),
    row('phrase ends told that are right', percent(places.shared, places.told), ''),
    row(
      'the same, with the same cadence in the same key: found',
      percent(closes.shared, closes.marked),
      '90 %',
    ),
    row('of those told, right', percent(closes.shared, closes.told), '90 %'),
    row('faults per 100 beats', per100(bare.faults, bare), `${per100(full.faults, full)} with fermatas`),
    row('queries per 100 beats', per100(bare.queries, bare), `${per100(full.queries, full)} with fermatas`),
    row(
      'agreement with the human reading, all together',
      percent(bare.agreement.all, bare.agreement.total),
      `87 %; ${percent(full.agreement.all, full.agreement.total)} with fermatas`,
    ),
  ];
}

function row(material: string, figure: string, target: string): Row {
  return { material, figure, target };
}

function listen(heard: Heard, piece: Piece, analysis: Analysis): void {
  const { findings } = reviewAnalysis(analysis, CHORALE);
  heard.beats += crotchets(endOf(piece.texture.score));
  heard.faults += findings.filter(({ severity }) => severity === 'fault').length;
  heard.queries += findings.filter(({ severity }) => severity === 'query').length;
  heard.agreement = add(heard.agreement, compare(piece.labels, readingsOf(analysis)));
}

function placesOf({ phrases }: Analysis): string[] {
  return phrases.map(({ until }) => String(until));
}

function closesOf({ phrases, cadences }: Analysis): string[] {
  return phrases.flatMap(({ until, cadence }) => {
    const close = cadence === undefined ? undefined : cadences[cadence]!;
    return close === undefined ? [] : [`${until} ${close.kind} ${printKey(close.key)}`];
  });
}

function count(sum: Ends, marked: readonly string[], told: readonly string[]): Ends {
  return {
    marked: sum.marked + marked.length,
    told: sum.told + told.length,
    shared: sum.shared + marked.filter((end) => told.includes(end)).length,
  };
}
