/** Writing by keyboard alone, undoing, keeping, going back, opening and saving, in a real browser. */
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { writeMusicXml } from '../../src/musicxml/index.ts';
import { readNotation } from '../../src/notation/index.ts';
import { NO_CHROMIUM } from '../support/chromium.ts';
import { dropFiles, pasteText, ready, servedSite } from './open-page.ts';

const text = (page: Page): Promise<string> => page.locator('#notation').inputValue();

/** The music alone, however it is written down. */
const voicesOf = (notation: string) => readNotation(notation).score.voices;

describe.skipIf(NO_CHROMIUM)('writing on the page', () => {
  const site = servedSite();
  let page: Page;

  /** Presses Tab until an element has the focus, as somebody without a mouse does. */
  async function tabTo(selector: string): Promise<void> {
    for (let i = 0; i < 80; i++) {
      if (await page.evaluate((s) => document.activeElement?.matches(s) ?? false, selector)) return;
      await page.keyboard.press('Tab');
    }
    throw new Error(`Tab never reaches ${selector}.`);
  }

  async function beginEmpty(bars: number, key?: string): Promise<void> {
    await tabTo('nav a[href="#shelf"]');
    await page.keyboard.press('Enter');
    await page.locator('.new-exercise').waitFor();
    await tabTo('.new-exercise input[name="title"]');
    await page.keyboard.type('By keyboard');
    if (key !== undefined) {
      await tabTo('.new-exercise select[name="key"]');
      await page.keyboard.type(key);
    }
    await tabTo('.new-exercise input[name="bars"]');
    await page.keyboard.press('Control+a');
    await page.keyboard.type(String(bars));
    await page.keyboard.press('Enter');
    await expect.poll(() => page.locator('.sheet-head h1').textContent()).toBe('By keyboard');
    await ready(page);
    await tabTo('#stave');
  }

  it('goes from an empty stave to a clean review by keyboard alone', async () => {
    page = await site.visit();
    await beginEmpty(4, 'Bb');
    const keys = async (line: string): Promise<void> => {
      for (const key of line.split(' ')) await page.keyboard.press(key);
    };
    // The exercise fixtures/exercises/kite-hill.txt, voice by voice, each from the beginning.
    await keys('b c d b e d 2 c p 1 d c b c d c 2 b p');
    await keys('Home PageDown 1 f f f g b b 2 a p 1 b a b g b a 2 f p');
    await keys('Home PageDown 1 d c b d e f 2 f p 1 f e f g f e 2 d p');
    await keys('Home PageDown 1 b a b g g Shift+ArrowUp b 2 f p 1 b Shift+ArrowDown c d e f f 2 b p');
    await expect.poll(() => page.locator('.side .verdict').textContent()).toMatch(/^(Nothing|no|0)/);
    await expect.poll(() => page.locator('.side .mark.fault, .side .mark.query').count()).toBe(0);
    await expect.poll(() => page.locator('.side .verdict').textContent()).not.toMatch(/still to be written/);
    await page.locator('#tab-text').click();
    const fixture = readFileSync(new URL('../../fixtures/exercises/kite-hill.txt', import.meta.url), 'utf8');
    await expect.poll(async () => voicesOf(await text(page))).toEqual(voicesOf(fixture));
  }, 60_000);

  it('keeps what was typed when the page is loaded again, even at once', async () => {
    page = await site.visit();
    await beginEmpty(2);
    await page.keyboard.press('g');
    await page.keyboard.press('a');
    await page.keyboard.press('b');
    await page.reload();
    await ready(page);
    await page.locator('#tab-text').click();
    await expect.poll(() => text(page)).toMatch(/S: G4 A B \?/);
    await expect.poll(() => page.locator('.sheet-head h1').textContent()).toBe('By keyboard');
  });

  it('keeps what was typed when the tab is closed at once, and shows it in another tab that is open', async () => {
    page = await site.visit();
    const context = page.context();
    const other = await context.newPage();
    await other.goto(site.address);
    await ready(other);
    await other.locator('#tab-text').click();
    await page.locator('#stave').focus();
    for (const key of ['End', 'PageDown', 'd', 'e']) await page.keyboard.press(key);
    await expect.poll(() => other.locator('#notation').inputValue(), { timeout: 5000 }).toMatch(/A: .*D4 E/);
    await page.keyboard.press('f');
    await page.close();
    const later = await context.newPage();
    await later.goto(site.address);
    await ready(later);
    await later.locator('#tab-text').click();
    await expect.poll(() => later.locator('#notation').inputValue()).toMatch(/A: .*D4 E F#/);
  });

  it('keeps locks and notes too', async () => {
    page = await site.visit();
    await page.locator('.tools button[aria-label="T, tenor"]').click();
    await page.locator('button', { hasText: 'Lock tenor' }).click();
    await expect.poll(() => page.locator('button[aria-label="T, tenor, locked"]').count()).toBe(1);
    await page.waitForTimeout(300);
    await page.reload();
    await ready(page);
    await expect.poll(() => page.locator('button[aria-label="T, tenor, locked"]').count()).toBe(1);
  });

  it('has several exercises, and earlier versions of each to go back to', async () => {
    page = await site.visit();
    await pasteText(page, 'title: First\nkey: C major\nS: C5 D5 E5 F5 |\n');
    await expect.poll(() => page.locator('.sheet-head h1').textContent()).toBe('First');
    await page.locator('nav a[href="#shelf"]').click();
    await page.locator('.keep-version input').fill('before the change');
    await page.locator('.keep-version button').click();
    await page.locator('.shelf-list', { hasText: 'before the change' }).waitFor();
    await page.locator('nav a[href="#write"]').click();
    await page.locator('#tab-text').click();
    await page.locator('#notation').fill('title: First\nkey: C major\nS: G5 G5 G5 G5 |\n');
    await pasteText(page, 'title: Second\nkey: C major\nS: E5 E5 E5 E5 |\n');
    await expect.poll(() => page.locator('.sheet-head h1').textContent()).toBe('Second');
    await page.locator('nav a[href="#shelf"]').click();
    await expect
      .poll(() => page.locator('.shelf-list .entry-title').allTextContents())
      .toEqual(expect.arrayContaining(['First', 'Second', 'A tune for practice']));
    await page.locator('button.entry', { hasText: 'First' }).click();
    await page.locator('#tab-text').click();
    await expect.poll(() => text(page)).toContain('G5 G5');
    await page.locator('nav a[href="#shelf"]').click();
    await page
      .locator('li', { hasText: 'before the change' })
      .locator('button', { hasText: 'Go back' })
      .click();
    await expect.poll(() => text(page)).toContain('C5 D5 E5 F5');
    await page.keyboard.press('Control+z');
    await expect.poll(() => text(page)).toContain('G5 G5');
  });

  it('opens dropped files and gives back a marked one that opens again with the same review', async () => {
    page = await site.visit();
    const exercise = readFileSync(
      new URL('../../fixtures/exercises/fault-consecutives.txt', import.meta.url),
    );
    // On two staves, as most pupils hand it in: so it is handed back.
    const closed = writeMusicXml(readNotation(exercise.toString()).score, { layout: 'closed score' });
    await dropFiles(page, [{ name: 'fault-consecutives.musicxml', bytes: new TextEncoder().encode(closed) }]);
    await expect.poll(() => page.locator('.sheet-head h1').textContent()).not.toBe('A tune for practice');
    await ready(page);
    await expect.poll(() => page.locator('.mark').count()).toBeGreaterThan(0);
    const marks = await page.locator('.mark-title').allTextContents();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.evaluate(() => {
        const item = [...document.querySelectorAll('button')].find(
          (b) => b.textContent === 'As MusicXML with the marks',
        );
        item?.click();
      }),
    ]);
    const bytes = readFileSync((await download.path())!);
    expect(bytes.toString()).toContain('<staves>2</staves>');
    await dropFiles(page, [{ name: 'marked.musicxml', bytes }]);
    await expect.poll(() => page.locator('.reader-remarks, .voices-form').count()).toBeGreaterThan(0);
    await ready(page);
    await expect.poll(() => page.locator('.mark-title').allTextContents()).toEqual(marks);
  });

  it('refuses what is no exercise in a sentence, and stays where it was', async () => {
    page = await site.visit();
    await dropFiles(page, [{ name: 'shopping.txt', bytes: new TextEncoder().encode('milk, eggs') }]);
    const notice = page.locator('.notice [role="alert"]');
    await expect.poll(() => notice.textContent()).toMatch(/shopping\.txt \(line 1, column 1\)/);
    await expect.poll(() => page.locator('.sheet-head h1').textContent()).toBe('A tune for practice');
    await page.locator('.notice button').click();
    await expect.poll(() => notice.isVisible()).toBe(false);
  });

  it('writes what is played on a MIDI keyboard', async () => {
    page = await site.visit({
      before: () => {
        const input = { name: 'Test keys', onmidimessage: undefined };
        Object.assign(window, { testKeys: input });
        Object.defineProperty(navigator, 'requestMIDIAccess', {
          value: () => Promise.resolve({ inputs: new Map([['1', input]]) }),
        });
      },
    });
    await pasteText(page, 'title: Played\nkey: D minor\nmetre: 4/4\nS: ?*4 |\n');
    await expect.poll(() => page.locator('.sheet-head h1').textContent()).toBe('Played');
    await page.locator('.mixer summary').click();
    await page.locator('button', { hasText: 'Write from a MIDI keyboard' }).click();
    await expect.poll(() => page.locator('.notice').textContent()).toMatch(/Listening to Test keys/);
    await page.evaluate(() => {
      const { testKeys } = window as unknown as {
        testKeys: { onmidimessage: (e: { data: number[] }) => void };
      };
      for (const key of [74, 73, 70]) {
        testKeys.onmidimessage({ data: [0x90, key, 64] });
        testKeys.onmidimessage({ data: [0x90, key, 0] });
      }
    });
    await page.locator('#tab-text').click();
    await expect.poll(() => text(page)).toMatch(/S: D5 C# Bb4 \?/);
  });

  it('draws one bar for a note, without having the page laid out before, however long the piece is', async () => {
    page = await site.visit();
    await page.evaluate(watchKeys);
    const nodes: number[] = [];
    for (const bars of [16, 128]) {
      await pasteText(page, longText(bars));
      await expect.poll(() => page.locator('.sheet-head h1').textContent()).toBe(`Of ${bars} bars`);
      await ready(page);
      await expect.poll(() => page.locator('.pw-system svg').count()).toBeGreaterThan(bars / 8);
      await page.locator('#stave').focus();
      await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe('stave');
      for (const key of ['Home', 'PageDown']) await page.keyboard.press(key);
      const seen = () => page.evaluate(() => (window as unknown as { keys: KeySeen[] }).keys);
      for (const key of ['e', 'f']) {
        const before = (await seen()).length;
        await page.keyboard.press(key);
        await expect.poll(async () => (await seen()).length).toBe(before + 1);
      }
      const last = (await seen()).at(-1)!;
      expect(last.bars).toBe(1);
      expect(last.layouts).toEqual([]);
      nodes.push(last.nodes);
    }
    expect(Math.abs(nodes[1]! - nodes[0]!)).toBeLessThan(20);
  });
});

/** What a key did until its bar was drawn. */
interface KeySeen {
  readonly bars: number;
  /** All that was made for it on the stave. */
  readonly nodes: number;
  /** Questions that have the page laid out on the spot. */
  readonly layouts: readonly string[];
}

/** Notes, in the page, what each letter pressed had drawn, and what was asked for on the way. */
function watchKeys(): void {
  const keys: KeySeen[] = [];
  Object.assign(window, { keys });
  let layouts: string[] | undefined;
  const watched: [object, readonly string[]][] = [
    [
      Element.prototype,
      ['getBoundingClientRect', 'scrollIntoView', 'clientWidth', 'clientHeight', 'scrollTop'],
    ],
    [HTMLElement.prototype, ['offsetWidth', 'offsetHeight', 'offsetTop', 'innerText']],
    [SVGGraphicsElement.prototype, ['getBBox', 'getScreenCTM']],
  ];
  for (const [prototype, names] of watched)
    for (const name of names) {
      const old = Object.getOwnPropertyDescriptor(prototype, name)!;
      const noted = (ask: (this: unknown, ...rest: unknown[]) => unknown) =>
        function (this: unknown, ...rest: unknown[]): unknown {
          layouts?.push(name);
          return ask.apply(this, rest);
        };
      Object.defineProperty(prototype, name, {
        ...old,
        ...(old.get ? { get: noted(old.get) } : { value: noted(old.value) }),
      });
    }
  document.addEventListener(
    'keydown',
    ({ key }) => {
      if (/^[a-g]$/.test(key)) layouts = [];
    },
    { capture: true },
  );
  const isBar = (node: Node): node is Element => node instanceof Element && node.matches('.vf-bar');
  new MutationObserver((records) => {
    const added = new Set(records.flatMap(({ addedNodes }) => [...addedNodes]));
    const bars = [...added].filter(isBar);
    if (layouts === undefined || bars.length === 0) return;
    const nodes = new Set(
      [...added].flatMap((node) => (node instanceof Element ? [node, ...node.querySelectorAll('*')] : [])),
    );
    // The page is scrolled when all is drawn: then it is laid out in any case.
    keys.push({
      bars: bars.length,
      nodes: nodes.size,
      layouts: layouts.filter((name) => name !== 'scrollIntoView'),
    });
    layouts = undefined;
  }).observe(document.querySelector('#stave')!, { childList: true, subtree: true });
}

function longText(bars: number): string {
  const line =
    'S: G4 A4 B4 C5 | D5 C5 B4*2! |\nA: D4 D4 D4 E4 | D4 E4 D4*2 |\nT: B3 A3 G3 G3 | A3 G3 G3*2 |\nB: G3 F#3 G3 C3 | F#3 C3 G3*2 |';
  return `title: Of ${bars} bars\nkey: G major\nmetre: 4/4\n\n${Array.from({ length: bars / 2 }, () => line).join('\n\n')}\n`;
}
