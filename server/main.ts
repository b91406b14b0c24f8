/** Starts the service. */
import { once } from 'node:events';
import { existsSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Outcome, Refused, refuse } from '../src/refusal/refusal.ts';
import { createApp, type Parts } from './app.ts';
import type { MarkingDesk } from './desk/marking-desk.ts';
import { reviewPool } from './desk/pool.ts';

/** The built page, beside this folder. */
const PAGE = fileURLToPath(new URL('../dist', import.meta.url));

export interface ServeAt {
  /** 0 for any free port. */
  readonly port: number;
  /** Only this machine can reach 127.0.0.1. */
  readonly host: string;
  /** The marking desk to serve beside the page, where there is one. */
  readonly desk?: MarkingDesk;
  /** Demanded of whoever opens the desk from another machine. */
  readonly passphrase?: string;
}

export interface Service {
  readonly address: string;
  readonly close: () => Promise<void>;
}

/** Listens; rejects with the system's error where it can't. */
export async function serve({ port, host, desk, passphrase }: ServeAt): Promise<Service> {
  const parts = await deskParts(host, desk, passphrase);
  const own = desk === undefined ? reviewPool() : undefined;
  const workers = own === undefined ? {} : { workers: () => own };
  const open = !LOOPBACK.has(host) || passphrase !== undefined;
  const server = createServer(createApp({ page: PAGE, open, ...workers, ...parts }));
  // A client that opens a connection and sends nothing, or takes nothing of its answer, holds it no longer than this.
  server.requestTimeout = 30_000;
  server.setTimeout(30_000);
  server.listen(port, host);
  try {
    await once(server, 'listening');
  } catch (error) {
    await own?.close();
    throw error;
  }
  const bound = server.address() as AddressInfo;
  const name = bound.family === 'IPv6' ? `[${bound.address}]` : bound.address;
  return {
    address: `http://${name}:${bound.port}/`,
    close: async () => {
      await drained(server);
      await own?.close();
    },
  };
}

/** What is under way is answered, as far as that takes no longer than this; then the rest is let go. */
const DRAIN_MILLISECONDS = 4_000;

function drained(server: Server): Promise<void> {
  return new Promise((resolve) => {
    const idle = setInterval(() => server.closeIdleConnections(), 50);
    const late = setTimeout(() => server.closeAllConnections(), DRAIN_MILLISECONDS);
    server.close(() => {
      clearInterval(idle);
      clearTimeout(late);
      resolve();
    });
  });
}

async function deskParts(
  host: string,
  desk: MarkingDesk | undefined,
  passphrase: string | undefined,
): Promise<Pick<Parts, 'desk' | 'passphraseHash'>> {
  if (desk === undefined) return {};
  if (passphrase === undefined) {
    if (LOOPBACK.has(host)) return { desk };
    throw new Refused(
      `At ${host} other machines can reach the desk: it needs a passphrase. Put one in a file and name it with --passphrase-file.`,
    );
  }
  const { hashPassphrase } = await import('./desk/passphrase.ts');
  return { desk, passphraseHash: await hashPassphrase(passphrase) };
}

const LOOPBACK: ReadonlySet<string> = new Set(['127.0.0.1', '::1', 'localhost']);

export type { MarkingDesk } from './desk/marking-desk.ts';

/** Opens a desk; its code and the database are loaded only now. @throws {Refused} */
export async function openDesk(path: string): Promise<MarkingDesk> {
  const { openMarkingDesk } = await import('./desk/marking-desk.ts');
  return openMarkingDesk(path);
}

/** Puts a backup in a desk's place; gives what became of the file that stood there. @throws {Refused} */
export async function restoreDesk(path: string, backup: string): Promise<{ readonly kept?: string }> {
  const { restore } = await import('./desk/backup.ts');
  return restore(path, backup, new Date());
}

/**
 * The worksheet of exercises packed as in a pupil's link, as PDF: the desk's page, served to this machine's Chromium
 * alone while it prints. Where there is no browser or no page, a sentence says which.
 */
export async function worksheetPdf(hash: string): Promise<Outcome<{ readonly pdf: Uint8Array }>> {
  const { chromium, printToPdf } = await import('./desk/pdf.ts');
  const browser = chromium();
  if (browser === undefined) return refuse('no Chromium was found on this machine');
  if (!existsSync(join(PAGE, 'desk', 'index.html')))
    return refuse('the page is not built here yet, which npm run build does once');
  const server = createServer(createApp({ page: PAGE }));
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  try {
    const { port } = server.address() as AddressInfo;
    return { ok: true, pdf: await printToPdf(browser, `http://127.0.0.1:${port}/desk/#/${hash}`) };
  } catch {
    return refuse('Chromium could not print it');
  } finally {
    server.closeAllConnections();
    server.close();
  }
}
