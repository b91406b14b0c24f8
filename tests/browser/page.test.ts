/** The main job in a real browser: paste an exercise, see the marks, choose one, see its notes. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { NO_CHROMIUM } from '../support/chromium.ts';
import { pasteText, servedSite } from './open-page.ts';

const PARALLELS = `title: Two bars of parallels
key: C major
metre: 4/4

S: C5 D5 E5 C5 | D5 B4 C5*2! |
A: G4 A4 G4 G4 | F4 G4 G4*2! |
T: E4 F4 C4 E4 | A3 D4 E4*2! |
B: C3 D3 E3 C3 | F3 G3 C3*2! |
`;

describe.skipIf(NO_CHROMIUM)('the page', () => {
  const site = servedSite();
  let page: Page;

  it('opens on a demo exercise with marks', async () => {
    page = await site.visit();
    await expect.poll(() => page.locator('.mark').count()).toBeGreaterThan(0);
    await expect.poll(() => page.locator('.sheet-head h1').textContent()).toBe('A tune for practice');
  });

  it('takes a pasted exercise, numbers what it finds, and shows the notes of the one chosen', async () => {
    page = await site.visit();
    await pasteText(page, PARALLELS);
    await expect.poll(() => page.locator('.sheet-head h1').textContent()).toBe('Two bars of parallels');
    const octaves = page.locator('.mark', { hasText: 'Parallel octaves' }).first();
    await octaves.waitFor();
    const number = await octaves.locator('.tag').textContent();
    const id = await octaves.locator('.mark-head').getAttribute('data-finding');
    const tag = page.locator(`.stave [data-finding="${id}"]`).first();
    await expect.poll(async () => (await tag.textContent())?.trim()).toBe(number?.trim());

    await octaves.locator('.mark-head').click();
    await expect.poll(() => octaves.locator('.message').textContent()).toMatch(/parallel octaves/);
    // Two notes in each of the two voices are lit.
    await expect.poll(() => page.locator('.stave .pw-wash').count()).toBeGreaterThanOrEqual(4);
    await expect.poll(() => page.locator('.message').isVisible()).toBe(true);

    // The fifths of the same step are no slip of their own: they go with the octaves, and are told there.
    await expect.poll(() => page.locator('.side .mark-name', { hasText: 'Parallel fifths' }).count()).toBe(0);
    await octaves.locator('.follows summary').click();
    await expect
      .poll(() => octaves.locator('.follows li').first().textContent())
      .toMatch(/^\s*Parallel fifths/);
  });

  it('tells what it could not read by line and column, and goes there', async () => {
    page = await site.visit();
    await pasteText(page, PARALLELS.replace('G4 A4 G4 G4', 'G4 A4 X4 G4'));
    const problem = page.locator('.text-problems li').first();
    await problem.waitFor();
    await expect.poll(() => problem.textContent()).toMatch(/Line 6, column 10/);
    await problem.locator('button').click();
    const chosen = await page
      .locator('#notation')
      .evaluate((area: HTMLTextAreaElement) => [area.value.slice(area.selectionStart, area.selectionEnd)]);
    expect(chosen).toEqual(['X4']);
  });

  it('lets the text and the stave follow each other', async () => {
    page = await site.visit();
    await pasteText(page, PARALLELS);
    // What was pasted would come over what is typed next.
    await expect.poll(() => page.locator('.sheet-head h1').textContent()).toBe('Two bars of parallels');
    await page.locator('#tab-text').click();
    const text = page.locator('#notation');
    await text.fill(PARALLELS.replace('S: C5 D5', 'S: C5 F5'));
    await page.locator('#stave').focus();
    await page.keyboard.press('Home');
    await page.keyboard.press('ArrowRight');
    await expect.poll(() => page.locator('#caret-words').textContent()).toMatch(/soprano F5/);
    await page.keyboard.press('ArrowDown');
    await expect.poll(() => text.inputValue()).toMatch(/S: C5 E/);
    await page.keyboard.press('Control+z');
    await expect.poll(() => text.inputValue()).toMatch(/S: C5 F5/);
  });
});
