/**
 * The public JSON review: one shape for the command line, the service and whoever reads what they print.
 * Fields are added, never renamed or taken away. Times are crotchets from the start of the score, the upbeat
 * included; they are floats here and nowhere else. Pitches are scientific (`F#4`), note names without octave.
 */
import * as z from 'zod';
import { refusalSchema } from '../refusal/refusal.ts';
import { FAMILIES } from '../rules/rule.ts';

const crotchets = z.number().min(0).describe('Crotchets from the start of the score, upbeat included.');
const barNumber = z.string().describe('The bar number printed in the score; "0" for an upbeat.');
const beat = z.number().min(1).describe('Beat of the bar from 1; 2.5 is half-way through the second.');
const voice = z.enum(['S', 'A', 'T', 'B']);
const pitch = z.string().regex(/^[A-G](#{1,2}|b{1,2})?-?\d+$/);
const noteName = z.string().regex(/^[A-G](#{1,3}|b{1,3})?$/);
const keyName = z.string().regex(/^[A-G](#{1,2}|b{1,2})? (major|minor)$/);
const severity = z.enum(['fault', 'query', 'remark']);

const chordSchema = z.object({
  at: crotchets,
  until: crotchets,
  bar: barNumber,
  beat,
  key: keyName,
  numeral: z.string().describe('Plain figured numeral: V65, viio6/V, I64.'),
  root: noteName,
  bass: noteName,
  quality: z.enum(['major', 'minor', 'diminished', 'augmented']),
  seventh: z.boolean(),
  applied: z.string().optional().describe('What the chord is dominant to: V in V7/V.'),
  sure: z
    .number()
    .min(0)
    .max(1)
    .optional()
    .describe('How likely people hear the chord in this key; 0.9 is right nine times in ten.'),
  otherwise: z
    .object({ key: keyName, numeral: z.string() })
    .optional()
    .describe('The second reading, where it lies close.'),
});

const keyRegionSchema = z.object({
  from: crotchets,
  until: crotchets,
  key: keyName,
  otherwise: z
    .array(z.object({ from: crotchets, until: crotchets, key: keyName, numerals: z.array(z.string()) }))
    .optional()
    .describe('Stretches of it that may be heard in another key, each with its chords there.'),
});

const ornamentSchema = z.object({
  voice,
  at: crotchets,
  until: crotchets,
  pitch,
  kind: z.string(),
  figures: z.string().optional().describe('For a suspension: 4–3, 7–6, 9–8, 2–3.'),
});

const cadenceSchema = z.object({
  at: crotchets,
  bar: barNumber,
  beat,
  key: keyName,
  kind: z.enum(['perfect', 'imperfect', 'plagal', 'interrupted']),
  name: z.string().describe('perfect cadence, imperfect cadence (Phrygian), inverted plagal cadence.'),
  alsoCalled: z.string().describe('What other schools call it: authentic, half, deceptive.'),
  tierce: z.boolean().describe('The last chord is major in a minor key (tierce de Picardie).'),
  full: z.boolean().describe('Perfect, both chords in root position, the tonic in the soprano.'),
  inverted: z.boolean(),
  phrygian: z.boolean(),
});

export const findingSchema = z.object({
  id: z.string(),
  number: z.number().int().positive().optional().describe('Its place in the list of findings, from 1.'),
  because: z
    .number()
    .int()
    .positive()
    .optional()
    .describe('The number of the finding it follows from: what mends that one mends this one too.'),
  mark: z
    .number()
    .int()
    .positive()
    .optional()
    .describe(
      'The number it has in the printed list and on the stave: repeated slips of one kind share one, and so does what follows from them. None where the music is still to be written.',
    ),
  rule: z.string(),
  name: z.string(),
  family: z.enum(FAMILIES),
  severity,
  voices: z.array(voice),
  bar: barNumber,
  beat,
  from: crotchets,
  until: crotchets,
  notes: z.array(z.object({ voice, at: crotchets, pitch })),
  message: z.string(),
  why: z.string(),
  hint: z.string(),
  hints: z
    .array(z.string())
    .length(3)
    .describe('What to look at; which note is free to move, and where; how many notes it can reach.'),
});

const styleValueSchema = z.object({
  measure: z.string().describe('Id of the measure, as `partwise style` lists it.'),
  name: z.string(),
  value: z.number(),
  unit: z.string(),
  low: z.number().describe('Nine of ten of the model’s chorales lie from here …'),
  middle: z.number().describe('Half of them have less.'),
  high: z.number().describe('… to here.'),
  percentile: z.number().min(0).max(100).describe('How many of a hundred chorales have less.'),
  outside: z.enum(['low', 'high']).nullable().describe('On which side of nine tenths it lies, if it does.'),
});

const summarySchema = z.object({
  profile: z.string(),
  faults: z.number().int().min(0),
  queries: z.number().int().min(0),
  remarks: z.number().int().min(0),
  slips: z
    .number()
    .int()
    .min(0)
    .optional()
    .describe('How many slips the faults and queries come from: those that follow from no other finding.'),
  /** How often each rule spoke, by rule id; rules that said nothing are left out. */
  byRule: z.record(z.string(), z.number().int().positive()),
  unwritten: z.number().min(0).describe('Crotchets still to be written, added over the four voices.'),
  switchedOff: z.array(z.string()).describe('Rules that the profile does not look at.'),
  sentence: z.string(),
});

export const jsonReviewSchema = z.object({
  file: z.string(),
  title: z.string(),
  key: keyName,
  bars: z.number().int().min(0),
  crotchets,
  tempos: z
    .array(z.object({ from: crotchets, bar: barNumber, crotchetsAMinute: z.number().positive() }))
    .optional()
    .describe('Where a tempo is set, at the beginning or at a barline; empty where none is.'),
  chords: z.array(chordSchema),
  keys: z.array(keyRegionSchema),
  ornaments: z.array(ornamentSchema),
  /** Phrases end at fermatas (`fermata`), where somebody said so (`set`), or where the melody seems to (`inferred`). */
  phrases: z.array(z.object({ from: crotchets, until: crotchets, end: z.string() })),
  cadences: z.array(cadenceSchema),
  findings: z
    .array(findingSchema)
    .describe(
      'What costs most first; what follows from a finding stands after it. The first hundred of each rule; `summary.byRule` counts them all.',
    ),
  /** What the reader of the file guessed or set aside. */
  remarks: z.array(
    z.object({
      message: z.string(),
      bar: z.string().optional(),
      about: z
        .literal('voices')
        .optional()
        .describe('Which voices were read was a guess, or something was left out.'),
    }),
  ),
  /** How like the model, measure by measure; empty where the piece is too short to tell, and then `styleNote` says so. */
  style: z.array(styleValueSchema),
  styleNote: z.string().optional(),
  summary: summarySchema,
});

const jsonFailureSchema = z.object({
  file: z.string(),
  error: refusalSchema,
});

/** One line of `partwise review --json`. */
export const jsonLineSchema = z.union([jsonReviewSchema, jsonFailureSchema]);

export type JsonReview = z.infer<typeof jsonReviewSchema>;
export type JsonFailure = z.infer<typeof jsonFailureSchema>;
export type JsonLine = z.infer<typeof jsonLineSchema>;
export type JsonFinding = z.infer<typeof findingSchema>;
export type JsonChord = z.infer<typeof chordSchema>;
export type JsonCadence = z.infer<typeof cadenceSchema>;
