/** The page as people get it: built, and served by the service with its real headers. */
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { createApp } from '../../server/app.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const CACHE = join(ROOT, '.cache');

export interface ServedPage {
  readonly address: string;
  close(): Promise<void>;
}

/** Builds the page where its sources have changed since the last build, and serves it on a free port. */
export async function servePage(): Promise<ServedPage> {
  const app = createApp({ page: await builtPage() });
  const server = createServer(app);
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  return {
    address: `http://127.0.0.1:${port}/`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

/** The folder with the page built from the sources as they are. Several test files may ask at once. */
export async function builtPage(): Promise<string> {
  const folder = join(CACHE, `page-${stampOfSources()}`);
  if (existsSync(join(folder, 'index.html'))) return folder;
  mkdirSync(CACHE, { recursive: true });
  for (const old of readdirSync(CACHE))
    if (old.startsWith('page-') && Date.now() - statSync(join(CACHE, old)).mtimeMs > 3_600_000)
      rmSync(join(CACHE, old), { recursive: true, force: true });
  const building = join(CACHE, `building-${process.pid}-${Date.now()}`);
  // A test runner says NODE_ENV=test; the page is to be what people get, with its service worker.
  const before = process.env.NODE_ENV;
  process.env.NODE_ENV = 'production';
  try {
    await build({
      configFile: join(ROOT, 'web/vite.config.ts'),
      mode: 'production',
      logLevel: 'error',
      build: { outDir: building, emptyOutDir: true },
    });
  } finally {
    if (before === undefined) delete process.env.NODE_ENV;
    else process.env.NODE_ENV = before;
  }
  writeFileSync(join(building, 'built'), new Date().toISOString());
  try {
    renameSync(building, folder);
  } catch {
    // Another test file was quicker: its build is the same.
    rmSync(building, { recursive: true, force: true });
  }
  return folder;
}

function stampOfSources(): string {
  const hash = createHash('sha256');
  for (const folder of ['src', 'web', 'package-lock.json']) note(join(ROOT, folder), hash);
  return hash.digest('hex').slice(0, 16);
}

function note(path: string, hash: ReturnType<typeof createHash>): void {
  const stat = statSync(path);
  if (stat.isDirectory()) for (const name of readdirSync(path).sort()) note(join(path, name), hash);
  else hash.update(`${path}:${stat.size}:${stat.mtimeMs}\n`);
}
