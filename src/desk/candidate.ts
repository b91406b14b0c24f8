/** Whose script a file is, and which draft: read from its name, or from the title in it. No names are needed. */
import * as z from 'zod';
import { type Outcome, refuse } from '../refusal/refusal.ts';

export interface Identity {
  /** As written, letters and digits: `4012`, `A1007`. */
  readonly candidate: string;
  /** Absent where nothing says which: then it is the first, or follows the last one kept. */
  readonly draft?: number;
  readonly foundIn: 'file name' | 'title';
}

/** Refused where a person must say whose script it is. */
export type CandidateReading = Outcome<Identity>;

/** Names and titles are cut before they are looked at, so that no pattern can take long over them. */
const MOST_CHARACTERS = 120;
/** Each `*` multiplies the ways in which a name can be tried; three of them over 120 characters are soon done. */
const MOST_STARS = 3;

/**
 * A pattern as a teacher writes it. `{candidate}` stands for the candidate number (letters and digits), `{draft}` for
 * the draft's number, `*` for anything, all else for itself, capitals or not. It has to fit the whole name of the
 * file without its ending, or the whole title. It is not a regular expression, so it can't be a slow one.
 */
export const candidatePatternSchema = z
  .string()
  .trim()
  .min(1, 'The pattern is empty; write one such as {candidate}-draft{draft}, or leave it out.')
  .max(MOST_CHARACTERS, `The pattern is longer than ${MOST_CHARACTERS} characters; shorten it.`)
  .refine(
    (text) => count(text, '{candidate}') === 1,
    'The pattern should hold {candidate} once, for example {candidate}-draft{draft}.',
  )
  .refine((text) => count(text, '{draft}') <= 1, 'The pattern may hold {draft} once only.')
  .refine(
    (text) => count(text, '*') <= MOST_STARS && !text.includes('**'),
    `The pattern may hold * up to ${MOST_STARS} times, never two side by side.`,
  )
  .refine(
    (text) => !/\{(?!candidate\}|draft\})/.test(text),
    'After { the pattern knows candidate} and draft} only.',
  )
  .brand<'CandidatePattern'>();
export type CandidatePattern = z.infer<typeof candidatePatternSchema>;

/** Reads a pattern, or says in a sentence why it can't be used. */
export function readCandidatePattern(text: string): Outcome<{ readonly pattern: CandidatePattern }> {
  const read = candidatePatternSchema.safeParse(text);
  return read.success ? { ok: true, pattern: read.data } : refuse(read.error.issues[0]!.message);
}

/**
 * Reads candidate and draft from a file's name (a path is allowed), then from the title in it. Without a pattern the
 * candidate number is the first run of two to ten digits, with up to two letters before or after; in a title it must
 * follow the word "candidate". `nobodys` are numbers that are no candidate's, since all names of a stack have them. The
 * draft is the number after `draft`, `d` or `v`, or that of a folder `draft 2`.
 *
 * @example candidateOf('stack/4012_draft2.mxl', '') gives candidate 4012, draft 2
 */
export function candidateOf(
  fileName: string,
  title: string,
  pattern?: CandidatePattern,
  nobodys: ReadonlySet<string> = new Set(),
): CandidateReading {
  const parts = fileName.split(/[/\\]/);
  const name = stem(parts.at(-1) ?? '');
  const heading = title.slice(0, MOST_CHARACTERS);
  const inName = pattern === undefined ? plainly(name, nobodys) : fitted(name, pattern);
  const inTitle = pattern === undefined ? titled(heading) : fitted(heading, pattern);
  const [found, foundIn] =
    inName.candidate !== undefined ? [inName, 'file name' as const] : [inTitle, 'title' as const];
  if (found.candidate === undefined)
    return refuse(
      pattern === undefined
        ? 'Neither the file’s name nor its title shows a candidate number; say whose script it is.'
        : `Neither the file’s name nor its title fits the pattern ${pattern}; say whose script it is, or change the pattern.`,
    );
  const draft = found.draft ?? inName.draft ?? folderDraft(parts.at(-2)) ?? inTitle.draft;
  return { ok: true, candidate: found.candidate, ...(draft === undefined ? {} : { draft }), foundIn };
}

interface Found {
  readonly candidate?: string;
  readonly draft?: number;
}

function found(candidate: string | undefined, draft: string | undefined): Found {
  const number = Number(draft);
  return {
    ...(candidate === undefined ? {} : { candidate }),
    ...(number >= 1 ? { draft: number } : {}),
  };
}

const DRAFT = /(?:^|[^\p{L}])(?:draft|version|d|v)[\s._-]{0,3}(\d{1,2})(?!\d)/iu;
const CANDIDATE = /(?<![\p{L}\p{N}])\p{L}{0,2}\d{2,10}\p{L}{0,2}(?![\p{L}\p{N}])/u;

function plainly(name: string, nobodys: ReadonlySet<string>): Found {
  const number = candidatesIn(name).find((one) => !nobodys.has(one));
  return found(number, DRAFT.exec(name)?.[1]);
}

function candidatesIn(name: string): string[] {
  const draft = DRAFT.exec(name);
  const rest = draft === null ? name : name.replace(draft[0], ' ');
  return [...rest.matchAll(new RegExp(CANDIDATE, 'gu'))].map(([number]) => number);
}

/** All numbers in a file's name that could be a candidate's. */
export function numbersIn(fileName: string): string[] {
  return candidatesIn(stem(fileName.split(/[/\\]/).at(-1) ?? ''));
}

/** A title has numbers of its own (a hymn's, an opus): only what follows the word is taken. */
function titled(title: string): Found {
  const word = /\bcandidate\b[^\p{L}\p{N}]{0,6}(?:(?:no|number)\b[^\p{L}\p{N}]{0,4})?/iu.exec(title);
  const after = word === null ? undefined : title.slice(word.index + word[0].length);
  const candidate =
    after === undefined ? undefined : /^\p{L}{0,2}\d{2,10}\p{L}{0,2}(?![\p{L}\p{N}])/u.exec(after)?.[0];
  return found(candidate, DRAFT.exec(title)?.[1]);
}

function folderDraft(folder: string | undefined): number | undefined {
  const draft = /^draft[\s._-]{0,3}(\d{1,2})$/i.exec(folder?.slice(0, MOST_CHARACTERS) ?? '')?.[1];
  return found(undefined, draft).draft;
}

function fitted(text: string, pattern: CandidatePattern): Found {
  const groups = expressionOf(pattern).exec(text.trim())?.groups;
  return found(groups?.candidate, groups?.draft);
}

/** The latest patterns as expressions; a desk has one or two. */
const expressions = new Map<CandidatePattern, RegExp>();

function expressionOf(pattern: CandidatePattern): RegExp {
  const known = expressions.get(pattern);
  if (known !== undefined) return known;
  const source = pattern
    .split(/(\{candidate\}|\{draft\}|\*)/)
    .map((part) => {
      if (part === '{candidate}') return '(?<candidate>[\\p{L}\\p{N}]{1,20})';
      if (part === '{draft}') return '(?<draft>\\d{1,2})';
      return part === '*' ? `.{0,${MOST_CHARACTERS}}?` : part.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');
    })
    .join('');
  const expression = new RegExp(`^${source}$`, 'iu');
  if (expressions.size > 20) expressions.clear();
  expressions.set(pattern, expression);
  return expression;
}

/** The name without its ending, cut to a sensible length. */
function stem(name: string): string {
  return name.replace(/\.[a-z]{2,8}$/i, '').slice(0, MOST_CHARACTERS);
}

function count(text: string, part: string): number {
  return text.split(part).length - 1;
}
