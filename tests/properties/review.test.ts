import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CHORALE } from '../../src/profiles/profile.ts';
import { reviewScore } from '../../src/review/review.ts';
import { endOf } from '../../src/score/score.ts';
import { anyScore } from '../support/scores.ts';

describe('a review of anything that can be written', () => {
  test('never throws, lies within the score, and says the same twice', () => {
    fc.assert(
      fc.property(anyScore, (score) => {
        const review = reviewScore(score, CHORALE);
        const end = endOf(score);
        for (const finding of review.findings) {
          expect(finding.from).toBeGreaterThanOrEqual(0);
          expect(finding.until).toBeGreaterThanOrEqual(finding.from);
          expect(finding.until).toBeLessThanOrEqual(end);
          expect(finding.message).toMatch(/[.?]$/);
        }
        for (const chord of review.analysis.chords) expect(chord.until).toBeGreaterThan(chord.at);
        expect(reviewScore(score, CHORALE).findings.map(({ id }) => id)).toEqual(
          review.findings.map(({ id }) => id),
        );
      }),
      { numRuns: 150 },
    );
  });
});
