/** Several people at one desk: initials, groups, whole-script remarks, two markers; and files of older versions. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import request from 'supertest';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createApp } from '../../server/app.ts';
import { type MarkingDesk, openMarkingDesk } from '../../server/desk/marking-desk.ts';
import { openForWriting } from '../../server/desk/open.ts';
import { APPLICATION_ID, MIGRATIONS } from '../../server/desk/schema.ts';
import { sqlite } from '../../server/desk/sqlite.ts';
import { Desk } from '../../server/desk/store.ts';
import { EXAMPLE_SCHEME } from '../../src/desk/index.ts';
import { CHORALE } from '../../src/profiles/profile.ts';
import { exerciseText } from '../support/exercises.ts';

let folder: string;
let marking: MarkingDesk;
let app: ReturnType<typeof createApp>;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'partwise-markers-'));
  marking = await openMarkingDesk(join(folder, 'desk.sqlite'), { threads: 1 });
  app = createApp({ desk: marking, log: () => {} });
});
afterAll(async () => {
  await marking.close();
  rmSync(folder, { recursive: true });
});

async function script(settings: object): Promise<number> {
  const { body } = await request(app)
    .post('/api/desk/stacks')
    .send({ name: 'Class', ...settings });
  await request(app)
    .post(`/api/desk/stacks/${body.stack.id}/scripts?file=4101.txt`)
    .set('Content-Type', 'application/octet-stream')
    .send(Buffer.from(exerciseText('fault-consecutives')));
  const queue = await request(app).get(`/api/desk/stacks/${body.stack.id}`);
  return queue.body.scripts[0].id;
}
const as = (by: string | undefined, asked: request.Test) =>
  by === undefined ? asked : asked.set('X-Desk-Initials', encodeURIComponent(by));
const seen = async (id: number, by?: string) =>
  (await as(by, request(app).get(`/api/desk/scripts/${id}`))).body;
const decide = async (id: number, decision: object, by?: string) => {
  const { revision } = (await seen(id)).script;
  return as(by, request(app).post(`/api/desk/scripts/${id}/decisions`).send({ revision, decision }));
};
const mark = async (id: number, marks: number | null, by?: string, agreed?: true) => {
  const { revision } = (await seen(id)).script;
  return as(
    by,
    request(app)
      .put(`/api/desk/scripts/${id}/marks/chords`)
      .send({ revision, marks, ...(agreed ? { agreed } : {}) }),
  );
};

describe('decisions of several people', () => {
  it('carry initials, settle a group as one, and speak of the whole script', async () => {
    const id = await script({});
    const [first, second] = (await seen(id)).findings;
    const made = await decide(id, { kind: 'agree', finding: first.id, also: [second.id] }, 'É. B.');
    expect(made.status).toBe(201);
    expect((await seen(id)).findings.slice(0, 2)).toMatchObject([
      { standing: 'agreed', by: 'É. B.' },
      { standing: 'agreed', by: 'É. B.' },
    ]);
    expect((await decide(id, { kind: 'agree', finding: first.id, also: ['no-such'] })).status).toBe(404);
    expect((await decide(id, { kind: 'remark', text: 'A brave start.' }, '<b>')).status).toBe(400);
    expect((await decide(id, { kind: 'remark', text: 'A brave start.' })).status).toBe(201);
    const [remark] = (await seen(id)).remarks;
    expect(remark).toMatchObject({ text: 'A brave start.' });
    expect(remark).not.toHaveProperty('from');
    expect((await request(app).get(`/api/desk/scripts/${id}/annotated.musicxml`)).status).toBe(200);
  });

  it('two markers: unseen by each other, differences listed, the agreed mark stands', async () => {
    const id = await script({ second: 'blind' });
    const { stack } = (await seen(id)).script;
    const differences = async () => (await request(app).get(`/api/desk/stacks/${stack}/differences`)).body;
    expect((await mark(id, 7)).status).toBe(422);
    expect((await mark(id, 7, 'AB')).body.marks).toMatchObject([{ marks: 7, by: 'AB' }]);
    expect(await seen(id, 'CD')).toMatchObject({ marks: [], marksGiven: [] });
    const moderated = (by: string) =>
      as(by, request(app).get(`/api/desk/stacks/${stack}/moderation?criterion=chords`));
    expect((await moderated('CD')).body).toMatchObject({ marked: 0 });
    expect((await moderated('AB')).body).toMatchObject({ marked: 1 });
    // What anybody may open tells as little of it.
    const told = async () => {
      const sheet = (await request(app).get(`/api/desk/scripts/${id}/sheet`)).body;
      const book = (await request(app).get(`/api/desk/stacks/${stack}/mark-book.csv`)).text;
      // The criteria in their order, the total, and what it is out of.
      const cells = book
        .trim()
        .split('\r\n')[1]!
        .split(',')
        .slice(-EXAMPLE_SCHEME.criteria.length - 2);
      const all = (await request(app).get(`/api/desk/stacks/${stack}/everything.json`)).body;
      return {
        sheet: sheet.marks.map(({ marks }: { marks: number }) => marks),
        markers: sheet.markers,
        book: cells[EXAMPLE_SCHEME.criteria.findIndex((criterion) => criterion.id === 'chords')],
        json: all.scripts[0].marks.map(({ marks }: { marks: number }) => marks),
      };
    };
    expect(await told()).toEqual({ sheet: [], markers: [], book: '', json: [] });
    await mark(id, 7, 'CD');
    expect(await told()).toMatchObject({ sheet: [7], book: '7', json: [7] });
    await mark(id, 5, 'CD');
    expect(await told()).toMatchObject({ sheet: [], book: '', json: [] });
    expect((await seen(id, 'CD')).marksGiven).toMatchObject([{ marks: 7 }, { marks: 5 }]);
    expect(await differences()).toMatchObject({
      total: 1,
      scripts: [{ id, candidate: '4101', differences: [{ criterion: 'chords' }] }],
    });
    expect(marking.desk.marks(id)).toEqual([]);
    await mark(id, 6, 'CD', true);
    expect((await differences()).total).toBe(0);
    expect(marking.desk.marks(id)).toMatchObject([{ marks: 6, agreed: true }]);
    await mark(id, null, 'CD', true);
    await mark(id, null, 'CD');
    expect(marking.desk.marks(id)).toEqual([]);
    expect((await seen(id, 'AB')).marks).toMatchObject([{ marks: 7, by: 'AB' }]);
  });
});

describe('a desk’s file of an older version', () => {
  it('opens with all that was decided and marked', async () => {
    const open = await sqlite();
    for (let version = 1; version < MIGRATIONS.length; version++) {
      const path = join(folder, `old-${version}.sqlite`);
      const old = open(path, {});
      for (const step of MIGRATIONS.slice(0, version)) old.exec(step);
      old.pragma(`application_id = ${APPLICATION_ID}`);
      old.pragma(`user_version = ${version}`);
      const at = '2026-11-01T10:00:00.000Z';
      old
        .prepare('INSERT INTO stacks (name, created, profile, scheme) VALUES (?, ?, ?, ?)')
        .run('Old', at, JSON.stringify(CHORALE), JSON.stringify(EXAMPLE_SCHEME));
      old
        .prepare(
          'INSERT INTO scripts (stack, file, sum, candidate, received, content) VALUES (1, ?, ?, ?, ?, ?)',
        )
        .run('4101.txt', 'x', '4101', at, Buffer.from('?'));
      old
        .prepare('INSERT INTO decisions (id, stack, script, decision) VALUES (?, 1, 1, ?)')
        .run('d', JSON.stringify({ kind: 'remark', id: 'd', at, script: '1', from: 2, text: 'Kept.' }));
      old
        .prepare('INSERT INTO marks (script, criterion, mark) VALUES (1, ?, ?)')
        .run('chords', JSON.stringify({ criterion: 'chords', marks: 7, at, by: 'AB' }));
      if (version >= 4) old.exec("UPDATE marks SET marker = 'AB'");
      old.close();
      const desk = new Desk(await openForWriting(path));
      expect(desk.stack(1).name).toBe('Old');
      expect(desk.decisions(1, 1)).toMatchObject([{ text: 'Kept.', from: 2 }]);
      expect(desk.marks(1)).toMatchObject([{ marks: 7, by: 'AB' }]);
      desk.changeStack(1, 0, { ...desk.stack(1), second: 'open' });
      desk.mark(1, 0, { takeBack: 'chords', by: 'AB' });
      expect(desk.marks(1)).toEqual([]);
      desk.close();
    }
  });
});
