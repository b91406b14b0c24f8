/**
 * `npm run bench:stack [SIZE…]`: scripts marked per second and peak memory at 30, 1,000 and 5,000, how many cores it
 * keeps busy, how memory grows within a run, that a run that is stopped goes on where it was, and from 1,000 on what a
 * teacher waits for at the page. Each run is `partwise mark FOLDER` as a teacher
 * types it, from start to finish, on scripts invented beforehand. Memory is read from /proc, on Linux only.
 */
import { type ChildProcess, spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { plantedFiles } from '../support/planted-stack.ts';
import { measureService } from './stack-service.ts';

const MAIN = fileURLToPath(new URL('../../src/cli/partwise.mjs', import.meta.url));
const SIZES = process.argv.length > 2 ? process.argv.slice(2).map(Number) : [30, 1_000, 5_000];
const SAMPLE_MILLISECONDS = 250;

interface Run {
  readonly seconds: number;
  /** Resident memory in MB, sampled in order. */
  readonly memory: readonly number[];
  readonly out: string;
  readonly err: string;
  /** Processor seconds for each second. */
  readonly cores: number;
}

console.log(`${availableParallelism()} cores; each run includes starting, reading, reviewing, storing.`);
console.log('scripts    seconds   scripts/s   cores   peak MB   MB by quarters of the run   mark book');
for (const size of SIZES) {
  const folder = mkdtempSync(join(tmpdir(), 'partwise-bench-'));
  try {
    writeScripts(join(folder, 'stack'), size);
    const run = await mark(folder);
    const again = await mark(folder, '--csv', join(folder, 'marks.csv'));
    const quarters = [0, 1, 2, 3].map((q) => Math.max(...quarter(run.memory, q)).toFixed(0));
    console.log(
      `${String(size).padStart(7)}${run.seconds.toFixed(1).padStart(11)}${(size / run.seconds).toFixed(1).padStart(12)}${run.cores.toFixed(2).padStart(8)}` +
        `${Math.max(...run.memory)
          .toFixed(0)
          .padStart(10)}   ${quarters.join(' ').padEnd(27)} ${again.seconds.toFixed(1)} s`,
    );
    console.log(
      `  last told on the way: ${
        run.err
          .trim()
          .split('\n')
          .filter((line) => / of \d+ files/.test(line))
          .at(-1) ?? 'nothing, it was done too soon'
      }`,
    );
    console.log(
      `  warnings on the way: ${run.err.split('\n').filter((line) => /warning/i.test(line)).length}`,
    );
    if (size >= 1_000) await measureService(join(folder, 'stack', 'desk', 'desk.sqlite'));
    if (size === 1_000) await stopAndGoOn(folder, size, run.seconds / 2);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function writeScripts(folder: string, candidates: number): void {
  mkdirSync(folder);
  let index = 0;
  for (const { name, bytes } of plantedFiles({ candidates })) {
    // A file system takes no stroke in a name, and 255 bytes of it at most; numbered, so that none covers another.
    writeFileSync(
      join(
        folder,
        `${name
          .replaceAll('/', '-')
          .slice(-120)
          .replace(/\.\w+$/, '')} (${++index})${/\.\w+$/.exec(name)?.[0] ?? ''}`,
      ),
      bytes,
    );
  }
}

/** Kills a run half-way and starts it again: nothing is reviewed twice, nothing is left out. */
async function stopAndGoOn(folder: string, size: number, seconds: number): Promise<void> {
  rmSync(join(folder, 'stack', 'desk'), { recursive: true });
  const child = start(folder);
  await new Promise((done) => setTimeout(done, seconds * 1000));
  child.kill('SIGKILL');
  await new Promise((done) => child.once('close', done));
  const run = await mark(folder);
  const [, fresh, known, unread] = /(\d+) new, (\d+) known already, (\d+) could not/.exec(run.out) ?? [];
  console.log(
    `${String(size).padStart(7)} again, killed after ${seconds.toFixed(0)} s and started anew: ${known} were kept, ${fresh} new ones came in the second run, ${unread} could not be read`,
  );
}

function start(folder: string, ...more: string[]): ChildProcess {
  return spawn(process.execPath, [MAIN, 'mark', join(folder, 'stack'), ...more], {
    stdio: ['ignore', 'pipe', 'pipe'],
  });
}

function mark(folder: string, ...more: string[]): Promise<Run> {
  return new Promise((resolve, reject) => {
    const started = performance.now();
    const child = start(folder, ...more);
    const memory: number[] = [];
    const timer = setInterval(() => {
      processor = Math.max(processor, processorSeconds(child.pid!));
      const now = residentMegabytes(child.pid!);
      if (now !== undefined) memory.push(now);
    }, SAMPLE_MILLISECONDS);
    let out = '';
    let err = '';
    let processor = 0;
    child.stdout!.setEncoding('utf8').on('data', (text: string) => {
      out += text;
    });
    child.stderr!.setEncoding('utf8').on('data', (text: string) => {
      err += text;
    });
    child.once('error', reject);
    child.once('close', (status) => {
      clearInterval(timer);
      // 2 says that some files could not be read: there are broken ones among them on purpose.
      if (status !== 0 && status !== 2) reject(new Error(`partwise mark ended with ${status}: ${out}`));
      else {
        const seconds = (performance.now() - started) / 1000;
        resolve({ seconds, memory, out, err, cores: processor / seconds });
      }
    });
  });
}

function quarter(memory: readonly number[], q: number): number[] {
  const from = Math.floor((memory.length * q) / 4);
  return memory.slice(from, Math.max(from + 1, Math.floor((memory.length * (q + 1)) / 4)));
}

/** User and system time of a process with its threads, in seconds; a clock tick is a hundredth on Linux. */
function processorSeconds(pid: number): number {
  try {
    const fields = readFileSync(`/proc/${pid}/stat`, 'utf8')
      .replace(/^.*\) /, '')
      .split(' ');
    return (Number(fields[11]) + Number(fields[12])) / 100;
  } catch {
    return 0;
  }
}

function residentMegabytes(pid: number): number | undefined {
  try {
    const kilobytes = /VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1];
    return kilobytes === undefined ? undefined : Number(kilobytes) / 1024;
  } catch {
    return undefined;
  }
}
