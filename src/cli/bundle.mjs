/**
 * The command line as a bundle of JavaScript, since compiling its TypeScript takes a second at each start. Bundles lie in
 * `node_modules/.cache/partwise`, each under a name made of what it was bundled from: sources that changed have another
 * name, so that no bundle is ever stale. Plain JavaScript, because it runs before anything can compile.
 */
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

/** By the name a bundled file gets: what begins a process or a worker. */
const ENTRIES = {
  main: 'src/cli/main.ts',
  'review-files': 'src/cli/review-files.ts',
  'review-script': 'server/desk/review-script.ts',
  'review-exercise': 'server/desk/review-exercise.ts',
  'likeness-report': 'server/desk/likeness-report.ts',
};

/** Left where they are: what the service alone needs, and what looks for files of its own beside itself. */
const OUTSIDE = [
  'better-sqlite3',
  'esbuild',
  'express',
  'express-rate-limit',
  'express-session',
  'express-static-gzip',
  'helmet',
  'piscina',
  'subset-font',
  'tsx',
  'vite',
];

/** Older bundles that stay: a service may still be running from one of them. */
const KEPT = 5;

/**
 * The folder of the bundle of the sources as they are, made where it isn't there yet. Undefined where it can't be made
 * or kept: in a checkout that can't be written to, or with a slip in the sources, which is told when they are loaded.
 * @param {string} root the checkout
 * @returns {Promise<string | undefined>}
 */
export async function bundleOf(root) {
  const cache = join(root, 'node_modules', '.cache', 'partwise');
  const folder = join(cache, fingerprint(root));
  if (existsSync(folder)) return folder;
  const work = `${folder}.${process.pid}`;
  try {
    mkdirSync(work, { recursive: true });
  } catch {
    return undefined;
  }
  try {
    await bundle(root, work, folder);
    // Whoever else was making it meanwhile made the same.
    if (!existsSync(folder)) renameSync(work, folder);
    forgetOld(cache);
  } catch {
    // Another process was quicker, or there is a slip in the sources.
  }
  rmSync(work, { recursive: true, force: true });
  return existsSync(folder) ? folder : undefined;
}

/**
 * Changes whenever a source, an installed package, this file or Node does.
 * @param {string} root
 */
export function fingerprint(root) {
  const hash = createHash('sha1').update(`${root} ${process.version}`);
  const add = (/** @type {string} */ path) => {
    const info = statSync(path, { throwIfNoEntry: false });
    if (info !== undefined) hash.update(`${path} ${info.mtimeMs} ${info.size}\n`);
  };
  const addAll = (/** @type {string} */ folder) => {
    for (const entry of readdirSync(folder, { withFileTypes: true })) {
      // Pieced together by hand: this is asked at every start, of some hundred files.
      const path = `${folder}/${entry.name}`;
      if (entry.isDirectory()) addAll(path);
      else if (/\.m?ts$|\.mjs$/.test(path)) add(path);
    }
  };
  for (const part of ['src', 'server']) addAll(`${root}/${part}`);
  // npm writes the latter with every change to what is installed.
  for (const path of ['package.json', 'node_modules/.package-lock.json']) add(join(root, path));
  return hash.digest('hex').slice(0, 16);
}

/** Bundles into `work`, as it will be found in `folder`. */
async function bundle(root, work, folder) {
  const { build } = await import('esbuild');
  await build({
    absWorkingDir: root,
    entryPoints: ENTRIES,
    outdir: work,
    bundle: true,
    splitting: true,
    format: 'esm',
    platform: 'node',
    target: 'node20',
    external: OUTSIDE,
    minifySyntax: true,
    minifyWhitespace: true,
    logLevel: 'silent',
    define: { PARTWISE_BUNDLE: JSON.stringify(`${pathToFileURL(folder).href}/`) },
    // Packages of the older kind ask for Node's own modules by `require`.
    banner: {
      js: "import{createRequire as ownRequire}from'node:module';const require=ownRequire(import.meta.url);",
    },
    plugins: [whereItWas],
  });
}

/** What looks for files beside its source goes on looking there. */
const whereItWas = {
  name: 'where it was',
  setup(build) {
    build.onLoad({ filter: /(src|server)[\\/].*\.ts$/ }, async ({ path }) => {
      const text = await readFile(path, 'utf8');
      if (!text.includes('import.meta.url')) return undefined;
      const url = JSON.stringify(pathToFileURL(path).href);
      return { contents: text.replaceAll('import.meta.url', url), loader: 'ts' };
    });
  },
};

/** @param {string} cache */
function forgetOld(cache) {
  const bundles = readdirSync(cache)
    .map((name) => ({ path: join(cache, name), made: statSync(join(cache, name)).mtimeMs }))
    .sort((a, b) => b.made - a.made);
  for (const { path } of bundles.slice(1 + KEPT)) rmSync(path, { recursive: true, force: true });
}
