/** What a script shows besides its faults, in counts: the ground that a suggested level stands on. */
import { z } from 'zod';
import type { Analysis } from '../harmony/analysis.ts';
import { numeral, printKey } from '../harmony/words/labels.ts';
import { cadenceWords } from '../harmony/words/words.ts';
import type { Review } from '../review/review.ts';
import { barAt } from '../score/place.ts';
import { type Score, VOICES } from '../score/score.ts';
import { crotchets } from '../score/time.ts';

/** As in the JSON review: crotchets from the start. */
const time = z.number().min(0);
const many = z.number().int().min(0);

export const countsSchema = z.object({
  phrases: z.array(
    z.object({
      from: time,
      until: time,
      firstBar: z.string(),
      lastBar: z.string(),
      /** The cadence that closes it, where one does: `perfect cadence`. */
      cadence: z.string().optional(),
      cadenceKind: z.enum(['perfect', 'imperfect', 'plagal', 'interrupted']).optional(),
    }),
  ),
  /** Non-harmony notes by kind, those that no kind explains left out: `{ passing: 7, suspension: 1 }`. */
  ornaments: z.record(z.string(), many),
  chords: z.object({
    all: many,
    /** How often each chord stands, inversions together: `{ V: 6, V7: 3, 'V/V': 1 }`. */
    kinds: z.record(z.string(), many),
    inverted: many,
    sevenths: many,
    /** Applied and specially named chords. */
    chromatic: many,
  }),
  /** Keys visited, each once, in order. */
  keys: z.array(z.string()),
  /** Share of the beats of all four voices that is still to be written, 0 to 1. */
  unwritten: z.number().min(0).max(1),
});
export type Counts = z.infer<typeof countsSchema>;

export function countsOf(review: Review): Counts {
  const { analysis, score } = review;
  const ornaments: Record<string, number> = {};
  for (const { kind } of analysis.ornaments)
    if (kind !== 'unclassified') ornaments[kind] = (ornaments[kind] ?? 0) + 1;
  return {
    phrases: phrases(analysis, score),
    ornaments,
    chords: chords(analysis),
    keys: [...new Set(analysis.keys.map((region) => printKey(region.key)))],
    unwritten: unwritten(score),
  };
}

function phrases(analysis: Analysis, score: Score): Counts['phrases'] {
  return analysis.phrases.map((phrase) => {
    const cadence = phrase.cadence === undefined ? undefined : analysis.cadences[phrase.cadence];
    return {
      from: crotchets(phrase.from),
      until: crotchets(phrase.until),
      firstBar: barAt(score, phrase.from).number,
      // A phrase that ends with a bar ends where the next bar begins.
      lastBar: barAt(score, Math.max(phrase.from, phrase.until - 1)).number,
      ...(cadence === undefined ? {} : { cadence: cadenceWords(cadence).name, cadenceKind: cadence.kind }),
    };
  });
}

function chords(analysis: Analysis): Counts['chords'] {
  const kinds: Record<string, number> = {};
  let inverted = 0;
  let sevenths = 0;
  let chromatic = 0;
  for (const { roman, key } of analysis.chords) {
    const kind = numeral({ ...roman, inversion: 0 }, key);
    kinds[kind] = (kinds[kind] ?? 0) + 1;
    if (roman.inversion > 0) inverted++;
    if (roman.seventh !== undefined) sevenths++;
    if (roman.applied !== undefined || roman.special !== undefined) chromatic++;
  }
  return { all: analysis.chords.length, kinds, inverted, sevenths, chromatic };
}

function unwritten(score: Score): number {
  let gaps = 0;
  let all = 0;
  for (const voice of VOICES)
    for (const { kind, duration } of score.voices[voice]) {
      all += duration;
      if (kind === 'gap') gaps += duration;
    }
  return all === 0 ? 1 : gaps / all;
}
