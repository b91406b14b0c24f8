/** For everyone: axe on every view, phone width, 400 % zoom, what is said aloud, without a network. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { NO_CHROMIUM } from '../support/chromium.ts';
import { pasteText, servedSite } from './open-page.ts';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

const GIVEN = `title: Given
key: C major
metre: 4/4
S: C5 D5 E5 C5 |
A: G4 G4 G4 G4 |
T: E4 B3 C4 E4 |
B: C4 G3 C3 C3 |
`;

interface Violation {
  readonly id: string;
  readonly impact: string | null;
  readonly nodes: readonly { readonly html: string; readonly failureSummary?: string }[];
}

describe.skipIf(NO_CHROMIUM)('the page is for everyone', () => {
  const site = servedSite();
  let page: Page;

  /** What axe finds wrong by WCAG 2.2 AA and its own best practices, in one line each. */
  async function axe(): Promise<string[]> {
    const violations = (await page.evaluate(
      'axe.run(document, { runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] }).then((r) => r.violations)',
    )) as Violation[];
    return violations.map(
      (v) =>
        `${v.impact ?? ''} ${v.id}: ${v.nodes.map((n) => `${n.html.slice(0, 120)} ${n.failureSummary ?? ''}`).join(' | ')}`,
    );
  }

  const VIEWS: readonly {
    readonly name: string;
    readonly hash: string;
    readonly prepare?: (p: Page) => Promise<void>;
  }[] = [
    {
      name: 'write, marks',
      hash: '#write',
      prepare: async (p) => {
        await p.locator('#tab-marks').click();
        await p.locator('button[data-finding]').first().click();
      },
    },
    { name: 'write, style', hash: '#write', prepare: (p) => p.locator('#tab-style').click() },
    { name: 'write, text', hash: '#write', prepare: (p) => p.locator('#tab-text').click() },
    { name: 'write, chord', hash: '#write', prepare: (p) => p.locator('#tab-chord').click() },
    { name: 'write, summary', hash: '#write', prepare: (p) => p.locator('#tab-summary').click() },
    { name: 'rules', hash: '#rules/parallel-fifths' },
    { name: 'last check', hash: '#check' },
    { name: 'exercises', hash: '#shelf' },
    { name: 'help', hash: '#help' },
    // Last: an open menu stays open.
    { name: 'write, menu', hash: '#write', prepare: (p) => p.locator('details.shown summary').click() },
  ];

  /** Goes to a view of the page that is open, and waits until it is drawn. */
  async function show({ hash, prepare }: (typeof VIEWS)[number]): Promise<void> {
    await page.evaluate((h) => {
      location.hash = h;
    }, hash);
    await page.evaluate(
      () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
    );
    await prepare?.(page);
    await page.waitForTimeout(200);
  }

  // One page for all views: to load it anew for each would take longer than all that is looked at.
  it.each(['light', 'dark'] as const)(
    'axe finds nothing wrong on any view (%s)',
    async (colourScheme) => {
      page = await site.visit({ colourScheme });
      // Evaluated, not put in as a script: the page's policy forbids inline scripts, and rightly complains.
      await page.evaluate(AXE);
      const wrong: string[] = [];
      for (const view of VIEWS) {
        await show(view);
        wrong.push(...(await axe()).map((line) => `${view.name}: ${line}`));
      }
      expect(wrong).toEqual([]);
    },
    90_000,
  );

  it('axe finds nothing wrong with the question which voices were given', async () => {
    page = await site.visit();
    await page.evaluate(AXE);
    await pasteText(page, GIVEN);
    await page.locator('.given-question').waitFor();
    expect(await axe()).toEqual([]);
  }, 60_000);

  it('axe finds nothing wrong with the sheet on a phone', async () => {
    page = await site.visit({ width: 360, height: 740, touch: true });
    await page.evaluate(AXE);
    await page.locator('#tab-marks').tap();
    await page.locator('.mark-head').first().tap();
    await page.locator('.remark-list > button').tap();
    await page.locator('.mark.open .message').waitFor();
    const wrong = await axe();
    await page.locator('#tab-style').tap();
    wrong.push(...(await axe()));
    expect(wrong).toEqual([]);
  }, 60_000);

  // 1280 px at 400 % are 320 CSS px.
  it.each([
    { width: 360, height: 740 },
    { width: 320, height: 256 },
  ])(
    'nothing is cut off at $width px on any view',
    async (size) => {
      page = await site.visit(size);
      for (const view of VIEWS) {
        await show(view);
        const { scroll, client } = await page.evaluate(() => ({
          scroll: document.documentElement.scrollWidth,
          client: document.documentElement.clientWidth,
        }));
        expect(scroll, view.name).toBeLessThanOrEqual(client);
      }
    },
    90_000,
  );

  it('at 360 px the voices and their lock are all in view, and no tool lies on another', async () => {
    page = await site.visit({ width: 360, height: 740 });
    const boxes = await page.locator('.tools .strip button').evaluateAll((buttons) =>
      buttons.map((button) => {
        const { left, right, top, bottom } = button.getBoundingClientRect();
        return { name: button.textContent?.trim() ?? '', left, right, top, bottom };
      }),
    );
    const lock = boxes.find(({ name }) => name.startsWith('Lock'))!;
    expect(lock.right).toBeLessThanOrEqual(360);
    for (const [i, a] of boxes.entries())
      for (const b of boxes.slice(i + 1)) {
        const apart = a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top;
        expect(apart, `${a.name} and ${b.name}`).toBe(true);
      }
  });

  it('says where the caret is, what sounds there, and what was found after a change', async () => {
    page = await site.visit();
    await pasteText(
      page,
      'title: Said\nkey: C major\nmetre: 4/4\nS: C5 D5 E5 C5 |\nA: G4 A4 G4 G4 |\nT: E4 F4 C4 E4 |\nB: C3 D3 E3 C3 |\n',
    );
    await expect.poll(() => page.locator('.sheet-head h1').textContent()).toBe('Said');
    const said = page.locator('body > [role="status"]');
    await page.locator('#stave').focus();
    await page.keyboard.press('ArrowRight');
    await expect.poll(() => said.textContent()).toMatch(/bar 1, beat 2, soprano: D 5/);
    await page.keyboard.press('w');
    await expect.poll(() => said.textContent()).toMatch(/soprano D5, alto A4, tenor F4, bass D3/);
    for (const key of ['PageDown', 'PageDown', 'PageDown', 'f']) await page.keyboard.press(key);
    await expect
      .poll(() => said.textContent())
      .toMatch(/bar 1, beat 2, bass: (no|one|two|three|four|\d+) finding/);
  });

  it('moves nothing smoothly for those who asked for less motion', async () => {
    page = await site.visit({ reducedMotion: true });
    const moving = await page.evaluate(
      () =>
        [...document.querySelectorAll('*')].filter((e) => getComputedStyle(e).transitionDuration !== '0s')
          .length,
    );
    expect(moving).toBe(0);
  });

  it('works without a network once it has been loaded', async () => {
    page = await site.visit();
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    // What is kept comes in the background: wait until all of it is there.
    await expect
      .poll(
        () =>
          page.evaluate(async () => {
            const names = await caches.keys();
            const counts = await Promise.all(
              names.map(async (n) => (await (await caches.open(n)).keys()).length),
            );
            return counts.reduce((sum, n) => sum + n, 0);
          }),
        { timeout: 10_000 },
      )
      .toBeGreaterThan(6);
    await page.waitForTimeout(500);
    await page.context().setOffline(true);
    await page.reload();
    await page.locator('.mark').first().waitFor();
    await page.locator('.play').click();
    await expect.poll(() => page.locator('.pw-cursor').count(), { timeout: 8000 }).toBeGreaterThan(0);
  });
});
