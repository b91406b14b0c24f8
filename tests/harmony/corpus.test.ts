/**
 * Guards the figures of `npm run bench:harmony` on a fixed set of open chorales: the committed weights must not fall
 * below them by more than the margin. The weights have seen these pieces; the cross-validated figures are the bench's.
 */
import { describe, expect, it } from 'vitest';
import { analyse } from '../../src/harmony/analyse.ts';
import { corpusPresent, readCorpus } from '../bench/harmony-corpus.ts';
import { type Agreement, add, compare, NOTHING, readingsOf } from '../bench/harmony-measure.ts';

const SUBSET = [
  '001',
  '020',
  '029',
  '044',
  '066',
  '084',
  '101',
  '117',
  '140',
  '162',
  '193',
  '227',
  '258',
  '293',
  '320',
  '355',
];
/** Measured on the subset with the committed weights, less a margin of one per cent. */
const LEAST = { root: 0.964, chord: 0.949, bass: 0.947, key: 0.914, all: 0.878 } as const;

describe.skipIf(!corpusPresent())('against human analyses (skipped without ../shared/corpus)', () => {
  it('keeps its agreement on the fixed subset', () => {
    const pieces = readCorpus(SUBSET);
    expect(pieces.length).toBeGreaterThan(10);
    const total = pieces.reduce<Agreement>(
      (sum, { texture, labels }) => add(sum, compare(labels, readingsOf(analyse(texture)))),
      NOTHING,
    );
    for (const [part, least] of Object.entries(LEAST))
      expect(total[part as keyof typeof LEAST] / total.total, part).toBeGreaterThanOrEqual(least);
  });
});
