/** Playing, looping and playing two voices alone, in a real browser without a loudspeaker. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { NO_CHROMIUM } from '../support/chromium.ts';
import { pasteText, servedSite } from './open-page.ts';

describe.skipIf(NO_CHROMIUM)('hearing the exercise', () => {
  const site = servedSite();
  let page: Page;

  const button = () => page.locator('.play');
  /** Where the moving line stands; null where there is none. */
  const cursor = (): Promise<number | null> =>
    page.evaluate(() => document.querySelector('.pw-cursor')?.getBoundingClientRect().x ?? null);

  it('plays from the caret with a moving line, and stops', async () => {
    page = await site.visit();
    await page.locator('#stave').focus();
    await page.keyboard.press('Space');
    await expect.poll(() => button().textContent()).toContain('Stop');
    await expect.poll(() => page.locator('.pw-cursor').count(), { timeout: 8000 }).toBeGreaterThan(0);
    const first = await cursor();
    await expect.poll(cursor, { timeout: 5000 }).not.toBe(first);
    await page.keyboard.press('Space');
    await expect.poll(() => button().textContent()).toContain('Play');
    await expect.poll(cursor).toBeNull();
  });

  it('comes to its end by itself', async () => {
    page = await site.visit();
    await pasteText(page, 'title: Short\nkey: C major\ntempo: 240\nS: C5 D5 |\nB: C3 G2 |\n');
    await expect.poll(() => page.locator('.sheet-head h1').textContent()).toBe('Short');
    await button().click();
    await expect.poll(() => button().textContent()).toContain('Stop');
    await expect.poll(() => button().textContent(), { timeout: 8000 }).toContain('Play');
  });

  it('goes round in a loop over a stretch until it is stopped', async () => {
    page = await site.visit();
    await pasteText(page, 'title: Loop\nkey: C major\ntempo: 240\nS: C5 D5 E5 F5 |\nB: C3 G2 C3 F2 |\n');
    await expect.poll(() => page.locator('.sheet-head h1').textContent()).toBe('Loop');
    await page.locator('#stave').focus();
    await page.keyboard.press('Shift+ArrowRight');
    await page.keyboard.press('Shift+ArrowRight');
    await page.locator('.pace.wide input[type="checkbox"]').first().check();
    await expect.poll(() => button().textContent()).toContain('Play the stretch');
    await button().click();
    // Half a second of music: after two it would long be over.
    await page.waitForTimeout(2000);
    expect(await button().textContent()).toContain('Stop');
    await page.keyboard.press('Control+Enter');
    await expect.poll(() => button().textContent()).toContain('Play');
  });

  it('plays along: tempo by tapping, a metronome, voices silenced, the starting notes', async () => {
    page = await site.visit();
    const tap = page.locator('.pace.wide button', { hasText: 'Tap' });
    for (let i = 0; i < 3; i++) {
      await tap.click();
      await page.waitForTimeout(400);
    }
    const tempo = Number(await page.locator('.pace.wide input[type="number"]').inputValue());
    expect(tempo).not.toBe(72);
    await page.locator('.pace.wide label', { hasText: 'Metronome' }).click();
    await page.locator('.mixer summary').click();
    await page.locator('button[aria-label="bass silent"]').click();
    await expect.poll(() => page.locator('.mixer summary').textContent()).toBe('Without bass');
    // Pressed again, and then Play, while the notes still sound: each calls off what was to come.
    const give = page.locator('.pace.wide button', { hasText: 'Give the notes' });
    await give.click();
    await page.waitForTimeout(300);
    await give.click();
    await button().click();
    await expect.poll(() => button().textContent()).toContain('Stop');
    await expect.poll(() => page.locator('.pw-cursor').count(), { timeout: 8000 }).toBeGreaterThan(0);
    const first = await cursor();
    await expect.poll(cursor, { timeout: 5000 }).not.toBe(first);
    expect(await page.locator('.notice').isVisible()).toBe(false);
  });

  it('plays just the two voices of a finding', async () => {
    page = await site.visit();
    const two = page.locator('.mark', { hasText: 'Parallel fifths' }).first();
    await two.locator('button[data-finding]').click();
    await two.locator('button', { hasText: 'Hear just these two voices' }).click();
    await expect.poll(() => button().textContent()).toContain('Stop');
    await button().click();
  });

  it('fetches nothing from elsewhere, audio library and all', async () => {
    const context = await site.browser.newContext();
    page = await context.newPage();
    const asked: string[] = [];
    page.on('request', (request) => asked.push(request.url()));
    await page.goto(site.address);
    await page.locator('.mark').first().waitFor();
    await page.locator('.play').click();
    await expect.poll(() => page.locator('.pw-cursor').count(), { timeout: 8000 }).toBeGreaterThan(0);
    const outside = asked.filter((url) => !url.startsWith(site.address) && !url.startsWith('blob:'));
    expect(outside).toEqual([]);
  });
});
