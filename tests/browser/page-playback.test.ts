/** Playing, looping and playing two voices alone, in a real browser without a loudspeaker. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { readNotation } from '../../src/notation/read.ts';
import { excerpt } from '../../src/score/excerpt.ts';
import { endOf, VOICES } from '../../src/score/score.ts';
import { soundingsOf, timelineOf } from '../../web/sound/timeline.ts';
import { NO_CHROMIUM } from '../support/chromium.ts';
import { exerciseText } from '../support/exercises.ts';
import { attack, level, sharpest, weighted } from '../support/sound/loudness.ts';
import { RATE, renderScore } from '../support/sound/render.ts';
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
    await expect.poll(() => button().textContent()).toContain('Stop');
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
    await expect.poll(() => page.locator('.notice').isVisible()).toBe(false);
  });

  it('plays just the two voices of a finding', async () => {
    page = await site.visit();
    const two = page.locator('.mark', { hasText: 'Parallel fifths' }).first();
    await two.locator('button[data-finding]').click();
    await two.locator('button', { hasText: 'Hear just these two voices' }).click();
    await expect.poll(() => button().textContent()).toContain('Stop');
    await button().click();
  });

  it('sounds each voice about as loud as the others, at once, and without a click', async () => {
    const { score } = excerpt(readNotation(exerciseText('kite-hill')).score, 0, 1);
    const notes = soundingsOf(score, timelineOf(score, 160), 0, endOf(score));
    const heard = await renderScore(
      site.browser,
      score,
      160,
      VOICES.map((voice) => [voice]),
    );
    const levels = heard.map((samples) => level(weighted(samples, RATE), RATE));
    const mean = levels.reduce((sum, one) => sum + one, 0) / levels.length;
    for (const [i, voice] of VOICES.entries()) {
      expect(Math.abs(levels[i]! - mean), `${voice}, dB(A) from the mean`).toBeLessThan(3);
      expect(attack(heard[i]!, RATE), `${voice}, seconds until a note stands`).toBeLessThan(0.06);
      const ends = notes.filter((note) => note.voice === voice).flatMap(({ from, until }) => [from, until]);
      expect(sharpest(heard[i]!, RATE, ends), `${voice}, bend where notes begin and end`).toBeLessThan(1.5);
    }
  });

  it('fetches nothing from elsewhere, audio library and all', async () => {
    const context = await site.browser.newContext();
    page = await context.newPage();
    const asked: string[] = [];
    page.on('request', (request) => asked.push(request.url()));
    await page.goto(site.address);
    await page.locator('.mark').first().waitFor();
    // A note that is written sounds without the library; that comes when there is something to play.
    const scripts = () => asked.filter((url) => url.endsWith('.js')).length;
    const before = scripts();
    await page.locator('#stave').focus();
    for (const key of ['End', 'PageDown', 'd']) await page.keyboard.press(key);
    await expect.poll(() => page.locator('.exercise-title').textContent()).toBe('A tune for practice');
    await page.waitForTimeout(500);
    expect(scripts()).toBe(before);
    await page.locator('.play').click();
    await expect.poll(() => page.locator('.pw-cursor').count(), { timeout: 8000 }).toBeGreaterThan(0);
    expect(scripts()).toBeGreaterThan(before);
    const outside = asked.filter((url) => !url.startsWith(site.address) && !url.startsWith('blob:'));
    expect(outside).toEqual([]);
  });
});
