/** The level that the figures speak for. It is a suggestion with its grounds, and never becomes a mark by itself. */
import { standingFindings } from './decisions.ts';
import { type Ground, type Measured, measure, SHARES } from './measures.ts';
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

/** With less of it written than this, a script says too little of what its writer can. */
const LEAST_WRITTEN = 2 / 3;

/**
 * Suggests the highest level all of whose needs are met, counting from below without a break; none where too little is
 * written, and none of the upper ones where faults stand thick.
 */
export function suggestLevel(criterion: Criterion, ground: Ground): Suggestion {
  const { levels } = criterion;
  const evidence = evidenceFor(criterion, ground);
  const base = { kind: 'suggestion' as const, criterion: criterion.id, evidence };
  if (levels.every(({ needs }) => needs === undefined)) return { ...base, missing: [] };
  if (1 - ground.counts.unwritten < LEAST_WRITTEN) {
    const written = measure('beats written', ground).sentence;
    return { ...base, missing: [`${written} No level is suggested before two thirds are.`] };
  }
  const cap = faultCap(levels.length, ground);
  let reached = -1;
  for (const [i, level] of levels.entries()) {
    // A level that only a person can tell is passed over, not given away.
    if (level.needs === undefined && i > 0) continue;
    if (unmet(level, ground).length > 0 || i > cap.most) break;
    reached = i;
  }
  const next = levels.slice(reached + 1).find(({ needs }) => needs !== undefined);
  const missing =
    next === undefined ? [] : unmet(next, ground).map((need) => missingSentence(next, need, ground));
  if (cap.sentence !== undefined && next !== undefined && levels.indexOf(next) > cap.most)
    missing.push(cap.sentence);
  const level = levels[reached];
  if (level === undefined) return { ...base, missing };
  return { ...base, level: reached, levelName: level.name, range: level.marks, missing };
}

/** Fewer faults than this never keep a script from a level by themselves. */
const FEWEST_FAULTS = 3;
/**
 * Standing faults in ten crotchets, and the share of the levels that is left at so many or more. Set by
 * `npm run bench:levels`: masters have none in the middle, six wrong notes bring 0.8, eighteen 2.3, notes thrown 15.
 */
const CAPS: readonly (readonly [faults: number, share: number])[] = [
  [8, 0],
  [3, 1 / 3],
  [1, 2 / 3],
];

/** The highest level, by index, that so many faults leave, whatever else the figures say. */
function faultCap(
  levels: number,
  { counts, findings }: Ground,
): { readonly most: number; readonly sentence?: string } {
  const faults = standingFindings(findings).filter(({ severity }) => severity === 'fault').length;
  const crotchets = counts.phrases.reduce((sum, { from, until }) => sum + until - from, 0);
  const inTen = (10 * faults) / Math.max(10, crotchets);
  const share = faults < FEWEST_FAULTS ? undefined : CAPS.find(([least]) => inTen >= least)?.[1];
  if (share === undefined) return { most: levels - 1 };
  return {
    most: Math.floor((levels - 1) * share),
    sentence: `${faults} faults stand in ${Math.round(crotchets)} crotchets: too many for a higher level.`,
  };
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
    need.atLeast === undefined ? '' : `at least ${inWords(need, need.atLeast)}`,
    need.atMost === undefined ? '' : `at most ${inWords(need, need.atMost)}`,
  ].filter((part) => part !== '');
  const value = inWords(need, measured(need, ground).value);
  return `${level.name} wants ${wanted.join(' and ')} for “${need.measure}”; here it is ${value}.`;
}

function inWords({ measure: what }: Need, value: number): string {
  // Less than all is never told as all.
  return SHARES.has(what) ? `${Math.floor(value * 100 + 1e-9)} %` : String(Math.round(value * 100) / 100);
}

/** Each figure that the criterion's levels rest on or that it asks to be shown, once. */
function evidenceFor(criterion: Criterion, ground: Ground): string[] {
  const wanted: Figure[] = [
    ...criterion.levels.flatMap(({ needs }) => needs ?? []),
    ...(criterion.show ?? []),
  ];
  return [...new Set(wanted.map((need) => measured(need, ground).sentence))];
}
