/** Marks: given by a teacher, criterion by criterion, added up, and laid side by side for moderation. */
import * as z from 'zod';
import { listed } from '../english/words.ts';
import { type Outcome, refuse } from '../refusal/refusal.ts';
import { type Criterion, fullMarks, outOf, type Scheme } from './scheme.ts';

/**
 * A mark that a teacher has given. It is made by {@link giveMark} alone (or read back from where it was kept), so that
 * the compiler refuses a suggestion, or any other number, in its place.
 */
export const markSchema = z
  .object({
    criterion: z.string(),
    marks: z.number().min(0).max(1000),
    /** When, ISO 8601 in UTC. */
    at: z.iso.datetime(),
    by: z.string().max(40).optional(),
    /** Two markers have agreed on it: it stands whatever either gave. */
    agreed: z.literal(true).optional(),
  })
  .brand<'Mark'>();
export type Mark = z.infer<typeof markSchema>;

export type MarkGiven = Outcome<{ readonly mark: Mark }>;

/** Gives a mark at one criterion: whole or half marks, from 0 to what the criterion is out of. */
export function giveMark(
  scheme: Scheme,
  criterion: string,
  marks: number,
  made: { readonly at: string; readonly by?: string; readonly agreed?: true },
): MarkGiven {
  const found = scheme.criteria.find(({ id }) => id === criterion);
  if (found === undefined) return refuse(`The mark scheme has no criterion "${criterion.slice(0, 40)}".`);
  const most = outOf(found);
  if (!(marks >= 0 && marks <= most) || (marks * 2) % 1 !== 0)
    return refuse(
      `${found.name} is marked from 0 to ${most}, in whole or half marks; ${marks} is no such mark.`,
    );
  return { ok: true, mark: markSchema.parse({ criterion, marks, ...made }) };
}

/** How a second marker works: with the first one's marks in view, or without. */
export const SECOND_MARKINGS = ['open', 'blind'] as const;
export type SecondMarking = (typeof SECOND_MARKINGS)[number];

/** A criterion at which two markers gave different marks and have not agreed on one. */
export interface Difference {
  readonly criterion: string;
  /** Each marker's mark, in the order they gave them. */
  readonly marks: readonly Mark[];
}

/**
 * The marks that stand of all that were given, each marker's last at each criterion. With one marker the latest counts,
 * whoever gave it. With two, one that was agreed on counts before either's; where theirs differ, none.
 */
export function standingMarks(given: readonly Mark[], second?: SecondMarking): Mark[] {
  const criteria = [...new Set(given.map(({ criterion }) => criterion))];
  return criteria.flatMap((criterion) => {
    const marks = given.filter((mark) => mark.criterion === criterion);
    if (second === undefined) return marks.slice(-1);
    const agreed = marks.findLast((mark) => mark.agreed);
    if (agreed !== undefined) return [agreed];
    return marks.every(({ marks: number }) => number === marks[0]!.marks) ? marks.slice(-1) : [];
  });
}

/**
 * The marks that may leave the desk, on sheets and in the mark book, which anybody may open: those that stand, and with
 * a second marker who is not to see the first's, of these only those that two have given or that were agreed on.
 */
export function settledMarks(given: readonly Mark[], second?: SecondMarking): Mark[] {
  const standing = standingMarks(given, second);
  if (second !== 'blind') return standing;
  return standing.filter(
    ({ agreed, criterion }) =>
      agreed || new Set(given.flatMap((mark) => (mark.criterion === criterion ? [mark.by] : []))).size > 1,
  );
}

/** Where two markers differ. */
export function differencesIn(given: readonly Mark[]): Difference[] {
  const settled = new Set(standingMarks(given, 'open').map(({ criterion }) => criterion));
  return [...new Set(given.map(({ criterion }) => criterion))]
    .filter((criterion) => !settled.has(criterion))
    .map((criterion) => ({ criterion, marks: given.filter((mark) => mark.criterion === criterion) }));
}

/**
 * What one marker may see of the marks given. Where the second marks without the first's in view, another's mark shows
 * only at criteria at which one has given a mark oneself.
 */
export function marksInView(
  given: readonly Mark[],
  by: string | undefined,
  second?: SecondMarking,
): readonly Mark[] {
  if (second !== 'blind') return given;
  const own = new Set(given.filter((mark) => mark.by === by).map(({ criterion }) => criterion));
  return given.filter(({ criterion }) => own.has(criterion));
}

/** The level a mark falls in, by index; a half mark between two levels belongs to the lower. */
export function levelOf(criterion: Criterion, marks: number): number {
  return Math.max(
    0,
    criterion.levels.findLastIndex(({ marks: [least] }) => marks >= least),
  );
}

export interface Total {
  readonly marks: number;
  readonly outOf: number;
  /** Names of the criteria not marked yet; the total is final where there are none. */
  readonly missing: readonly string[];
  /** Names of the criteria whose mark is above what the scheme now gives; it is not added. */
  readonly beyond: readonly string[];
  readonly sentence: string;
}

/** Adds up the marks. Of several marks at one criterion the last in the list counts. */
export function total(scheme: Scheme, marks: readonly Mark[]): Total {
  const latest = latestMarks(marks);
  const isBeyond = (criterion: Criterion): boolean => (latest.get(criterion.id) ?? 0) > outOf(criterion);
  const sum = scheme.criteria
    .filter((criterion) => !isBeyond(criterion))
    .reduce((all, { id }) => all + (latest.get(id) ?? 0), 0);
  const beyond = scheme.criteria.filter(isBeyond).map(({ name }) => name);
  const missing = scheme.criteria.filter(({ id }) => !latest.has(id)).map(({ name }) => name);
  const full = fullMarks(scheme);
  return {
    marks: sum,
    outOf: full,
    missing,
    beyond,
    sentence: [
      missing.length === 0
        ? `${sum} out of ${full}.`
        : `${sum} out of ${full} so far; not marked yet: ${listed(missing)}.`,
      ...(beyond.length === 0
        ? []
        : [`Not added, since it is more than the scheme now gives: ${listed(beyond)}.`]),
    ].join(' '),
  };
}

function latestMarks(marks: readonly Mark[]): Map<string, number> {
  return new Map(marks.map(({ criterion, marks: number }) => [criterion, number]));
}

export interface Ranked<S> {
  /** 1 for the highest; equal marks share a rank, and the next rank counts them: 1, 2, 2, 4. */
  readonly rank: number;
  readonly script: S;
  readonly marks: number;
}

export interface Moderation<S> {
  readonly ranked: readonly Ranked<S>[];
  /** Scripts without a mark at this criterion, in the order they came in. */
  readonly unmarked: readonly S[];
}

/** The scripts in rank order at one criterion, or by total where none is named. */
export function moderationOrder<S extends { readonly marks: readonly Mark[] }>(
  scheme: Scheme,
  scripts: readonly S[],
  criterion?: string,
): Moderation<S> {
  const marked: { script: S; marks: number }[] = [];
  const unmarked: S[] = [];
  for (const script of scripts) {
    const latest = latestMarks(script.marks);
    const whole = total(scheme, script.marks);
    const marks =
      criterion === undefined
        ? whole.missing.length === 0 && whole.beyond.length === 0
          ? whole.marks
          : undefined
        : latest.get(criterion);
    if (marks === undefined) unmarked.push(script);
    else marked.push({ script, marks });
  }
  marked.sort((a, b) => b.marks - a.marks);
  return {
    ranked: marked.map((entry) => ({
      ...entry,
      rank: marked.findIndex(({ marks }) => marks === entry.marks) + 1,
    })),
    unmarked,
  };
}
