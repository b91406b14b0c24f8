/** How long reading and reviewing take: one chorale, many bars, a whole process, many files; each beside what it is compared with. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { availableParallelism, cpus, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { openScore } from '../../src/open/open.ts';
import { CHORALE } from '../../src/profiles/profile.ts';
import { reviewScore } from '../../src/review/review.ts';
import { fermatasInEachBar } from '../support/worst-cases.ts';

const COMMAND = fileURLToPath(new URL('../../src/cli/partwise.mjs', import.meta.url));
const ROUNDS = 6;
const STARTS = 9;
const MANY = 1_000;
/** Put before a command, it keeps it to one core. */
const ONE_CORE = ['taskset', '-c', '0'] as const;

/** @param chorales the bytes of the open chorales */
export function printSpeed(chorales: readonly Uint8Array[]): void {
  console.log(
    `${chorales.length} chorales; ${availableParallelism()} cores of ${cpus()[0]?.model.trim() ?? 'unknown make'}`,
  );
  const row = (what: string, figure: string, beside: string) =>
    console.log(`  ${what.padEnd(44)}${figure.padStart(20)}   ${beside}`);
  const [reading, both] = perChorale(chorales);
  row('one chorale read, processor', `${reading.toFixed(2)} ms`, 'wanted 2; a general library 22');
  row('one chorale read and reviewed, processor', `${both.toFixed(2)} ms`, 'wanted 8; its plain recipe 270');
  const [short, long] = [30, 480].map(forBars) as [number, number];
  row(
    'reviewed: 30 and 480 bars, processor',
    `${short.toFixed(0)} and ${long.toFixed(0)} ms`,
    `${(long / short).toFixed(1)} times as long for 16 times the bars`,
  );
  inFolder(chorales, (paths) => {
    row('command line, one file, whole process', `${seconds(wholeProcess(paths))}`, 'wanted 0.25 s');
    row(
      '  the same, processor',
      `${seconds(wholeProcess(paths, true))}`,
      `of which Node alone ${seconds(bare())}`,
    );
    const many = filesASecond(paths);
    const one = filesASecond(paths, ONE_CORE);
    row(
      `${MANY} files, all cores, whole process`,
      `${many.toFixed(0)} a second`,
      Number.isNaN(one)
        ? 'wanted 1.7 times one core (the command taskset, which keeps to one, is not here)'
        : `${(many / one).toFixed(2)} times one core\u2019s ${one.toFixed(0)} a second; wanted 1.7`,
    );
  });
}

/** Milliseconds of processor a chorale, for reading and for both: of several rounds the quickest, after one to warm up. */
function perChorale(chorales: readonly Uint8Array[]): [number, number] {
  const rounds = Array.from({ length: ROUNDS + 1 }, (): [number, number] => {
    const reading = processor(() => {
      for (const bytes of chorales) openScore(bytes);
    });
    const both = processor(() => {
      for (const bytes of chorales) review(bytes);
    });
    return [reading / chorales.length, both / chorales.length];
  }).slice(1);
  return [Math.min(...rounds.map(([one]) => one)), Math.min(...rounds.map(([, two]) => two))];
}

function forBars(bars: number): number {
  const bytes = new TextEncoder().encode(fermatasInEachBar(bars));
  return Math.min(...Array.from({ length: ROUNDS }, () => processor(() => review(bytes))));
}

function review(bytes: Uint8Array): void {
  const opened = openScore(bytes);
  if (opened.ok) reviewScore(opened.score, CHORALE);
}

/** The chorales as files, for as long as `use` takes. */
function inFolder(chorales: readonly Uint8Array[], use: (paths: readonly string[]) => void): void {
  const folder = mkdtempSync(join(tmpdir(), 'partwise-speed-'));
  const paths = chorales.map((bytes, i) => {
    const path = join(folder, `${i}.mxl`);
    writeFileSync(path, bytes);
    return path;
  });
  try {
    use(paths);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** The median of several starts, after one that may have to make the bundle. */
function wholeProcess([path]: readonly string[], ofProcessor = false): number {
  return medianOf(() => run([COMMAND, 'review', '--json', path!]), ofProcessor);
}

function bare(): number {
  return medianOf(() => run(['-e', '0']), true);
}

function medianOf(
  start: () => { readonly wall: number; readonly used: number },
  ofProcessor: boolean,
): number {
  start();
  const times = Array.from({ length: STARTS }, () => (ofProcessor ? start().used : start().wall));
  return times.toSorted((a, b) => a - b)[STARTS >> 1]!;
}

/** NaN where what is to be put before the command isn't installed. */
function filesASecond(paths: readonly string[], before: readonly string[] = []): number {
  if (before.length > 0 && spawnSync(before[0]!, ['--version']).status !== 0) return Number.NaN;
  const files = Array.from({ length: MANY }, (_, i) => paths[i % paths.length]!);
  return (MANY * 1000) / run([COMMAND, 'review', '--json', ...files], before).wall;
}

/** Milliseconds on the clock, and of processor, of a whole process of Node. */
function run(
  args: readonly string[],
  before: readonly string[] = [],
): { readonly wall: number; readonly used: number } {
  const from = performance.now();
  // What children used is told by the system once they have ended.
  const ended = spawnSync(
    '/bin/sh',
    ['-c', `"$@" >/dev/null; times`, 'sh', ...before, process.execPath, ...args],
    {
      encoding: 'utf8',
      maxBuffer: 1 << 28,
    },
  );
  const wall = performance.now() - from;
  const children = ended.stdout.trim().split('\n').at(-1) ?? '';
  const used = [...children.matchAll(/(\d+)m([\d.]+)s/g)].reduce(
    (sum, [, minutes, seconds]) => sum + Number(minutes) * 60_000 + Number(seconds) * 1000,
    0,
  );
  return { wall, used };
}

function processor(work: () => void): number {
  const from = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(from);
  return (user + system) / 1000;
}

function seconds(milliseconds: number): string {
  return `${(milliseconds / 1000).toFixed(2)} s`;
}
