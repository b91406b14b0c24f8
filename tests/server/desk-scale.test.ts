/** What keeps a large stack light: lists read no files, comparisons run in a worker, reviewing again can be left. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import request from 'supertest';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createApp } from '../../server/app.ts';
import { type MarkingDesk, openMarkingDesk } from '../../server/desk/marking-desk.ts';
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
    marking.desk.db.prepare('DELETE FROM kept').run();
    expect([await get(''), await get('/class'), await get('/likeness')]).toEqual(before);
  });
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
    expect(again.of).toBe(files.length);
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
