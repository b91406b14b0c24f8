/** The style panel in a real browser: how like the model, where there is room, how the model closed. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { MEASURES } from '../../src/style/list.ts';
import { BLOCK_CHORDS } from '../support/block-chords.ts';
import { NO_CHROMIUM } from '../support/chromium.ts';
import { pasteText, ready, servedSite } from './open-page.ts';

describe.skipIf(NO_CHROMIUM)('style', () => {
  const site = servedSite();
  let page: Page;

  const openStyle = async (text: string) => {
    page = await site.visit();
    await pasteText(page, text);
    await ready(page);
    await page.locator('#tab-style').click();
  };

  it('tells a pupil with block chords where they lie, and shows the bars of a measure', async () => {
    await openStyle(BLOCK_CHORDS);
    await expect.poll(() => page.locator('.measure').count()).toBe(MEASURES.length);
    const movement = page.locator('.measure', { hasText: 'Movement below the tune' });
    await expect.poll(() => movement.textContent()).toMatch(/low.*0 % of beats; in nine chorales of ten/s);
    await expect
      .poll(() =>
        movement.locator('.measure-strip').evaluate((strip) => strip.getBoundingClientRect().height),
      )
      .toBeGreaterThan(8);
    const pace = page.locator('.measure-head', { hasText: 'Pace of the harmony' });
    await pace.focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => pace.getAttribute('aria-expanded')).toBe('true');
    await expect.poll(() => page.locator('.measure-more').textContent()).toMatch(/Counted in bar\s*1/);
    await page.locator('.measure-more .place-link', { hasText: '4' }).first().click();
    await expect.poll(() => page.locator('#caret-words').textContent()).toContain('Bar 4');
  }, 60_000);

  it('shows places with room one at a time, and names no note', async () => {
    await openStyle(BLOCK_CHORDS);
    await page.locator('button', { hasText: 'Look for room' }).click();
    const told = page.locator('.side [role="status"]');
    await expect.poll(() => told.textContent(), { timeout: 30_000 }).toMatch(/Bar \d/);
    await expect.poll(() => told.textContent()).not.toMatch(/\b[A-G][♯♭#b]?\d/);
    const first = await told.textContent();
    await page.locator('button', { hasText: 'Another place' }).click();
    await expect.poll(() => told.textContent()).not.toBe(first);
  }, 60_000);

  it('shows how the model closed over a tune that is not harmonised yet', async () => {
    await openStyle(BLOCK_CHORDS.replace(/^[ATB]:.*\n/gm, ''));
    await expect.poll(() => page.locator('.side').textContent()).toContain('Too short to tell');
    const phrases = page.locator('details.precedents');
    await expect.poll(() => phrases.count()).toBe(4);
    await phrases.nth(1).locator('summary').click();
    await expect.poll(() => phrases.nth(1).textContent()).toMatch(/× perfect cadence in the home key.*V7–I/s);
    await expect.poll(() => phrases.nth(1).textContent()).toContain('Yours is not written yet');
  }, 60_000);
});
