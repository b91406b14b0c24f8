/**
 * A mark scheme of the teacher's own: criteria with levels and descriptors, and, where the teacher wants the desk to
 * suggest a level, what each level needs. It is a JSON file that can be read and written by hand.
 */

import * as z from 'zod';
import { capitalised } from '../english/words.ts';
import { type Outcome, refuse, refuseAll } from '../refusal/refusal.ts';
import { FAMILIES } from '../rules/rule.ts';
import { MEASURE_NAMES } from './measures.ts';

const shortText = z.string().trim().min(1).max(200);

const figureSchema = z.strictObject({
  measure: z.enum(MEASURE_NAMES),
  /** For what is about faults and queries: only those of these families. */
  families: z.array(z.enum(FAMILIES)).min(1).optional(),
});

const needSchema = figureSchema
  .extend({
    atMost: z.number().min(0).max(10_000).optional(),
    atLeast: z.number().min(0).max(10_000).optional(),
  })
  .refine(
    ({ atMost, atLeast }) => atMost !== undefined || atLeast !== undefined,
    'Say "atMost" or "atLeast" with a number.',
  );

const levelSchema = z.strictObject({
  name: shortText,
  /** The least and the most marks of this level; `[3, 3]` where there is only one. */
  marks: z
    .tuple([z.number().min(0).max(1000), z.number().min(0).max(1000)])
    .refine(([least, most]) => least <= most, 'The least marks of a level come first, then the most.'),
  descriptor: z.string().trim().min(1).max(1_000),
  /** All of these must hold for the level to be suggested; left out where only a person can tell. */
  needs: z.array(needSchema).max(12).optional(),
});

const criterionSchema = z
  .strictObject({
    id: z.string().regex(/^[a-z0-9-]{1,40}$/, 'An id is small letters, digits and hyphens.'),
    name: shortText,
    /** From the lowest to the highest. */
    levels: z.array(levelSchema).min(1).max(20),
    /** Further figures to be shown beside the criterion. */
    show: z.array(figureSchema).max(12).optional(),
  })
  .refine(
    ({ levels }) => levels.every(({ marks }, i) => i === 0 || marks[0] > levels[i - 1]!.marks[1]),
    'Levels stand from the lowest to the highest, and no mark belongs to two of them.',
  );

export const schemeSchema = z
  .strictObject({
    name: shortText,
    criteria: z.array(criterionSchema).min(1).max(20),
  })
  .refine(
    ({ criteria }) => new Set(criteria.map(({ id }) => id)).size === criteria.length,
    'Each criterion has an id of its own.',
  );

export type Scheme = z.infer<typeof schemeSchema>;
export type Criterion = Scheme['criteria'][number];
export type Level = Criterion['levels'][number];
export type Need = z.infer<typeof needSchema>;
/** What is measured, without a limit. */
export type Figure = z.infer<typeof figureSchema>;

/** The most characters that a scheme's file may have. */
const MOST_CHARACTERS = 200_000;

/** A refusal has every mistake, each as a sentence that says where. */
export type SchemeReading = Outcome<{ readonly scheme: Scheme }>;

/** Reads a scheme from its file's text. Never throws. */
export function readScheme(text: string): SchemeReading {
  if (text.length > MOST_CHARACTERS)
    return refuse(
      `The mark scheme is ${text.length} characters long; at most ${MOST_CHARACTERS} can be read. Is it the right file?`,
    );
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return refuse('The mark scheme is not JSON: look for a missing comma, quote or bracket.');
  }
  const read = schemeSchema.safeParse(data);
  if (read.success) return { ok: true, scheme: read.data };
  return refuseAll(read.error.issues.map((issue) => ({ message: `${placeIn(issue.path)}${issue.message}` })));
}

/** `Criterion 2, level 1, marks: ` for the path of a complaint. */
function placeIn(path: readonly PropertyKey[]): string {
  const words: string[] = [];
  for (let i = 0; i < path.length; i++) {
    const [part, next] = [path[i]!, path[i + 1]];
    const list = { criteria: 'criterion', levels: 'level', needs: 'need' }[String(part)];
    if (list !== undefined && typeof next === 'number') {
      words.push(`${list} ${next + 1}`);
      i++;
    } else words.push(String(part));
  }
  const place = words.join(', ');
  return place === '' ? '' : `${capitalised(place)}: `;
}

/** The most that one criterion can bring. */
export function outOf(criterion: Criterion): number {
  return criterion.levels.at(-1)!.marks[1];
}

/** The most a script can have, over all criteria. */
export function fullMarks(scheme: Scheme): number {
  return scheme.criteria.reduce((sum, criterion) => sum + outOf(criterion), 0);
}
