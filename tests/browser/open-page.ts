/** What the browser tests of the page do again and again. */
import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect } from 'vitest';
import { launchChromium } from '../support/chromium.ts';
import { type ServedPage, servePage } from '../support/page.ts';

export interface PageOptions {
  readonly width?: number;
  readonly height?: number;
  readonly colourScheme?: 'light' | 'dark';
  readonly reducedMotion?: boolean;
  readonly touch?: boolean;
  /** What stands after `#` in the address. */
  readonly hash?: string;
  /** Opens the address and waits for nothing. */
  readonly bare?: boolean;
  /** Runs in the page before its own scripts. */
  readonly before?: () => void;
}

/** The served page, and a browser to visit it with. */
export interface Site {
  readonly address: string;
  readonly browser: Browser;
  /** A fresh browser profile on the page; it goes after the test. */
  visit(options?: PageOptions): Promise<Page>;
}

/** Serves the page to the tests of the `describe` that this is called in. */
export function servedSite(): Site {
  let browser: Browser;
  let served: ServedPage;
  const open: Page[] = [];
  beforeAll(async () => {
    [browser, served] = await Promise.all([launchChromium(), servePage()]);
  }, 120_000);
  afterAll(async () => {
    await browser?.close();
    await served?.close();
  });
  afterEach(async () => {
    for (const page of open.splice(0)) await page.context().close();
  });
  return {
    get address() {
      return served.address;
    },
    get browser() {
      return browser;
    },
    visit: async (options) => {
      const page = await openPage(browser, served.address, options);
      open.push(page);
      return page;
    },
  };
}

/**
 * Where something stands on the screen, once it does and keeps still: what is drawn anew has no place for a moment, and
 * a page that a finger has pushed glides on.
 */
export async function boxOf(
  what: Locator,
): Promise<{ readonly x: number; readonly y: number; readonly width: number; readonly height: number }> {
  let box: Awaited<ReturnType<Locator['boundingBox']>> = null;
  await expect
    .poll(
      async () => {
        const before = box;
        box = await what.boundingBox();
        return box !== null && before?.x === box.x && before.y === box.y;
      },
      { interval: 100 },
    )
    .toBe(true);
  return box!;
}

/** A fresh browser profile on the page, drawn and reviewed. Whatever the page complains about fails the test. */
export async function openPage(browser: Browser, address: string, options: PageOptions = {}): Promise<Page> {
  const context = await browser.newContext({
    viewport: { width: options.width ?? 1280, height: options.height ?? 860 },
    colorScheme: options.colourScheme ?? 'light',
    reducedMotion: options.reducedMotion ? 'reduce' : 'no-preference',
    acceptDownloads: true,
    hasTouch: options.touch ?? false,
  });
  if (options.before) await context.addInitScript(options.before);
  const page = await context.newPage();
  page.on('pageerror', (error) => {
    throw error;
  });
  page.on('console', (message) => {
    if (message.type() === 'error') throw new Error(`The page complained: ${message.text()}`);
  });
  await page.goto(options.hash === undefined ? address : `${address}#${options.hash}`);
  if (!options.bare) await ready(page);
  return page;
}

/** Waits until the exercise shown is drawn and reviewed. */
export async function ready(page: Page): Promise<void> {
  await page.locator('.stave svg').first().waitFor();
  await page.waitForFunction(
    () => !document.querySelector('.side')?.textContent?.includes('Reading the harmony'),
  );
}

/** Pastes text with nothing but the page in focus. */
export async function pasteText(page: Page, text: string): Promise<void> {
  await page.evaluate((pasted) => {
    const data = new DataTransfer();
    data.setData('text/plain', pasted);
    document.body.dispatchEvent(new ClipboardEvent('paste', { clipboardData: data, bubbles: true }));
  }, text);
}

/** Drops files on the page. */
export async function dropFiles(
  page: Page,
  files: readonly { readonly name: string; readonly bytes: Uint8Array }[],
): Promise<void> {
  await page.evaluate(
    (dropped) => {
      const data = new DataTransfer();
      for (const { name, bytes } of dropped) data.items.add(new File([new Uint8Array(bytes)], name));
      document.body.dispatchEvent(
        new DragEvent('drop', { dataTransfer: data, bubbles: true, cancelable: true }),
      );
    },
    files.map(({ name, bytes }) => ({ name, bytes: [...bytes] })),
  );
}
