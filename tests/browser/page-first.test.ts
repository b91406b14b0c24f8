/** The first ten seconds: what this is, the ways in, and the one question that a file asks. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { NO_CHROMIUM } from '../support/chromium.ts';
import { dropFiles, pasteText, ready, servedSite } from './open-page.ts';

const PICTURES = fileURLToPath(new URL('../../fixtures/pictures', import.meta.url));
const caret = (page: Page): Promise<string | null> => page.locator('#caret-words').textContent();
const focused = (page: Page): Promise<string | undefined> => page.evaluate(() => document.activeElement?.id);

describe.skipIf(NO_CHROMIUM)('the first ten seconds', () => {
  const site = servedSite();
  let page: Page;

  it('says in a sentence what this is, with the ways in and a demonstration that says it is one', async () => {
    page = await site.visit();
    await expect
      .poll(() => page.locator('.what-this-is').textContent())
      .toMatch(/shows on the stave what is\s+wrong/);
    await expect.poll(() => page.locator('.sheet-head').textContent()).toMatch(/A demonstration/);
    await page.locator('button', { hasText: 'Try the demonstration' }).click();
    await expect.poll(() => page.locator('.welcome').count()).toBe(0);
    await expect.poll(() => focused(page)).toBe('stave');
    await page.waitForTimeout(300);
    await page.reload();
    await ready(page);
    await expect.poll(() => page.locator('.welcome').count()).toBe(0);
    await expect.poll(() => page.locator('.sheet-head').textContent()).toMatch(/A demonstration/);
  });

  it('has its tools in one row, in two where that is too narrow, and shows music at 200 % zoom', async () => {
    page = await site.visit();
    /** The tools of each row by their groups, from the top. */
    const rows = () =>
      page.evaluate(() => {
        const groups = [...document.querySelectorAll('.tools .group:not(.thumbs-only)')];
        const tops = groups.map((group) => [...group.children].map((one) => one.getBoundingClientRect()));
        const shown = tops.map((boxes) =>
          boxes.filter(({ width }) => width > 0).map(({ top }) => Math.round(top)),
        );
        const distinct = [...new Set(shown.flat())].sort((a, b) => a - b);
        return shown.map((group) => [...new Set(group)].map((top) => distinct.indexOf(top)).join());
      });
    await expect.poll(() => rows()).toEqual(['0', '0', '0', '0', '0']);
    await page.setViewportSize({ width: 1024, height: 768 });
    await expect.poll(rows).toEqual(['0', '1', '1', '1', '1']);
    // 1280 by 800 at 200 %.
    await page.setViewportSize({ width: 640, height: 400 });
    const tops = () =>
      page
        .locator('.pw-system .vf-stave')
        .evaluateAll((all) => all.slice(0, 2).map((one) => one.getBoundingClientRect().top));
    await expect.poll(async () => Math.max(...(await tops()))).toBeLessThan(400);
    await expect.poll(async () => (await tops()).length).toBe(2);
  });

  it('begins on a given tune: the soprano locked, the caret in the bass, the keyboard on the stave', async () => {
    page = await site.visit({ width: 360, height: 780, touch: true });
    await page.locator('summary', { hasText: 'Write on a given tune' }).tap();
    await page.locator('.tune-list button').first().tap();
    await expect.poll(() => page.locator('.sheet-head h1').textContent()).toBe('Harbour light');
    await expect.poll(() => caret(page)).toMatch(/^Writing the bass\. The upbeat, beat 4/);
    await expect.poll(() => focused(page)).toBe('stave');
    await expect.poll(() => page.locator('button[aria-label="S, soprano, locked"]').count()).toBe(1);
    await expect.poll(() => page.locator('.welcome').count()).toBe(0);
  });

  it('takes what is pasted into the box, as a finger must', async () => {
    page = await site.visit({ width: 360, height: 780, touch: true });
    await page.locator('summary', { hasText: 'Paste an exercise' }).tap();
    await page.locator('#pasted').fill('title: In the box\nS: C5 D5 E5 F5 |\nB: ?*4 |');
    await page.locator('.paste-form button').tap();
    await expect.poll(() => page.locator('.sheet-head h1').textContent()).toBe('In the box');
  });

  it('asks of a file which voices are given, locks them, and goes to where writing begins', async () => {
    page = await site.visit();
    const text = 'title: Asked\nkey: G major\nS: G4 A4 B4 C5 | D5*4 |\nB: G3 F#3 ?*2 | ?*4 |\n';
    await dropFiles(page, [{ name: 'asked.txt', bytes: new TextEncoder().encode(text) }]);
    const question = page.locator('.given-question');
    await question.waitFor();
    await expect.poll(() => question.locator('legend').textContent()).toBe('Which voices were given to you?');
    await expect
      .poll(() =>
        question
          .locator('input')
          .evaluateAll((all) =>
            all.map((i) => [(i as HTMLInputElement).value, (i as HTMLInputElement).checked]),
          ),
      )
      .toEqual([
        ['S', true],
        ['B', false],
      ]);
    await question.locator('button').click();
    await expect.poll(() => page.locator('button[aria-label="S, soprano, locked"]').count()).toBe(1);
    // Alto and tenor are empty from the beginning; of the two the tenor is the lower.
    await expect.poll(() => caret(page)).toMatch(/^Writing the tenor\. Bar 1, beat 1/);
    await page.keyboard.press('d');
    await page.locator('#tab-text').click();
    await expect.poll(() => page.locator('#notation').inputValue()).toMatch(/T: D4 \?/);
  });

  it('takes a real Ctrl V of text that a word processor has improved', async () => {
    page = await site.visit();
    await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
    await page.evaluate(() =>
      navigator.clipboard.writeText(
        'title: From a letter\r\nkey: G\u00a0major\r\nS: G4 F\u266f4 G4*2 \u2223',
      ),
    );
    await page.keyboard.press('Control+v');
    await expect.poll(() => page.locator('.sheet-head h1').textContent()).toBe('From a letter');
    await expect.poll(() => page.locator('.text-problems li').count()).toBe(0);
  });

  it('takes MusicXML as text', async () => {
    page = await site.visit();
    const xml = readFileSync(new URL('../../fixtures/exercises/lantern.musicxml', import.meta.url), 'utf8');
    await pasteText(page, xml);
    await page.locator('.given-question').waitFor();
  });

  it('opens all the same where the browser has no room, and says that nothing is kept', async () => {
    page = await site.visit({
      before: () => {
        // A full disk, as IndexedDB tells of it.
        IDBObjectStore.prototype.put = () => {
          throw new DOMException('No room.', 'QuotaExceededError');
        };
      },
    });
    await expect.poll(() => page.locator('.mark').count()).toBeGreaterThan(0);
    await expect.poll(() => page.locator('.kept').textContent()).toMatch(/^not kept: .* Save a file\.$/);
    await page.locator('#stave').focus();
    for (const key of ['End', 'PageDown', 'd']) await page.keyboard.press(key);
    await page.locator('#tab-text').click();
    await expect.poll(() => page.locator('#notation').inputValue()).toMatch(/A: .*D4/);
    await expect.poll(() => page.locator('.kept').textContent()).toMatch(/^not kept/);
  });

  it('makes the picture of this page for the README', async () => {
    if (process.env.PICTURES !== '1') return;
    page = await site.visit({ width: 1280, height: 800 });
    await page.waitForTimeout(300);
    await page.screenshot({ path: join(PICTURES, 'page-first.png') });
    await page.locator('button', { hasText: 'Try the demonstration' }).click();
    await page.locator('.mark-head', { hasText: 'Parallel fifths' }).click();
    await page.locator('button', { hasText: 'A hint' }).click();
    await page.waitForTimeout(600);
    await page.screenshot({ path: join(PICTURES, 'page.png') });
  });
});
