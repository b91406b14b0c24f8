/**
 * The desk's routes, each with what comes in and what goes out. The service answers by this table and the page asks by
 * it, so that a change on one side does not compile on the other.
 */
import * as z from 'zod';
import { REFUSAL_KINDS } from '../refusal/refusal.ts';
import { markSchema, SECOND_MARKINGS } from './marks.ts';
import { sheetQuerySchema } from './sheet-options.ts';
import {
  classDecisionSchema,
  classSchema,
  differencesSchema,
  entrySchema,
  idSchema,
  likenessSchema,
  moderationSchema,
  queueSchema,
  scriptDecisionSchema,
  scriptViewSchema,
  sheetSchema,
  stackLineSchema,
  stackSchema,
} from './wire-shapes.ts';

/** Where they all begin. */
const DESK_ROUTES_AT = '/api/desk';

const none = z.object({});
type None = typeof none;

export interface Route<
  P extends z.ZodType = z.ZodType,
  Q extends z.ZodType = z.ZodType,
  B extends z.ZodType = z.ZodType,
  A extends z.ZodType = z.ZodType,
> {
  readonly method: 'get' | 'post' | 'put' | 'patch' | 'delete';
  /** Parts after a colon are the `params`. */
  readonly path: string;
  readonly params: P;
  readonly query: Q;
  /** The body as JSON; a route that takes a file's bytes has none. */
  readonly body: B;
  readonly answer: A;
  /** HTTP status of a good answer. */
  readonly status: number;
}

interface Parts<P, Q, B, A> {
  readonly answer: A;
  readonly params?: P;
  readonly query?: Q;
  readonly body?: B;
  readonly status?: number;
}

function route<
  A extends z.ZodType,
  P extends z.ZodType = None,
  Q extends z.ZodType = None,
  B extends z.ZodType = None,
>(method: Route['method'], path: string, parts: Parts<P, Q, B, A>): Route<P, Q, B, A> {
  // What is left out is inferred as `None`; the compiler can't see that the two go together.
  const { answer, params = none as unknown as P, query = none as unknown as Q, status = 200 } = parts;
  return { method, path, params, query, body: parts.body ?? (none as unknown as B), answer, status };
}

/** Part of a long list. */
const part = z.object({
  after: z.coerce.number<number>().int().min(0).default(0),
  most: z.coerce.number<number>().int().min(1).max(500).default(50),
});
const numbered = z.object({ id: idSchema });
/** The revision that the person had before them: decisions on anything older are refused. */
const revision = z.number().int().min(0);

const voiceText = z.string().trim().max(100);

const settings = z.strictObject({
  name: z.string().trim().min(1).max(200),
  /** The name of a profile that is built in, or a teacher's own as JSON text. */
  profile: z.string().max(100_000).optional(),
  brief: z.string().max(500_000).optional(),
  scheme: z.string().max(200_000).optional(),
  pattern: z.string().max(200).optional(),
  reference: z.string().max(500_000).optional(),
  /** Whether a second person marks, and with the first one's marks in view or not. */
  second: z.enum(['', ...SECOND_MARKINGS]).optional(),
  /** Which lines of the files sing which voices, `S=1,A=2,T=3,B=4`; an empty text leaves it to each file. */
  voices: voiceText.optional(),
});
export type SettingTexts = z.input<typeof settings>;

const decided = z.object({ decision: z.object({ id: z.string(), kind: z.string() }), revision: z.number() });
const session = z.object({
  passphraseNeeded: z.boolean(),
  signedIn: z.boolean(),
  token: z.string().optional(),
});
/** A file to be kept, not data: the page links to it. */
const file = z.unknown();

export const ROUTES = {
  session: route('get', '/session', { answer: session }),
  signIn: route('post', '/session', {
    body: z.strictObject({ passphrase: z.string().max(500) }),
    answer: session.omit({ passphraseNeeded: true }),
  }),
  signOut: route('delete', '/session', { answer: z.undefined(), status: 204 }),

  stacks: route('get', '/stacks', { answer: z.object({ stacks: z.array(stackLineSchema) }) }),
  makeStack: route('post', '/stacks', {
    body: settings,
    answer: z.object({ stack: stackSchema }),
    status: 201,
  }),
  stack: route('get', '/stacks/:id', {
    params: numbered,
    query: part,
    answer: queueSchema.extend({ stack: stackSchema }),
  }),
  changeStack: route('put', '/stacks/:id', {
    params: numbered,
    body: settings.extend({ revision }),
    answer: z.object({ stack: stackSchema }),
  }),
  /** Numbers of each candidate's latest draft. */
  latest: route('get', '/stacks/:id/latest', {
    params: numbered,
    query: part,
    answer: z.object({
      total: z.number(),
      /** How many of all of them nobody has looked at. */
      unseen: z.number(),
      after: z.number(),
      scripts: z.array(z.number().int()),
    }),
  }),
  /** Takes a file's bytes; 200 where the desk has it already. */
  takeIn: route('post', '/stacks/:id/scripts', {
    params: numbered,
    query: z.object({ file: z.string().min(1).max(300) }),
    answer: z.object({
      outcome: z.enum(['new', 'known', 'unreadable', 'no script']),
      message: z.string().optional(),
    }),
    status: 201,
  }),
  /** After files were taken in: says anew whose they are, from all their names together. */
  settle: route('post', '/stacks/:id/settled', {
    params: numbered,
    answer: z.object({ changed: z.number() }),
  }),
  /** Reviews what the settings call for; answers at once, and the stack tells how far it is. */
  reviewAgain: route('post', '/stacks/:id/reviewed', {
    params: numbered,
    answer: z.object({ left: z.number() }),
    status: 202,
  }),
  decideForAll: route('post', '/stacks/:id/decisions', {
    params: numbered,
    body: z.strictObject({ revision, decision: classDecisionSchema }),
    answer: decided,
    status: 201,
  }),
  class: route('get', '/stacks/:id/class', { params: numbered, answer: classSchema }),
  moderation: route('get', '/stacks/:id/moderation', {
    params: numbered,
    query: part.extend({ criterion: z.string().max(40).optional() }),
    answer: moderationSchema,
  }),
  /** Where two markers differ and have not agreed on a mark. */
  differences: route('get', '/stacks/:id/differences', {
    params: numbered,
    query: part,
    answer: differencesSchema,
  }),
  likeness: route('get', '/stacks/:id/likeness', { params: numbered, query: part, answer: likenessSchema }),
  sheetsPdf: route('get', '/stacks/:id/sheets.pdf', {
    params: numbered,
    query: part.extend(sheetQuerySchema.shape),
    answer: file,
  }),
  /** A PDF for each candidate, in a zip. */
  sheetsZip: route('get', '/stacks/:id/sheets.zip', {
    params: numbered,
    query: part.extend(sheetQuerySchema.shape),
    answer: file,
  }),
  markBook: route('get', '/stacks/:id/mark-book.csv', { params: numbered, answer: file }),
  everything: route('get', '/stacks/:id/everything.json', { params: numbered, answer: file }),

  script: route('get', '/scripts/:id', { params: numbered, answer: scriptViewSchema }),
  changeScript: route('patch', '/scripts/:id', {
    params: numbered,
    body: z.strictObject({
      revision,
      candidate: z
        .string()
        .trim()
        .max(40)
        .regex(/^[\p{L}\p{N} ._/-]*$/u, 'a candidate number is letters and digits')
        .optional(),
      draft: z.number().int().min(1).max(99).optional(),
      done: z.boolean().optional(),
      /** As for a stack; an empty text leaves them to the stack and the file. It is reviewed again. */
      voices: voiceText.optional(),
    }),
    answer: z.object({ script: entrySchema }),
  }),
  decide: route('post', '/scripts/:id/decisions', {
    params: numbered,
    body: z.strictObject({
      revision,
      decision: scriptDecisionSchema,
      /** The rule whose finding a remark is written beside. */
      beside: z.string().max(100).optional(),
    }),
    answer: decided,
    status: 201,
  }),
  /** The answer to a decision about the draft before: it holds for this one too, or is left. */
  carry: route('post', '/scripts/:id/carried', {
    params: numbered,
    body: z.strictObject({ revision, from: z.string().min(1).max(100), keep: z.boolean() }),
    answer: decided,
    status: 201,
  }),
  mark: route('put', '/scripts/:id/marks/:criterion', {
    params: numbered.extend({ criterion: z.string().max(40) }),
    body: z.strictObject({
      revision,
      /** `null` takes the mark back. */
      marks: z.number().nullable(),
      /** Two markers have agreed on it. */
      agreed: z.literal(true).optional(),
    }),
    answer: z.object({ marks: z.array(markSchema), revision: z.number() }),
  }),
  sheet: route('get', '/scripts/:id/sheet', { params: numbered, answer: sheetSchema }),
  annotated: route('get', '/scripts/:id/annotated.musicxml', { params: numbered, answer: file }),

  undo: route('post', '/decisions/:decision/undo', {
    params: z.object({ decision: z.string().min(1).max(100) }),
    body: z.strictObject({ revision }),
    answer: decided,
    status: 201,
  }),
  remarks: route('get', '/remarks', {
    query: z.object({ typed: z.string().max(500).optional(), rule: z.string().max(100).optional() }),
    answer: z.object({ remarks: z.array(z.object({ text: z.string(), uses: z.number() })) }),
  }),
} as const;

/** A part of a request; it may be left out where nothing in it must be given. */
type Part<K extends string, S extends z.ZodType> =
  Record<never, never> extends z.input<S>
    ? { readonly [N in K]?: z.input<S> }
    : { readonly [N in K]: z.input<S> };

/** What an address is made of. */
type InAddress<R extends Route> = Part<'params', R['params']> & Part<'query', R['query']>;

/** What a route is asked with. */
export type Asked<R extends Route> = InAddress<R> & Part<'body', R['body']>;

/** What the service must answer: anything that the page can read, changed or not. */
export type Answered<R extends Route> = DeepReadonly<z.input<R['answer']>>;

type DeepReadonly<T> = T extends readonly (infer E)[]
  ? readonly DeepReadonly<E>[]
  : T extends object
    ? { readonly [K in keyof T]: DeepReadonly<T[K]> }
    : T;

/** The address a route is asked at, its parts filled in. */
export function addressOf<R extends Route>(asked: R, parts: InAddress<R>): string {
  const { params = {}, query: fields = {} } = parts as {
    readonly params?: Readonly<Record<string, unknown>>;
    readonly query?: Readonly<Record<string, unknown>>;
  };
  const path = asked.path.replace(/:(\w+)/g, (_whole, name: string) =>
    encodeURIComponent(String(params[name])),
  );
  const query = Object.entries(fields)
    .flatMap(([name, value]) => (value === undefined ? [] : [`${name}=${encodeURIComponent(String(value))}`]))
    .join('&');
  return `${DESK_ROUTES_AT}${path}${query === '' ? '' : `?${query}`}`;
}

/** Who decides, where several people share a desk: a request's header, percent-encoded. */
export const INITIALS_HEADER = 'X-Desk-Initials';
export const initialsSchema = z
  .string()
  .trim()
  .min(1)
  .max(12, 'Initials have twelve characters at most.')
  .regex(/^[\p{L}\p{N} .-]*$/u, 'Initials are letters and digits.');

/** What comes instead of an answer: a problem document (RFC 9457) with a refusal's kind and places. */
export const refusedSchema = z.object({ detail: z.string(), kind: z.enum(REFUSAL_KINDS) });
