/** The rule browser, the chord inspector, ways of writing chords, layers, profiles and ways out, in a real browser. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { RULES } from '../../src/rules/list.ts';
import { NO_CHROMIUM } from '../support/chromium.ts';
import { pasteText, ready, servedSite } from './open-page.ts';

const SUSPENSION = `title: Suspended
key: C major
metre: 4/4
S: C5 D5 E5 C5 | D5 D5 C5*2! |
A: G4 G4 G4 G4 | C5 (C5 B4) G4*2! |
T: E4 B3 C4 E4 | A4 G4 E4*2! |
B: C4 G3 C3 C3 | F3 G3 C3*2! |
`;

const EITHER_WAY = `title: Either way
key: C major
metre: 4/4
S: E5 D5 C5 B4 | A4 B4 C5! C5 | A4 G#4 A4 B4 | C5 B4 A4! C5 | D5 E5 D5 C5 | B4 B4 C5*2! |
A: G4 G4 G4 G4 | F4 G4 G4! E4 | E4 E4 E4 E4 | E4 E4 E4! E4 | F4 G4 F4 E4 | D4 G4 E4*2! |
T: C4 D4 E4 D4 | D4 D4 E4! A3 | C4 B3 C4 G#3 | A3 G#3 C4! C4 | A3 C4 A3 A3 | G3 D4 G3*2! |
B: C3 B2 C3 G3 | D3 G3 C3! A2 | A2 E3 A3 E3 | A2 E3 A2! A3 | D3 C3 D3 A2 | G2 G2 C3*2! |
`;

describe.skipIf(NO_CHROMIUM)('understanding the exercise', () => {
  const site = servedSite();
  let page: Page;

  it('shows a page for every rule, with engraved examples and the fault marked in the wrong ones', async () => {
    page = await site.visit();
    await page.locator('nav a[href="#rules"]').click();
    await expect
      .poll(() => page.locator('.rule-list a[href^="#rules/"]').count())
      .toBeGreaterThanOrEqual(RULES.length);
    const bare: string[] = [];
    for (const rule of RULES) {
      await page.evaluate((id) => {
        location.hash = `#rules/${id}`;
      }, rule.id);
      await page.locator('.rule h1', { hasText: rule.name }).first().waitFor();
      await page.waitForFunction(
        (count) => document.querySelectorAll('.example .engraved svg').length >= count,
        rule.examples.wrong.length + rule.examples.right.length,
      );
      const unmarked = await page
        .locator('.example.wrong')
        .evaluateAll(
          (figures) => figures.filter((figure) => figure.querySelector('.pw-finding') === null).length,
        );
      if (unmarked > 0) bare.push(rule.id);
    }
    expect(bare).toEqual([]);
  }, 120_000);

  it('says of a chord what it does in the key and how each voice belongs', async () => {
    page = await site.visit();
    await pasteText(page, SUSPENSION);
    await expect.poll(() => page.locator('.sheet-head h1').textContent()).toBe('Suspended');
    await ready(page);
    await page.locator('#tab-chord').click();
    await expect.poll(() => page.locator('.chord-function').textContent()).toMatch(/tonic in root position/i);
    await page.locator('#stave').focus();
    for (let i = 0; i < 5; i++) await page.keyboard.press('ArrowRight');
    await expect
      .poll(() => page.locator('.belonging').textContent())
      .toMatch(/alto\s*C5\s*dissonant: suspension 4–3, resolving to B4/);
    await page.locator('button', { hasText: 'Next chord' }).click();
    await expect
      .poll(() => page.locator('.side').textContent())
      .toMatch(/closes a perfect cadence in\s+C major/);
    await pasteText(page, EITHER_WAY);
    await expect.poll(() => page.locator('.sheet-head h1').textContent()).toBe('Either way');
    await ready(page);
    // A second reading stands under the keys and beside its chord, and is said at the caret.
    await expect
      .poll(() => page.locator('.stave svg').allTextContents())
      .toContainEqual(expect.stringMatching(/also A\s*minor: i–iv/));
    await page.locator('#stave').focus();
    await page.waitForFunction(() => document.activeElement?.id === 'stave');
    for (let i = 0; i < 15; i++) await page.keyboard.press('ArrowRight');
    await expect.poll(() => page.locator('.side').textContent()).toMatch(/Also A minor: i–iv until bar 5/);
    await expect.poll(() => page.locator('body').textContent()).toContain('Or i in A minor.');
  });

  it('writes chords in the way one chooses, and shows the layers one chooses', async () => {
    page = await site.visit();
    const words = () => page.locator('.stave .pw-words').allTextContents();
    await expect.poll(async () => (await words()).join(' ')).toMatch(/V6/);
    await page.locator('details.shown summary').click();
    await page.locator('label', { hasText: 'V7b, iib: inversion letters' }).locator('input').check();
    await expect.poll(async () => (await words()).join(' ')).toMatch(/Vb/);
    await page.locator('label', { hasText: 'Chord labels' }).locator('input').uncheck();
    await expect.poll(async () => (await words()).join(' ')).not.toMatch(/V/);
    const tags = () => page.locator('.stave .pw-finding').count();
    const before = await tags();
    await page.locator('label', { hasText: 'Consecutives' }).locator('input').uncheck();
    await expect.poll(tags).toBeLessThan(before);
    await expect.poll(() => page.locator('.side').textContent()).toMatch(/more not shown/);
    await page.locator('label', { hasText: 'Consecutives' }).locator('input').check();
    await expect.poll(() => page.locator('.mark.remark').count()).toBe(0);
    await page.locator('label', { hasText: 'Remarks as well' }).locator('input').check();
    await expect.poll(tags).toBeGreaterThan(before);
    await expect.poll(() => page.locator('.mark.remark').count()).toBeGreaterThan(0);
    await page.locator('label', { hasText: 'Remarks as well' }).locator('input').uncheck();
    await expect.poll(tags).toBe(before);
    await expect.poll(() => page.locator('.mark.fault').count()).toBeGreaterThan(0);
  });

  it('follows the house profile', async () => {
    page = await site.visit();
    await page.locator('details.shown summary').click();
    await page.locator('label', { hasText: 'first-steps' }).locator('input').check();
    await expect
      .poll(() => page.locator('.side').textContent())
      .toMatch(/The profile “first-steps” leaves out/);
  });

  it('tells how many ways out there are, and which only to a teacher', async () => {
    page = await site.visit();
    const fault = page.locator('.mark.fault').first();
    await fault.locator('button[data-finding]').click();
    await fault.locator('button', { hasText: 'Is there a way out?' }).click();
    await expect
      .poll(() => fault.locator('.ways-out').textContent(), { timeout: 15_000 })
      .toMatch(/There (is|are) \d+ change|No single note/);
    await expect.poll(() => fault.locator('.ways-out li').count()).toBe(0);
    await page.locator('details.shown summary').click();
    await page.locator('label', { hasText: 'I am the teacher' }).locator('input').check();
    await expect.poll(() => fault.locator('.ways-out li').count()).toBeGreaterThan(0);
  });

  it('opens three hints, one at a time', async () => {
    page = await site.visit();
    const fault = page.locator('.mark.fault').first();
    await fault.locator('button[data-finding]').click();
    await expect.poll(() => fault.locator('.hints li').count()).toBe(0);
    for (const shown of [1, 2, 3]) {
      await fault.locator('.mark-commands button', { hasText: /hint/i }).click();
      await expect.poll(() => fault.locator('.hints li').count()).toBe(shown);
    }
    await expect.poll(() => fault.locator('.mark-commands button', { hasText: /hint/i }).count()).toBe(0);
    await expect
      .poll(() => fault.locator('.hints li').last().textContent(), { timeout: 15_000 })
      .toMatch(/^(There (is|are) \d+ change|No single note)/);
    await expect.poll(() => fault.locator('.ways-out').count()).toBe(0);
  });
});
