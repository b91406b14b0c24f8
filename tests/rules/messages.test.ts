/** Every message is held against the notes it names: over the rules' own examples, the bench's situations, open scores. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { openScore } from '../../src/open/open.ts';
import { CHORALE } from '../../src/profiles/profile.ts';
import { reviewScore } from '../../src/review/review.ts';
import { RULES } from '../../src/rules/list.ts';
import type { Score } from '../../src/score/score.ts';
import { SITUATIONS } from '../bench/pupils/situations.ts';
import { stopping, withoutBars, withoutFermatas, withoutVoices } from '../bench/pupils/thin.ts';
import { transposed } from '../bench/pupils/transpose.ts';
import { WEAK_SITUATIONS } from '../bench/pupils/weak-situations.ts';
import { PLANTERS } from '../bench/rules/all.ts';
import { readPieces } from '../bench/rules/corpus.ts';
import { plantsFor } from '../bench/rules/plant.ts';
import { untruths } from '../support/message-truth.ts';
import { scoreOf } from '../support/rules.ts';

const MACHINE = fileURLToPath(new URL('../../../shared/corpus/machine-made/', import.meta.url));
const CHORALES = fileURLToPath(new URL('../../../shared/corpus/chorales/', import.meta.url));

function untrue(scores: readonly Score[]): string[] {
  return scores.flatMap((score) => untruths(reviewScore(score, CHORALE)));
}

describe('what messages say', () => {
  it('is so in every example of every rule', { timeout: 90_000 }, () => {
    const texts = RULES.flatMap(({ examples }) => [...examples.wrong, ...examples.right]);
    expect(untrue(texts.map(({ text }) => scoreOf(text)))).toEqual([]);
  });

  it('is so in every situation, in three keys', { timeout: 90_000 }, () => {
    const scores = [...SITUATIONS, ...WEAK_SITUATIONS].flatMap(({ texts }) =>
      texts.flatMap((text) => [0, -3, 4].map((by) => transposed(scoreOf(text), by))),
    );
    expect(untrue(scores)).toEqual([]);
  });

  it('is noticed where it is not so', () => {
    const review = reviewScore(scoreOf(RULES[0]!.examples.wrong[0]!.text), CHORALE);
    const [finding] = review.findings;
    const lie = { ...finding!, message: 'F#9 in the alto is the seventh of the chord.' };
    expect(untruths({ ...review, findings: [lie] }).length).toBeGreaterThan(0);
    const bare = { ...finding!, message: 'The chord on C has no third: nothing.' };
    const third = { ...review, findings: [{ ...bare, from: 0, until: 1_000_000 }] };
    expect(untruths(third).some((line) => line.includes('a third above C sounds'))).toBe(true);
  });
});

describe.skipIf(!existsSync(CHORALES))('what messages say (skipped without ../shared/corpus)', () => {
  const pieces = existsSync(CHORALES) ? readPieces().filter((_, i) => i % 16 === 0) : [];

  it('is so of masters, with and without fermatas', { timeout: 90_000 }, () => {
    const scores = pieces.map(({ score }) => score);
    expect(untrue([...scores, ...scores.map(withoutFermatas)])).toEqual([]);
  });

  it('is so of what is half written', { timeout: 90_000 }, () => {
    const scores = pieces
      .filter((_, i) => i % 2 === 0)
      .flatMap(({ score }) => [
        withoutVoices(score, ['T']),
        withoutVoices(score, ['A', 'T']),
        withoutBars(score, (bar) => bar % 3 === 1),
        stopping(score, 'A', 3),
      ]);
    expect(untrue(scores)).toEqual([]);
  });

  it('is so of planted faults', { timeout: 90_000 }, () => {
    const scores = PLANTERS.filter((_, i) => i % 3 === 0).flatMap((planter, i) =>
      plantsFor(planter, pieces.slice(i % 6, (i % 6) + 2), 1, i).map((plant) => plant.score),
    );
    expect(untrue(scores)).toEqual([]);
  });

  it.skipIf(!existsSync(MACHINE))('is so of machine-made chorales', { timeout: 90_000 }, () => {
    const files = readdirSync(MACHINE).filter((name, i) => name.endsWith('.mxl') && i % 40 === 0);
    const scores = files.flatMap((name) => {
      const opened = openScore(readFileSync(MACHINE + name));
      return opened.ok ? [opened.score] : [];
    });
    expect(scores.length).toBe(files.length);
    expect(untrue(scores)).toEqual([]);
  });
});
