/** Writing where the hand is: boxes clicked and tapped, notes dragged, stretches chosen, copied and moved, real pointers. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { NO_CHROMIUM } from '../support/chromium.ts';
import { boxOf, type PageOptions, pasteText, ready, servedSite } from './open-page.ts';

const EMPTY = 'title: Hand\nkey: G major\nmetre: 4/4\nS: G4 A4 B4 C5 |\nA: ?*4 |\nT: ?*4 |\nB: ?*4 |\n';
const WRITTEN = 'title: Hand\nkey: G major\nmetre: 4/4\nS: G4 A4 B4 C5 | ?*4 |\nB: G3 F#3 G3 E3 | ?*4 |\n';

interface Point {
  readonly x: number;
  readonly y: number;
}

describe.skipIf(NO_CHROMIUM)('writing where the hand is', () => {
  const site = servedSite();
  let page: Page;

  async function open(text: string, options: PageOptions = {}): Promise<void> {
    page = await site.visit(options);
    await pasteText(page, text);
    await expect.poll(() => page.locator('.sheet-head h1').textContent()).toBe('Hand');
    const soprano = page.locator('.given-question input[value="S"]');
    if ((await soprano.count()) > 0) await soprano.uncheck();
    await page.locator('.given-question button').click();
    await ready(page);
    await page.locator('.given-question').waitFor({ state: 'detached' });
    await page.waitForTimeout(150);
  }

  /** Where a voice's first open box is, so much of its width along. */
  async function inBox(voice: string, along: number): Promise<Point> {
    const box = await boxOf(page.locator(`.pw-gap[data-voice="${voice}"]`).first());
    return { x: box.x + box.width * along, y: box.y + box.height / 2 };
  }

  /** The middle of a note's head. */
  async function headOf(tone: string): Promise<Point> {
    const box = await boxOf(page.locator(`.vf-sign[data-tone="${tone}"] .vf-notehead`).first());
    return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  }

  const line = async (voice: string): Promise<string> => {
    await page.locator('#tab-text').click();
    const text = await page.locator('#notation').inputValue();
    return text.split('\n').find((each) => each.startsWith(`${voice}:`)) ?? '';
  };

  it('a click writes in the box pointed at, in that voice, whatever was chosen before; hovering shows the note', async () => {
    await open(EMPTY);
    await page.locator('.tools button[aria-label="S, soprano"]').click();
    for (const voice of ['B', 'A', 'T']) {
      const at = await inBox(voice, 0.3);
      await page.mouse.move(at.x, at.y);
      await expect.poll(() => page.locator('.pw-ghost').count()).toBe(1);
      const ghost = await boxOf(page.locator('.pw-ghost'));
      expect(Math.abs(ghost.y + ghost.height / 2 - at.y)).toBeLessThan(6);
      await page.mouse.click(at.x, at.y);
      await expect
        .poll(() => page.locator('#caret-words').textContent())
        .toMatch(new RegExp(`Writing the ${{ B: 'bass', A: 'alto', T: 'tenor' }[voice]}`));
    }
    for (const voice of ['A', 'T', 'B']) await expect.poll(() => line(voice)).toMatch(/: \? [A-G]#?\d \?\*2/);
  });

  it('a tap does the same, at once', async () => {
    await open(EMPTY, { width: 360, height: 780, touch: true });
    const at = await inBox('T', 0.6);
    await page.touchscreen.tap(at.x, at.y);
    await expect.poll(() => line('T')).toMatch(/T: \?\*2 [A-G]#?\d \?/);
  });

  it('a click on a locked note says what it is and how to change it; on one’s own, how to move it', async () => {
    await open(WRITTEN);
    await page.locator('.tools button[aria-label="S, soprano"]').click();
    await page.locator('button', { hasText: 'Lock soprano' }).click();
    const head = await headOf('S@10080');
    await page.mouse.click(head.x, head.y);
    await expect
      .poll(() => page.locator('.notice [role="alert"]').textContent())
      .toMatch(/Soprano A4: given, so it is locked\. Press “Lock soprano”/);
    const own = await headOf('B@10080');
    await page.mouse.click(own.x, own.y);
    await expect.poll(() => page.locator('#note-words').textContent()).toMatch(/^Drag F♯3 or press ↑ ↓/);
    await expect.poll(() => page.locator('.notice').isVisible()).toBe(false);
  });

  it('a note is dragged up and down by the key signature’s spelling, one step of undo', async () => {
    await open(WRITTEN);
    const head = await headOf('B@20160');
    const staff = await boxOf(page.locator('.vf-stave').first());
    const step = staff.height / 8;
    await page.mouse.move(head.x, head.y);
    await page.mouse.down();
    for (let i = 1; i <= 8; i++) await page.mouse.move(head.x, head.y + (i * step) / 8);
    await page.mouse.up();
    await expect.poll(() => line('B')).toMatch(/B: G3 F# F# E/);
    await page.keyboard.press('Escape');
    await page.keyboard.press('Control+z');
    await expect.poll(() => line('B')).toMatch(/B: G3 F#3 G3 E3/);
  });

  it('a stretch is chosen with the mouse, copied, pasted elsewhere, and moved by an octave', async () => {
    await open(WRITTEN);
    await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
    // From open paper over the first note to the second beat, within the soprano's half of the staff.
    const [from, to] = [await headOf('S@0'), await headOf('S@10080')];
    await page.mouse.move(from.x, from.y - 30);
    await page.mouse.down();
    await page.mouse.move(from.x + 20, from.y - 30);
    await page.mouse.move(to.x, from.y - 30);
    await page.mouse.up();
    await expect.poll(() => page.locator('.pw-ring').count()).toBe(2);
    await page.keyboard.press('Control+c');
    await expect.poll(() => page.evaluate(() => navigator.clipboard.readText())).toBe('G4 A4');
    await page.keyboard.press('Shift+ArrowDown');
    await expect.poll(() => line('S')).toMatch(/S: G3 A B4 C5/);
    await page.keyboard.press('Escape');
    await page.keyboard.press('Home');
    await page.keyboard.press('Control+ArrowRight');
    await page.keyboard.press('Control+v');
    await expect.poll(() => line('S')).toMatch(/S: G3 A B4 C5 \| G4 A \?\*2/);
    // Notes pasted never replace the exercise, wherever the focus is.
    await expect.poll(() => page.locator('.sheet-head h1').textContent()).toBe('Hand');
    await page.locator('.tools button[aria-label="B, bass"]').click();
    await page.evaluate(() => (document.activeElement as HTMLElement).blur());
    await page.keyboard.press('Control+v');
    await expect.poll(() => line('B')).toMatch(/G4 A/);
    await expect.poll(() => page.locator('.sheet-head h1').textContent()).toBe('Hand');
  });

  it('a stretch is chosen with a finger that rests first, and copied and pasted from the menu', async () => {
    await open(WRITTEN, { width: 360, height: 780, touch: true });
    const session = await page.context().newCDPSession(page);
    const head = await headOf('B@0');
    const to = await headOf('B@10080');
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', x?: number) =>
      session.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: x === undefined ? [] : [{ x, y: head.y + 25 }],
      });
    const scrolled = await page.evaluate(() => scrollY);
    await touch('touchStart', head.x);
    await page.waitForTimeout(600);
    for (let i = 1; i <= 5; i++) await touch('touchMove', head.x + ((to.x - head.x) * i) / 5);
    await touch('touchEnd');
    await expect.poll(() => page.locator('.pw-ring').count()).toBe(2);
    await expect.poll(() => page.evaluate(() => scrollY)).toBe(scrolled);
    await page.locator('summary', { hasText: 'Edit' }).tap();
    await page.locator('.menu[open] button', { hasText: 'Copy' }).tap();
    await page.locator('.tools button[aria-label="T, tenor"]').tap();
    await page.locator('summary', { hasText: 'Edit' }).tap();
    await page.locator('.menu[open] button', { hasText: 'Paste notes' }).tap();
    await expect.poll(() => line('T')).toMatch(/T: G3 F#/);
  });

  it('key, metre and tempo are changed from a bar on', async () => {
    await open(WRITTEN);
    await page.locator('#stave').focus();
    await page.keyboard.press('Home');
    await page.locator('summary', { hasText: 'Exercise' }).click();
    await page.locator('.exercise-menu input[name="metre"]').fill('3/4');
    await page.locator('.exercise-menu input[name="key"]').fill('D major');
    await page.locator('.exercise-menu button', { hasText: 'from bar 1 on' }).click();
    await expect.poll(() => line('S')).toMatch(/S: G4 A B \| C5 \?\*2/);
    await expect.poll(() => page.locator('.sheet-head').textContent()).toMatch(/D major · 3\/4/);
    await page.locator('.tools button[aria-label="S, soprano"]').click();
    await page.keyboard.press('End');
    await page.locator('summary', { hasText: 'Exercise' }).click();
    const menu = page.locator('.exercise-menu fieldset input[name="tempo"]');
    await menu.fill('54');
    await page.locator('.exercise-menu button', { hasText: 'from bar 3 on' }).click();
    await expect.poll(() => page.locator('.pw-tempo').allTextContents()).toEqual(['= 54']);
    await page.locator('#tab-text').click();
    await expect.poll(() => page.locator('#notation').inputValue()).toContain('\n\ntempo: 54\nS:');
    await page.locator('button[aria-label="Undo"]').click();
    await expect.poll(() => page.locator('.pw-tempo').count()).toBe(0);
  });

  it('a phrase is said to end with a note, and not to', async () => {
    await open(WRITTEN);
    await page.locator('.tools button[aria-label="S, soprano"]').click();
    await page.keyboard.press('Home');
    await page.locator('summary', { hasText: 'Edit' }).click();
    await page.locator('.menu[open] button', { hasText: 'A phrase ends here' }).click();
    await expect.poll(() => line('S')).toMatch(/S: G4' A/);
    await page.locator('#stave').focus();
    await page.keyboard.press("'");
    await expect.poll(() => line('S')).toMatch(/S: G4~ A/);
  });

  it('undo and redo survive a reload', async () => {
    await open(WRITTEN);
    await page.locator('.tools button[aria-label="S, soprano"]').click();
    await page.keyboard.press('Home');
    for (const key of ['d', 'e', 'f']) await page.keyboard.press(key);
    await page.keyboard.press('Control+z');
    await expect.poll(() => page.locator('.kept').textContent()).toBe('kept in this browser');
    await page.waitForTimeout(400);
    await page.reload();
    await ready(page);
    await page.locator('#stave').focus();
    await page.keyboard.press('Control+y');
    await expect.poll(() => line('S')).toMatch(/S: D4 E F# C5/);
    for (let i = 0; i < 3; i++) await page.locator('button[aria-label="Undo"]').click();
    await expect.poll(() => line('S')).toMatch(/S: G4 A4 B4 C5/);
  });

  it('the keyboard stays on the stave when a finding is chosen, and Escape brings it back', async () => {
    page = await site.visit();
    const focused = () => page.evaluate(() => document.activeElement?.id);
    await page.locator('#stave').focus();
    await page.locator('.mark-head').first().click();
    await expect.poll(() => focused()).toBe('stave');
    await page.locator('#tab-summary').focus();
    await page.keyboard.press('Escape');
    await expect.poll(focused).toBe('stave');
  });

  it('once the chosen finding is cured, the others are no longer faded', async () => {
    await open(
      `title: Hand\nmetre: 4/4\n${'S: C5 D5 E5*2! |\nA: E4 F4 G4*2 |\nT: G3 A3 C4*2 |\nB: C3 D3 C3*2 |\n'}`,
    );
    const faded = page.locator('.pw-has-chosen');
    await page
      .locator('.mark-head', { hasText: /fifths/i })
      .first()
      .click();
    await faded.first().waitFor();
    await page.locator('#tab-text').click();
    const notation = page.locator('#notation');
    await notation.fill((await notation.inputValue()).replace('G3 A3 C4', 'G3 D4 C4'));
    await expect.poll(() => faded.count()).toBe(0);
  });

  it('digits name note values where Help is told so', async () => {
    await open('title: Hand\nmetre: 3/2\nS: ?*3 |\nA: G4*3 |\n');
    await page.locator('nav a[href="#help"]').click();
    await page.locator('.digits label', { hasText: 'note values' }).click();
    await expect.poll(() => page.locator('.key-tables').textContent()).toMatch(/semibreve, minim, crotchet/);
    await page.locator('nav a[href="#write"]').click();
    await page.locator('.tools button[aria-label="S, soprano"]').click();
    await page.keyboard.press('Home');
    for (const key of ['4', 'c', '2', 'd']) await page.keyboard.press(key);
    await expect.poll(() => line('S')).toMatch(/S: C5\/2 D5?/);
  });
});
