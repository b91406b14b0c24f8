/** The level that the figures speak for. It is a suggestion with its grounds, and never becomes a mark by itself. */
import { type Ground, type Measured, measure } from './measures.ts';
import type { Criterion, Figure, Level, Need } from './scheme.ts';

/** Not a {@link Mark}: it has no number of marks, only the range of a level, and a teacher makes the mark. */
export interface Suggestion {
  readonly kind: 'suggestion';
  readonly criterion: string;
  /** Index of the level in the criterion; absent where nothing in the scheme says when a level is reached. */
  readonly level?: number;
  readonly levelName?: string;
  readonly range?: readonly [least: number, most: number];
  /** The figures, each in a sentence. */
  readonly evidence: readonly string[];
  /** What keeps the script from the next level up, each in a sentence. */
  readonly missing: readonly string[];
}

/** Suggests the highest level all of whose needs are met, counting from below without a break. */
export function suggestLevel(criterion: Criterion, ground: Ground): Suggestion {
  const { levels } = criterion;
  const evidence = evidenceFor(criterion, ground);
  const base = { kind: 'suggestion' as const, criterion: criterion.id, evidence };
  if (levels.every(({ needs }) => needs === undefined)) return { ...base, missing: [] };
  let reached = -1;
  for (const [i, level] of levels.entries()) {
    // A level that only a person can tell is passed over, not given away.
    if (level.needs === undefined && i > 0) continue;
    if (unmet(level, ground).length > 0) break;
    reached = i;
  }
  const next = levels.slice(reached + 1).find(({ needs }) => needs !== undefined);
  const missing =
    next === undefined ? [] : unmet(next, ground).map((need) => missingSentence(next, need, ground));
  const level = levels[reached];
  if (level === undefined) return { ...base, missing };
  return { ...base, level: reached, levelName: level.name, range: level.marks, missing };
}

function unmet(level: Level, ground: Ground): Need[] {
  return (level.needs ?? []).filter((need) => {
    const { value } = measured(need, ground);
    return (
      (need.atMost !== undefined && value > need.atMost) ||
      (need.atLeast !== undefined && value < need.atLeast)
    );
  });
}

function measured(need: Figure, ground: Ground): Measured {
  return measure(need.measure, ground, need.families);
}

function missingSentence(level: Level, need: Need, ground: Ground): string {
  const wanted = [
    need.atLeast === undefined ? '' : `at least ${need.atLeast}`,
    need.atMost === undefined ? '' : `at most ${need.atMost}`,
  ].filter((part) => part !== '');
  const value = Math.round(measured(need, ground).value * 100) / 100;
  return `${level.name} wants ${wanted.join(' and ')} for “${need.measure}”; here it is ${value}.`;
}

/** Each figure that the criterion's levels rest on or that it asks to be shown, once. */
function evidenceFor(criterion: Criterion, ground: Ground): string[] {
  const wanted: Figure[] = [
    ...criterion.levels.flatMap(({ needs }) => needs ?? []),
    ...(criterion.show ?? []),
  ];
  return [...new Set(wanted.map((need) => measured(need, ground).sentence))];
}
