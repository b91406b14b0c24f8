/** What is worth working on next: the rules an exercise runs against, weighed for page and desk alike. */
import type { Review } from '../review/review.ts';
import type { Family, Rule, Severity } from '../rules/rule.ts';
import { placeAt, printPlace } from '../score/place.ts';
import type { Ticks } from '../score/time.ts';

/** What the weighing asks of a finding. */
export interface Weighed {
  /** The rule's id. */
  readonly rule: string;
  readonly family: Family;
  readonly severity: Severity;
  /** A teacher has looked at it and agreed. */
  readonly agreed: boolean;
}

const WEIGHT: Readonly<Record<Severity, number>> = { fault: 3, query: 1, remark: 0 };
/** What the teacher has agreed to comes before what nobody has looked at. */
const AGREED = 1.25;

/**
 * How far one lesson gets with faults of a family: what can be checked voice by voice with one question is soon
 * mended, a sense for chords and phrases takes longer. A teacher's rule of thumb; common practice, no source.
 */
const TEACHABLE: Readonly<Record<Family, number>> = {
  consecutives: 1.2,
  'cadences and phrases': 1.1,
  chords: 1.1,
  'spacing and range': 1,
  melody: 1,
  dissonance: 0.9,
  'rhythm and notation': 0.7,
};

/** How urgently a rule wants work: its findings' weight, each further place counting less, times how teachable it is. */
export function urgency(family: Family, findings: readonly Pick<Weighed, 'severity' | 'agreed'>[]): number {
  const weights = findings
    .map(({ severity, agreed }) => WEIGHT[severity] * (agreed ? AGREED : 1))
    .sort((a, b) => b - a);
  const sum = weights.reduce<number>((total, weight, i) => total + weight / Math.sqrt(i + 1), 0);
  return sum * TEACHABLE[family];
}

/** How many things a pupil has room for. */
const MOST = 3;

/**
 * The findings worth working on, rule by rule, the most urgent rule first; remarks are left out. Of one family come
 * two rules at most, as long as others have anything: three kinds of consecutives would be one lesson.
 */
export function chooseWork<F>(
  findings: readonly F[],
  weighed: (finding: F) => Weighed,
  most = MOST,
): (readonly F[])[] {
  const byRule = new Map<string, { family: Family; findings: F[]; weighed: Weighed[] }>();
  for (const finding of findings) {
    const its = weighed(finding);
    if (its.severity === 'remark') continue;
    const known = byRule.get(its.rule);
    if (known === undefined)
      byRule.set(its.rule, { family: its.family, findings: [finding], weighed: [its] });
    else {
      known.findings.push(finding);
      known.weighed.push(its);
    }
  }
  const ranked = [...byRule.values()]
    .map((entry) => ({ ...entry, urgency: urgency(entry.family, entry.weighed) }))
    .sort((a, b) => b.urgency - a.urgency);
  const chosen: typeof ranked = [];
  for (const entry of ranked)
    if (chosen.filter(({ family }) => family === entry.family).length < 2) chosen.push(entry);
  const waiting = ranked.filter((entry) => !chosen.includes(entry));
  return [...chosen, ...waiting].slice(0, most).map((entry) => entry.findings);
}

export interface ToWorkOn {
  readonly rule: Rule;
  readonly times: number;
  readonly sentence: string;
  readonly at: Ticks;
}

/** Up to `most` rules that the exercise runs against, the most urgent first. Unfinished beats don't count. */
export function toWorkOn(review: Review, most = MOST): ToWorkOn[] {
  return chooseWork(
    review.findings,
    ({ rule, severity }) => ({ rule: rule.id, family: rule.family, severity, agreed: false }),
    most,
  ).map((findings) => {
    const { rule, from, message } = findings.reduce((a, b) => (b.from < a.from ? b : a));
    const times = findings.length === 1 ? '' : `, ${findings.length} times`;
    return {
      rule,
      times: findings.length,
      at: from,
      sentence: `${rule.name}${times}; first in ${printPlace(placeAt(review.score, from))}: ${message}`,
    };
  });
}
