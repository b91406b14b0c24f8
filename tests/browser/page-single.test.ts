/** The page as one file, opened by double-click: no server, no network, everything inside. */
import { copyFileSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { build } from 'vite';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { launchChromium, NO_CHROMIUM } from '../support/chromium.ts';
import { openPage, pasteText, ready } from './open-page.ts';

const CONFIG = fileURLToPath(new URL('../../web/vite.single.config.ts', import.meta.url));

describe.skipIf(NO_CHROMIUM)('the page as one file', () => {
  let browser: Browser;
  let folder: string;
  let address: string;
  let page: Page;

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'partwise-single-'));
    const before = process.env.NODE_ENV;
    process.env.NODE_ENV = 'production';
    await build({
      configFile: CONFIG,
      mode: 'production',
      logLevel: 'error',
      build: { outDir: join(folder, 'built') },
    });
    process.env.NODE_ENV = before;
    // A folder of its own, with a space in its name, as a memory stick has.
    const stick = mkdtempSync(join(folder, 'My stick '));
    copyFileSync(join(folder, 'built', 'partwise.html'), join(stick, 'partwise.html'));
    address = pathToFileURL(join(stick, 'partwise.html')).href;
    browser = await launchChromium();
  }, 180_000);
  afterAll(async () => {
    await browser?.close();
    rmSync(folder, { recursive: true, force: true });
  });
  afterEach(() => page?.context().close());

  it('is one file and asks for no other', async () => {
    expect(readdirSync(join(folder, 'built'))).toEqual(['partwise.html']);
    const html = readFileSync(join(folder, 'built', 'partwise.html'), 'utf8');
    expect(html).not.toMatch(/<script[^>]*\ssrc=|<link[^>]*\shref=/);
    const asked: string[] = [];
    page = await openPage(browser, 'about:blank', { bare: true });
    page.on('request', (request) => {
      if (!/^(data|blob):/.test(request.url())) asked.push(request.url());
    });
    await page.goto(address);
    await ready(page);
    await page.locator('.play').click();
    await expect.poll(() => page.locator('.pw-cursor').count(), { timeout: 8000 }).toBeGreaterThan(0);
    expect(asked).toEqual([address]);
  });

  it('reviews, offers ways out, and keeps the work for the next time', async () => {
    page = await openPage(browser, address);
    await pasteText(
      page,
      'title: On a stick\nkey: C major\nmetre: 4/4\nS: C5 D5 E5 C5 |\nA: G4 A4 G4 G4 |\nT: E4 F4 C4 E4 |\nB: C3 D3 E3 C3 |\n',
    );
    const octaves = page.locator('.mark', { hasText: 'Parallel octaves' }).first();
    await octaves.locator('.mark-head').click();
    await octaves.locator('button', { hasText: 'way out' }).click();
    await expect
      .poll(() => octaves.locator('.ways-out [role], .ways-out p').first().textContent())
      .not.toBe('');
    await page.locator('#stave').focus();
    await page.keyboard.press('Home');
    await page.keyboard.press('g');
    await expect.poll(() => page.locator('.kept').textContent()).toBe('kept in this browser');
    await page.waitForTimeout(300);
    await page.reload();
    await ready(page);
    await expect.poll(() => page.locator('.sheet-head h1').textContent()).toBe('On a stick');
    await page.locator('#tab-text').click();
    await expect.poll(() => page.locator('#notation').inputValue()).toMatch(/B: G2/);
  });

  it('says so where the browser keeps nothing, and works all the same', async () => {
    page = await openPage(browser, address, {
      before: () => Object.defineProperty(window, 'indexedDB', { value: undefined }),
    });
    await expect.poll(() => page.locator('.kept').textContent()).toMatch(/^not kept/);
    await expect.poll(() => page.locator('.mark').count()).toBeGreaterThan(0);
  });
});
