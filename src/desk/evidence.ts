/** What a script shows, in figures a teacher can check against the score. */
import type { JsonFinding, JsonReview } from '../report/json.ts';
import type { Family } from '../rules/rule.ts';

export interface Evidence {
  readonly phrases: number;
  readonly faults: number;
  readonly queries: number;
  /** Faults by family; families without any are left out. */
  readonly faultsByFamily: Readonly<Partial<Record<Family, number>>>;
  /** Cadences by kind. */
  readonly cadences: Readonly<Record<string, number>>;
  /** Phrases whose end is a cadence. */
  readonly closed: number;
  /** Non-harmony notes by kind. */
  readonly ornaments: Readonly<Record<string, number>>;
  /** How many different chords are used, whatever their inversions: I and I6 are one, V and V7 are two. */
  readonly chords: number;
  /** Keys visited. */
  readonly keys: readonly string[];
  /** Share of the four voices' beats that is written, 0 to 1. */
  readonly written: number;
}

/** Figures of one script. `counting` are the findings that hold after the teacher's decisions. */
export function evidenceOf(review: JsonReview, counting: readonly JsonFinding[]): Evidence {
  const faultsByFamily: Partial<Record<Family, number>> = {};
  for (const { family, severity } of counting) {
    if (severity === 'fault') faultsByFamily[family] = (faultsByFamily[family] ?? 0) + 1;
  }
  const ends = review.phrases.map(({ until }) => until);
  const closed = ends.filter((until, i) => {
    const from = review.phrases[i]!.from;
    return review.cadences.some(({ at }) => at >= from && at < until);
  }).length;
  return {
    phrases: review.phrases.length,
    faults: counting.filter(({ severity }) => severity === 'fault').length,
    queries: counting.filter(({ severity }) => severity === 'query').length,
    faultsByFamily,
    cadences: tally(review.cadences.map(({ kind }) => kind)),
    closed,
    ornaments: tally(review.ornaments.map(({ kind }) => kind)),
    chords: new Set(
      review.chords.map(({ key, root, quality, seventh }) => `${key} ${root} ${quality} ${seventh}`),
    ).size,
    keys: [...new Set(review.keys.map(({ key }) => key))],
    written: review.crotchets === 0 ? 0 : 1 - review.summary.unwritten / (4 * review.crotchets),
  };
}

function tally(items: readonly string[]): Record<string, number> {
  const counts: Record<string, number> = {};
  for (const item of items) counts[item] = (counts[item] ?? 0) + 1;
  return counts;
}
