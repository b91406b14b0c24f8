/** What the README shows of the notation is read, and is good writing. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readNotation } from '../../src/notation/index.ts';
import { CHORALE } from '../../src/profiles/profile.ts';
import { reviewScore } from '../../src/review/review.ts';

test('the README’s example has nothing at fault', () => {
  const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');
  const text = /```\n(title: A short phrase[\s\S]*?)```/.exec(readme)?.[1];
  const { score, problems } = readNotation(text ?? '');
  expect(problems).toEqual([]);
  expect(score.bars.map((bar) => bar.number)).toEqual(['0', '1', '2', '3', '4']);
  const { findings } = reviewScore(score, CHORALE);
  expect(findings.filter(({ severity }) => severity !== 'remark').map(({ message }) => message)).toEqual([]);
});
