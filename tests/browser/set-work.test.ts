/** A teacher sets the work at the desk: from a piece, or a tune written on the pupils' page, to what pupils get. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import { createRequire } from 'node:module';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { strFromU8, unzipSync } from 'fflate';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { createApp } from '../../server/app.ts';
import { type MarkingDesk, openMarkingDesk } from '../../server/desk/marking-desk.ts';
import { readBrief } from '../../src/brief/brief.ts';
import { openBrief } from '../../src/brief/open-brief.ts';
import { linkTo } from '../../src/set/link.ts';
import { launchChromium, NO_CHROMIUM } from '../support/chromium.ts';
import { builtPage } from '../support/page.ts';
import { openPage, ready } from './open-page.ts';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const PICTURES = fileURLToPath(new URL('../../fixtures/pictures', import.meta.url));
const PIECE = 'fixtures/exercises/morning-walk.musicxml';
const WALK = readFileSync('fixtures/exercises/morning-walk.txt', 'utf8');

describe.skipIf(NO_CHROMIUM)('setting the work', () => {
  let folder: string;
  let desk: MarkingDesk;
  let server: Server;
  let address: string;
  let browser: Browser;
  let page: Page;

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'partwise-setting-'));
    const built = await builtPage();
    desk = await openMarkingDesk(join(folder, 'desk.sqlite'));
    server = createServer(createApp({ page: built, desk }));
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    address = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
    browser = await launchChromium();
  }, 180_000);
  afterAll(async () => {
    await browser?.close();
    server?.closeAllConnections();
    server?.close();
    await desk?.close();
    if (folder) rmSync(folder, { recursive: true, force: true });
  });
  afterEach(() => page?.context().close());

  async function openSetting(width = 1280): Promise<void> {
    page = await openPage(browser, `${address}desk/`, { width, bare: true });
    await page.getByRole('link', { name: 'Set the work' }).click();
    await page.locator('h1', { hasText: 'Set the work' }).waitFor();
  }
  async function openPiece(): Promise<void> {
    await page.locator('.setting input[type=file]').setInputFiles(PIECE);
    await page.locator('.worksheet svg').first().waitFor();
  }
  /** With PICTURES=1 it renews the pictures in fixtures/pictures. */
  async function picture(name: string): Promise<void> {
    if (process.env.PICTURES) await page.screenshot({ path: join(PICTURES, `${name}.png`), fullPage: true });
  }
  async function saved(button: string): Promise<Buffer> {
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: button }).click(),
    ]);
    return Buffer.concat((await (await download.createReadStream()).toArray()) as Buffer[]);
  }

  it('goes from a piece to the brief, the files, the link and a stack', async () => {
    await openSetting();
    await openPiece();
    await page.getByLabel('the bass notes of the closes').check();
    await page.getByLabel('Opening chords').fill('1');
    await page.getByLabel('Opening chords').press('Tab');
    await page.getByLabel('hints at a mark').uncheck();
    await page.getByLabel('Title').fill('Walk for Monday');
    await page.getByLabel('Title').press('Tab');
    await page.locator('.worksheet h2', { hasText: 'Walk for Monday' }).waitFor();
    await page.evaluate(AXE);
    const faults = await page.evaluate(
      async () =>
        (
          await (
            globalThis as unknown as { axe: { run(): Promise<{ violations: { id: string }[] }> } }
          ).axe.run()
        ).violations,
    );
    expect(faults.map(({ id }) => id)).toEqual([]);

    const text = (await saved('Your brief, to mark by')).toString();
    const { brief, problems } = readBrief(text);
    expect(problems).toEqual([]);
    expect(brief).toMatchObject({ without: ['hints'], score: { title: 'Walk for Monday' } });
    expect(text).toContain('B: G2 | ?*4 | ? G3 D! ? | ?*3 D |');
    const again = openBrief(await saved('Pupils’ file, MusicXML'));
    expect(again.ok && again.brief.score.voices).toEqual(brief.score.voices);

    const link = await page.locator('.address').inputValue();
    expect(link.startsWith(`${address}#set/`)).toBe(true);
    const pupil = await openPage(browser, link);
    await expect.poll(() => pupil.locator('.sheet-head h1').textContent()).toBe('Walk for Monday');
    await ready(pupil);
    await expect.poll(() => pupil.locator('.sheet-head .sitting').textContent()).toBe('Set without hints.');
    await pupil.context().close();

    await page.getByRole('button', { name: /Make a stack/ }).click();
    await page.locator('.stack-name', { hasText: 'Walk for Monday' }).waitFor();

    // What comes back is marked against it: the piece itself leaves the given notes alone, another does not.
    const summaries = await page.evaluate(
      async (scripts) => {
        const stack = /stack\/(\d+)/.exec(location.hash)![1];
        for (const [i, content] of scripts.entries())
          await fetch(`/api/desk/stacks/${stack}/scripts?file=410${i}.txt`, {
            method: 'POST',
            headers: { 'Content-Type': 'application/octet-stream' },
            body: content,
          });
        const queue = await (await fetch(`/api/desk/stacks/${stack}`)).json();
        const told: string[] = [];
        for (const { id } of queue.scripts as { id: number }[])
          told.push((await (await fetch(`/api/desk/scripts/${id}`)).json()).script.given.summary);
        return told;
      },
      [WALK, WALK.replace('B4 A4 G4 D5', 'B4 C5 G4 D5')],
    );
    expect(summaries).toHaveLength(2);
    expect(summaries.filter((words) => / as in the brief/.test(words))).toHaveLength(1);
    expect(summaries.filter((words) => /differ from the brief in 1 place/.test(words))).toHaveLength(1);
  });

  it('says why a choice can’t be had, and makes nothing of it', async () => {
    await openSetting();
    await openPiece();
    await page.getByLabel(/Whole bars/).fill('77');
    await page.getByLabel(/Whole bars/).press('Tab');
    await page.locator('[role=alert]', { hasText: 'There is no bar 77' }).waitFor();
    await expect.poll(() => page.locator('.give-out, .worksheet').count()).toBe(0);
    await page.locator('.setting input[type=file]').setInputFiles({
      name: 'notes.txt',
      mimeType: 'text/plain',
      buffer: Buffer.from('Buy milk\n'),
    });
    await page.locator('[role=alert]', { hasText: 'notes.txt' }).waitFor();
  });

  it('sets a controlled sitting with one tick', async () => {
    await openSetting(360);
    await openPiece();
    await page.getByLabel(/Controlled sitting/).check();
    await page.locator('.worksheet .sitting', { hasText: 'Controlled sitting' }).waitFor();
    await expect.poll(() => page.locator('input[name=help]:checked').count()).toBe(0);
    await page.getByLabel('playback').check();
    await page.locator('.worksheet .sitting', { hasText: 'Set without' }).waitFor();
    await expect.poll(() => page.getByLabel(/Controlled sitting/).isChecked()).toBe(false);
    const overflow = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(overflow).toBeLessThanOrEqual(0);
  });

  it('prints a worksheet on A4, and nothing else with it', async () => {
    await openSetting();
    await openPiece();
    await page.getByLabel('the bass', { exact: true }).check();
    await page.getByLabel('figures under the bass').check();
    await page.locator('.worksheet svg').first().waitFor();
    await picture('desk-set');
    await page.emulateMedia({ media: 'print' });
    for (const hidden of ['.set-form', '.give-out', '.top'])
      await expect.poll(() => page.locator(hidden).isVisible()).toBe(false);
    await expect.poll(() => page.locator('.worksheet').isVisible()).toBe(true);
    // As wide as A4 within its margins.
    await page.setViewportSize({ width: 688, height: 1017 });
    const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true });
    expect(pdf.toString('latin1')).toMatch(/MediaBox\s*\[0 0 59[45][.\d]* 84[12][.\d]*\]/);
    expect([...pdf.toString('latin1').matchAll(/\/Type\s*\/Page\b/g)]).toHaveLength(1);
  });

  it('opens an exercise from an address as it was set', async () => {
    const made = linkTo([readBrief('task: add alto and tenor\nS: C5 D5 C5*2 |\nB: ?*2 C3*2 |\n').brief]);
    page = await openPage(browser, `${address}desk/#/${made.ok ? made.hash : ''}`, { bare: true });
    await page.locator('.worksheet svg').first().waitFor();
    await expect.poll(() => page.getByLabel('all that is written').isChecked()).toBe(true);
    expect((await saved('Pupils’ file, text')).toString()).toContain('B: ?*2 C3*2 ||');
  });

  it('makes practice for what the class picture says went wrong', async () => {
    const names = ['fault-chords', 'fault-consecutives', 'fault-cadences'];
    page = await openPage(browser, `${address}desk/`, { bare: true });
    await page.locator('h1', { hasText: 'Stacks' }).waitFor();
    const id = await page.evaluate(
      async (scripts) => {
        const post = (path: string, type: string, body: string): Promise<Response> =>
          fetch(`/api/desk${path}`, { method: 'POST', headers: { 'Content-Type': type }, body });
        const made = await post('/stacks', 'application/json', JSON.stringify({ name: 'Class' }));
        const { stack } = (await made.json()) as { stack: { id: number } };
        for (const [i, text] of scripts.entries())
          await post(`/stacks/${stack.id}/scripts?file=41${i}0.txt`, 'application/octet-stream', text);
        return stack.id;
      },
      names.map((name) => readFileSync(`fixtures/exercises/${name}.txt`, 'utf8')),
    );
    await page.goto(`${address}desk/#/stack/${id}/class`);
    await page.getByRole('link', { name: 'Make short exercises for these' }).click();
    await page.locator('h1', { hasText: 'Practice' }).waitFor();
    await expect.poll(() => page.locator('input[name=aim]:checked').count()).toBeGreaterThan(0);
    await page.getByLabel('Seed').fill('77');
    await page.getByLabel('Exercises').fill('4');
    await page.getByRole('button', { name: 'Make them' }).click();
    await page.locator('[role=status]', { hasText: '4 exercises made.' }).waitFor({ timeout: 60_000 });
    await expect
      .poll(() => page.locator('.proofs li', { hasText: '20 answers without fault or query' }).count())
      .toBe(4);
    await expect.poll(() => page.locator('.worksheet .exercise svg').count()).toBeGreaterThanOrEqual(4);
    const files = unzipSync(new Uint8Array(await saved('Your brief, to mark by')));
    expect(Object.keys(files)).toEqual([1, 2, 3, 4].map((i) => `${i}-Practice-77${i}.brief.txt`));
    for (const content of Object.values(files)) expect(readBrief(strFromU8(content)).problems).toEqual([]);
    const link = await page.locator('.address').inputValue();
    await page.emulateMedia({ media: 'print' });
    await page.setViewportSize({ width: 688, height: 1017 });
    const pdf = await page.pdf({ preferCSSPageSize: true });
    expect([...pdf.toString('latin1').matchAll(/\/Type\s*\/Page\b/g)].length).toBeLessThanOrEqual(3);
    await page.emulateMedia({ media: 'screen' });
    await page.setViewportSize({ width: 360, height: 800 });
    await expect
      .poll(() => page.evaluate(() => document.documentElement.scrollWidth - innerWidth))
      .toBeLessThanOrEqual(0);

    const pupil = await openPage(browser, link);
    await expect.poll(() => pupil.locator('.sheet-head h1').textContent()).toBe('Practice 77.1');
    await pupil.context().close();
    await page.getByRole('button', { name: 'Make a stack for Practice 77.1' }).click();
    await page.locator('.stack-name', { hasText: 'Practice 77.1' }).waitFor();
  });

  it('takes up a tune that was written on the pupils’ page', async () => {
    page = await openPage(browser, address);
    await page.locator('nav a[href="#shelf"]').click();
    await page.locator('nav a[href="#write"]').click();
    await page.locator('nav a[href="#check"]').click();
    await page.getByText('Make a brief of the open exercise').click();
    const [at] = await Promise.all([
      page.context().waitForEvent('page'),
      page.getByRole('button', { name: 'Set it at the desk' }).click(),
    ]);
    await at.locator('.worksheet svg').first().waitFor();
    await expect.poll(() => at.getByLabel('the tune').isChecked()).toBe(true);
    await expect.poll(() => at.getByLabel('the bass', { exact: true }).isChecked()).toBe(false);
    await expect.poll(() => at.locator('.worksheet h2').textContent()).not.toBe('');
  });
});
