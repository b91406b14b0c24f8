/** Half-finished work: chorales with voices or bars still to be written, beside the human reading of the whole. */
import { analyse } from '../../../src/harmony/analyse.ts';
import { CHORD_TYPES } from '../../../src/harmony/chord-types.ts';
import { fifthsPlace } from '../../../src/score/pitch.ts';
import { type Score, VOICES } from '../../../src/score/score.ts';
import { stretchesWithin } from '../../../src/score/search.ts';
import { type Texture, textureOf } from '../../../src/score/texture.ts';
import { CROTCHET } from '../../../src/score/time.ts';

import type { Piece } from '../harmony-corpus.ts';
import { type Agreement, add, compare, type Difference, NOTHING, readingsOf } from '../harmony-measure.ts';
import { type Bench, percent, type Row, type Section } from './section.ts';
import { stopping, withoutBars, withoutVoices } from './thin.ts';

interface Thinning {
  readonly name: string;
  readonly target: string;
  readonly thin: (score: Score) => Score;
  /** What is compared: all of it, or the bars that were left. */
  readonly bars?: (bar: number) => boolean;
}

/** Every third bar is still to be written. */
const missing = (bar: number) => bar % 3 === 2;
const half = (score: Score) => Math.floor(score.bars.length / 2);

const THINNINGS: readonly Thinning[] = [
  { name: 'complete', target: '88 %', thin: (score) => score },
  { name: 'tenor still to be written', target: '82 %', thin: (score) => withoutVoices(score, ['T']) },
  { name: 'alto still to be written', target: '', thin: (score) => withoutVoices(score, ['A']) },
  {
    name: 'alto and tenor still to be written',
    target: '70 %',
    thin: (score) => withoutVoices(score, ['A', 'T']),
  },
  {
    name: 'every third bar still to be harmonised (the others)',
    target: '',
    thin: (score) => withoutBars(score, missing),
    bars: (bar) => !missing(bar),
  },
  { name: 'the tenor stops half way', target: '', thin: (score) => stopping(score, 'T', half(score)) },
];

export const THINNED: Section = {
  title: 'Half-finished work: agreement with the human reading, all together',
  rows: (bench) => THINNINGS.map((thinning) => measure(bench, thinning)),
};

function measure({ pieces, learntFor }: Bench, thinning: Thinning): Row {
  let sum: Agreement = NOTHING;
  let unsung = 0;
  for (const piece of pieces) {
    const texture = textureOf(thinning.thin(piece.texture.score));
    const readings = readingsOf(analyse(texture, learntFor(piece)));
    const differ = (difference: Difference) => {
      if (isUnsungSeventh(texture, difference)) unsung += difference.until - difference.from;
    };
    sum = add(sum, compare(labelsLeft(piece, thinning), readings, differ));
  }
  const parts = [
    `root ${percent(sum.root, sum.total)}`,
    `key ${percent(sum.key, sum.total)}`,
    `a seventh that nobody sings ${percent(unsung, sum.total)}`,
  ].join(', ');
  return {
    material: thinning.name,
    figure: `${percent(sum.all, sum.total)} (${parts})`,
    target: thinning.target,
  };
}

/** All agrees but for a seventh of the human's chord, which only a voice still to be written sang. */
function isUnsungSeventh(texture: Texture, { from, until, human, ours }: Difference): boolean {
  if (ours === undefined || !human.seventh || human.type < 0) return false;
  const type = CHORD_TYPES[ours.type]!;
  const alike =
    ours.root === human.root &&
    type.quality === human.quality &&
    type.offsets.length === 3 &&
    ours.tonic === human.tonic &&
    ours.mode === human.mode;
  const seventh = human.root + CHORD_TYPES[human.type]!.offsets[3]!;
  const sung = VOICES.some((voice) =>
    stretchesWithin(texture.tones[voice], from * CROTCHET, until * CROTCHET).some(
      ({ pitch }) => fifthsPlace(pitch) === seventh,
    ),
  );
  return alike && !sung;
}

/** The human labels, cut to the bars that count. */
function labelsLeft({ labels, texture }: Piece, { bars }: Thinning): Piece['labels'] {
  if (bars === undefined) return labels;
  const kept = texture.score.bars.filter(({ index }) => bars(index));
  return kept.flatMap(({ at, duration }) =>
    labels
      .filter(({ from, until }) => until * CROTCHET > at && from * CROTCHET < at + duration)
      .map((label) => ({
        ...label,
        from: Math.max(label.from, at / CROTCHET),
        until: Math.min(label.until, (at + duration) / CROTCHET),
      })),
  );
}
