/** A teacher's own mark scheme: criteria with levels and descriptors, and the level the evidence suggests. */
import { z } from 'zod';
import { list } from '../report/sentences.ts';
import { FAMILIES } from '../rules/rule.ts';
import type { Evidence } from './evidence.ts';

/**
 * What a criterion may be measured by. A level of such a criterion has a `reach`: the most faults a phrase, or the
 * least of anything else, with which that level is suggested.
 */
export const MEASURES = {
  'faults a phrase': 'fewer is better; `families` narrows it',
  'phrases closed': 'share of phrases that end in a cadence, 0 to 1',
  'kinds of cadence': 'how many different kinds of cadence',
  'ornaments a phrase': 'non-harmony notes of every kind for each phrase',
  'kinds of ornament': 'how many different kinds of non-harmony note',
  'different chords': 'how many different chords, whatever their inversions',
  'keys visited': 'how many keys',
  'beats written': 'share of all four voices that is written, 0 to 1',
} as const;
export type Measure = keyof typeof MEASURES;

const measures = Object.keys(MEASURES) as [Measure, ...Measure[]];

const levelSchema = z.strictObject({
  marks: z.number().min(0).max(1000),
  descriptor: z.string().min(1).max(1000),
  reach: z.number().min(0).max(1000).optional(),
});

const criterionSchema = z
  .strictObject({
    id: z.string().regex(/^[a-z0-9-]{1,40}$/, 'small letters, digits and hyphens'),
    name: z.string().min(1).max(200),
    measure: z.enum(measures).optional(),
    families: z.array(z.enum(FAMILIES)).min(1).optional(),
    /** From the lowest to the highest. */
    levels: z.array(levelSchema).min(1).max(20),
  })
  .refine(
    ({ levels }) => levels.every((level, i) => i === 0 || level.marks >= levels[i - 1]!.marks),
    'levels stand from the lowest to the highest',
  );

export const schemeSchema = z
  .strictObject({
    name: z.string().min(1).max(200),
    criteria: z.array(criterionSchema).min(1).max(20),
  })
  .refine(
    ({ criteria }) => new Set(criteria.map(({ id }) => id)).size === criteria.length,
    'each criterion has an id of its own',
  );

export type Scheme = z.infer<typeof schemeSchema>;
export type Criterion = Scheme['criteria'][number];

export interface Suggestion {
  /** Position in the criterion's levels; undefined where nothing is measured, or no level is reached. */
  readonly level?: number;
  /** Why, with figures, in a sentence or two. */
  readonly because: string;
}

/** The level that the figures suggest, with the evidence. A teacher fills in the level; this never does. */
export function suggestLevel(criterion: Criterion, evidence: Evidence): Suggestion {
  const { measure, levels } = criterion;
  if (measure === undefined)
    return { because: 'Nothing is measured for this criterion: it is yours to judge.' };
  const { value, shown } = measured(measure, criterion, evidence);
  const fewerIsBetter = measure === 'faults a phrase';
  const reached = levels.findLastIndex(
    ({ reach }) => reach !== undefined && (fewerIsBetter ? value <= reach : value >= reach),
  );
  if (reached < 0) return { because: `${shown} No level reaches that far.` };
  const limit = levels[reached]!.reach!;
  return {
    level: reached,
    because: `${shown} This level takes ${fewerIsBetter ? 'at most' : 'at least'} ${limit}.`,
  };
}

function measured(
  measure: Measure,
  { families }: Criterion,
  evidence: Evidence,
): { value: number; shown: string } {
  const phrases = Math.max(1, evidence.phrases);
  const inPhrases = `in ${phrases} ${phrases === 1 ? 'phrase' : 'phrases'}`;
  switch (measure) {
    case 'faults a phrase': {
      const kinds = FAMILIES.filter((family) => families === undefined || families.includes(family));
      const faults = kinds.reduce((sum, family) => sum + (evidence.faultsByFamily[family] ?? 0), 0);
      const detail = kinds
        .filter((family) => evidence.faultsByFamily[family])
        .map((family) => `${evidence.faultsByFamily[family]} of ${family}`);
      return {
        value: faults / phrases,
        shown: `${faults === 1 ? '1 fault' : `${faults || 'No'} faults`} ${inPhrases}${detail.length > 0 ? ` (${list(detail)})` : ''}: ${round(faults / phrases)} a phrase.`,
      };
    }
    case 'phrases closed':
      return {
        value: evidence.closed / phrases,
        shown: `${evidence.closed} of ${phrases} phrases end in a cadence (${printTally(evidence.cadences)}).`,
      };
    case 'kinds of cadence':
      return count(evidence.cadences, 'kinds of cadence');
    case 'ornaments a phrase': {
      const total = Object.values(evidence.ornaments).reduce((sum, n) => sum + n, 0);
      return {
        value: total / phrases,
        shown: `${total || 'No'} non-harmony notes ${inPhrases} (${printTally(evidence.ornaments)}): ${round(total / phrases)} a phrase.`,
      };
    }
    case 'kinds of ornament':
      return count(evidence.ornaments, 'kinds of non-harmony note');
    case 'different chords':
      return { value: evidence.chords, shown: `${evidence.chords} different chords.` };
    case 'keys visited':
      return { value: evidence.keys.length, shown: `${evidence.keys.length} keys: ${list(evidence.keys)}.` };
    case 'beats written':
      return {
        value: evidence.written,
        shown: `${Math.floor(evidence.written * 100)} % of the beats are written.`,
      };
  }
}

function count(tally: Readonly<Record<string, number>>, what: string): { value: number; shown: string } {
  const value = Object.keys(tally).length;
  return { value, shown: `${value || 'No'} ${what} (${printTally(tally)}).` };
}

function printTally(tally: Readonly<Record<string, number>>): string {
  const entries = Object.entries(tally).sort(([, a], [, b]) => b - a);
  return entries.length === 0 ? 'none' : entries.map(([kind, n]) => `${n} ${kind}`).join(', ');
}

function round(value: number): string {
  return String(Math.round(value * 100) / 100);
}

/** The most a script can have, over all criteria. */
export function fullMarks(scheme: Scheme): number {
  return scheme.criteria.reduce((sum, { levels }) => sum + levels.at(-1)!.marks, 0);
}

/** The total of the levels chosen so far, and whether every criterion has one. `levels` maps criterion id to level. */
export function totalMarks(
  scheme: Scheme,
  levels: Readonly<Record<string, number>>,
): { readonly total: number; readonly complete: boolean } {
  let total = 0;
  let complete = true;
  for (const { id, levels: steps } of scheme.criteria) {
    const level = Object.hasOwn(levels, id) ? steps[levels[id]!] : undefined;
    if (level === undefined) complete = false;
    else total += level.marks;
  }
  return { total, complete };
}

/** A scheme to begin with; a teacher replaces it with the one the class is marked by. Invented: no examining body's. */
export const PLAIN_SCHEME: Scheme = {
  name: 'Plain scheme',
  criteria: [
    {
      id: 'part-writing',
      name: 'Part-writing',
      measure: 'faults a phrase',
      families: ['consecutives', 'melody', 'spacing and range'],
      levels: [
        { marks: 2, descriptor: 'Voices often collide or are left hanging.' },
        { marks: 4, descriptor: 'Mostly singable; several faults of movement.', reach: 3 },
        { marks: 6, descriptor: 'Good lines; an occasional fault.', reach: 1 },
        { marks: 8, descriptor: 'Four independent, singable voices.', reach: 0.25 },
      ],
    },
    {
      id: 'harmony',
      name: 'Choice and handling of chords',
      measure: 'faults a phrase',
      families: ['chords', 'dissonance'],
      levels: [
        { marks: 2, descriptor: 'Chords often incomplete or out of place.' },
        { marks: 4, descriptor: 'Plain chords, mostly well built.', reach: 3 },
        { marks: 6, descriptor: 'Well-chosen chords, inversions used with purpose.', reach: 1 },
        { marks: 8, descriptor: 'Rich and stylish, every dissonance handled.', reach: 0.25 },
      ],
    },
    {
      id: 'cadences',
      name: 'Cadences and keys',
      measure: 'phrases closed',
      levels: [
        { marks: 1, descriptor: 'Phrases mostly end without a cadence.' },
        { marks: 2, descriptor: 'Half of the phrases close well.', reach: 0.5 },
        { marks: 3, descriptor: 'Nearly all phrases close well.', reach: 0.8 },
        { marks: 4, descriptor: 'Every phrase closes, with variety.', reach: 1 },
      ],
    },
    {
      id: 'decoration',
      name: 'Decoration',
      measure: 'ornaments a phrase',
      levels: [
        { marks: 1, descriptor: 'Block chords throughout.' },
        { marks: 2, descriptor: 'A few passing notes.', reach: 1 },
        { marks: 3, descriptor: 'Passing notes and a suspension or two.', reach: 2.5 },
        { marks: 4, descriptor: 'Quaver movement kept up with ease.', reach: 4 },
      ],
    },
  ],
};
