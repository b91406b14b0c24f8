/** Plants faults and sees whether they are found and named. */
import { CHORALE } from '../../../src/profiles/profile.ts';
import { type Finding, reviewScore } from '../../../src/review/review.ts';
import { RULES } from '../../../src/rules/list.ts';
import type { Severity } from '../../../src/rules/rule.ts';
import type { Score } from '../../../src/score/score.ts';
import { plainOf } from './plain.ts';
import type { Piece, Place, Planter } from './planter.ts';
import { randomFrom } from './random.ts';

export interface Plant {
  readonly piece: Piece;
  readonly score: Score;
  readonly place: Place;
}

export interface Result {
  readonly planter: Planter;
  readonly plants: number;
  /** Found by the rule it was planted for, or by one that names it as rightly. */
  readonly named: number;
  /** Not so named, but something of the same family was found there. */
  readonly otherwise: number;
  /** Of the named ones. */
  readonly severities: Readonly<Record<Severity, number>>;
  readonly missed: readonly Plant[];
  /** Faults and queries that the plants brought with them, the named one included: what was not said before. */
  readonly brought: number;
  /** Of those, the ones that stand by themselves and aren't folded beneath another. */
  readonly marks: number;
  /** Plants whose own rule leads: it stands by itself, or nothing does. */
  readonly leads: number;
  /** What else stands by itself, by rule: how often. */
  readonly beside: ReadonlyMap<string, number>;
}

/** Makes so many plants for a rule, one a chorale as far as that goes. */
export function plantsFor(planter: Planter, pieces: readonly Piece[], wanted: number, seed: number): Plant[] {
  const random = randomFrom(seed);
  const plants: Plant[] = [];
  const before = new Map<Piece, Set<string>>();
  for (let round = 0; round < 4 && plants.length < wanted; round++) {
    for (const piece of random.shuffled(pieces)) {
      if (plants.length >= wanted) break;
      let known = before.get(piece);
      if (known === undefined) {
        known = new Set(planter.find(piece.plain, piece).map(keyOf));
        before.set(piece, known);
      }
      for (const score of planter.tries(piece, random)) {
        const fresh = planter.find(plainOf(score), piece).filter((place) => !known.has(keyOf(place)));
        if (fresh.length !== 1) continue;
        plants.push({ piece, score, place: fresh[0]! });
        break;
      }
    }
  }
  return plants;
}

function keyOf(place: Place): string {
  return `${place.at} ${place.until} ${place.voices.join('')}`;
}

export function measure(planter: Planter, plants: readonly Plant[]): Result {
  const names = [planter.rule, ...(planter.alsoNamed ?? [])];
  const severities = { fault: 0, query: 0, remark: 0 };
  const missed: Plant[] = [];
  const beside = new Map<string, number>();
  let [named, otherwise, brought, marks, leads] = [0, 0, 0, 0, 0];
  for (const plant of plants) {
    const { findings } = reviewScore(plant.score, CHORALE);
    const fresh = freshFindings(plant, findings);
    const own = fresh.filter((finding) => finding.because === undefined);
    brought += fresh.length;
    marks += own.length;
    if (own.length === 0 || own.some(({ rule }) => names.includes(rule.id))) leads++;
    for (const { rule } of own)
      if (!names.includes(rule.id)) beside.set(rule.id, (beside.get(rule.id) ?? 0) + 1);
    const there = findings.filter((finding) => touches(finding, plant.place));
    const right = there.filter((finding) => names.includes(finding.rule.id));
    if (right.length === 0) {
      missed.push(plant);
      if (there.some((finding) => finding.rule.family === planter.family)) otherwise++;
      continue;
    }
    named++;
    const heaviest = (['fault', 'query', 'remark'] as const).find((s) =>
      right.some((f) => f.severity === s),
    )!;
    severities[heaviest]++;
  }
  const counts = { plants: plants.length, named, otherwise, brought, marks, leads };
  return { planter, ...counts, severities, missed, beside };
}

const unaltered = new WeakMap<Piece, readonly Finding[]>();
const RANK: Readonly<Record<Severity, number>> = { fault: 0, query: 1, remark: 2 };

/** The faults and queries that the chorale did not have before: neither there nor about there, nor as heavy. */
function freshFindings({ piece }: Plant, findings: readonly Finding[]): Finding[] {
  let before = unaltered.get(piece);
  if (before === undefined) {
    before = reviewScore(piece.score, CHORALE).findings;
    unaltered.set(piece, before);
  }
  const known = before;
  return findings.filter(
    (finding) =>
      finding.severity !== 'remark' &&
      !known.some(
        (was) =>
          was.rule === finding.rule &&
          RANK[was.severity] <= RANK[finding.severity] &&
          touches(was, { at: finding.from, until: finding.until, voices: finding.voices }),
      ),
  );
}

/** Those of them that stand by themselves. */
export function freshMarks(plant: Plant, findings: readonly Finding[]): Finding[] {
  return freshFindings(plant, findings).filter(({ because }) => because === undefined);
}

function touches(finding: Finding, place: Place): boolean {
  return (
    finding.from < place.until &&
    finding.until > place.at &&
    (place.voices.length === 0 || finding.voices.some((voice) => place.voices.includes(voice)))
  );
}

/** Rules of the list that no planter plants. */
export function unplanted(planters: readonly Planter[]): string[] {
  return RULES.map((rule) => rule.id).filter((id) => !planters.some((planter) => planter.rule === id));
}
