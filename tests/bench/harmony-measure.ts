/** Compares a reading with the human one, weighted by duration. */
import type { Analysis, Chord } from '../../src/harmony/analysis.ts';
import { CHORD_TYPES } from '../../src/harmony/chord-types.ts';
import { fifthsPlace } from '../../src/score/pitch.ts';
import { CROTCHET } from '../../src/score/time.ts';
import type { HumanLabel } from './harmony-corpus.ts';

/** A stretch of a reading, in crotchets. */
export interface Reading {
  readonly from: number;
  readonly until: number;
  readonly tonic: number;
  readonly mode: 0 | 1;
  readonly root: number;
  readonly type: number;
  readonly inversion: number;
}

/** The chords of an analysis as the measure wants them. */
export function readingsOf(analysis: Analysis): Reading[] {
  return analysis.chords.map((chord) => ({
    from: chord.at / CROTCHET,
    until: chord.until / CROTCHET,
    tonic: fifthsPlace(chord.key.tonic),
    mode: chord.key.mode === 'minor' ? 1 : 0,
    root: fifthsPlace(chord.root),
    type: typeOf(chord),
    inversion: chord.roman.inversion,
  }));
}

function typeOf({ roman }: Chord): number {
  const special = roman.special === 'Neapolitan' ? undefined : roman.special;
  return CHORD_TYPES.findIndex(
    (type) => type.quality === roman.quality && type.seventh === roman.seventh && type.special === special,
  );
}

/** Crotchets in agreement. */
export interface Agreement {
  readonly total: number;
  readonly root: number;
  readonly chord: number;
  readonly bass: number;
  readonly key: number;
  readonly all: number;
}

export interface Difference {
  readonly from: number;
  readonly until: number;
  readonly human: HumanLabel;
  readonly ours: Reading | undefined;
}

export const NOTHING: Agreement = { total: 0, root: 0, chord: 0, bass: 0, key: 0, all: 0 };

/** Root; root, quality and seventh or not; that and the bass; the key; all of it. */
export function compare(
  labels: readonly HumanLabel[],
  readings: readonly Reading[],
  differ?: (difference: Difference) => void,
): Agreement {
  const sum = { ...NOTHING } as { -readonly [K in keyof Agreement]: number };
  const edges = [...new Set([...labels, ...readings].flatMap(({ from, until }) => [from, until]))].sort(
    (a, b) => a - b,
  );
  let l = 0;
  let r = 0;
  for (const [i, from] of edges.entries()) {
    const until = edges[i + 1];
    if (until === undefined) break;
    while (l < labels.length && labels[l]!.until <= from) l++;
    while (r < readings.length && readings[r]!.until <= from) r++;
    const human = labels[l];
    if (human === undefined || human.from > from) continue;
    const ours = readings[r] !== undefined && readings[r]!.from <= from ? readings[r] : undefined;
    const length = until - from;
    sum.total += length;
    if (ours === undefined) {
      differ?.({ from, until, human, ours });
      continue;
    }
    const type = CHORD_TYPES[ours.type]!;
    const seventh = type.offsets.length > 3;
    const root = ours.root === human.root;
    const chord = root && type.quality === human.quality && seventh === human.seventh;
    const bass = chord && ours.root + type.offsets[ours.inversion]! === human.bass;
    const key = ours.tonic === human.tonic && ours.mode === human.mode;
    if (root) sum.root += length;
    if (chord) sum.chord += length;
    if (bass) sum.bass += length;
    if (key) sum.key += length;
    if (bass && key) sum.all += length;
    else differ?.({ from, until, human, ours });
  }
  return sum;
}

export function add(a: Agreement, b: Agreement): Agreement {
  return {
    total: a.total + b.total,
    root: a.root + b.root,
    chord: a.chord + b.chord,
    bass: a.bass + b.bass,
    key: a.key + b.key,
    all: a.all + b.all,
  };
}

/** `96.1  91.0  89.2  94.3  87.0`: root, chord, chord and bass, key, all, in per cent. */
export function printAgreement(a: Agreement): string {
  return [a.root, a.chord, a.bass, a.key, a.all]
    .map((part) => ((100 * part) / Math.max(a.total, 1e-9)).toFixed(1).padStart(5))
    .join('  ');
}
