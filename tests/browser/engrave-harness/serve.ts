/** Serves the engraver's own page to a browser test, from source, on a port of its own. */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { createServer } from 'vite';
import type {} from './main.ts';

export interface HarnessServer {
  readonly url: string;
  close(): Promise<void>;
}

export async function serveHarness(): Promise<HarnessServer> {
  const cacheDir = await mkdtemp(join(tmpdir(), 'partwise-engrave-'));
  const server = await createServer({
    root: fileURLToPath(new URL('.', import.meta.url)),
    configFile: false,
    cacheDir,
    logLevel: 'error',
    // Other files may change while the tests run: the page must not reload under them.
    server: {
      port: 5391,
      hmr: false,
      watch: null,
      fs: { allow: [fileURLToPath(new URL('../../..', import.meta.url))] },
    },
    optimizeDeps: { include: ['vexflow/core', 'tonal', 'saxes', 'fflate', 'zod'] },
  });
  await server.listen();
  const url = server.resolvedUrls?.local[0];
  if (url === undefined) throw new Error('The test page is served nowhere.');
  return {
    url,
    close: async () => {
      await server.close();
      await rm(cacheDir, { recursive: true, force: true });
    },
  };
}

/** Opens the page at a width and waits until it can be driven; errors in the page fail the test that sees them. */
export async function openHarness(browser: Browser, url: string, width: number): Promise<Page> {
  const page = await browser.newPage({ viewport: { width, height: 900 } });
  page.on('pageerror', (error) => {
    throw error;
  });
  await page.goto(url);
  await page.waitForFunction(() => window.harness !== undefined, undefined, { timeout: 60_000 });
  return page;
}
