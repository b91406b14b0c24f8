/** What keeps a large stack light: lists read no files, comparisons run in a worker, reviewing again can be left. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import request from 'supertest';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createApp } from '../../server/app.ts';
import { type MarkingDesk, openMarkingDesk } from '../../server/desk/marking-desk.ts';
import { giveMark } from '../../src/desk/index.ts';
import { exerciseText } from '../support/exercises.ts';
import { BRIEF_TEXT, plantedStack } from '../support/planted-stack.ts';

let folder: string;
let marking: MarkingDesk;
let app: ReturnType<typeof createApp>;
let stack: number;
const files = plantedStack({ candidates: 12, seed: 3, broken: false });

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'partwise-scale-'));
  marking = await openMarkingDesk(join(folder, 'desk.sqlite'), { threads: 2, log: () => {} });
  app = createApp({ desk: marking, log: () => {} });
  stack = marking.stackFor({ name: 'Class', brief: BRIEF_TEXT });
  for await (const _ of marking.takeAll(
    stack,
    files.map(({ name, bytes }) => ({ file: name, content: bytes })),
  ));
  marking.settle(stack);
}, 180_000);
afterAll(async () => {
  await marking.close();
  rmSync(folder, { recursive: true });
});
const get = async (path: string) => (await request(app).get(`/api/desk/stacks/${stack}${path}`)).body;

describe('lists', () => {
  it('come from an index and the figures kept beside the scripts: no file and no facts are read', async () => {
    const [queue, latest, picture] = [await get(''), await get('/latest'), await get('/class')];
    const { db } = marking.desk;
    // Whatever lay in them, lists and class picture would not notice.
    const held = db.prepare('SELECT id, content, facts FROM scripts').all();
    db.prepare("UPDATE scripts SET content = x'00', facts = '{'").run();
    try {
      expect(await get('')).toEqual(queue);
      expect(await get('/latest')).toEqual(latest);
      expect(await get('/class')).toEqual(picture);
      expect((await get('/likeness')).pairs).toBeDefined();
    } finally {
      const back = db.prepare('UPDATE scripts SET content = @content, facts = @facts WHERE id = @id');
      for (const row of held) back.run(row);
    }
    const plan = db
      .prepare(
        'EXPLAIN QUERY PLAN SELECT id, candidate, draft, done FROM scripts WHERE stack = ? ORDER BY candidate',
      )
      .all(stack) as { detail: string }[];
    expect(plan.map(({ detail }) => detail).join()).toContain('COVERING INDEX');
  });

  it('a desk of an older version, without them, gives the same', async () => {
    const before = [await get(''), await get('/class'), await get('/likeness')];
    marking.desk.db.exec('DELETE FROM kept; DELETE FROM tallies');
    expect([await get(''), await get('/class'), await get('/likeness')]).toEqual(before);
  });
});

describe('the class picture', () => {
  /** As it is told, which is what counting every script again gives. */
  const agreed = async () => {
    const told = await get('/class');
    marking.desk.db.exec('DELETE FROM tallies');
    expect(await get('/class')).toEqual(told);
    return told;
  };
  const inScripts = (picture: { rules: { rule: string; scripts: number }[] }, rule: string): number =>
    picture.rules.find((each) => each.rule === rule)?.scripts ?? 0;

  it('is added up from what is kept of each script, and the same as counted again after every change', async () => {
    const { desk } = marking;
    const before = await agreed();
    const { rule, scripts, bySeverity } = before.rules[0];
    const script = desk
      .entries(stack)
      .map(({ id }) => desk.script(id))
      .find(({ facts }) => facts?.findings.filter((finding) => finding.rule === rule).length === 1)!;
    const finding = script.facts!.findings.find((each) => each.rule === rule)!.id;
    const about = { script: String(script.id), finding };
    let revision = script.revision;
    const decide = (proposed: Parameters<typeof desk.decide>[3]) =>
      desk.decide(stack, script.id, revision++, proposed);

    const overruled = decide({ kind: 'overrule', ...about });
    expect(inScripts(await agreed(), rule)).toBe(scripts - 1);
    decide({ kind: 'undo', decision: overruled.id });
    expect(await agreed()).toEqual(before);
    const lighter = decide({ kind: 'severity', ...about, severity: 'remark' });
    expect((await agreed()).rules.find((each: { rule: string }) => each.rule === rule)).not.toMatchObject({
      bySeverity,
    });
    decide({ kind: 'undo', decision: lighter.id });
    const right = decide({ kind: 'agree', ...about });
    expect(await agreed()).toEqual(before);
    decide({ kind: 'undo', decision: right.id });
    decide({ kind: 'remark', script: about.script, text: 'Sing it.' });
    const { scheme } = desk.stack(stack);
    const given = giveMark(scheme, scheme.criteria[0]!.id, 1, { at: new Date().toISOString() });
    if (!given.ok) throw new Error(given.message);
    desk.mark(script.id, revision++, given.mark);
    desk.changeScript(script.id, revision++, { done: true });
    expect(await agreed()).toEqual(before);
  });

  it('counts again what a decision for the whole class bears on, and its undoing', async () => {
    const { desk } = marking;
    const before = await agreed();
    const { rule } = before.rules[0];
    const all = desk.decide(stack, undefined, desk.stack(stack).revision, {
      kind: 'overrule for all',
      rule,
    });
    const waiting = desk.db.prepare('SELECT count(*) FROM tallies WHERE tally IS NULL').pluck().get();
    expect(waiting).toBe(before.rules[0].scripts);
    expect(inScripts(await agreed(), rule)).toBe(0);
    desk.decide(stack, undefined, desk.stack(stack).revision, { kind: 'undo', decision: all.id });
    expect(await agreed()).toEqual(before);
  });

  it('is that of the latest drafts, whoever’s they are, and of scripts as they were last reviewed', async () => {
    const { desk } = marking;
    const before = await agreed();
    const [one, other] = desk.entries(stack).filter(({ candidate }) => candidate !== undefined);
    const whose = (candidate: string, draft: number) =>
      desk.changeScript(one!.id, desk.script(one!.id).revision, { candidate, draft });
    whose(other!.candidate!, 9);
    expect((await agreed()).scripts).toBe(before.scripts - 1);
    whose(one!.candidate!, one!.draft);
    const settings = desk.stack(stack);
    const off = { ...settings.profile.rules, [before.rules[0].rule]: { severity: 'off' as const } };
    desk.changeStack(stack, settings.revision, { ...settings, profile: { ...settings.profile, rules: off } });
    await marking.reviewAgain(stack);
    expect(inScripts(await agreed(), before.rules[0].rule)).toBe(0);
    desk.changeStack(stack, desk.stack(stack).revision, settings);
    await marking.reviewAgain(stack);
    expect(await agreed()).toEqual(before);
    // A next draft with other notes takes the place of the one before.
    const content = new TextEncoder().encode(exerciseText('kite-hill'));
    await marking.takeIn(desk.stack(stack), { file: `${one!.candidate}-draft8.txt`, content });
    const after = await agreed();
    expect(after.scripts).toBe(before.scripts);
    expect(after).not.toEqual(before);
  }, 120_000);
});

describe('comparing scripts', () => {
  it('is done once for the same scripts, and anew when one changes hands', async () => {
    const { body } = await request(app).get(`/api/desk/stacks/${stack}/likeness?most=1`);
    expect(body.total).toBeGreaterThan(0);
    expect(body.pairs).toHaveLength(1);
    const first = marking.likeness(stack);
    expect(marking.likeness(stack)).toBe(first);
    const { first: one, second: other } = (await first).pairs[0]!;
    await request(app)
      .patch(`/api/desk/scripts/${one.script}`)
      .send({ revision: marking.desk.script(one.script).revision, candidate: other.candidate, draft: 9 });
    const now = await marking.likeness(stack);
    const both = now.pairs.filter((pair) =>
      [pair.first.script, pair.second.script].every((id) => id === one.script || id === other.script),
    );
    // One candidate's own drafts are not compared.
    expect(both).toEqual([]);
  });
});

describe('settings that call for reviewing again', () => {
  it('answer at once, tell how far they are, and go on', async () => {
    const { revision } = marking.desk.stack(stack);
    const answer = await request(app)
      .put(`/api/desk/stacks/${stack}`)
      .send({ revision, name: 'Class', profile: 'strict' });
    expect(answer.status).toBe(200);
    const { again } = await get('');
    expect(again.of).toBe(marking.desk.count(stack).scripts);
    expect(again.going).toBe(true);
    await expect.poll(async () => (await get('')).again.left, { timeout: 90_000 }).toBe(0);
  }, 120_000);

  it('are stopped with the desk and lose nothing; the rest waits to be asked for', async () => {
    const path = join(folder, 'stopped.sqlite');
    const content = new TextEncoder().encode(exerciseText('kite-hill'));
    const first = await openMarkingDesk(path, { threads: 1, log: () => {} });
    const id = first.stackFor({ name: 'Class' });
    for (const file of ['4001.txt', '4002.txt', '4003.txt'])
      await first.takeIn(first.desk.stack(id), { file, content });
    first.desk.changeStack(id, 0, { ...first.desk.stack(id), brief: BRIEF_TEXT });
    first.reviewInBackground(id);
    await first.close();
    const second = await openMarkingDesk(path, { threads: 1, log: () => {} });
    const { left, going } = second.reviewing(id);
    expect(left).toBeGreaterThan(0);
    expect(going).toBe(false);
    expect(second.desk.count(id)).toMatchObject({ scripts: 3, unreadable: 0 });
    const { status } = await request(createApp({ desk: second, log: () => {} })).post(
      `/api/desk/stacks/${id}/reviewed`,
    );
    expect(status).toBe(202);
    await expect.poll(() => second.reviewing(id).left, { timeout: 90_000 }).toBe(0);
    await second.close();
  }, 120_000);
});
