/**
 * `npm run bench:page`: what a person with a slow machine and a slow line waits for. Prints each figure beside the one
 * to reach; fails nothing. Needs Chromium. What is measured is the page as the service sends it, bytes counted at its
 * sockets; "slow processor" is Chromium's own throttling to a fourth, "slow line" its "Fast 3G" (1.5 Mbit/s, 560 ms).
 * The throttling slows the page's own thread and not its workers.
 *
 * - first visit, in a fresh profile: first paint, the whole of the demonstration on screen, and how long longer tasks
 *   kept the page from answering (what each takes beyond 50 ms) until its marks are there;
 * - keys: from the key to the end of the first frame that shows another note.
 *
 * `npm run bench:page -- visits` or `-- keys` measures one of the two.
 */
import { readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo, Socket } from 'node:net';
import { cpus } from 'node:os';
import type { Browser, CDPSession, Page } from 'playwright-core';
import { createApp } from '../../server/app.ts';
import { chromiumPath, launchChromium } from '../support/chromium.ts';
import { builtPage } from '../support/page.ts';

const VISITS = 3;
const KEYS = 30;
const FIRST_KEYS = 3;

interface Throttle {
  readonly name: string;
  readonly processor: number;
  readonly line: boolean;
}
const FULL: Throttle = { name: 'full speed', processor: 1, line: false };
const SLOW: Throttle = { name: 'slow processor', processor: 4, line: false };
const SCHOOL: Throttle = { name: 'slow processor, slow line', processor: 4, line: true };

if (chromiumPath() === undefined) {
  console.log('No Chromium is installed: nothing was measured.');
  process.exit(0);
}
const only = process.argv[2];
const service = await listen(await builtPage());
const browser = await launchChromium();
console.log(`${cpus().length} cores (${cpus()[0]?.model.trim()}), Chromium ${browser.version()}`);
try {
  if (only !== 'keys') await visits();
  if (only !== 'visits') await keys();
} finally {
  await browser.close();
  service.server.closeAllConnections();
  service.server.close();
}

async function listen(page: string) {
  const server: Server = createServer(createApp({ page }));
  const sockets = new Set<Socket>();
  server.on('connection', (socket) => sockets.add(socket));
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  return {
    server,
    address: `http://127.0.0.1:${port}/`,
    /** Bytes sent since this was asked last, headers and all. */
    sent: () => {
      const bytes = [...sockets].reduce((sum, socket) => sum + socket.bytesWritten, 0);
      sockets.clear();
      return bytes;
    },
  };
}

async function visits(): Promise<void> {
  console.log('\nFirst visit, median (worst)');
  for (const [throttle, goal] of [
    [SCHOOL, 'to reach 1.8 s and 3.0 s, at most 350 kB'],
    [SLOW, 'to reach 0.5 s and 0.9 s, blocked 0.3 s'],
    [FULL, 'no goal'],
  ] as const) {
    const all: Visit[] = [];
    for (let i = 0; i < VISITS; i++) all.push(await visit(browser, throttle));
    const seconds = (of: (one: Visit) => number) => {
      const sorted = all.map(of).sort((a, b) => a - b);
      return `${(at(sorted, 0.5) / 1000).toFixed(2)} (${(at(sorted, 1) / 1000).toFixed(2)}) s`;
    };
    const kilobytes = (of: (one: Visit) => number) =>
      `${(
        at(
          all.map(of).sort((a, b) => a - b),
          0.5,
        ) / 1000
      ).toFixed(0)} kB`;
    console.log(
      `  ${throttle.name}: first paint ${seconds((v) => v.painted)}, score drawn ${seconds((v) => v.drawn)}, marks ${seconds((v) => v.marked)}, blocked ${seconds((v) => v.blocked)}; sent until drawn ${kilobytes((v) => v.untilDrawn)}, until marked ${kilobytes((v) => v.untilMarked)} [${goal}]`,
    );
  }
}

interface Visit {
  readonly painted: number;
  readonly drawn: number;
  readonly marked: number;
  readonly blocked: number;
  readonly untilDrawn: number;
  readonly untilMarked: number;
}

async function visit(on: Browser, throttle: Throttle): Promise<Visit> {
  const page = await fresh(on);
  await throttled(page, throttle);
  await page.addInitScript(() => {
    const tasks: number[] = [];
    Object.assign(window, { tasks });
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) tasks.push(duration);
    }).observe({ type: 'longtask', buffered: true });
  });
  service.sent();
  await page.goto(service.address, { waitUntil: 'commit' });
  await page.waitForFunction(() => performance.getEntriesByName('partwise-drawn').length > 0);
  const untilDrawn = service.sent();
  await page.locator('.mark').first().waitFor();
  const marked = await page.evaluate(() => performance.now());
  const found = await page.evaluate(() => ({
    painted: performance.getEntriesByName('first-contentful-paint')[0]!.startTime,
    drawn: performance.getEntriesByName('partwise-drawn')[0]!.duration,
    blocked: (window as unknown as { tasks: number[] }).tasks.reduce((sum, ms) => sum + ms - 50, 0),
  }));
  const untilMarked = untilDrawn + service.sent();
  await page.context().close();
  return { ...found, marked, untilDrawn, untilMarked };
}

async function keys(): Promise<void> {
  console.log(`\nKey to painted, median (95 %) of ${KEYS}`);
  for (const [throttle, goal] of [
    [SLOW, 'to reach 50 (80) ms at any length'],
    [FULL, 'to reach 16 (32) ms'],
  ] as const) {
    const found: string[] = [];
    for (const bars of [16, 64, 128])
      found.push(`${bars} bars ${spread(await steady(browser, throttle, bars))}`);
    console.log(`  ${throttle.name}: ${found.join(', ')} [${goal}]`);
  }
  for (const bars of [16, 64]) {
    const first: number[] = [];
    for (let i = 0; i < FIRST_KEYS; i++) first.push(await firstKey(browser, SLOW, bars));
    console.log(`  slow processor, first key of a visit, ${bars} bars: ${spread(first)} [as later keys]`);
  }
  const burst = await withoutPause(browser, SLOW, 60);
  console.log(
    `  slow processor, forty keys without pause, 60 bars: ${(burst / 1000).toFixed(2)} s [as fast as they come: nothing queues]`,
  );
}

/** Keys one after another, each after a rest. */
async function steady(on: Browser, throttle: Throttle, bars: number): Promise<number[]> {
  const page = await writing(on, throttle, bars);
  for (let i = 0; i < KEYS + 5; i++) {
    await page.keyboard.press(letter(i));
    await page.waitForTimeout(throttle.processor * 80);
  }
  const times = await painted(page, KEYS + 5);
  await page.context().close();
  // The first few warm the code up; they are measured by themselves.
  return times.slice(5);
}

/** The first key of a visit, a second and a half after the page has come to rest. */
async function firstKey(on: Browser, throttle: Throttle, bars: number): Promise<number> {
  const page = await writing(on, throttle, bars);
  await page.reload();
  await probe(page);
  await page.keyboard.press(letter(0));
  const [time] = await painted(page, 1);
  await page.context().close();
  return time!;
}

/** From the first of forty keys to the frame that shows the last. */
async function withoutPause(on: Browser, throttle: Throttle, bars: number): Promise<number> {
  const page = await writing(on, throttle, bars);
  const session = await page.context().newCDPSession(page);
  const pressed = Array.from({ length: 40 }, (_, i) => {
    const text = letter(i);
    const key = { key: text, text, code: `Key${text.toUpperCase()}` };
    return [
      session.send('Input.dispatchKeyEvent', { type: 'keyDown', ...key }),
      session.send('Input.dispatchKeyEvent', { type: 'keyUp', ...key }),
    ];
  });
  await Promise.all(pressed.flat());
  await painted(page, 40);
  const whole = await page.evaluate(() => {
    const { began, ended } = window as unknown as Probe;
    return Math.max(...ended) - Math.min(...began);
  });
  await page.context().close();
  return whole;
}

interface Probe {
  readonly began: number[];
  readonly ended: number[];
}

/** A page with an exercise of so many bars, throttled, the caret in its first bars. */
async function writing(on: Browser, throttle: Throttle, bars: number): Promise<Page> {
  const page = await fresh(on);
  await page.goto(service.address);
  await page.locator('.mark').first().waitFor();
  await page.evaluate((pasted) => {
    const data = new DataTransfer();
    data.setData('text/plain', pasted);
    document.body.dispatchEvent(new ClipboardEvent('paste', { clipboardData: data, bubbles: true }));
  }, exercise(bars));
  await page.waitForFunction(
    () => document.querySelector('.sheet-head h1')?.textContent === 'As long as asked',
  );
  await page.waitForTimeout(500);
  await throttled(page, throttle);
  await probe(page);
  return page;
}

/** Waits until the page rests, puts the caret into the music, and notes each key and the frame that shows its note. */
async function probe(page: Page): Promise<void> {
  await page.locator('.stave svg').first().waitFor();
  await page.waitForFunction(
    () => !document.querySelector('.side')?.textContent?.includes('Reading the harmony'),
  );
  await page.waitForTimeout(1500);
  await page.locator('#stave').focus();
  await page.keyboard.press('Home');
  await page.keyboard.press('PageDown');
  await page.waitForTimeout(500);
  await page.evaluate(() => {
    const began: number[] = [];
    const ended: number[] = [];
    Object.assign(window, { began, ended });
    let shown = 0;
    new MutationObserver((records) => {
      const signs = '.vf-sign, .vf-stavenote';
      const holds = (node: Node) =>
        node instanceof Element && (node.matches(signs) || node.querySelector(signs) !== null);
      if (records.some(({ addedNodes }) => [...addedNodes].some(holds))) shown = performance.now();
    }).observe(document.querySelector('#stave')!, { childList: true, subtree: true });
    const afterFrame = (then: () => void): void => {
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = then;
        port2.postMessage(0);
      });
    };
    document.addEventListener(
      'keydown',
      ({ timeStamp }) => {
        began.push(timeStamp);
        const look = (): void => {
          if (shown >= timeStamp) ended.push(performance.now());
          else afterFrame(look);
        };
        afterFrame(look);
      },
      { capture: true },
    );
  });
}

/** Milliseconds from each key to the end of the frame that showed it, once there are as many. */
async function painted(page: Page, count: number): Promise<number[]> {
  await page.waitForFunction((n) => (window as unknown as { ended: number[] }).ended.length >= n, count);
  return page.evaluate(() => {
    const { began, ended } = window as unknown as { began: number[]; ended: number[] };
    return ended.map((end, i) => end - began[i]!);
  });
}

async function throttled(page: Page, { processor, line }: Throttle): Promise<CDPSession> {
  const session = await page.context().newCDPSession(page);
  await session.send('Network.enable');
  if (line)
    await session.send('Network.emulateNetworkConditions', {
      offline: false,
      latency: 562.5,
      downloadThroughput: (1.6 * 1024 * 1024 * 0.9) / 8,
      uploadThroughput: (750 * 1024 * 0.9) / 8,
    });
  await session.send('Emulation.setCPUThrottlingRate', { rate: processor });
  return session;
}

async function fresh(on: Browser): Promise<Page> {
  const page = await (await on.newContext({ viewport: { width: 1280, height: 860 } })).newPage();
  // The loader that runs this file puts calls of its own into functions that are sent to the page.
  await page.addInitScript('globalThis.__name = (named) => named');
  return page;
}

/** Another note each time, whatever stood there. */
function letter(i: number): string {
  return 'abcdefg'[(i * 3) % 7]!;
}

/** As many bars as asked for: four of our own, over and over. */
function exercise(bars: number): string {
  const lines = readFileSync(new URL('../../fixtures/exercises/kite-hill.txt', import.meta.url), 'utf8')
    .split('\n')
    .filter((line) => /^[SATB]:/.test(line));
  const times = Math.ceil(bars / 4);
  return `title: As long as asked\nkey: Bb major\nmetre: 4/4\n\n${Array.from({ length: times }, () => lines.join('\n')).join('\n\n')}\n`;
}

function at(sorted: readonly number[], share: number): number {
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? 0;
}

function spread(values: readonly number[]): string {
  const sorted = [...values].sort((a, b) => a - b);
  return `${at(sorted, 0.5).toFixed(0)} (${at(sorted, 0.95).toFixed(0)}) ms`;
}
