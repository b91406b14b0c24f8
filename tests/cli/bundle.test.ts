import { spawnSync } from 'node:child_process';
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { bundleOf, fingerprint } from '../../src/cli/bundle.mjs';
import { partwise, partwiseProcess } from './run.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const exercises = readdirSync(join(ROOT, 'fixtures/exercises')).filter((name) => name.endsWith('.txt'));

let root: string;
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'partwise-bundle-'));
  for (const folder of ['src/cli', 'server/desk', 'node_modules'])
    mkdirSync(join(root, folder), { recursive: true });
  writeFileSync(join(root, 'src/cli/main.ts'), 'export const said: string = "first";');
  writeFileSync(join(root, 'src/cli/review-files.ts'), 'export default 1;');
  writeFileSync(join(root, 'server/desk/review-script.ts'), 'export default 2;');
  writeFileSync(join(root, 'server/desk/review-exercise.ts'), 'export default import.meta.url;');
  writeFileSync(join(root, 'server/desk/likeness-report.ts'), 'export default 3;');
  writeFileSync(join(root, 'package.json'), '{}');
});
afterEach(() => rmSync(root, { recursive: true }));

async function saidBy(folder: string | undefined): Promise<unknown> {
  return (await import(pathToFileURL(join(folder!, 'main.js')).href)).said;
}

describe('the bundle of the command line', () => {
  it('is made once, and anew for sources that changed', async () => {
    const first = await bundleOf(root);
    expect(await saidBy(first)).toBe('first');
    expect(await bundleOf(root)).toBe(first);
    // As long as before, and within the same second.
    writeFileSync(join(root, 'src/cli/main.ts'), 'export const said: string = "other";');
    const second = await bundleOf(root);
    expect(second).not.toBe(first);
    expect(await saidBy(second)).toBe('other');
  });

  it('is another where a source is added or a package installed', () => {
    const before = fingerprint(root);
    writeFileSync(join(root, 'server/new.ts'), '');
    const added = fingerprint(root);
    writeFileSync(join(root, 'node_modules/.package-lock.json'), '{}');
    expect(new Set([before, added, fingerprint(root)]).size).toBe(3);
  });

  it('lets what looks for files beside its source find them', async () => {
    const folder = await bundleOf(root);
    const { default: place } = await import(pathToFileURL(join(folder!, 'review-exercise.js')).href);
    expect(place).toBe(pathToFileURL(join(root, 'server/desk/review-exercise.ts')).href);
  });

  it('is done without where none can be kept, or a source has a slip', async () => {
    writeFileSync(join(root, 'node_modules/.cache'), 'no folder');
    expect(await bundleOf(root)).toBeUndefined();
    rmSync(join(root, 'node_modules/.cache'));
    writeFileSync(join(root, 'src/cli/main.ts'), 'export const = ;');
    expect(await bundleOf(root)).toBeUndefined();
    expect(existsSync(join(root, 'node_modules/.cache/partwise', fingerprint(root)))).toBe(false);
  });

  it('has no more than a few from before beside it', async () => {
    let last: string | undefined;
    for (let i = 0; i < 8; i++) {
      writeFileSync(join(root, 'src/cli/main.ts'), `export const said: string = "${'a'.repeat(i)}";`);
      last = await bundleOf(root);
    }
    expect(readdirSync(join(root, 'node_modules/.cache/partwise')).length).toBe(6);
    expect(existsSync(last!)).toBe(true);
  });
});

describe('partwise as a process', () => {
  it('has every worker of the service in its bundle', async () => {
    const pool = readFileSync(join(ROOT, 'server/desk/pool.ts'), 'utf8');
    const workers = [...pool.matchAll(/worker\('([a-z-]+)'\)/g)].map(([, name]) => name!);
    expect(workers.length).toBeGreaterThan(1);
    const folder = (await bundleOf(ROOT))!;
    for (const name of workers) expect(existsSync(join(folder, `${name}.js`)), name).toBe(true);
  });

  it('says what the sources say, with the same status', async () => {
    const args = ['review', '--json', '-'];
    const faulty = 'key: C major\nmetre: 4/4\nS: G4 A4 |\nA: E4 F4 |\nT: C4 D4 |\nB: C3 D3 |\n';
    const [bundled, sources] = [await partwiseProcess(args, faulty), await partwise(args, faulty)];
    expect(bundled).toEqual(sources);
    expect(bundled.status).toBe(1);
  });

  it('compiles its sources where no bundle can be kept', () => {
    const copy = join(root, 'checkout');
    for (const part of ['src', 'server', 'package.json'])
      cpSync(join(ROOT, part), join(copy, part), { recursive: true });
    mkdirSync(join(copy, 'node_modules'));
    for (const name of readdirSync(join(ROOT, 'node_modules')))
      if (name !== '.cache') symlinkSync(join(ROOT, 'node_modules', name), join(copy, 'node_modules', name));
    writeFileSync(join(copy, 'node_modules/.cache'), 'no folder');
    const args = ['src/cli/partwise.mjs', 'explain', 'parallel-fifths'];
    const { status, stdout } = spawnSync(process.execPath, args, { cwd: copy, encoding: 'utf8' });
    expect(status).toBe(0);
    expect(stdout).toContain('Parallel fifths');
  });
});

describe('many files', () => {
  const names = Array.from({ length: 30 }, (_, i) =>
    i === 7 ? 'no-such-file.txt' : join(ROOT, 'fixtures/exercises', exercises[i % exercises.length]!),
  );

  it.each([[['--json']], [[]]])('are told as one after another would be, in order (%j)', async (options) => {
    const many = await partwiseProcess(['review', ...options, ...names]);
    const apart = { out: [] as string[], err: '', status: 0 };
    for (const name of names) {
      const one = await partwise(['review', ...options, name]);
      apart.out.push(one.out);
      apart.err += one.err;
      apart.status = Math.max(apart.status, one.status!);
    }
    expect(many.out).toBe(apart.out.join(options.length > 0 ? '' : '\n'));
    expect(many.err).toBe(apart.err);
    expect(many.status).toBe(apart.status);
  });

  it('leave standard input in its place among them', async () => {
    const text = readFileSync(join(ROOT, 'fixtures/exercises', exercises[0]!));
    const { out } = await partwiseProcess(
      ['review', '--json', ...names.slice(0, 5), '-', ...names.slice(5)],
      text,
    );
    const lines = out.trimEnd().split('\n');
    expect(lines.length).toBe(31);
    expect(JSON.parse(lines[5]!)).toMatchObject({ file: '-', bars: expect.any(Number) });
  });
});
