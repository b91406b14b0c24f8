/** What the service answers, checked as it comes in. Scores come from our own readers by way of the service. */
import { z } from 'zod';
import { markSchema, schemeSchema, scriptFindingSchema } from '../../src/desk/index.ts';
import type { Score } from '../../src/score/score.ts';

const id = z.number().int();

const errorSchema = z.object({ message: z.string() });

const entrySchema = z.object({
  id,
  stack: id,
  file: z.string(),
  candidate: z.string().optional(),
  draft: z.number(),
  error: errorSchema.optional(),
  done: z.boolean(),
  revision: z.number(),
});

const judgedEntrySchema = entrySchema.extend({
  faults: z.number(),
  queries: z.number(),
  remarks: z.number(),
  open: z.number(),
  agreed: z.number(),
  overruled: z.number(),
});
export type Entry = z.infer<typeof judgedEntrySchema>;

const stackSchema = z.object({
  id,
  name: z.string(),
  created: z.string(),
  brief: z.string().optional(),
  profile: z.object({ name: z.string(), statement: z.string() }),
  scheme: schemeSchema,
  pattern: z.string().optional(),
  reference: z.string().optional(),
  revision: z.number(),
});
export type Stack = z.infer<typeof stackSchema>;

const countsShape = { scripts: z.number(), unreadable: z.number(), done: z.number() };

export const stacksAnswer = z.object({
  stacks: z.array(z.object({ id, name: z.string(), created: z.string(), ...countsShape })),
});
export type StackLine = z.infer<typeof stacksAnswer>['stacks'][number];

export const stackAnswer = z.object({
  stack: stackSchema,
  total: z.number(),
  unreadable: z.number(),
  done: z.number(),
  /** The first script that is still to be marked. */
  next: id.optional(),
  after: z.number(),
  scripts: z.array(judgedEntrySchema),
});
export type Queue = Omit<z.infer<typeof stackAnswer>, 'stack'>;

export const latestAnswer = z.object({ total: z.number(), after: z.number(), scripts: z.array(id) });

const judgedSchema = scriptFindingSchema.extend({
  standing: z.enum(['open', 'agreed', 'overruled']),
  foundAs: z.enum(['fault', 'query', 'remark']),
  reason: z.string().optional(),
  forAll: z.literal(true).optional(),
  decision: z.string().optional(),
});
export type Judged = z.infer<typeof judgedSchema>;

const remarkSchema = z.object({
  id: z.string(),
  voice: z.enum(['S', 'A', 'T', 'B']).optional(),
  from: z.number(),
  until: z.number().optional(),
  text: z.string(),
});
export type Remark = z.infer<typeof remarkSchema>;

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

export const scriptAnswer = z.object({
  script: entrySchema.extend({ given: givenSchema.optional() }),
  /** Where it lies in its stack. */
  place: z.object({ at: z.number(), of: z.number(), before: id.optional(), next: id.optional() }),
  stackRevision: z.number(),
  title: z.string().optional(),
  key: z.string().optional(),
  strengths: z.array(z.string()),
  score: scoreSchema.optional(),
  findings: z.array(judgedSchema),
  remarks: z.array(remarkSchema),
  marks: z.array(markSchema),
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
export type ScriptView = z.infer<typeof scriptAnswer>;

export const decisionAnswer = z.object({
  decision: z.object({ id: z.string(), kind: z.string() }),
  revision: z.number(),
});
export const takenAnswer = z.object({
  outcome: z.enum(['new', 'known', 'unreadable']),
  message: z.string().optional(),
});
export const madeAnswer = z.object({ stack: stackSchema });
export const remarksAnswer = z.object({ remarks: z.array(z.object({ text: z.string(), uses: z.number() })) });
export const nothingInParticular = z.unknown();

const shownBar = z.object({
  firstBar: z.string(),
  lastBar: z.string(),
  text: z.string(),
  message: z.string(),
});
export const classAnswer = z.object({
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
      sentence: z.string(),
    }),
  ),
  board: z.array(shownBar.extend({ rule: z.string() })),
  good: z.array(shownBar),
  practise: z.array(z.object({ family: z.string(), rules: z.array(z.string()), sentence: z.string() })),
});
export type ClassView = z.infer<typeof classAnswer>;

const moderatedSchema = z.object({
  id,
  candidate: z.string().optional(),
  draft: z.number(),
  marks: z.array(markSchema),
});
export type Moderated = z.infer<typeof moderatedSchema>;
export const moderationAnswer = z.object({
  marked: z.number(),
  after: z.number(),
  notMarked: z.number(),
  ranked: z.array(z.object({ rank: z.number(), marks: z.number(), script: moderatedSchema })),
  unmarked: z.array(moderatedSchema),
});
export type ModerationView = z.infer<typeof moderationAnswer>;

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
export const likenessAnswer = z.object({
  pairs: z.array(pairSchema),
  compared: z.number(),
  notice: z.string(),
  reference: z.array(pairSchema).optional(),
});
export type LikenessView = z.infer<typeof likenessAnswer>;

export const sheetAnswer = z.object({
  script: entrySchema,
  title: z.string(),
  key: z.string(),
  findings: z.array(judgedSchema),
  remarks: z.array(remarkSchema),
  feedback: z.object({
    strengths: z.array(z.string()),
    toWorkOn: z.array(
      z.object({
        rule: z.string(),
        name: z.string(),
        sentence: z.string(),
        why: z.string(),
        hint: z.string(),
      }),
    ),
  }),
  marks: z.array(markSchema),
  total: z.object({
    marks: z.number(),
    outOf: z.number(),
    missing: z.array(z.string()),
    sentence: z.string(),
  }),
  since: z.object({ summary: z.string(), mended: z.array(z.string()) }).optional(),
  given: givenSchema.optional(),
  score: scoreSchema.optional(),
});
export type SheetView = z.infer<typeof sheetAnswer>;

export const sessionAnswer = z.object({
  passphraseNeeded: z.boolean(),
  signedIn: z.boolean(),
  token: z.string().optional(),
});
