/**
 * The one shape in which anything is refused: by readers, settings, command line, service and page. Readers give it as a
 * value ({@link Outcome}); doors, which have nowhere to hand a value on to, throw it ({@link Refused}).
 */
import * as z from 'zod';

const placed = {
  /** What is wrong, what was expected, what to do. */
  message: z.string(),
  /** Where in a text, counted from 1. */
  line: z.number().int().positive().exactOptional(),
  column: z.number().int().positive().exactOptional(),
};

/** Why something was not read or done. */
export const refusalSchema = z
  .object({
    ...placed,
    /** Each thing wrong, where there are several; the message speaks of them together. */
    problems: z.array(z.object(placed).readonly()).readonly().exactOptional(),
  })
  .readonly();
export type Refusal = z.infer<typeof refusalSchema>;

/** One thing wrong in a text, and where. */
export interface Problem extends Refusal {
  readonly line: number;
  readonly column: number;
}

/** What was asked for, or why not. */
export type Outcome<T> = ({ readonly ok: true } & T) | ({ readonly ok: false } & Refusal);

/** Why in a word: each has its exit status and its HTTP status in one place at its door. */
export const REFUSAL_KINDS = [
  /** A file that is no four-part exercise. */
  'unreadable',
  /** It was read, but can't be used or done. */
  'unusable',
  /** The request itself does not fit. */
  'unclear',
  'signed out',
  'forbidden',
  'missing',
  /** Somebody else changed it meanwhile. */
  'outdated',
  'too large',
  'unknown kind',
  'too many',
  /** Something this machine lacks. */
  'unable',
  'unready',
  /** Ours, not the person's. */
  'fault',
  'no answer',
] as const;
export type RefusalKind = (typeof REFUSAL_KINDS)[number];

interface Details extends Omit<Refusal, 'message'> {
  readonly kind?: RefusalKind;
  /** What a program can use: the revision that stands, the kinds that are taken. */
  readonly more?: Readonly<Record<string, unknown>>;
}

/** A refusal thrown. */
export class Refused extends Error implements Refusal {
  override readonly name = 'Refused';
  readonly kind: RefusalKind;
  readonly line?: number;
  readonly column?: number;
  readonly problems?: readonly Refusal[];
  readonly more: Readonly<Record<string, unknown>>;

  constructor(message: string, { kind = 'unusable', more = {}, line, column, problems }: Details = {}) {
    super(message);
    this.kind = kind;
    this.more = more;
    if (line !== undefined) this.line = line;
    if (column !== undefined) this.column = column;
    if (problems !== undefined) this.problems = problems;
  }
}

/** A refusal as a reader's answer. */
export function refuse(
  message: string,
  place: Omit<Refusal, 'message'> = {},
): { readonly ok: false } & Refusal {
  return { ok: false, ...refusalOf({ message, ...place }) };
}

/** Everything that is wrong, at once; one at least. */
export function refuseAll(problems: readonly Refusal[]): { readonly ok: false } & Refusal {
  return refuse(problems.map(({ message }) => message).join('\n'), { problems });
}

/** Plain data of anything that holds a refusal: an outcome, an error. */
export function refusalOf({ message, line, column, problems }: Refusal): Refusal {
  return {
    message,
    ...(line === undefined ? {} : { line }),
    ...(column === undefined ? {} : { column }),
    ...(problems === undefined ? {} : { problems }),
  };
}

/** The same thrown. */
export function allRefused(problems: readonly Refusal[]): Refused {
  return new Refused(problems.map(({ message }) => message).join('\n'), { problems });
}

/** Each thing wrong, with what it is wrong in before it. */
export function problemsIn(what: string, refusal: Refusal): Refusal[] {
  const problems = refusal.problems ?? [refusalOf(refusal)];
  return problems.map((problem) => ({ ...problem, message: `${what}: ${problem.message}` }));
}
