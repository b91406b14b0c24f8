/** The last check against a brief, and what comes out of the printer. */
import { writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { NO_CHROMIUM } from '../support/chromium.ts';
import { dropFiles, pasteText, ready, servedSite } from './open-page.ts';

const BRIEF = `task: add alto, tenor and bass
profile: chorale
least length: 0:05
least together: 6:00
title: Kite
tempo: 60
key: C major
metre: 4/4
S: C5 D5 E5 C5 | D5 B4 C5*2! |
`;
const LOWER = `A: G4 G4 G4 G4 | F4 G4 G4*2! |
T: E4 B3 C4 E4 | A3 D4 E4*2! |
B: C4 G3 C3 C3 | F3 G3 C3*2! |
`;

describe.skipIf(NO_CHROMIUM)('handing in', () => {
  const site = servedSite();
  let page: Page;

  const verdict = (title: string): Promise<string | null> =>
    page.locator('.check-item', { hasText: title }).locator('.verdict-word').textContent();

  it('begins from a brief, and checks against it', async () => {
    page = await site.visit();
    await dropFiles(page, [{ name: 'kite.brief.txt', bytes: new TextEncoder().encode(BRIEF) }]);
    await expect.poll(() => page.locator('.sheet-head h1').textContent()).toBe('Kite');
    await ready(page);
    await page.locator('nav a[href="#check"]').click();
    await page.locator('.check-item').first().waitFor();
    await expect.poll(() => verdict('Every beat written')).toBe('not yet');
    await expect.poll(() => verdict('What was given is unchanged')).toBe('done');

    await page.locator('nav a[href="#write"]').click();
    await page.locator('#tab-text').click();
    const text = await page.locator('#notation').inputValue();
    const whole = `${text
      .split('\n')
      .filter((line) => !/^[ATB]:/.test(line))
      .join('\n')}\n${LOWER}`;
    await page.locator('#notation').fill(whole);
    await page.locator('nav a[href="#check"]').click();
    await expect.poll(() => verdict('Every beat written')).toBe('done');
    await expect.poll(() => verdict('Length with the other composition')).toBe('not yet');
    await page.locator('.duration input').first().fill('6');
    await page.locator('.duration input').first().press('Tab');
    await expect.poll(() => verdict('Length with the other composition')).toBe('done');

    await page.locator('nav a[href="#write"]').click();
    // What the check calls complete, the summary doesn't call too little.
    await page.locator('#tab-summary').click();
    const summary = page.locator('[role="tabpanel"]', { hasText: 'What works' });
    await summary.waitFor();
    await expect.poll(() => summary.textContent()).not.toMatch(/Too little/);
    await page.locator('#tab-text').click();
    await page.locator('#notation').fill(whole.replace(/S: C5 D/, 'S: C5 F'));
    await page.locator('nav a[href="#check"]').click();
    await expect.poll(() => verdict('What was given is unchanged')).toBe('not yet');
    await expect
      .poll(() => page.locator('.who-decides').textContent())
      .toMatch(/teacher and the examiner decide/);
  });

  it('keeps the pupil’s own word beside a fault, in the check and in the saved report', async () => {
    page = await site.visit();
    const fault = page.locator('.mark.fault').first();
    await fault.locator('button[data-finding]').click();
    await fault.locator('.own-note summary').click();
    await fault.locator('.own-note textarea').fill('The tune asks for it.');
    await page.locator('nav a[href="#check"]').click();
    await page.locator('.check-item', { hasText: 'The tune asks for it.' }).waitFor();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.locator('button', { hasText: 'Save it as text' }).click(),
    ]);
    const saved = await (await download.createReadStream()).toArray();
    expect(Buffer.concat(saved as Buffer[]).toString()).toMatch(/Your word: “The tune asks for it\.”/);
  });

  it('prints the score with its list, and the report, on whole pages of A4', async () => {
    page = await site.visit();
    const long = `title: Long\nkey: G major\nmetre: 4/4\n\n${'S: G4 A4 B4 C5 | D5*4! |\nA: D4 D4 D4 E4 | F#4*4 |\nT: B3 A3 G3 G3 | A3*4 |\nB: G3 F#3 G3 C3 | D3*4 |\n\n'.repeat(14)}`;
    await pasteText(page, long);
    await expect.poll(() => page.locator('.sheet-head h1').textContent()).toBe('Long');
    await ready(page);
    // A mark that is chosen does not fade the others on paper.
    await page.locator('.mark-head').first().click();
    await page.locator('.pw-has-chosen').first().waitFor();
    await page.emulateMedia({ media: 'print' });
    const looks = () =>
      page
        .locator('.pw-finding .pw-stroke')
        .evaluateAll((all) => [
          ...new Set(all.map((one) => getComputedStyle(one)).map((one) => one.opacity + one.strokeWidth)),
        ]);
    await expect.poll(looks).toEqual(['0.851.15px']);
    await page.emulateMedia({ media: null });
    // The list for paper is made for printing alone.
    await expect.poll(() => page.locator('.printed').count()).toBe(0);
    await page.evaluate(() =>
      addEventListener('beforeprint', () => {
        document.body.dataset.listed = String(document.querySelectorAll('.printed .verdict').length);
      }),
    );
    const score = await page.pdf({ preferCSSPageSize: true, printBackground: true });
    writeFileSync(join(tmpdir(), 'partwise-score.pdf'), score);
    await expect.poll(() => page.locator('body').getAttribute('data-listed')).toBe('1');
    await expect.poll(() => page.locator('.printed').count()).toBe(0);
    const pages = pagesIn(score);
    expect(pages).toBeGreaterThanOrEqual(2);
    expect(pages).toBeLessThanOrEqual(8);

    await page.locator('nav a[href="#check"]').click();
    await page.locator('.check-item').first().waitFor();
    const report = await page.pdf({ preferCSSPageSize: true });
    writeFileSync(join(tmpdir(), 'partwise-report.pdf'), report);
    expect(pagesIn(report)).toBeGreaterThanOrEqual(1);
    expect(report.toString('latin1')).toMatch(/MediaBox\s*\[0 0 59[45][.\d]* 84[12][.\d]*\]/);
  });
});

function pagesIn(pdf: Buffer): number {
  return [...pdf.toString('latin1').matchAll(/\/Type\s*\/Page\b/g)].length;
}
