/**
 * `npm run bench:page`: how heavy the page is, how soon it draws, and how soon it answers a key. Prints figures; fails
 * nothing. Needs Chromium.
 *
 * - first load: bytes over the wire until the page has drawn, scripts, styles and fonts gzipped as a server would;
 * - first drawing: from the navigation to the whole of a 20-bar chorale on screen, in a fresh profile each time;
 * - keystroke: handler (score, text, findings around the caret, what is drawn at once), and until the whole review is
 *   there, on a 30-bar exercise.
 */
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Browser, Page } from 'playwright-core';
import { chromiumPath, launchChromium } from '../support/chromium.ts';
import { builtPage, servePage } from '../support/page.ts';

const RUNS = 5;
const KEYS = 60;

if (chromiumPath() === undefined) {
  console.log('No Chromium is installed: nothing was measured.');
  process.exit(0);
}
const served = await servePage();
const browser = await launchChromium();
try {
  await weigh();
  await drawing(browser);
  await keystrokes(browser);
} finally {
  await browser.close();
  await served.close();
}

async function weigh(): Promise<void> {
  const page = await fresh(browser);
  const asked = new Set<string>();
  page.on('request', (request) => asked.add(new URL(request.url()).pathname));
  await page.goto(served.address);
  await page.locator('.mark').first().waitFor();
  await page.waitForTimeout(300);
  await page.context().close();
  const folder = await builtPage();
  const files = filesIn(folder).filter((file) => asked.has(`/${file}`) || file === 'index.html');
  const sizes = files.map((file) => {
    const bytes = readFileSync(join(folder, file));
    // The service worker fetches the rest later; what it fetches before the page is drawn is not counted.
    return [file, /\.woff2$/.test(file) ? bytes.length : gzipSync(bytes).length] as const;
  });
  const first = sizes.filter(([file]) => !/esm-|sw\.js|workbox|manifest/.test(file));
  for (const [file, size] of first) console.log(`  ${file.padEnd(44)} ${kilobytes(size)}`);
  console.log(
    `First load, compressed: ${kilobytes(first.reduce((sum, [, size]) => sum + size, 0))} (ceiling 900 kB)`,
  );
}

async function drawing(on: Browser): Promise<void> {
  const text = exercise(20);
  const times: number[] = [];
  for (let i = 0; i < RUNS; i++) {
    const page = await fresh(on);
    // The exercise is on the shelf already, as it is for someone who comes back.
    await page.goto(served.address);
    await page.locator('.mark').first().waitFor();
    await paste(page, text);
    await page.waitForFunction(
      () => document.querySelector('.sheet-head h1')?.textContent === 'Twenty or so',
    );
    await page.waitForTimeout(500);
    await page.reload();
    await page.waitForFunction(() => performance.getEntriesByName('partwise-drawn').length > 0);
    times.push(
      await page.evaluate(() => {
        const drawn = performance.getEntriesByName('partwise-drawn')[0]!;
        return drawn.startTime + drawn.duration;
      }),
    );
    await page.context().close();
  }
  console.log(
    `First drawing of a 20-bar chorale, from the navigation on: ${spread(times)} (ceiling 1,000 ms)`,
  );
}

async function keystrokes(on: Browser): Promise<void> {
  const page = await fresh(on);
  await page.goto(served.address);
  await page.locator('.mark').first().waitFor();
  await paste(page, exercise(30));
  await page.waitForFunction(() => document.querySelector('.sheet-head h1')?.textContent === 'Twenty or so');
  await page.waitForTimeout(1500);
  await page.locator('#stave').focus();
  for (const key of ['Home', 'PageDown', 'PageDown']) await page.keyboard.press(key);
  await page.evaluate(() => {
    const handled: number[] = [];
    Object.assign(window, { handled });
    const stave = document.querySelector('#stave')!;
    let began = 0;
    document.addEventListener('keydown', () => (began = performance.now()), { capture: true });
    stave.addEventListener('keydown', () => handled.push(performance.now() - began));
  });
  for (let i = 0; i < KEYS; i++) {
    await page.keyboard.press('abcdefg'[(i * 3) % 7]!);
    await page.waitForTimeout(150);
  }
  const durations = (name: string): Promise<number[]> =>
    page.evaluate((n) => performance.getEntriesByName(n).map((entry) => entry.duration), name);
  const handled = await page.evaluate(() => (window as unknown as { handled: number[] }).handled);
  const near = await durations('partwise-near');
  const whole = await durations('partwise-whole');
  const worker = await durations('partwise-review');
  const last = (values: number[]) => values.slice(-(KEYS - 10));
  console.log(`A key on a 30-bar exercise, until its handler is done: ${spread(last(handled))}`);
  console.log(`  of it, the findings around the caret: ${spread(last(near))} (a frame is 16.7 ms)`);
  console.log(`  until the whole review is there: ${spread(last(whole))} (ceiling 50 ms)`);
  console.log(`  of it, in the worker: ${spread(last(worker))}`);
  await page.context().close();
}

async function fresh(on: Browser): Promise<Page> {
  return (await on.newContext({ viewport: { width: 1280, height: 860 } })).newPage();
}

async function paste(page: Page, text: string): Promise<void> {
  await page.evaluate((pasted) => {
    const data = new DataTransfer();
    data.setData('text/plain', pasted);
    document.body.dispatchEvent(new ClipboardEvent('paste', { clipboardData: data, bubbles: true }));
  }, text);
}

/** As many bars as asked for: four of our own, over and over. */
function exercise(bars: number): string {
  const lines = readFileSync(new URL('../../fixtures/exercises/kite-hill.txt', import.meta.url), 'utf8')
    .split('\n')
    .filter((line) => /^[SATB]:/.test(line));
  const times = Math.ceil(bars / 4);
  return `title: Twenty or so\nkey: Bb major\nmetre: 4/4\n\n${Array.from({ length: times }, () => lines.join('\n')).join('\n\n')}\n`;
}

function filesIn(folder: string, prefix = ''): string[] {
  return readdirSync(join(folder, prefix)).flatMap((name) => {
    const path = prefix === '' ? name : `${prefix}/${name}`;
    return statSync(join(folder, path)).isDirectory() ? filesIn(folder, path) : [path];
  });
}

function spread(values: readonly number[]): string {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (share: number) =>
    (sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? 0).toFixed(1);
  return `median ${at(0.5)} ms, 95 % ${at(0.95)} ms, worst ${(sorted.at(-1) ?? 0).toFixed(1)} ms of ${sorted.length}`;
}

function kilobytes(bytes: number): string {
  return `${(bytes / 1000).toFixed(1)} kB`;
}
