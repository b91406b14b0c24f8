import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readNotation } from '../../src/notation/index.ts';
import { CHORALE } from '../../src/profiles/profile.ts';
import { reviewNear } from '../../src/review/near.ts';
import { reviewScore } from '../../src/review/review.ts';
import { withNear } from '../../src/review/with-near.ts';
import { RULES } from '../../src/rules/list.ts';
import { plainNear, plainReview, rulesById, wholeNear, wholeReview } from '../../web/worker/plain.ts';

const NAMES = [
  'fault-consecutives',
  'fault-dissonance',
  'lantern',
  'north-window',
  'half-built',
  'tune-alone',
];
const scoreOf = (name: string) =>
  readNotation(readFileSync(new URL(`../../fixtures/exercises/${name}.txt`, import.meta.url), 'utf8')).score;

describe('a review that crosses between threads', () => {
  it.each(NAMES)('is the same on the other side: %s', (name) => {
    const review = reviewScore(scoreOf(name), CHORALE);
    const { score } = review;
    expect(wholeReview(structuredClone(plainReview(review)), score, rulesById(RULES))).toEqual(review);
  });
  it.each(NAMES)('is the same too where only the bars around a place were looked at: %s', (name) => {
    const score = scoreOf(name);
    const near = reviewNear(score, CHORALE, score.bars[1]!.at);
    expect(wholeNear(structuredClone(plainNear(near)), score, rulesById(RULES))).toEqual(near);
  });
});

describe('the findings around the caret', () => {
  it.each(NAMES)('are those that the whole review has in that bar: %s', (name) => {
    const score = scoreOf(name);
    const all = reviewScore(score, CHORALE).findings;
    let same = 0;
    let other = 0;
    for (const bar of score.bars) {
      const inBar = (f: { from: number }) => f.from >= bar.at && f.from < bar.at + bar.duration;
      const whole = new Set(all.filter(inBar).map((f) => f.id));
      const near = reviewNear(score, CHORALE, bar.at).findings.filter(inBar);
      for (const finding of near) whole.has(finding.id) ? same++ : other++;
    }
    // A rule that looks at the whole piece, or a chord read otherwise without its surroundings, may differ here and there.
    expect(other).toBeLessThanOrEqual(Math.max(2, Math.ceil(same * 0.25)));
  });
  it('take the place of older ones there, and leave the others', () => {
    const score = scoreOf('fault-consecutives');
    const all = reviewScore(score, CHORALE).findings;
    const near = reviewNear(score, CHORALE, 0);
    const merged = withNear(all, near);
    expect(merged.filter((f) => f.from >= near.until)).toEqual(all.filter((f) => f.from >= near.until));
    expect(merged.filter((f) => f.from < near.until)).toEqual(
      [...near.findings].sort((a, b) => a.from - b.from),
    );
  });
  it('are none where there is no bar', () => {
    expect(reviewNear(readNotation('').score, CHORALE, 0).findings).toEqual([]);
  });
});
