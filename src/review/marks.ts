/**
 * The order in which findings are told, the same on the page, on paper and on the command line: what costs most comes
 * first, repeated slips of one kind are one mark with several places, and what follows from a slip stands beneath it.
 */
import { type Severity, severityRank } from '../rules/rule.ts';
import { unfinished } from '../rules/unfinished.ts';
import type { Finding } from './finding.ts';

/** A slip, with what follows from it, in order of time. */
export interface Slip {
  readonly finding: Finding;
  readonly follows: readonly Finding[];
}

/** An entry of the list: slips against one rule, as grave as each other. */
export interface Mark {
  /** From 1, as printed in the list and on the stave. */
  readonly number: number;
  readonly severity: Severity;
  /** One at least, in order of time. */
  readonly slips: readonly [Slip, ...Slip[]];
}

/** Every further place of a slip, and everything that follows from it, makes it more urgent by so much of a weight. */
const PER_PLACE = 0.5;
const PER_CONSEQUENCE = 0.5;

/** What is not written yet is no mistake: it is told in a line of its own and has no number. */
export function isUnwritten({ rule, severity }: Pick<Finding, 'rule' | 'severity'>): boolean {
  return rule.id === unfinished.id && severity === 'remark';
}

/** The marks of a review's findings: faults, then queries, then remarks; within each what costs most, then by time. */
export function marksOf(findings: readonly Finding[]): Mark[] {
  const byKind = new Map<string, Slip[]>();
  const beneath = new Map<string, Finding[]>();
  for (const finding of findings) if (finding.because !== undefined) put(beneath, finding.because, finding);
  for (const finding of findings) {
    if (finding.because !== undefined || isUnwritten(finding)) continue;
    const slip = { finding, follows: [...(beneath.get(finding.id) ?? [])].sort(byTime) };
    put(byKind, `${finding.rule.id} ${finding.severity}`, slip);
  }
  return [...byKind.values()]
    .map((slips) => slips.sort((a, b) => byTime(a.finding, b.finding)))
    .sort(
      (a, b) =>
        severityRank(severityOf(a)) - severityRank(severityOf(b)) ||
        cost(b) - cost(a) ||
        byTime(a[0]!.finding, b[0]!.finding),
    )
    .map((slips, index) => ({
      number: index + 1,
      severity: severityOf(slips),
      slips: slips as [Slip, ...Slip[]],
    }));
}

/** The findings as they are told, each with the number of its mark; what is still to be written comes last. */
export function inOrderOfMarks(findings: readonly Finding[]): Finding[] {
  const told = marksOf(findings).flatMap(({ number, slips }) =>
    slips
      .flatMap(({ finding, follows }) => [finding, ...follows])
      .map((finding) => ({ ...finding, mark: number })),
  );
  return [...told, ...findings.filter(isUnwritten).sort(byTime)];
}

/** No more than this can be kept in mind at once. */
const FIRST = 3;

/** The marks to begin with, where there are more of them than can be mended at one sitting; else none. */
export function firstToMend(marks: readonly Mark[]): readonly Mark[] {
  const mends = marks.filter(({ severity }) => severity !== 'remark');
  return mends.length > FIRST ? mends.slice(0, FIRST) : [];
}

/** How many slips the faults and queries come from: those that follow from nothing. */
export function slipsAmong(findings: readonly Finding[]): number {
  return findings.filter(({ severity, because }) => severity !== 'remark' && because === undefined).length;
}

function severityOf(slips: readonly Slip[]): Severity {
  return slips[0]!.finding.severity;
}

function cost(slips: readonly Slip[]): number {
  const consequences = slips.reduce((sum, { follows }) => sum + follows.length, 0);
  return slips[0]!.finding.rule.weight + PER_PLACE * (slips.length - 1) + PER_CONSEQUENCE * consequences;
}

function byTime(a: Finding, b: Finding): number {
  return a.from - b.from || b.rule.weight - a.rule.weight || (a.id < b.id ? -1 : 1);
}

function put<T>(lists: Map<string, T[]>, key: string, item: T): void {
  const list = lists.get(key);
  if (list === undefined) lists.set(key, [item]);
  else list.push(item);
}
