/** On a phone: findings in a sheet beside the music, and the tools that writing needs under the thumbs. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { NO_CHROMIUM } from '../support/chromium.ts';
import { boxOf, servedSite } from './open-page.ts';

const HEIGHT = 780;

describe.skipIf(NO_CHROMIUM)('the page on a phone', () => {
  const site = servedSite();
  let page: Page;

  async function open(): Promise<void> {
    page = await site.visit({ width: 360, height: HEIGHT, touch: true });
    await page.locator('button', { hasText: 'Try the demonstration' }).tap();
    await page.locator('.welcome').waitFor({ state: 'detached' });
  }

  it('has the tools that writing needs at its lower edge: sixteen, in two rows, 44 px high', async () => {
    await open();
    const tools = page.locator('.strip [data-thumb]');
    const boxes = await tools.evaluateAll((all) =>
      all.map((one) => {
        const { left, right, top, bottom, height } = one.getBoundingClientRect();
        return { left, right, top: Math.round(top), bottom, height };
      }),
    );
    expect(boxes.length).toBe(16);
    for (const { left, right, bottom, height } of boxes) {
      expect(height).toBeGreaterThanOrEqual(44);
      expect(left).toBeGreaterThanOrEqual(0);
      expect(right).toBeLessThanOrEqual(360);
      expect(bottom).toBeLessThanOrEqual(HEIGHT);
    }
    expect(new Set(boxes.map(({ top }) => top)).size).toBe(2);
    // The words on the tabs above them keep off the edges.
    const words = await page.locator('.sides [role="tab"]').evaluateAll((tabs) =>
      tabs.map((tab) => {
        const range = document.createRange();
        range.selectNodeContents(tab);
        return range.getBoundingClientRect();
      }),
    );
    expect(words[0]!.left).toBeGreaterThanOrEqual(8);
    expect(words.at(-1)!.right).toBeLessThanOrEqual(352);
    // And nothing covers the end of the longest menu.
    await page.locator('summary', { hasText: 'Exercise' }).tap();
    await page.locator('.exercise-menu button', { hasText: 'away' }).tap({ trial: true });
  });

  it('opens the findings over the lower half, on the finding’s bar, with its notes in view above', async () => {
    await open();
    await page.locator('#tab-marks').tap();
    await page.locator('.mark-head', { hasText: 'Parallel fifths' }).tap();
    await expect.poll(() => page.locator('.pw-wash').count()).toBeGreaterThanOrEqual(4);
    await page.waitForTimeout(800);
    const { sheet, notes, message } = await page.evaluate(() => ({
      sheet: document.querySelector('.margin')!.getBoundingClientRect().top,
      notes: [...document.querySelectorAll('.pw-wash')]
        .map((wash) => wash.getBoundingClientRect())
        .map(({ top, bottom }) => [top, bottom]),
      message: document.querySelector('.mark.open .message')!.getBoundingClientRect().top,
    }));
    expect(sheet).toBeGreaterThan(HEIGHT * 0.35);
    for (const [top, bottom] of notes) {
      expect(top).toBeGreaterThanOrEqual(0);
      expect(bottom).toBeLessThanOrEqual(sheet);
    }
    expect(message).toBeGreaterThan(sheet);
    // Another mark of the same system leaves the stave where it is, once the tags of the remarks have taken their room.
    await page.locator('.remark-list > button').tap();
    await page.locator('.mark.remark .mark-head', { hasText: 'places' }).first().tap();
    const beside = () =>
      page.evaluate(() => {
        const system = document.querySelector('.pw-finding.pw-fault')!.closest('svg')!;
        const tags = [...system.querySelectorAll<SVGGElement>('.pw-finding.pw-remark')];
        const listed = [...document.querySelectorAll<HTMLElement>('.mark.remark button[data-finding]')];
        return listed.findIndex((one) => tags.some((tag) => tag.dataset.finding === one.dataset.finding));
      });
    await expect.poll(beside).toBeGreaterThanOrEqual(0);
    await page
      .locator('.mark.remark button[data-finding]')
      .nth(await beside())
      .tap();
    await expect.poll(() => page.locator('.mark.remark.open').count()).toBe(1);
    await page.waitForTimeout(600);
    const scroll = await page.evaluate(() => scrollY);
    await page.locator('.mark-head', { hasText: 'Parallel fifths' }).tap();
    await expect.poll(() => page.locator('.mark.fault.open').count()).toBe(1);
    await page.waitForTimeout(600);
    await expect.poll(async () => Math.abs((await page.evaluate(() => scrollY)) - scroll)).toBeLessThan(2);
    await page.locator('#tab-marks').tap();
    await expect.poll(() => page.locator('.side').isVisible()).toBe(false);
  });

  it('shows at least two bars in a system', async () => {
    await open();
    const numbers = await page.locator('.pw-system').nth(1).locator('.vf-stave').count();
    expect(numbers).toBeGreaterThanOrEqual(4); // Two staves a bar.
  });

  it('writes, alters, moves and takes back under the thumbs alone', async () => {
    await open();
    await page.evaluate(() => scrollTo({ top: 700 }));
    await page.locator('.pw-system').nth(2).locator('svg').waitFor();
    const empty = page.locator('.pw-gap[data-voice="T"]').first();
    await empty.evaluate((box) => box.scrollIntoView({ block: 'center' }));
    const gap = await boxOf(empty);
    await page.touchscreen.tap(gap.x + 6, gap.y + gap.height / 2);
    const words = () => page.locator('body > [role="status"]').textContent();
    await expect.poll(words).toMatch(/tenor/);
    const before = await page.locator('button[aria-label="Undo"]').isDisabled();
    expect(before).toBe(false);
    for (const name of ['A step up', 'Sharp', '8↓, an octave down', 'Undo', 'Undo', 'Undo'])
      await page.locator(`.strip button[aria-label="${name}"]`).tap();
    await page.locator('.strip select').selectOption({ label: '2' });
    await expect.poll(words).toMatch(/two beats/);
    await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe('stave');
  });
});
