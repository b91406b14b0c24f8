/**
 * The order in which findings are told, the same on the page, on paper, on the command line and on a pupil's sheet:
 * what costs most comes first, repeated slips against one rule are one mark with several places, and what follows from
 * a slip stands beneath it.
 */
import { type Family, type Severity, severityRank } from '../rules/rule.ts';
import { unfinished } from '../rules/unfinished.ts';
import type { Finding } from './finding.ts';
import { rankWritten } from './slips.ts';

/** A slip, with what follows from it, in order of time. */
export interface Slip<F = Finding> {
  readonly finding: F;
  readonly follows: readonly F[];
}

/** An entry of the list: the slips against one rule. What only informs stands apart from what is to be mended. */
export interface Mark<F = Finding> {
  /** From 1, as printed in the list and on the stave. */
  readonly number: number;
  /** That of the gravest of its slips; the others may be lighter. */
  readonly severity: Severity;
  /** One at least, in order of time. */
  readonly slips: readonly [Slip<F>, ...Slip<F>[]];
}

/** What the order hangs on, however a finding is kept. */
export interface Weighed {
  readonly id: string;
  /** The rule's id. */
  readonly rule: string;
  readonly family: Family;
  /** See `Rule`. */
  readonly weight: number;
  readonly severity: Severity;
  /** The id of the finding it follows from. Where that one is no longer there, or is lighter, it stands for itself. */
  readonly because?: string | undefined;
  /** Where it begins, in any unit of time. */
  readonly from: number;
  /** A teacher has looked at it and agreed: such slips come before those that nobody has looked at. */
  readonly agreed?: boolean;
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
  return marksAmong(
    findings.filter((finding) => !isUnwritten(finding)),
    (finding) => ({
      ...finding,
      rule: finding.rule.id,
      family: finding.rule.family,
      weight: finding.rule.weight,
    }),
  );
}

interface Entry<F> {
  readonly finding: F;
  readonly its: Weighed;
}
type WeighedSlip<F> = Entry<F> & { readonly follows: readonly Entry<F>[] };

/** The marks of findings that are kept in whatever form. */
export function marksAmong<F>(findings: readonly F[], weigh: (finding: F) => Weighed): Mark<F>[] {
  const entries = findings.map((finding): Entry<F> => ({ finding, its: weigh(finding) }));
  const known = new Map(entries.map(({ its }) => [its.id, its]));
  const causeOf = ({ its: { because, severity } }: Entry<F>) => {
    const cause = because === undefined ? undefined : known.get(because);
    return cause && severityRank(cause.severity) <= severityRank(severity) ? cause.id : undefined;
  };
  const beneath = new Map<string, Entry<F>[]>();
  const byKind = new Map<string, WeighedSlip<F>[]>();
  for (const entry of entries) {
    const cause = causeOf(entry);
    if (cause !== undefined) put(beneath, cause, entry);
  }
  for (const entry of entries) {
    if (causeOf(entry) !== undefined) continue;
    const { rule, id, severity } = entry.its;
    const slip = { ...entry, follows: (beneath.get(id) ?? []).sort(byTime) };
    put(byKind, `${rule} ${severity === 'remark'}`, slip);
  }
  const kinds = [...byKind.values()].map((slips) => slips.sort(byTime)).sort(byCost);
  return lessonsFirst(kinds).map((slips, index) => ({
    number: index + 1,
    severity: gravest(slips).severity,
    slips: slips.map(
      ({ finding, follows }): Slip<F> => ({ finding, follows: follows.map((each) => each.finding) }),
    ) as [Slip<F>, ...Slip<F>[]],
  }));
}

/** The findings as they are told, each with the number of its mark; what is still to be written comes last. */
export function inOrderOfMarks(findings: readonly Finding[]): Finding[] {
  const told = marksOf(findings).flatMap(({ number, slips }) =>
    slips
      .flatMap(({ finding, follows }) => [finding, ...follows])
      .map((finding) => ({ ...finding, mark: number })),
  );
  return [...told, ...findings.filter(isUnwritten).sort((a, b) => a.from - b.from || (a.id < b.id ? -1 : 1))];
}

/** No more than this can be kept in mind at once. */
const FIRST = 3;

/** What to work on: the first marks of the list, remarks left out. */
export function toMend<F>(marks: readonly Mark<F>[], most = FIRST): readonly Mark<F>[] {
  return marks.filter(({ severity }) => severity !== 'remark').slice(0, most);
}

/** The marks to begin with, where there are more of them than can be mended at one sitting; else none. */
export function firstToMend(marks: readonly Mark[]): readonly Mark[] {
  const first = toMend(marks);
  return first.length < toMend(marks, FIRST + 1).length ? first : [];
}

/** How many slips the faults and queries come from: those that follow from nothing. */
export function slipsAmong(findings: readonly Finding[]): number {
  return findings.filter(({ severity, because }) => severity !== 'remark' && because === undefined).length;
}

/** Gravest first; then what the teacher has agreed to; then what is written wrong, since the rest is read by it. */
function byCost<F>(a: readonly WeighedSlip<F>[], b: readonly WeighedSlip<F>[]): number {
  const [one, other] = [gravest(a), gravest(b)];
  return (
    severityRank(one.severity) - severityRank(other.severity) ||
    Number(isAgreed(b)) - Number(isAgreed(a)) ||
    rankWritten(one.rule) - rankWritten(other.rule) ||
    cost(b) - cost(a) ||
    byTime(a[0]!, b[0]!)
  );
}

function gravest<F>(slips: readonly WeighedSlip<F>[]): Weighed {
  return slips
    .map(({ its }) => its)
    .reduce((a, b) => (severityRank(b.severity) < severityRank(a.severity) ? b : a));
}

function isAgreed<F>(slips: readonly WeighedSlip<F>[]): boolean {
  return slips.some(({ its, follows }) =>
    [its, ...follows.map((each) => each.its)].some(({ agreed }) => agreed),
  );
}

function cost<F>(slips: readonly WeighedSlip<F>[]): number {
  const consequences = slips.reduce((sum, { follows }) => sum + follows.length, 0);
  return slips[0]!.its.weight + PER_PLACE * (slips.length - 1) + PER_CONSEQUENCE * consequences;
}

/** How many of the first marks may be of one family, while others as grave wait: three kinds of parallels are one lesson. */
const OF_A_FAMILY = 2;

function lessonsFirst<F>(kinds: readonly WeighedSlip<F>[][]): WeighedSlip<F>[][] {
  const waiting = [...kinds];
  const chosen: WeighedSlip<F>[][] = [];
  while (chosen.length < FIRST && waiting.length > 0) {
    const { severity } = gravest(waiting[0]!);
    const isNew = (slips: readonly WeighedSlip<F>[]) =>
      gravest(slips).severity === severity &&
      chosen.filter((each) => each[0]!.its.family === slips[0]!.its.family).length < OF_A_FAMILY;
    chosen.push(...waiting.splice(Math.max(0, waiting.findIndex(isNew)), 1));
  }
  return [...chosen, ...waiting];
}

function byTime<F>({ its: a }: Entry<F>, { its: b }: Entry<F>): number {
  return a.from - b.from || b.weight - a.weight || (a.id < b.id ? -1 : 1);
}

function put<T>(lists: Map<string, T[]>, key: string, item: T): void {
  const list = lists.get(key);
  if (list === undefined) lists.set(key, [item]);
  else list.push(item);
}
