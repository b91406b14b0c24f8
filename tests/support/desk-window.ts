/** A desk served by a process of its own, and windows on it, for browser tests. */
import { type ChildProcess, spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';

const SERVICE = fileURLToPath(new URL('./desk-service.ts', import.meta.url));

/** Starts the service in a process of its own; gives its address. */
export function startService(
  page: string,
  desk: string,
  port = 0,
): Promise<{ child: ChildProcess; address: string }> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, ['--import', 'tsx', SERVICE, page, desk, String(port)], {
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    child.once('error', reject);
    child.once('exit', (code) => reject(new Error(`The service ended with ${code}.`)));
    child
      .stdout!.setEncoding('utf8')
      .once('data', (text: string) => resolve({ child, address: text.trim() }));
  });
}

/** A window of its own, with nothing kept from another; what goes wrong in it fails the test. */
export async function openWindow(
  browser: Browser,
  address: string,
  viewport = { width: 1360, height: 860 },
): Promise<Page> {
  const context = await browser.newContext({
    viewport,
    reducedMotion: 'reduce',
    ...(viewport.width < 500 ? { hasTouch: true, isMobile: true } : {}),
  });
  const page = await context.newPage();
  page.on('pageerror', (error) => {
    throw error;
  });
  page.on('console', (message) => {
    // Nothing on the page may need what the security policy forbids.
    if (message.text().includes('Content Security Policy')) throw new Error(message.text());
  });
  page.on('dialog', (dialog) => {
    throw new Error(`A script of a script ran: ${dialog.message()}`);
  });
  await page.goto(`${address}desk/`);
  return page;
}

/** Makes a stack of texts without a page; gives its number. */
export async function stackOf(
  address: string,
  settings: { readonly name: string; readonly [setting: string]: string },
  files: readonly { readonly name: string; readonly bytes: Uint8Array }[],
): Promise<number> {
  const send = async (path: string, type: string, body: string | Uint8Array<ArrayBuffer>) => {
    const response = await fetch(`${address}api/desk${path}`, {
      method: 'POST',
      headers: { 'Content-Type': type },
      body,
    });
    if (!response.ok) throw new Error(`${path}: ${response.status} ${await response.text()}`);
    return response.json() as Promise<{ stack: { id: number } }>;
  };
  const { stack } = await send('/stacks', 'application/json', JSON.stringify(settings));
  for (const { name, bytes } of files)
    await send(
      `/stacks/${stack.id}/scripts?file=${encodeURIComponent(name)}`,
      'application/octet-stream',
      new Uint8Array(bytes),
    );
  await send(`/stacks/${stack.id}/settled`, 'application/json', '{}');
  return stack.id;
}
