/** The values that go between the desk's service and its page, as schemas; `wire.ts` says on which route. */
import * as z from 'zod';
import type { Score } from '../score/score.ts';
import { decisionSchema } from './decisions.ts';
import { judgedSchema } from './export.ts';
import { markSchema, SECOND_MARKINGS } from './marks.ts';
import { schemeSchema } from './scheme.ts';

/** Numbers of stacks and scripts; in an address they are text. */
export const idSchema = z.coerce.number<number>().int().positive();
const id = z.number().int();

/** A script without its content and findings. */
export const entrySchema = z.object({
  id,
  stack: id,
  file: z.string(),
  candidate: z.string().optional(),
  draft: z.number(),
  error: z.object({ message: z.string() }).optional(),
  done: z.boolean(),
  /** Which lines sing which voices, where somebody said so of this script. */
  voices: z.string().optional(),
  revision: z.number(),
});

/** A script in a list, with its findings counted as the teacher's decisions leave them. */
const judgedEntrySchema = entrySchema.extend({
  faults: z.number(),
  queries: z.number(),
  remarks: z.number(),
  open: z.number(),
  agreed: z.number(),
  overruled: z.number(),
});
export type Entry = z.infer<typeof judgedEntrySchema>;

const voice = z.enum(['S', 'A', 'T', 'B']);
/** A line of a MusicXML file. */
const lineSchema = z.object({
  id: z.string(),
  name: z.string(),
  notes: z.number(),
  lowest: z.string().optional(),
  highest: z.string().optional(),
  given: voice.optional(),
});
export type Line = z.infer<typeof lineSchema>;

export const stackSchema = z.object({
  id,
  name: z.string(),
  created: z.string(),
  brief: z.string().optional(),
  profile: z.object({ name: z.string(), statement: z.string() }),
  scheme: schemeSchema,
  pattern: z.string().optional(),
  reference: z.string().optional(),
  second: z.enum(SECOND_MARKINGS).optional(),
  voices: z.string().optional(),
  revision: z.number(),
});
export type Stack = z.infer<typeof stackSchema>;

const countsShape = { scripts: z.number(), unreadable: z.number(), done: z.number() };
export const stackLineSchema = z.object({ id, name: z.string(), created: z.string(), ...countsShape });
export type StackLine = z.infer<typeof stackLineSchema>;

export const queueSchema = z.object({
  total: z.number(),
  unreadable: z.number(),
  done: z.number(),
  /** The first script that is still to be marked. */
  next: id.optional(),
  after: z.number(),
  scripts: z.array(judgedEntrySchema),
  /** What lies on the stack, in a sentence, and what to look at before marking. */
  intake: z.object({ summary: z.string(), doubts: z.array(z.string()) }),
  /** Scripts to be reviewed again since the settings have changed: how many are left of how many, and whether it goes on. */
  again: z.object({ left: z.number(), of: z.number(), going: z.boolean() }),
});
export type Queue = z.infer<typeof queueSchema>;

export type Judged = z.infer<typeof judgedSchema>;

const remarkSchema = z.object({
  id: z.string(),
  voice: z.enum(['S', 'A', 'T', 'B']).optional(),
  /** Left out where it is about the whole script. */
  from: z.number().optional(),
  until: z.number().optional(),
  text: z.string(),
  by: z.string().optional(),
});
export type Remark = z.infer<typeof remarkSchema>;

/** Scores come from our own readers by way of the service: looked at, not checked through. */
const scoreSchema = z.custom<Score>(
  (value) => typeof value === 'object' && value !== null && 'bars' in value && 'voices' in value,
);

const givenSchema = z.object({
  summary: z.string(),
  general: z.array(z.string()),
  departures: z.array(z.object({ bar: z.string(), message: z.string() })),
});

const suggestionSchema = z.object({
  criterion: z.string(),
  level: z.number().optional(),
  levelName: z.string().optional(),
  range: z.tuple([z.number(), z.number()]).optional(),
  evidence: z.array(z.string()),
  missing: z.array(z.string()),
});
export type Suggestion = z.infer<typeof suggestionSchema>;

/** A decision about the draft before, and how it stands here. */
const carriedSchema = z.object({
  decision: z.object({
    id: z.string(),
    kind: z.enum(['overrule', 'severity', 'remark']),
    reason: z.string().optional(),
    severity: z.enum(['fault', 'query', 'remark']).optional(),
    text: z.string().optional(),
  }),
  finding: z.string().optional(),
  from: z.number().optional(),
  sure: z.boolean(),
  standing: z.enum(['carried', 'left', 'asked']),
  made: z.string().optional(),
});
export type Carried = z.infer<typeof carriedSchema>;

/** Everything that is needed to mark one script. */
export const scriptViewSchema = z.object({
  script: entrySchema.extend({ given: givenSchema.optional() }),
  /** Where it lies in its stack, from 1. */
  place: z.object({ at: z.number(), of: z.number(), before: id.optional(), next: id.optional() }),
  stackRevision: z.number(),
  title: z.string().optional(),
  key: z.string().optional(),
  strengths: z.array(z.string()),
  score: scoreSchema.optional(),
  /** Of its MusicXML file, to say which sings which voice. */
  lines: z.array(lineSchema),
  findings: z.array(judgedSchema),
  remarks: z.array(remarkSchema),
  /** Those that stand, as far as this marker may see. */
  marks: z.array(markSchema),
  /** All that this marker may see, where two people mark. */
  marksGiven: z.array(markSchema),
  suggestions: z.array(suggestionSchema),
  since: z
    .object({
      summary: z.string(),
      mended: z.array(z.object({ name: z.string(), bar: z.string() })),
      stillThere: z.array(z.string()),
      fresh: z.array(z.string()),
    })
    .optional(),
  carried: z.object({ draft: z.number(), decisions: z.array(carriedSchema) }).optional(),
});
export type ScriptView = z.infer<typeof scriptViewSchema>;

const shownBar = z.object({
  firstBar: z.string(),
  lastBar: z.string(),
  text: z.string(),
  message: z.string(),
});
export const classSchema = z.object({
  scripts: z.number(),
  faultless: z.number(),
  summary: z.string(),
  rules: z.array(
    z.object({
      rule: z.string(),
      name: z.string(),
      family: z.string(),
      scripts: z.number(),
      places: z.number(),
      heavy: z.boolean(),
      sentence: z.string(),
    }),
  ),
  board: z.array(
    shownBar.extend({
      rule: z.string(),
      notes: z.array(z.object({ voice: z.enum(['S', 'A', 'T', 'B']), at: z.number() })).optional(),
      severity: z.enum(['fault', 'query', 'remark']).optional(),
    }),
  ),
  good: z.array(shownBar),
  practise: z.array(z.object({ family: z.string(), rules: z.array(z.string()), sentence: z.string() })),
  style: z.array(z.string()),
});
export type ClassView = z.infer<typeof classSchema>;

const moderatedSchema = z.object({
  id,
  candidate: z.string().optional(),
  draft: z.number(),
  marks: z.array(markSchema),
});
export type Moderated = z.infer<typeof moderatedSchema>;
export const moderationSchema = z.object({
  marked: z.number(),
  after: z.number(),
  notMarked: z.number(),
  ranked: z.array(z.object({ rank: z.number(), marks: z.number(), script: moderatedSchema })),
  unmarked: z.array(moderatedSchema),
});
export type ModerationView = z.infer<typeof moderationSchema>;

export const differencesSchema = z.object({
  total: z.number(),
  after: z.number(),
  scripts: z.array(
    z.object({
      id,
      candidate: z.string().optional(),
      draft: z.number(),
      revision: z.number(),
      differences: z.array(z.object({ criterion: z.string(), marks: z.array(markSchema) })),
    }),
  ),
});
export type DifferencesView = z.infer<typeof differencesSchema>;

const likeScript = z.object({ script: id, candidate: z.string().optional(), file: z.string() });
const pairSchema = z.object({
  first: likeScript,
  second: z.union([likeScript, z.literal('reference')]),
  likeness: z.object({
    share: z.number(),
    compared: z.number(),
    wholeBars: z.number(),
    bars: z.array(z.object({ first: z.string(), second: z.string(), voices: z.array(z.string()) })),
  }),
  rarity: z.object({ sentence: z.string() }),
});
export type LikePairView = z.infer<typeof pairSchema>;
export const likenessSchema = z.object({
  /** Part of the pairs worth a question, and how many there are. */
  pairs: z.array(pairSchema),
  total: z.number(),
  after: z.number(),
  compared: z.number(),
  notice: z.string(),
  reference: z.array(pairSchema).optional(),
});
export type LikenessView = z.infer<typeof likenessSchema>;

export const sheetSchema = z.object({
  script: entrySchema,
  /** The teacher has decided something about it, marked it or finished with it. */
  seen: z.boolean(),
  markers: z.array(z.string()),
  drafts: z.array(z.object({ draft: z.number(), faults: z.number(), queries: z.number() })),
  title: z.string(),
  key: z.string(),
  findings: z.array(judgedSchema),
  remarks: z.array(remarkSchema),
  feedback: z.object({
    strengths: z.array(z.string()),
    /** What lies outside what the model's chorales have, with what to try. */
    style: z.array(z.string()),
    toWorkOn: z.array(
      z.object({
        rule: z.string(),
        name: z.string(),
        sentence: z.string(),
        why: z.string(),
        hint: z.string(),
        /** Ids of its findings. */
        findings: z.array(z.string()),
      }),
    ),
  }),
  marks: z.array(markSchema),
  total: z.object({
    marks: z.number(),
    outOf: z.number(),
    missing: z.array(z.string()),
    beyond: z.array(z.string()),
    sentence: z.string(),
  }),
  since: z.object({ summary: z.string(), mended: z.array(z.string()) }).optional(),
  given: givenSchema.optional(),
  score: scoreSchema.optional(),
});
export type SheetView = z.infer<typeof sheetSchema>;

const [agree, overrule, overruleForAll, severity, remark] = decisionSchema.options;
const unmade = { id: true, at: true, by: true } as const;
/** A decision about one script; the desk adds id, time and who, and the address says which script. */
export const scriptDecisionSchema = z.discriminatedUnion('kind', [
  agree.omit({ ...unmade, script: true }),
  overrule.omit({ ...unmade, script: true, carriedFrom: true }),
  severity.omit({ ...unmade, script: true, carriedFrom: true }),
  remark.omit({ ...unmade, script: true, carriedFrom: true }),
]);
export type ScriptDecision = z.input<typeof scriptDecisionSchema>;
export const classDecisionSchema = overruleForAll.omit(unmade);
