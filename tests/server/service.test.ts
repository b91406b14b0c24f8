import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { Agent, request as ask } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import request from 'supertest';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createApp } from '../../server/app.ts';
import { openMarkingDesk } from '../../server/desk/marking-desk.ts';
import { hashPassphrase } from '../../server/desk/passphrase.ts';
import { type ReviewPool, reviewPool } from '../../server/desk/pool.ts';
import { serve } from '../../server/main.ts';
import { CHORALE } from '../../src/profiles/profile.ts';
import { exerciseText } from '../support/exercises.ts';
import { everythingWrong } from '../support/worst-cases.ts';

let pool: ReviewPool;
beforeAll(() => {
  pool = reviewPool({ threads: 1, log: () => {} });
});
afterAll(() => pool.close());

const app = createApp({ workers: () => pool, log: () => {} });
const walk = exerciseText('morning-walk');
const post = (text: string, to = app) =>
  request(to).post('/api/reviews').set('Content-Type', 'text/plain').send(text);

describe('who may ask', () => {
  it('answers to its own name alone, the page too', async () => {
    for (const address of ['/', '/api/rules', '/api/reviews']) {
      const answer = await request(app).get(address).set('Host', 'evil.example');
      expect([address, answer.status]).toEqual([address, 403]);
    }
    const local = await request(app).get('/api/rules').set('Host', 'localhost:4100');
    expect(local.status).toBe(200);
  });

  it('refuses what a foreign page asks, reading included', async () => {
    const posted = await post(walk).set('Origin', 'https://evil.example');
    const got = await request(app).get('/api/rules').set('Sec-Fetch-Site', 'cross-site');
    expect([posted.status, got.status]).toEqual([403, 403]);
  });

  it('reviews for nobody who is not signed in, where the desk has a passphrase', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'partwise-service-'));
    const desk = await openMarkingDesk(join(folder, 'desk.sqlite'), { threads: 1 });
    try {
      const guarded = createApp({
        desk,
        passphraseHash: await hashPassphrase('four words of ours'),
        log: () => {},
      });
      expect((await post(walk, guarded)).status).toBe(401);
      const pdf = await request(guarded).get('/api/desk/stacks/1/sheets.pdf');
      expect(pdf.status).toBe(401);
    } finally {
      await desk.close();
      rmSync(folder, { recursive: true });
    }
  });
});

describe('what it holds back', () => {
  it('gives a hundred findings of a kind, and counts the rest', async () => {
    const { status, body } = await post(everythingWrong(400));
    expect(status).toBe(200);
    const counts = new Map<string, number>();
    for (const { rule } of body.review.findings) counts.set(rule, (counts.get(rule) ?? 0) + 1);
    expect(Math.max(...counts.values())).toBe(100);
    expect(Math.max(...Object.values<number>(body.review.summary.byRule))).toBeGreaterThan(100);
    expect(JSON.stringify(body).length).toBeLessThan(8_000_000);
  });

  it('takes what it can begin in time, tells the others when to come again, and resets nobody', async () => {
    const server = app.listen(0, '127.0.0.1');
    await once(server, 'listening');
    const { port } = server.address() as { port: number };
    const agent = new Agent({ keepAlive: true });
    try {
      const text = everythingWrong(100);
      const answers = await Promise.all(Array.from({ length: 150 }, () => statusOf(port, agent, text)));
      expect(new Set(answers.map(({ status }) => status))).toEqual(new Set([200, 503]));
      for (const { status, retryAfter } of answers) expect(retryAfter).toBe(status === 503 ? '2' : undefined);
    } finally {
      agent.destroy();
      server.close();
    }
  });

  it('answers others while it reviews', async () => {
    let reviewed = false;
    const slow = post(everythingWrong(500)).then(() => {
      reviewed = true;
    });
    const quick = await request(app).get('/api/rules');
    expect([quick.status, reviewed]).toEqual([200, false]);
    await slow;
  });
});

describe('a review that takes too long', () => {
  it('keeps its candidate, is tried twice, and says why', async () => {
    const hasty = reviewPool({ threads: 1, mostMilliseconds: 1, log: () => {} });
    try {
      const task = { file: '4012-draft2.txt', content: Buffer.from(everythingWrong(500)), profile: CHORALE };
      expect(await hasty.review(task)).toMatchObject({
        candidate: '4012',
        draft: 2,
        again: true,
        error: { message: expect.stringMatching(/longer than .* tried twice/) },
      });
    } finally {
      await hasty.close();
    }
  });
});

it('counts a script’s time from when it is begun, not from when it was queued', async () => {
  const quick = { file: '4012.txt', content: Buffer.from(walk), profile: CHORALE };
  const patient = reviewPool({ threads: 1, log: () => {} });
  await patient.review(quick);
  const before = performance.now();
  for (let i = 0; i < 5; i++) await patient.review(quick);
  const each = (performance.now() - before) / 5;
  await patient.close();
  // Generous for one, far too little for all of them together.
  const mostMilliseconds = 500 + Math.ceil(20 * each);
  const strict = reviewPool({ threads: 1, mostMilliseconds, log: () => {} });
  try {
    const many = Math.ceil((2 * mostMilliseconds) / each);
    const all = await Promise.all(Array.from({ length: many }, () => strict.review(quick)));
    expect(all.filter((result) => 'error' in result && result.error !== undefined)).toEqual([]);
  } finally {
    await strict.close();
  }
}, 120_000);

it('answers what is under way before it ends', async () => {
  const service = await serve({ port: 0, host: '127.0.0.1' });
  const agent = new Agent({ keepAlive: true });
  const port = Number(new URL(service.address).port);
  // The workers have started.
  await statusOf(port, agent, walk);
  const answer = statusOf(port, agent, walk);
  await new Promise((done) => setTimeout(done, 50));
  await service.close();
  expect((await answer).status).toBe(200);
  agent.destroy();
}, 60_000);

function statusOf(
  port: number,
  agent: Agent,
  text: string,
): Promise<{ status: number; retryAfter?: string }> {
  return new Promise((resolve, reject) => {
    const going = ask(
      {
        port,
        host: '127.0.0.1',
        path: '/api/reviews',
        method: 'POST',
        agent,
        headers: { 'Content-Type': 'text/plain' },
      },
      (answer) => {
        answer.resume();
        answer.once('end', () => {
          const retryAfter = answer.headers['retry-after'];
          resolve({ status: answer.statusCode!, ...(retryAfter === undefined ? {} : { retryAfter }) });
        });
      },
    );
    going.once('error', reject);
    going.end(text);
  });
}
