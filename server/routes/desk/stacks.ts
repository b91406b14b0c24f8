/** Stacks: made, set up, listed, and files put onto them. */
import express, { Router } from 'express';
import { z } from 'zod';
import { applyDecisions } from '../../../src/desk/index.ts';
import { profileNamed } from '../../../src/profiles/list.ts';
import { readProfile } from '../../../src/profiles/read.ts';
import { allRefused, problemsIn, Refused } from '../../../src/refusal/refusal.ts';
import { type MarkingDesk, type RawSettings, readSettings } from '../../desk/marking-desk.ts';
import { countLatest, latestEntries, nextToMark } from '../../desk/queue.ts';
import type { ScriptEntry, Stack } from '../../desk/records.ts';
import type { Desk } from '../../desk/store.ts';
import { parseQuery } from '../query.ts';
import { json, pageSchema, revision, withId } from './answers.ts';

/** The largest script, in bytes. */
const MOST_BYTES = 8 * 1024 * 1024;

const settingsSchema = z.strictObject({
  name: z.string().trim().min(1).max(200),
  /** The name of a profile that is built in, or a teacher's own as JSON text. */
  profile: z.string().max(100_000).optional(),
  brief: z.string().max(500_000).optional(),
  scheme: z.string().max(200_000).optional(),
  pattern: z.string().max(200).optional(),
  reference: z.string().max(500_000).optional(),
});
const changedSchema = settingsSchema.extend({ revision });

export function stackRoutes(marking: MarkingDesk): Router {
  const { desk } = marking;
  const router = Router();

  router.get('/stacks', (_request, response) => {
    response.json({ stacks: desk.stacks().map((stack) => ({ ...briefly(stack), ...desk.count(stack.id) })) });
  });

  router.post('/stacks', json, (request, response) => {
    const settings = rawSettings(parseQuery(settingsSchema, request.body));
    response.status(201).json({ stack: desk.addStack(readSettings(settings)) });
  });

  router.get('/stacks/:id', (request, response) => {
    const { id } = parseQuery(withId, request.params);
    const { after, most } = parseQuery(pageSchema, request.query);
    const stack = desk.stack(id);
    const scripts = desk.entries(id, most, after).map((entry) => judgedEntry(desk, entry));
    const { scripts: total, ...counts } = desk.count(id);
    response.json({ stack, total, ...counts, next: nextToMark(desk, id), after, scripts });
  });

  router.get('/stacks/:id/latest', (request, response) => {
    const { id } = parseQuery(withId, request.params);
    const { after, most } = parseQuery(pageSchema, request.query);
    const scripts = latestEntries(desk, desk.stack(id).id, most, after).map(({ id: script }) => script);
    response.json({ total: countLatest(desk, id), after, scripts });
  });

  router.put('/stacks/:id', json, async (request, response) => {
    const { id } = parseQuery(withId, request.params);
    const { revision: seen, ...body } = parseQuery(changedSchema, request.body);
    const stack = desk.changeStack(id, seen, readSettings(rawSettings(body), desk.stack(id)));
    await marking.reviewAgain(id);
    response.json({ stack });
  });

  router.post(
    '/stacks/:id/scripts',
    express.raw({ type: () => true, limit: MOST_BYTES }),
    async (request, response) => {
      const { id } = parseQuery(withId, request.params);
      const { file } = parseQuery(z.object({ file: z.string().min(1).max(300) }), request.query);
      const body: unknown = request.body;
      // An empty file is a script too: one that can't be read.
      const content = body instanceof Uint8Array ? body : new Uint8Array();
      const taken = await marking.takeIn(desk.stack(id), { file, content });
      response.status(taken.outcome === 'known' ? 200 : 201).json(taken);
    },
  );

  return router;
}

function briefly({
  id,
  name,
  created,
  revision: seen,
}: Stack): Pick<Stack, 'id' | 'name' | 'created' | 'revision'> {
  return { id, name, created, revision: seen };
}

/** A script in a list, with its findings counted as the teacher's decisions leave them. */
export interface JudgedEntry extends ScriptEntry {
  readonly open: number;
  readonly agreed: number;
  readonly overruled: number;
}

function judgedEntry(desk: Desk, entry: ScriptEntry): JudgedEntry {
  const { facts } = desk.script(entry.id);
  const { findings } = applyDecisions(
    String(entry.id),
    facts?.findings ?? [],
    desk.decisions(entry.stack, entry.id),
  );
  const standing = findings.filter((finding) => finding.standing !== 'overruled');
  const severe = (severity: string) => standing.filter((finding) => finding.severity === severity).length;
  return {
    ...entry,
    faults: severe('fault'),
    queries: severe('query'),
    remarks: severe('remark'),
    open: findings.filter(({ standing: s, severity }) => s === 'open' && severity !== 'remark').length,
    agreed: findings.filter(({ standing: s }) => s === 'agreed').length,
    overruled: findings.length - standing.length,
  };
}

function rawSettings(body: z.infer<typeof settingsSchema>): RawSettings {
  const { profile, name, ...texts } = body;
  const given = Object.fromEntries(Object.entries(texts).filter(([, text]) => text !== undefined));
  return {
    name,
    ...given,
    ...(profile === undefined || profile === '' ? {} : { profile: profileOf(profile) }),
  };
}

function profileOf(text: string): NonNullable<RawSettings['profile']> {
  const known = profileNamed(text);
  if (known !== undefined) return known;
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    throw new Refused('The profile is neither the name of one that is built in nor JSON.');
  }
  const read = readProfile(data);
  if (!read.ok) throw allRefused(problemsIn('The profile', read));
  return read.profile;
}
