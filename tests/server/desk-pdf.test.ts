/** Sheets as PDF, printed by the Chromium of this machine, with a passphrase and without. */
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import express from 'express';
import { unzipSync } from 'fflate';
import request from 'supertest';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createApp } from '../../server/app.ts';
import { type MarkingDesk, openMarkingDesk } from '../../server/desk/marking-desk.ts';
import { openForWriting } from '../../server/desk/open.ts';
import { hashPassphrase } from '../../server/desk/passphrase.ts';
import { PrintPasses } from '../../server/desk/print-passes.ts';
import { Desk } from '../../server/desk/store.ts';
import { problemHandler } from '../../server/problem.ts';
import { networkGuard } from '../../server/routes/desk/guard.ts';
import { NO_CHROMIUM } from '../support/chromium.ts';
import { exerciseText } from '../support/exercises.ts';
import { builtPage } from '../support/page.ts';

const PASSPHRASE = 'four words not belonging';

describe('a pass for the browser that prints', () => {
  it('is good once, for what it was issued for, and not for long', () => {
    let now = 0;
    const passes = new PrintPasses(() => now);
    const [first, second] = [passes.issue('/stack/1/sheets/0'), passes.issue('/stack/2/sheets/0')];
    expect(passes.redeem('guess')).toBeUndefined();
    expect(passes.redeem(first)).toBe('/stack/1/sheets/0');
    expect(passes.redeem(first)).toBeUndefined();
    now = 120_000;
    expect(passes.redeem(second)).toBeUndefined();
  });

  it('lets it look, and change nothing', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'partwise-pass-'));
    const desk = new Desk(await openForWriting(join(folder, 'desk.sqlite')));
    try {
      const passes = new PrintPasses();
      const app = express()
        .use('/api/desk', networkGuard(desk, await hashPassphrase(PASSPHRASE), passes).door)
        .all('/api/desk/stacks', (_request, response) => void response.json({ reached: true }))
        .use(problemHandler(() => {}));
      const agent = request.agent(app);
      const came = await agent.get(`/api/desk/print/${passes.issue('/stack/1/sheets/0')}`);
      expect([came.status, came.headers.location]).toEqual([303, '/desk/#/stack/1/sheets/0']);
      expect((await agent.get('/api/desk/session')).body).toEqual({ passphraseNeeded: true, signedIn: true });
      expect((await agent.get('/api/desk/stacks')).body).toEqual({ reached: true });
      expect((await agent.post('/api/desk/stacks')).status).toBe(401);
      expect((await request(app).get('/api/desk/stacks')).status).toBe(401);
    } finally {
      desk.close();
      rmSync(folder, { recursive: true });
    }
  });
});

// Without Chromium these are skipped; tests/support/chromium.ts says so.
describe.skipIf(NO_CHROMIUM)('sheets as PDF', () => {
  let folder: string;
  let marking: MarkingDesk;
  let built: string;
  const servers: Server[] = [];

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'partwise-pdf-test-'));
    marking = await openMarkingDesk(join(folder, 'desk.sqlite'), { threads: 1 });
    built = await builtPage();
    const stack = marking.stackFor({ name: 'Class' });
    const content = new TextEncoder().encode(exerciseText('fault-consecutives'));
    for (const file of ['4001.txt', '4002.txt', '4003.txt'])
      await marking.takeIn(marking.desk.stack(stack), { file, content });
  }, 180_000);
  afterAll(async () => {
    for (const server of servers) {
      server.closeAllConnections();
      server.close();
    }
    await marking?.close();
    rmSync(folder, { recursive: true, force: true });
  });

  async function listen(passphraseHash?: string): Promise<string> {
    const app = createApp({ page: built, desk: marking, ...(passphraseHash ? { passphraseHash } : {}) });
    const server = createServer(app);
    servers.push(server);
    await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
    return `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  }

  /** A sheet takes one page; what is printed in its stead, signing in above all, takes one in all. */
  async function expectSheets(answer: Response): Promise<void> {
    expect(answer.headers.get('content-type')).toBe('application/pdf');
    const pdf = Buffer.from(await answer.arrayBuffer()).toString('latin1');
    expect(pdf.slice(0, 5)).toBe('%PDF-');
    expect(pdf.match(/\/Type\s*\/Page\b/g)?.length ?? 0).toBe(3);
  }

  it('on this machine', async () => {
    await expectSheets(await fetch(`${await listen()}/api/desk/stacks/1/sheets.pdf`));
  }, 120_000);

  it('each candidate’s by itself, with what was asked for, in a zip', async () => {
    const query = 'parts=marks.list&scripts=1.3';
    const answer = await fetch(`${await listen()}/api/desk/stacks/1/sheets.zip?${query}`);
    expect(answer.headers.get('content-type')).toBe('application/zip');
    const files = unzipSync(new Uint8Array(await answer.arrayBuffer()));
    expect(Object.keys(files)).toEqual(['4001-draft1.pdf', '4003-draft1.pdf']);
    for (const pdf of Object.values(files)) {
      const text = Buffer.from(pdf).toString('latin1');
      // One side for the pupil, and the list behind it.
      expect(text.match(/\/Type\s*\/Page\b/g)?.length).toBe(2);
    }
  }, 120_000);

  it('behind a passphrase, which the browser that prints does not know', async () => {
    const service = await listen(await hashPassphrase(PASSPHRASE));
    const pdf = `${service}/api/desk/stacks/1/sheets.pdf`;
    expect((await fetch(pdf)).status).toBe(401);
    expect((await fetch(`${service}/api/desk/print/guess`)).status).toBe(401);
    const signedIn = await fetch(`${service}/api/desk/session`, {
      method: 'POST',
      headers: { 'Content-Type': 'application/json' },
      body: JSON.stringify({ passphrase: PASSPHRASE }),
    });
    const cookie = signedIn.headers.get('set-cookie')!.split(';')[0]!;
    await expectSheets(await fetch(pdf, { headers: { cookie } }));
    const printing = marking.desk.db
      .prepare("SELECT session FROM sessions WHERE session LIKE '%printsUntil%'")
      .pluck()
      .all();
    expect(printing).toHaveLength(1);
    expect(JSON.parse(String(printing[0]))).not.toHaveProperty('token');
  }, 120_000);
});
