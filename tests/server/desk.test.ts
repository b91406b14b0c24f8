import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import request from 'supertest';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createApp } from '../../server/app.ts';
import { type MarkingDesk, openMarkingDesk } from '../../server/desk/marking-desk.ts';
import { hashPassphrase } from '../../server/desk/passphrase.ts';
import { readMusicXml } from '../../src/musicxml/index.ts';
import { exerciseText } from '../support/exercises.ts';

let folder: string;
let marking: MarkingDesk;
let app: ReturnType<typeof createApp>;

// One desk for all: its workers take longer to start than any test. Each test has a stack of its own.
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'partwise-desk-'));
  marking = await openMarkingDesk(join(folder, 'desk.sqlite'), { threads: 1 });
  app = createApp({ desk: marking, log: () => {} });
});
afterAll(async () => {
  await marking.close();
  rmSync(folder, { recursive: true });
});

async function newStack(settings: object = {}): Promise<number> {
  const answer = await request(app)
    .post('/api/desk/stacks')
    .send({ name: 'Class', ...settings });
  expect(answer.status, JSON.stringify(answer.body)).toBe(201);
  return answer.body.stack.id;
}

async function handIn(stack: number, file: string, content: string): Promise<number> {
  const answer = await request(app)
    .post(`/api/desk/stacks/${stack}/scripts?file=${encodeURIComponent(file)}`)
    .set('Content-Type', 'application/octet-stream')
    .send(Buffer.from(content));
  expect(answer.status).toBe(201);
  return answer.body.script;
}

const script = async (id: number) => (await request(app).get(`/api/desk/scripts/${id}`)).body;
const decide = (id: number, revision: number, decision: object) =>
  request(app).post(`/api/desk/scripts/${id}/decisions`).send({ revision, decision });

describe('a stack', () => {
  it('takes scripts of every kind, broken ones too, and knows whose they are', async () => {
    const stack = await newStack();
    await handIn(stack, '4012-draft2.txt', exerciseText('fault-consecutives'));
    await handIn(stack, '4007.txt', exerciseText('morning-walk'));
    await handIn(stack, 'broken.musicxml', '<score-partwise>');
    const { body } = await request(app).get(`/api/desk/stacks/${stack}`);
    expect(body).toMatchObject({ scripts: [{}, {}, {}] });
    expect(body.scripts.map((s: { candidate?: string; draft: number }) => [s.candidate, s.draft])).toEqual([
      ['4007', 1],
      ['4012', 2],
      [undefined, 1],
    ]);
    expect(body.scripts[1].faults).toBeGreaterThanOrEqual(2);
    expect(body.scripts[2].error.message).toMatch(/./);
  });

  it('passes over a file that is there already', async () => {
    const stack = await newStack();
    const send = () =>
      request(app)
        .post(`/api/desk/stacks/${stack}/scripts?file=1.txt`)
        .set('Content-Type', 'text/plain')
        .send(exerciseText('kite-hill'));
    expect((await send()).body.outcome).toBe('new');
    expect((await send()).body.outcome).toBe('known');
  });

  it('checks each script against the brief', async () => {
    const brief = `task: add alto, tenor and bass\n${exerciseText('kite-hill').replaceAll(/^[ATB]:.*$/gm, '')}`;
    const stack = await newStack({ brief });
    const kept = await handIn(stack, '1.txt', exerciseText('kite-hill'));
    const changed = await handIn(stack, '2.txt', exerciseText('kite-hill').replace('S: Bb4 C5', 'S: Bb4 D5'));
    expect((await script(kept)).script.given.departures).toEqual([]);
    expect((await script(changed)).script.given.departures).toMatchObject([{ bar: '1' }]);
  });

  it('refuses settings that cannot be used, naming what is wrong', async () => {
    const answer = await request(app)
      .post('/api/desk/stacks')
      .send({ name: 'X', scheme: '{"name":"x"}', pattern: 'draft{draft}', brief: 'key: H major' });
    expect(answer.status).toBe(422);
    expect(answer.headers['content-type']).toMatch('application/problem+json');
    expect(answer.body.problems.length).toBeGreaterThanOrEqual(3);
  });

  it('is set up otherwise later: what is left out stays, what is empty goes, an old view changes nothing', async () => {
    const brief = `task: add alto, tenor and bass\n${exerciseText('kite-hill').replaceAll(/^[ATB]:.*$/gm, '')}`;
    const stack = await newStack({ brief, pattern: '{candidate}-draft{draft}' });
    const id = await handIn(stack, 'set7_k4001.txt', exerciseText('kite-hill'));
    expect((await script(id)).script.candidate).toBeUndefined();
    const put = (body: object) => request(app).put(`/api/desk/stacks/${stack}`).send(body);
    const renamed = await put({ revision: 0, name: 'Class B', pattern: 'set7_k{candidate}' });
    expect(renamed.body.stack).toMatchObject({ name: 'Class B', brief, pattern: 'set7_k{candidate}' });
    expect((await script(id)).script.candidate).toBe('4001');
    expect((await put({ revision: 0, name: 'Class C' })).status).toBe(409);
    expect((await script(id)).script.given).toBeDefined();
    const emptied = await put({ revision: 1, name: 'Class B', brief: '', pattern: '', profile: 'strict' });
    expect(emptied.body.stack.profile.name).toBe('strict');
    expect([emptied.body.stack.brief, emptied.body.stack.pattern]).toEqual([undefined, undefined]);
    // Reviewed again in its own time: the answer does not wait for it.
    await expect.poll(async () => (await script(id)).script.given).toBeUndefined();
    const { body } = await request(app).get(`/api/desk/stacks/${stack}`);
    expect(body.again).toMatchObject({ left: 0, going: false });
  });

  it('is looked through a part at a time, each script knowing its neighbours', async () => {
    const stack = await newStack();
    const ids: number[] = [];
    for (const file of ['4003.txt', '4001-draft1.txt', '4001-draft2.txt', '4002.txt'])
      ids.push(await handIn(stack, file, exerciseText('kite-hill')));
    await handIn(stack, 'nobody.txt', exerciseText('lantern'));
    const [third, first, second, fourth] = ids;
    const { body } = await request(app).get(`/api/desk/stacks/${stack}?after=1&most=2`);
    expect(body).toMatchObject({
      total: 5,
      after: 1,
      next: first,
      scripts: [{ id: second }, { id: fourth }],
    });
    expect((await script(first!)).place).toEqual({ at: 1, of: 5, next: second });
    expect((await script(fourth!)).place).toEqual({ at: 3, of: 5, before: second, next: third });
    await request(app).patch(`/api/desk/scripts/${first}`).send({ revision: 0, done: true });
    expect((await request(app).get(`/api/desk/stacks/${stack}?most=1`)).body.next).toBe(second);
    const latest = await request(app).get(`/api/desk/stacks/${stack}/latest?most=3`);
    expect(latest.body).toEqual({ total: 4, unseen: 4, after: 0, scripts: [second, fourth, third] });
    for (const id of [second, fourth, third])
      await request(app).put(`/api/desk/scripts/${id}/marks/chords`).send({ revision: 0, marks: id });
    const ranked = await request(app).get(
      `/api/desk/stacks/${stack}/moderation?criterion=chords&after=1&most=1`,
    );
    expect(ranked.body).toMatchObject({
      marked: 3,
      notMarked: 1,
      ranked: [{ rank: 2, script: { id: second } }],
    });
  });

  it('bounds uploads', async () => {
    const stack = await newStack();
    const answer = await request(app)
      .post(`/api/desk/stacks/${stack}/scripts?file=big.xml`)
      .set('Content-Type', 'text/xml')
      .send(Buffer.alloc(9 * 1024 * 1024, 32));
    expect(answer.status).toBe(413);
  });
});

describe('decisions', () => {
  it('agree, overrule with a reason, another severity, and back again', async () => {
    const id = await handIn(await newStack(), '1.txt', exerciseText('fault-consecutives'));
    const [first, second] = (await script(id)).findings;
    expect((await decide(id, 0, { kind: 'agree', finding: first.id })).status).toBe(201);
    const overruled = await decide(id, 1, {
      kind: 'overrule',
      finding: second.id,
      reason: 'As in the model.',
    });
    expect(overruled.body.revision).toBe(2);
    await decide(id, 2, { kind: 'severity', finding: first.id, severity: 'query' });
    expect((await script(id)).findings.slice(0, 2)).toMatchObject([
      { standing: 'agreed', severity: 'query', foundAs: 'fault' },
      { standing: 'overruled', reason: 'As in the model.' },
    ]);
    const undo = await request(app)
      .post(`/api/desk/decisions/${overruled.body.decision.id}/undo`)
      .send({ revision: 3 });
    expect(undo.status).toBe(201);
    expect((await script(id)).findings[1].standing).toBe('open');
  });

  it('what is overruled for all holds in every script, also in one handed in later, and can be undone', async () => {
    const stack = await newStack();
    const a = await handIn(stack, '1.txt', exerciseText('fault-consecutives'));
    const made = await request(app)
      .post(`/api/desk/stacks/${stack}/decisions`)
      .send({ revision: 0, decision: { kind: 'overrule for all', rule: 'parallel-octaves' } });
    expect(made.status).toBe(201);
    const b = await handIn(stack, '2.txt', exerciseText('fault-consecutives'));
    const octaves = async (id: number) =>
      (await script(id)).findings.find((f: { rule: string }) => f.rule === 'parallel-octaves').standing;
    expect([await octaves(a), await octaves(b)]).toEqual(['overruled', 'overruled']);
    await request(app).post(`/api/desk/decisions/${made.body.decision.id}/undo`).send({ revision: 1 });
    expect([await octaves(a), await octaves(b)]).toEqual(['open', 'open']);
  });

  it('one made on an old view is refused with 409 and changes nothing', async () => {
    const stack = await newStack();
    const id = await handIn(stack, '1.txt', exerciseText('fault-consecutives'));
    const [finding] = (await script(id)).findings;
    const both = await Promise.all([
      decide(id, 0, { kind: 'agree', finding: finding.id }),
      decide(id, 0, { kind: 'overrule', finding: finding.id }),
    ]);
    expect(both.map(({ status }) => status).sort()).toEqual([201, 409]);
    const refused = both.find(({ status }) => status === 409)!;
    expect(refused.headers['content-type']).toMatch('application/problem+json');
    expect(refused.body).toMatchObject({ title: 'Changed meanwhile', revision: 1 });
    expect(marking.desk.decisions(stack)).toHaveLength(1);
  });

  it('remarks are kept with their place and offered again', async () => {
    const id = await handIn(await newStack(), '1.txt', exerciseText('fault-consecutives'));
    const text = '<b>Lovely</b> bass line';
    await decide(id, 0, { kind: 'remark', from: 2, until: 4, voice: 'B', text });
    expect((await script(id)).remarks).toMatchObject([{ from: 2, until: 4, voice: 'B', text }]);
    const { body } = await request(app).get('/api/desk/remarks?typed=bass');
    expect(body.remarks).toEqual([{ text, uses: 1 }]);
  });

  it('nonsense is refused: unknown findings, severities, empty remarks, other fields', async () => {
    const id = await handIn(await newStack(), '1.txt', exerciseText('fault-consecutives'));
    expect((await decide(id, 0, { kind: 'agree', finding: 'no-such' })).status).toBe(404);
    expect((await decide(id, 0, { kind: 'severity', finding: 'x', severity: 'awful' })).status).toBe(400);
    expect((await decide(id, 0, { kind: 'remark', from: 0, text: ' ' })).status).toBe(400);
    expect((await decide(999, 0, { kind: 'agree', finding: 'x' })).status).toBe(404);
    expect((await request(app).get('/api/desk/scripts/1e9')).status).toBe(404);
    expect((await request(app).get('/api/desk/scripts/x')).status).toBe(400);
  });
});

describe('from draft to draft', () => {
  const first = exerciseText('fault-consecutives');
  const answer = (id: number, revision: number, from: string, keep: boolean) =>
    request(app).post(`/api/desk/scripts/${id}/carried`).send({ revision, from, keep });
  type Finding = { id: string; rule: string; standing: string };
  const ruled = (view: { findings: Finding[] }, rule: string) => view.findings.find((f) => f.rule === rule)!;

  it('carries over what is sure as the draft comes in, asks about the rest, and both can be taken back', async () => {
    const stack = await newStack();
    const old = await handIn(stack, '4001-draft1.txt', first);
    const before = await script(old);
    const octaves = ruled(before, 'parallel-octaves');
    await decide(old, 0, { kind: 'overrule', finding: octaves.id, reason: 'As in the model.' });
    await decide(old, 1, {
      kind: 'severity',
      finding: ruled(before, 'parallel-fifths').id,
      severity: 'query',
    });
    await decide(old, 2, { kind: 'remark', from: 0, text: 'Sing this.' });
    await decide(old, 3, { kind: 'agree', finding: ruled(before, 'parallel-fifths').id });
    // Another's script is none of this candidate's drafts.
    await handIn(stack, '4002-draft2.txt', first);

    const id = await handIn(stack, '4001-draft2.txt', first);
    const view = await script(id);
    expect(view.carried.draft).toBe(1);
    expect(view.carried.decisions).toMatchObject([
      { decision: { kind: 'severity' }, sure: true, standing: 'carried' },
      { decision: { kind: 'overrule' }, sure: true, standing: 'carried' },
      { decision: { kind: 'remark', text: 'Sing this.' }, from: 0, sure: false, standing: 'asked' },
    ]);
    expect(ruled(view, 'parallel-octaves')).toMatchObject({
      standing: 'overruled',
      reason: 'As in the model.',
    });
    expect(ruled(view, 'parallel-fifths')).toMatchObject({ standing: 'open', severity: 'query' });
    expect(view.remarks).toEqual([]);

    const [, overruling, remark] = view.carried.decisions;
    const { revision } = view.script;
    const kept = await answer(id, revision, remark.decision.id, true);
    expect(kept.status).toBe(201);
    expect((await script(id)).remarks).toMatchObject([{ text: 'Sing this.', from: 0 }]);
    expect((await answer(id, revision, overruling.decision.id, false)).status).toBe(409);
    const left = await answer(id, revision + 1, overruling.decision.id, false);
    expect(ruled(await script(id), 'parallel-octaves').standing).toBe('open');
    for (const [i, made] of [left, kept].entries())
      await request(app)
        .post(`/api/desk/decisions/${made.body.decision.id}/undo`)
        .send({ revision: revision + 2 + i });
    const after = await script(id);
    expect(ruled(after, 'parallel-octaves').standing).toBe('overruled');
    expect(after.remarks).toEqual([]);
    expect(after.carried.decisions).toEqual(view.carried.decisions);
    expect((await script(old)).remarks).toHaveLength(1);
  });

  it('where the notes around it have changed, or nobody knew whose it was, nothing is done silently', async () => {
    const stack = await newStack();
    const old = await handIn(stack, '4001-draft1.txt', first);
    const fifths = ruled(await script(old), 'parallel-fifths');
    await decide(old, 0, { kind: 'overrule', finding: fifths.id });
    const changed = first.replace('B: C3 G3 A3*2', 'B: C3 G2 A2*2');
    const id = await handIn(stack, '4001-draft2.txt', changed);
    const view = await script(id);
    expect(view.carried.decisions).toMatchObject([{ sure: false, standing: 'asked' }]);
    expect(ruled(view, 'parallel-fifths').standing).toBe('open');
    expect(view.script.revision).toBe(0);
    expect((await answer(id, 0, 'no-such', true)).status).toBe(404);
    await answer(id, 0, view.carried.decisions[0].decision.id, false);
    expect((await script(id)).carried.decisions).toMatchObject([{ standing: 'left' }]);

    const nobodys = await handIn(stack, 'handed in late.txt', first);
    expect((await script(nobodys)).carried).toBeUndefined();
    const named = await request(app)
      .patch(`/api/desk/scripts/${nobodys}`)
      .send({ revision: 0, candidate: '4001', draft: 3 });
    expect(named.body.script).toMatchObject({ candidate: '4001', draft: 3 });
    // Draft 2 left it: there is nothing to carry on to draft 3.
    expect((await script(nobodys)).carried).toBeUndefined();
  });
});

describe('marks', () => {
  it('are given, added up, taken back; a suggestion never fills one in', async () => {
    const id = await handIn(await newStack(), '1.txt', exerciseText('morning-walk'));
    const before = await script(id);
    expect(before.marks).toEqual([]);
    expect(before.suggestions.some(({ level }: { level?: number }) => level !== undefined)).toBe(true);
    const { criterion } = before.suggestions[0];
    const give = (marks: number | null, revision: number) =>
      request(app).put(`/api/desk/scripts/${id}/marks/${criterion}`).send({ revision, marks });
    expect((await give(7.5, 0)).body.marks).toMatchObject([{ criterion, marks: 7.5 }]);
    expect((await give(99, 1)).status).toBe(422);
    expect((await give(null, 1)).body.marks).toEqual([]);
  });

  it('moderation puts the scripts side by side in rank order', async () => {
    const stack = await newStack();
    const ids = [];
    for (const n of ['1', '2', '3'])
      ids.push(await handIn(stack, `400${n}.txt`, exerciseText('morning-walk')));
    for (const [i, marks] of [4, 9].entries()) {
      await request(app).put(`/api/desk/scripts/${ids[i]}/marks/chords`).send({ revision: 0, marks });
    }
    const { body } = await request(app).get(`/api/desk/stacks/${stack}/moderation?criterion=chords`);
    expect(body.ranked.map((r: { script: { candidate: string } }) => r.script.candidate)).toEqual([
      '4002',
      '4001',
    ]);
    expect(body.unmarked).toHaveLength(1);
  });
});

describe('what comes off the desk', () => {
  it('a sheet with strengths, work, changes since the last draft and only what the teacher lets stand', async () => {
    const stack = await newStack();
    await handIn(stack, '4001-draft1.txt', exerciseText('fault-consecutives'));
    const mended = exerciseText('fault-consecutives').replace('T: E4 D4 E4*2', 'T: E4 D4 C4*2');
    const id = await handIn(stack, '4001-draft2.txt', mended);
    const octaves = (await script(id)).findings.find((f: { rule: string }) => f.rule === 'parallel-octaves');
    expect((await request(app).get(`/api/desk/scripts/${id}/sheet`)).body.seen).toBe(false);
    await decide(id, 0, { kind: 'overrule', finding: octaves.id });
    const { body } = await request(app).get(`/api/desk/scripts/${id}/sheet`);
    expect(body.seen).toBe(true);
    expect(body.since.summary).toMatch(/mended/);
    expect(body.findings.map((f: { id: string }) => f.id)).not.toContain(octaves.id);
    expect(body.feedback.toWorkOn.length).toBeLessThanOrEqual(3);
    expect(body.score.bars).toHaveLength(2);
  });

  it('the class: what is commonest, in how many scripts', async () => {
    const stack = await newStack();
    await handIn(stack, '1.txt', exerciseText('fault-consecutives'));
    await handIn(stack, '2.txt', exerciseText('kite-hill'));
    const { body } = await request(app).get(`/api/desk/stacks/${stack}/class`);
    expect(body).toMatchObject({ scripts: 2, faultless: 1 });
    expect(body.rules.find((r: { rule: string }) => r.rule === 'parallel-fifths').scripts).toBe(1);
  });

  it('CSV without formulas, JSON whole, and an annotated score that opens again', async () => {
    const stack = await newStack({ name: '=cmd|stack' });
    const evil = exerciseText('fault-consecutives').replace(
      'title: Two abreast',
      'title: =HYPERLINK("http://x")',
    );
    const id = await handIn(stack, '=1+1.txt', evil);
    const table = await request(app).get(`/api/desk/stacks/${stack}/mark-book.csv`);
    expect(table.headers['content-type']).toMatch('text/csv');
    expect(table.text).toContain(`"'=HYPERLINK(""http://x"")"`);
    expect(table.text).toContain("'=1+1.txt");
    const all = await request(app).get(`/api/desk/stacks/${stack}/everything.json`);
    expect(all.body.scripts).toHaveLength(1);
    const annotated = await request(app)
      .get(`/api/desk/scripts/${id}/annotated.musicxml`)
      .buffer(true)
      .parse((response, done) => {
        const chunks: Buffer[] = [];
        response.on('data', (chunk: Buffer) => chunks.push(chunk));
        response.on('end', () => done(null, Buffer.concat(chunks)));
      });
    expect(readMusicXml(annotated.body).ok).toBe(true);
  });
});

describe('who may come near', () => {
  it('on this machine: its own page, and no other site', async () => {
    const post = () => request(app).post('/api/desk/stacks').send({ name: 'X' });
    expect((await post().set('Host', 'evil.example')).status).toBe(403);
    expect((await post().set('Origin', 'http://evil.example')).status).toBe(403);
    expect((await post().set('Sec-Fetch-Site', 'cross-site')).status).toBe(403);
    expect((await post().set('Sec-Fetch-Site', 'same-origin')).status).toBe(201);
  });

  it('every answer forbids scripts and styles in markup, and being framed', async () => {
    const policy = (await request(app).get('/api/desk/stacks')).headers['content-security-policy']!;
    expect(policy).not.toMatch(/unsafe/);
    expect(policy).toMatch(/script-src 'self'.*style-src 'self'.*frame-ancestors 'none'/);
  });

  it('over a network: the passphrase, a strict cookie, a token; guessing is slowed', async () => {
    const passphrase = 'four words not belonging';
    const secured = createApp({
      desk: marking,
      passphraseHash: await hashPassphrase(passphrase),
      log: () => {},
    });
    const agent = request.agent(secured);
    expect((await agent.get('/api/desk/stacks')).status).toBe(401);
    expect((await agent.post('/api/desk/session').send({ passphrase: 'wrong' })).status).toBe(401);
    const signedIn = await agent.post('/api/desk/session').send({ passphrase });
    expect(signedIn.headers['set-cookie']?.[0]).toMatch(/HttpOnly; SameSite=Strict/);
    expect((await agent.get('/api/desk/stacks')).status).toBe(200);
    expect((await agent.post('/api/desk/stacks').send({ name: 'X' })).status).toBe(403);
    const made = await agent
      .post('/api/desk/stacks')
      .set('X-Desk-Token', signedIn.body.token)
      .send({ name: 'X' });
    expect(made.status).toBe(201);
    await agent.delete('/api/desk/session').set('X-Desk-Token', signedIn.body.token);
    expect((await agent.get('/api/desk/stacks')).status).toBe(401);
    const statuses = [];
    for (let i = 0; i < 12; i++) {
      statuses.push((await request(secured).post('/api/desk/session').send({ passphrase: 'guess' })).status);
    }
    expect(statuses.at(-1)).toBe(429);
  });
});

describe('whose scripts they are', () => {
  it('knows whose scripts are from all names together, says what lies there, and lets a person correct it', async () => {
    const stack = await newStack({});
    const names = ['2026 4101.txt', '2026 4102.txt', '2026 4103.txt', 'second/2026 4101.txt', 'Thumbs.db'];
    for (const [i, file] of names.entries()) {
      const text = `title: T${i}\nkey: C major\nmetre: 4/4\nS: C5*4 |\nA: G4*4 |\nT: E4*4 |\nB: C3*4 |`;
      await request(app)
        .post(`/api/desk/stacks/${stack}/scripts`)
        .query({ file })
        .set('Content-Type', 'application/octet-stream')
        .send(Buffer.from(text));
    }
    await request(app).post(`/api/desk/stacks/${stack}/settled`).send({});
    const queue = async () => (await request(app).get(`/api/desk/stacks/${stack}`)).body;
    const { scripts, intake } = await queue();
    expect(scripts.map((s: { candidate: string; draft: number }) => [s.candidate, s.draft])).toEqual([
      ['4101', 1],
      ['4101', 2],
      ['4102', 1],
      ['4103', 1],
    ]);
    expect(intake).toEqual({
      summary: '5 files: 4 scripts by 3 candidates, 1 of them twice; 1 not a script.',
      doubts: ['Not scripts, and left apart: Thumbs.db.'],
    });
    const { id, revision } = scripts[1];
    await request(app).patch(`/api/desk/scripts/${id}`).send({ revision, candidate: '4104', draft: 1 });
    await request(app).post(`/api/desk/stacks/${stack}/settled`).send({});
    expect((await queue()).scripts.map((s: { candidate: string; draft: number }) => s.candidate)).toEqual([
      '4101',
      '4102',
      '4103',
      '4104',
    ]);
  });
});
