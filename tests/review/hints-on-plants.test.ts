/** Hints read over planted faults: open chorales with one thing wrong, a plant or two for every rule. */
import { describe, expect, it } from 'vitest';
import { CHORALE } from '../../src/profiles/profile.ts';
import { reviewScore } from '../../src/review/review.ts';
import { PLANTERS } from '../bench/rules/all.ts';
import { corpusIsThere, readPieces } from '../bench/rules/corpus.ts';
import { plantsFor } from '../bench/rules/plant.ts';
import { hintFaults } from '../support/hint-faults.ts';

const PIECES = 16;

describe.skipIf(!corpusIsThere())('hints over planted faults (needs ../shared/corpus)', () => {
  const pieces = corpusIsThere() ? readPieces(PIECES) : [];

  it.each(PLANTERS.map((planter, i) => [planter.rule, planter, i] as const))(
    '%s',
    (_rule, planter, index) => {
      for (const { score } of plantsFor(planter, pieces, 1, index + 1)) {
        const review = reviewScore(score, CHORALE);
        expect(hintFaults(review)).toEqual([]);
        expect(hintFaults(review, ['S', 'B'])).toEqual([]);
      }
    },
  );
});
