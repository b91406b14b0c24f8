/** What a script shows besides its faults, in counts: the ground that a suggested level stands on. */
import * as z from 'zod';
import type { Analysis, Chord, Ornament } from '../harmony/analysis.ts';
import { numeral, printKey } from '../harmony/words/labels.ts';
import { cadenceWords } from '../harmony/words/words.ts';
import type { Review } from '../review/review.ts';
import { barAt } from '../score/place.ts';
import type { Score } from '../score/score.ts';
import { crotchets, type Ticks } from '../score/time.ts';
import type { OwnWork } from './own-work.ts';
import { scriptStyle, scriptStyleSchema } from './script-style.ts';

/** As in the JSON review: crotchets from the start. */
const time = z.number().min(0);
const many = z.number().int().min(0);

const chordBars = {
  inverted: z.array(z.string()),
  sevenths: z.array(z.string()),
  chromatic: z.array(z.string()),
};

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
  /** Share of what was to be written that is not written yet, 0 to 1. */
  unwritten: z.number().min(0).max(1),
  /** How like the model's chorales, measure by measure; the given tune is part of no measure but one. */
  style: scriptStyleSchema.exactOptional(),
  /** Printed numbers of the bars in which each thing is, each once, in order. */
  bars: z.object({ ornaments: z.record(z.string(), z.array(z.string())), ...chordBars }).exactOptional(),
});
export type Counts = z.infer<typeof countsSchema>;

/** `review` as `ownWork` leaves it: what is given is nobody's merit. */
export function countsOf({ review, unwritten }: OwnWork): Counts {
  const { analysis, score } = review;
  const ornaments = sound(review);
  const kinds = [...new Set(ornaments.map(({ kind }) => kind))];
  const barsOf = (places: readonly Ticks[]): string[] => [
    ...new Set(places.map((at) => barAt(score, at).number)),
  ];
  const chordBarsOf = (counts: (chord: Chord) => boolean): string[] =>
    barsOf(analysis.chords.filter(counts).map(({ at }) => at));
  const of = (kind: string): Ornament[] => ornaments.filter((ornament) => ornament.kind === kind);
  return {
    phrases: phrases(analysis, score),
    ornaments: Object.fromEntries(kinds.map((kind) => [kind, of(kind).length])),
    chords: chords(analysis),
    keys: [...new Set(analysis.keys.map((region) => printKey(region.key)))],
    unwritten,
    style: scriptStyle(analysis),
    bars: {
      ornaments: Object.fromEntries(kinds.map((kind) => [kind, barsOf(of(kind).map(({ at }) => at))])),
      inverted: chordBarsOf(isInverted),
      sevenths: chordBarsOf(isSeventh),
      chromatic: chordBarsOf(isChromatic),
    },
  };
}

/** Ornaments that are what they should be: explained, resolved where they have to be, and questioned by no rule. */
function sound({ analysis, findings }: Review): Ornament[] {
  const questioned = new Set(
    findings
      .filter(({ severity }) => severity !== 'remark')
      .flatMap(({ tones }) => tones.map(({ voice, at }) => `${voice}${at}`)),
  );
  return analysis.ornaments.filter(
    ({ kind, tone, preparation, resolution }) =>
      kind !== 'unclassified' &&
      !questioned.has(`${tone.voice}${tone.at}`) &&
      ((kind !== 'suspension' && kind !== 'retardation') ||
        (preparation !== undefined && resolution !== undefined)),
  );
}

const isInverted = ({ roman }: Chord): boolean => roman.inversion > 0;
const isSeventh = ({ roman }: Chord): boolean => roman.seventh !== undefined;
const isChromatic = ({ roman }: Chord): boolean => roman.applied !== undefined || roman.special !== undefined;

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
  for (const { roman, key } of analysis.chords) {
    const kind = numeral({ ...roman, inversion: 0 }, key);
    kinds[kind] = (kinds[kind] ?? 0) + 1;
  }
  const count = (counts: (chord: Chord) => boolean): number => analysis.chords.filter(counts).length;
  return {
    all: analysis.chords.length,
    kinds,
    inverted: count(isInverted),
    sevenths: count(isSeventh),
    chromatic: count(isChromatic),
  };
}
