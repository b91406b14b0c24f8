/** Stacks: made, set up, listed, and files put onto them. */
import { Router } from 'express';
import { applyDecisions, intakeDoubts, intakeSentence } from '../../../src/desk/index.ts';
import { ROUTES, type SettingTexts } from '../../../src/desk/wire.ts';
import { profileNamed } from '../../../src/profiles/list.ts';
import { readProfile } from '../../../src/profiles/read.ts';
import { allRefused, problemsIn, Refused } from '../../../src/refusal/refusal.ts';
import { intakeOf, settleIdentities } from '../../desk/identifying.ts';
import { figuresOfScript } from '../../desk/kept.ts';
import { type MarkingDesk, type RawSettings, readSettings } from '../../desk/marking-desk.ts';
import { countLatest, countUnseen, latestEntries, nextToMark } from '../../desk/queue.ts';
import type { ScriptEntry, Stack } from '../../desk/records.ts';
import type { Desk } from '../../desk/store.ts';
import { answer, bytes } from './serve.ts';

export function stackRoutes(marking: MarkingDesk): Router {
  const { desk } = marking;
  const router = Router();

  answer(router, ROUTES.stacks, () => ({
    stacks: desk.stacks().map((stack) => ({ ...briefly(stack), ...desk.count(stack.id) })),
  }));

  answer(router, ROUTES.makeStack, ({ body }) => ({ stack: desk.addStack(readSettings(rawSettings(body))) }));

  answer(router, ROUTES.stack, ({ params: { id }, query: { after, most } }) => {
    const stack = desk.stack(id);
    const scripts = desk.entries(id, most, after).map((entry) => judgedEntry(desk, entry));
    const { scripts: total, ...counts } = desk.count(id);
    const lies = intakeOf(desk, id);
    const intake = { summary: intakeSentence(lies), doubts: intakeDoubts(lies) };
    const again = marking.reviewing(id);
    return { stack, total, ...counts, next: nextToMark(desk, id), after, scripts, intake, again };
  });

  answer(router, ROUTES.latest, ({ params: { id }, query: { after, most } }) => ({
    scripts: latestEntries(desk, desk.stack(id).id, most, after).map(({ id: script }) => script),
    total: countLatest(desk, id),
    unseen: countUnseen(desk, id),
    after,
  }));

  answer(router, ROUTES.changeStack, ({ params: { id }, body: { revision: seen, ...texts } }) => {
    const stack = desk.changeStack(id, seen, readSettings(rawSettings(texts), desk.stack(id)));
    marking.settle(id);
    // A large stack takes minutes, in which whoever asked need not wait.
    marking.reviewInBackground(id);
    return { stack };
  });

  answer(router, ROUTES.reviewAgain, ({ params: { id } }) => {
    marking.reviewInBackground(desk.stack(id).id);
    return { left: marking.reviewing(id).left };
  });

  answer(
    router,
    ROUTES.takeIn,
    async ({ params: { id }, query: { file }, request, response }) => {
      const body: unknown = request.body;
      // An empty file is a script too: one that can't be read.
      const content = body instanceof Uint8Array ? body : new Uint8Array();
      const taken = await marking.takeIn(desk.stack(id), { file, content });
      if (taken.outcome === 'known') response.status(200);
      return taken;
    },
    [bytes],
  );

  answer(router, ROUTES.settle, ({ params: { id } }) => ({
    changed: settleIdentities(desk, desk.stack(id)),
  }));

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
  const figures = figuresOfScript(desk.db, entry.id);
  const { findings } = applyDecisions(
    String(entry.id),
    figures?.findings ?? [],
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

function rawSettings(body: SettingTexts): RawSettings {
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
