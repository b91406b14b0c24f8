/** Plants faults and sees whether they are found and named. */
import { CHORALE } from '../../../src/profiles/profile.ts';
import { type Finding, reviewScore } from '../../../src/review/review.ts';
import { RULES } from '../../../src/rules/list.ts';
import type { Family, Severity } from '../../../src/rules/rule.ts';
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
  let named = 0;
  let otherwise = 0;
  for (const plant of plants) {
    const there = reviewScore(plant.score, CHORALE).findings.filter((finding) =>
      touches(finding, plant.place),
    );
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
  return { planter, plants: plants.length, named, otherwise, severities, missed };
}

export function touches(finding: Finding, place: Place): boolean {
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

export function familyOf(id: string): Family | undefined {
  return RULES.find((rule) => rule.id === id)?.family;
}
