/** Marking a script from the keyboard, two people marking one stack, and marking on a phone, in real Chromium. */
import type { ChildProcess } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { launchChromium, NO_CHROMIUM } from '../support/chromium.ts';
import { openWindow, stackOf, startService } from '../support/desk-window.ts';
import { exerciseText } from '../support/exercises.ts';
import { builtPage } from '../support/page.ts';
import { boxOf } from './open-page.ts';

/** A weak script: one slip made in every bar, and much that follows from it. */
const WEAK = `title: Abreast all the way
key: C major
metre: 4/4

S: G4 A4 G4 A4 | G4 A4 B4 C5 | D5 C5 B4 A4 | G4 A4 G4*2 ||
A: E4 F4 E4 F4 | E4 F4 G4 A4 | B4 A4 G4 F4 | E4 F4 E4*2 ||
T: G3 A3 G3 A3 | G3 A3 B3 C4 | D4 C4 B3 A3 | G3 A3 G3*2 ||
B: C3 D3 C3 D3 | C3 D3 E3 F3 | G3 F3 E3 D3 | C3 D3 C3*2 ||
`;
const utf8 = (text: string) => new TextEncoder().encode(text);

describe.skipIf(NO_CHROMIUM)('marking', () => {
  let folder: string;
  let browser: Browser;
  let service: ChildProcess;
  let address: string;
  let page: Page;

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'partwise-flow-'));
    const built = await builtPage();
    ({ child: service, address } = await startService(built, join(folder, 'desk.sqlite')));
    const files = [
      { name: '4101.txt', bytes: utf8(WEAK) },
      { name: '4102.txt', bytes: utf8(exerciseText('fault-consecutives')) },
    ];
    await stackOf(address, { name: 'One marker' }, files);
    await stackOf(address, { name: 'Two markers', second: 'blind' }, files);
    browser = await launchChromium();
    page = await openWindow(browser, address);
  }, 180_000);
  afterAll(async () => {
    await browser?.close();
    service?.kill('SIGKILL');
    if (folder) rmSync(folder, { recursive: true, force: true });
  });

  async function open(script: number, window = page): Promise<void> {
    const to = `${address}desk/#/script/${script}`;
    if (window.url() === to) await window.reload();
    else await window.goto(to);
    await window.locator('.score svg').first().waitFor();
  }
  const press = (...keys: string[]) =>
    keys.reduce((before, key) => before.then(() => page.keyboard.press(key)), Promise.resolve());

  it('shows slips in groups, and agrees with a group at once, taken back at once', async () => {
    await open(1);
    const groups = page.locator('.finding-group');
    const folded = page.locator('.finding-group:not(.unfolded)');
    await expect.poll(() => groups.count()).toBeGreaterThan(0);
    const lines = (await groups.count()) + (await page.locator('.findings > .finding').count());
    expect(lines).toBeLessThan((await page.locator('.finding').count()) / 2);
    // Folded where it is not under hand, and unfolded again by a click.
    const first = page.locator('.finding-group.unfolded');
    await first.locator('.group-fold').click();
    await expect.poll(() => folded.first().locator('.finding').first().isVisible()).toBe(false);
    await folded.first().locator('.group-fold').click();
    const inGroup = await first.locator('.finding.open:not(.remark)').count();
    expect(inGroup).toBeGreaterThan(2);
    await press('Shift+A');
    await page.locator('.notice', { hasText: `${inGroup} marks` }).waitFor();
    await expect.poll(() => page.locator('.finding.agreed').count()).toBe(inGroup);
    await press('u');
    await expect.poll(() => page.locator('.finding.agreed').count()).toBe(0);
  }, 60_000);

  it('gives marks by digits, and a key leads there and back', async () => {
    const chosen = () => page.locator('.finding.chosen .finding-head').getAttribute('data-finding');
    const before = await chosen();
    await press('m');
    const field = page.locator('.criterion [name=marks]:focus');
    await field.waitFor();
    await press('7', 'Enter');
    await page.locator('.criterion', { hasText: '7 of' }).first().waitFor();
    await expect
      .poll(() => field.evaluate((input) => input.closest('details')!.previousElementSibling?.tagName))
      .toBe('DETAILS');
    await press('6', '.', '5', 'Enter');
    await page.locator('.criterion', { hasText: '6.5 of' }).first().waitFor();
    await press('m');
    await expect.poll(() => field.count()).toBe(0);
    await expect.poll(() => chosen()).toBe(before);
    await expect.poll(() => page.evaluate(() => document.activeElement?.className)).toContain('finding-head');
  }, 60_000);

  it('closes the nearest thing only, and never the script', async () => {
    await press('?');
    const help = page.locator('dialog.keys');
    await help.waitFor();
    await expect.poll(() => help.textContent()).toContain('agree with all that comes from the same slip');
    await press('Escape');
    await help.waitFor({ state: 'detached' });
    await press('r');
    await page.locator('.writing textarea:focus').waitFor();
    await press('Escape');
    await page.locator('.writing').waitFor({ state: 'detached' });
    await press('m', 'Escape', 'Escape', 'Escape', 'Escape');
    expect(page.url()).toContain('#/script/1');
    await press('q');
    await page.locator('main.view-queue').waitFor();
  }, 60_000);

  it('keeps the place after a remark, and tells a person’s remark from the program’s', async () => {
    await open(1);
    await press('ArrowDown', 'ArrowDown', 'ArrowDown');
    const margin = page.locator('.margin');
    const chosen = page.locator('.finding.chosen .finding-head');
    const before = await chosen.getAttribute('data-finding');
    const where = (await boxOf(chosen)).y;
    await press('r');
    await page.keyboard.type('Contrary motion here.');
    await press('Enter');
    await page.locator('.own-remarks li', { hasText: 'Contrary motion' }).waitFor();
    await expect.poll(() => chosen.getAttribute('data-finding')).toBe(before);
    await expect.poll(async () => Math.abs((await boxOf(chosen)).y - where)).toBeLessThan(60);
    await press('c');
    await page.keyboard.type('A brave start.');
    await press('Enter');
    const comment = page.locator('.own-remarks li', { hasText: 'A brave start.' });
    await comment.waitFor();
    await expect.poll(() => comment.textContent()).toContain('the whole script');
    // In the score: only the remark with a place, in a shape and a stroke of its own.
    await expect.poll(() => page.locator('.pw-own').count()).toBe(1);
    await expect.poll(() => page.locator('.pw-own .pw-stroke-own').count()).toBe(1);
    await expect.poll(() => margin.locator('.tag.own').count()).toBe(2);
  }, 60_000);

  it('on a phone the score is on top and the findings come up over it', async () => {
    const phone = await openWindow(browser, address, { width: 360, height: 780 });
    await open(1, phone);
    const handle = phone.locator('.sheet-handle');
    await expect.poll(() => handle.isVisible()).toBe(true);
    await expect.poll(() => phone.locator('.finding').first().isVisible()).toBe(false);
    // A finger that scrolls chooses nothing and begins no remark, wherever it came down.
    const touch = await phone.context().newCDPSession(phone);
    const drawn = await boxOf(phone.locator('.pw-system svg').first());
    const [x, y] = [drawn.x + drawn.width / 2, drawn.y + drawn.height / 2];
    await touch.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [{ x, y }] });
    for (const by of [10, 20, 40])
      await touch.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: [{ x, y: y - by }] });
    await touch.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    await phone.evaluate(() => scrollTo(0, 0));
    await expect.poll(() => phone.locator('form.writing').count()).toBe(0);
    // A tap on a tag chooses its finding, shows it, and decides nothing that came to lie under the finger.
    const tag = phone.locator('.pw-finding .pw-tag').nth(1);
    await tag.scrollIntoViewIfNeeded();
    const { x: left, y: top, width, height } = await boxOf(tag);
    const decided = await phone.locator('.finding.agreed, .finding.overruled').count();
    await phone.touchscreen.tap(left + width / 2, top + height / 2);
    await phone.locator('.finding.chosen').waitFor();
    await expect.poll(() => phone.locator('.pw-wash').count()).toBeGreaterThan(0);
    await expect.poll(() => phone.locator('form.writing').count()).toBe(0);
    await expect.poll(() => phone.locator('.finding.agreed, .finding.overruled').count()).toBe(decided);
    const score = await boxOf(phone.locator('.score'));
    const sheet = await boxOf(phone.locator('.margin'));
    expect(sheet.y).toBeGreaterThan(250);
    expect(score.y).toBeLessThan(sheet.y);
    await handle.tap();
    await expect.poll(() => phone.locator('.finding').first().isVisible()).toBe(false);
    await expect
      .poll(() => phone.evaluate(() => document.documentElement.scrollWidth))
      .toBeLessThanOrEqual(360);
    await phone.context().close();
  }, 60_000);

  it('two people mark one stack unseen by each other, and agree where they differ', async () => {
    const mark = async (window: Page, initials: string, marks: string): Promise<void> => {
      await open(3, window);
      await window.getByLabel('Your initials').fill(initials);
      await window.getByLabel('Your initials').press('Enter');
      await window
        .locator('.criterion')
        .first()
        .click({ position: { x: 5, y: 5 }, trial: true });
      await window.keyboard.press('Escape');
      await window.keyboard.press('m');
      await window.locator('.criterion [name=marks]:focus').waitFor();
      await window.keyboard.type(marks);
      await window.keyboard.press('Enter');
      await window
        .locator('.criterion', { hasText: `${marks} of` })
        .first()
        .waitFor();
      await window.keyboard.press('Escape');
    };
    await mark(page, 'AB', '7');
    const other = await openWindow(browser, address);
    await open(3, other);
    await expect.poll(() => other.locator('.criterion').first().textContent()).not.toContain('AB: 7');
    await mark(other, 'CD', '5');
    await expect
      .poll(() => other.locator('.criterion .given-marks').first().textContent())
      .toContain('AB: 7');
    await other.getByRole('link', { name: 'Two markers' }).click();
    const row = other.locator('tbody tr').first();
    await expect.poll(() => row.textContent()).toContain('AB: 7');
    await row.locator('input').fill('6');
    await row.locator('button').click();
    await other.locator('.notice', { hasText: '6 marks, agreed' }).waitFor();
    await expect.poll(() => other.locator('tbody tr').count()).toBe(0);
    await open(3);
    await expect.poll(() => page.locator('.given-marks').first().textContent()).toContain('Agreed: 6');
    await expect.poll(() => page.locator('.total').textContent()).toMatch(/^6 out of/);
    await press('a');
    await page.locator('.finding .standing', { hasText: '(AB)' }).first().waitFor({ state: 'attached' });
    await other.context().close();
  }, 90_000);
});
