/** Sheets as a teacher hands them out, in real Chromium: one side of A4, progress, a selection, a file for each. */
import type { ChildProcess } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { launchChromium, NO_CHROMIUM } from '../support/chromium.ts';
import { openWindow, stackOf, startService } from '../support/desk-window.ts';
import { builtPage } from '../support/page.ts';
import { BRIEF_TEXT, plantedStack } from '../support/planted-stack.ts';
import { boxOf } from './open-page.ts';

describe.skipIf(NO_CHROMIUM)('sheets', () => {
  let folder: string;
  let browser: Browser;
  let service: ChildProcess;
  let address: string;
  let page: Page;

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'partwise-sheets-'));
    const built = await builtPage();
    ({ child: service, address } = await startService(built, join(folder, 'desk.sqlite')));
    const files = plantedStack({ candidates: 2, drafts: 3, seed: 7, broken: false });
    await stackOf(address, { name: 'Class', brief: BRIEF_TEXT }, files);
    browser = await launchChromium();
    page = await openWindow(browser, address);
  }, 180_000);
  afterAll(async () => {
    await browser?.close();
    service?.kill('SIGKILL');
    if (folder) rmSync(folder, { recursive: true, force: true });
  });

  const sheets = () => page.locator('article.sheet');
  async function shown(count: number): Promise<void> {
    await page.locator(`.sheets[data-count="${count}"]`).waitFor({ timeout: 60_000 });
    await sheets().last().locator('.score svg').first().waitFor();
  }
  async function pages(): Promise<number> {
    const pdf = await page.pdf({ preferCSSPageSize: true });
    return pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;
  }

  it('say first what the teacher says of the whole, with marks, initials and progress, on one side', async () => {
    await page.goto(`${address}desk/#/stack/1`);
    await page.getByLabel('Your initials').fill('AB');
    await page.getByLabel('Your initials').press('Enter');
    await page.locator('table.queue tr', { hasText: '3' }).locator('a').last().click();
    await page.locator('.score svg').first().waitFor();
    await page.keyboard.press('c');
    await page.keyboard.type('A real step forward: the bass is a tune now.');
    await page.keyboard.press('Enter');
    await page.locator('.own-remarks li', { hasText: 'a tune now' }).waitFor();
    await page.keyboard.press('m');
    await page.keyboard.type('7');
    await page.keyboard.press('Enter');
    await page.locator('.criterion', { hasText: '7 of' }).first().waitFor();
    await page.getByRole('link', { name: 'Sheet', exact: true }).click();
    await shown(1);
    await page.getByLabel('initials of whoever marked').check();
    await shown(1);
    const sheet = sheets().first();
    await expect.poll(() => sheet.textContent()).toContain('Marked by AB.');
    const text = (await sheet.textContent())!;
    expect(text.indexOf('a tune now')).toBeLessThan(text.indexOf('What came off well'));
    await expect.poll(() => sheet.locator('.marks-given').textContent()).toMatch(/7 of \d+/);
    expect(text).toMatch(/Since your last draft/);
    expect(text).not.toMatch(/bar 0|undefined/);
    await expect
      .poll(() => sheet.locator('.columns section').first().locator('li').count())
      .toBeLessThanOrEqual(4);
    await expect.poll(() => sheet.locator('.columns ol li').count()).toBeLessThanOrEqual(3);
    await expect
      .poll(() => sheet.locator('.progress svg').getAttribute('aria-label'))
      .toMatch(/draft 1 with .* draft 2 with .* draft 3 with/);
    const columns = sheet.locator('.columns section');
    const [left, right] = [await boxOf(columns.first()), await boxOf(columns.last())];
    expect(left.x + left.width).toBeLessThanOrEqual(right.x - 10);
    expect(await pages()).toBe(1);
    await page.getByLabel('every mark, on a second page').check();
    await page.locator('.full-list').waitFor();
    await sheets().last().locator('.score svg').first().waitFor();
    expect(await pages()).toBe(2);
    await page.getByLabel('every mark, on a second page').uncheck();
    await page.getByLabel('marks by criterion').uncheck();
    await page.locator('.marks-given').waitFor({ state: 'detached' });
  }, 120_000);

  it('are chosen one by one, and say how many nobody has looked at', async () => {
    await page.locator('a', { hasText: 'All sheets of' }).click();
    await shown(2);
    await expect
      .poll(() => page.locator('.unseen-count').textContent())
      .toContain('Nobody has looked at 1 of these 2');
    await expect
      .poll(() => page.locator('.sheet-files').textContent())
      .toMatch(/All as PDF, 1 looked at by nobody/);
    await page.locator('.tick input').first().check();
    await page.getByRole('button', { name: 'Only the 1 chosen sheet' }).click();
    await shown(1);
  }, 60_000);

  it('are saved as pages of their own, whole without a network', async () => {
    await page.locator('a', { hasText: 'All sheets of' }).click();
    await shown(2);
    const saving = page.waitForEvent('download');
    await page.getByRole('button', { name: 'A web page for each candidate' }).click();
    const path = join(folder, 'sheets.zip');
    await (await saving).saveAs(path);
    const files = Object.entries(unzipSync(new Uint8Array(readFileSync(path))));
    expect(files).toHaveLength(2);
    const context = await browser.newContext({ offline: true });
    const reader = await context.newPage();
    const asked: string[] = [];
    reader.on('request', (request) => void asked.push(request.url()));
    await reader.setContent(strFromU8(files[0]![1]));
    await reader.evaluate('document.fonts.ready');
    await expect.poll(() => reader.locator('article.sheet h1').count()).toBe(1);
    await expect.poll(() => reader.locator('.score svg').count()).toBeGreaterThan(0);
    await expect.poll(() => reader.evaluate('document.fonts.check("20px Bravura")')).toBe(true);
    expect(asked.filter((url) => !url.startsWith('data:'))).toEqual([]);
    await context.close();
  }, 60_000);
});
