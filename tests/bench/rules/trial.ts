/**
 * Whether trying would settle causes better than the notes that findings hang on: a mark that is gone in most of the
 * changes that clear another, and bring no new fault, would follow from it. What it would fold, and what it costs.
 */
import { type Finding, type Review, reviewScore } from '../../../src/review/review.ts';
import { waysOut } from '../../../src/review/ways-out.ts';
import { withTone } from '../../../src/score/excerpt.ts';
import { barAt } from '../../../src/score/place.ts';
import type { Score } from '../../../src/score/score.ts';
import { freshMarks, type Plant } from './plant.ts';

/** In so many of the changes a mark must be gone to follow. */
const MOST = 0.75;

export interface Trial {
  readonly marks: number;
  /** Marks that the trial would fold beneath another. */
  readonly folded: number;
  readonly trials: number;
  /** Processor time of all trials, in milliseconds. */
  readonly cost: number;
}

/** Tries the marks that a plant brought, each against those within a bar of it. */
export function trialOf(plant: Plant, review: Review): Trial {
  const marks = freshMarks(plant, review.findings);
  const folded = new Set<Finding>();
  let [trials, cost] = [0, 0];
  for (const mark of marks) {
    const near = marks.filter(
      (other) => other !== mark && !folded.has(other) && isNear(review.score, mark, other),
    );
    if (folded.has(mark) || near.length === 0) continue;
    const began = process.cpuUsage();
    for (const other of clearedWith(review, mark, near)) folded.add(other);
    const { user, system } = process.cpuUsage(began);
    cost += (user + system) / 1000;
    trials++;
  }
  return { marks: marks.length, folded: folded.size, trials, cost };
}

export function printTrials(trials: readonly Trial[]): void {
  const sum = (of: (trial: Trial) => number) => trials.reduce((total, trial) => total + of(trial), 0);
  const marks = sum((trial) => trial.marks);
  const left = marks - sum((trial) => trial.folded);
  const each =
    sum((trial) => trial.cost) /
    Math.max(
      1,
      sum((trial) => trial.trials),
    );
  console.log(
    '\nBy trial besides: what is gone in three quarters of the ways out of another follows from it',
  );
  console.log(
    `  ${(marks / trials.length).toFixed(3)} marks a plant would be ${(left / trials.length).toFixed(3)}; ${each.toFixed(0)} ms of processor a finding tried`,
  );
}

function isNear(score: Score, a: Finding, b: Finding): boolean {
  return Math.abs(barAt(score, a.from).index - barAt(score, b.from).index) <= 1;
}

function clearedWith(review: Review, mark: Finding, others: readonly Finding[]): Finding[] {
  const ways = waysOut(review, mark.id, { locked: ['S'] })?.ways ?? [];
  if (ways.length === 0) return [];
  const after = ways.map(
    ({ tone, pitch }) => reviewScore(withTone(review.score, tone, pitch), review.profile).findings,
  );
  return others.filter((other) => after.filter((now) => isGone(other, now)).length >= MOST * ways.length);
}

function isGone(was: Finding, now: readonly Finding[]): boolean {
  return !now.some(
    ({ rule, severity, from, until, voices }) =>
      rule === was.rule &&
      severity !== 'remark' &&
      from < was.until &&
      was.from < until &&
      voices.some((voice) => was.voices.includes(voice)),
  );
}
