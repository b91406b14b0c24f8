/** Scripts for the desk's tests, from our text notation. */
import { expect } from 'vitest';
import { applyDecisions, type Decision, type JudgedFinding } from '../../src/desk/decisions.ts';
import { factsOf, type ScriptFacts } from '../../src/desk/facts.ts';
import { readNotation } from '../../src/notation/index.ts';
import { CHORALE } from '../../src/profiles/profile.ts';
import { type Review, reviewScore } from '../../src/review/review.ts';
import type { Score } from '../../src/score/score.ts';
import { exerciseText } from '../support/exercises.ts';

export interface TestScript {
  readonly score: Score;
  readonly review: Review;
  readonly facts: ScriptFacts;
  /** As found, nothing decided. */
  readonly findings: readonly JudgedFinding[];
}

export function scoreFrom(text: string): Score {
  const { score, problems } = readNotation(text);
  expect(problems).toEqual([]);
  return score;
}

export function scriptFrom(text: string, given?: Score): TestScript {
  const score = scoreFrom(text);
  const review = reviewScore(score, CHORALE);
  const facts = factsOf(review, given);
  return { score, review, facts, findings: applyDecisions('x', facts.findings, []).findings };
}

/** One of the exercises in fixtures/, by name. */
export function exercise(name: string): TestScript {
  return scriptFrom(exerciseText(name));
}

/** Decisions made one after the other, ids and times filled in: `d1`, `d2`, … */
export function decided(...made: DistributiveOmit<Decision, 'id' | 'at'>[]): Decision[] {
  return made.map(
    (decision, i) => ({ ...decision, id: `d${i + 1}`, at: '2026-11-01T10:00:00Z' }) as Decision,
  );
}

type DistributiveOmit<T, K extends PropertyKey> = T extends unknown ? Omit<T, K> : never;
