/** Runs the command line as a person does, and tells what it printed and how it ended. */
import { spawn } from 'node:child_process';
import { Readable } from 'node:stream';
import { fileURLToPath } from 'node:url';
import { vi } from 'vitest';
import { runPartwise } from '../../src/cli/program.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

export interface Ran {
  readonly status: number | null;
  readonly out: string;
  readonly err: string;
}

export interface Running {
  /** Waits until it has printed something like this on standard output; gives what it has printed. */
  says(what: RegExp): Promise<string>;
  /** Ctrl-C or another signal; resolves to its exit status when it has ended. */
  stop(signal?: NodeJS.Signals): Promise<number | null>;
}

/** `partwise ARGS` that goes on until it is stopped. */
export function startPartwise(args: readonly string[]): Running {
  const child = spawn(process.execPath, ['src/cli/partwise.mjs', ...args], {
    cwd: ROOT,
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  let out = '';
  let heard = (): void => {};
  const ended = new Promise<number | null>((resolve) => {
    child.once('close', (status) => resolve(status));
  });
  child.stdout.setEncoding('utf8').on('data', (text: string) => {
    out += text;
    heard();
  });
  return {
    says: (what) =>
      new Promise((resolve, reject) => {
        heard = () => {
          if (what.test(out)) resolve(out);
        };
        heard();
        void ended.then(() => reject(new Error(`It ended without saying ${what}: ${out}`)));
      }),
    stop: async (signal = 'SIGINT') => {
      child.kill(signal);
      return ended;
    },
  };
}

/**
 * `partwise ARGS` in the repository's folder, with `input` on standard input: the same commands in this process, since
 * a process each costs a second of loading. What only a process shows is tested with `partwiseProcess`.
 */
export async function partwise(args: readonly string[], input: string | Uint8Array = ''): Promise<Ran> {
  const out = listening(process.stdout);
  const err = listening(process.stderr);
  const stdin = Object.getOwnPropertyDescriptor(process, 'stdin')!;
  Object.defineProperty(process, 'stdin', { value: Readable.from([Buffer.from(input)]), configurable: true });
  try {
    const status = await runPartwise(args);
    return { status, out: out.heard(), err: err.heard() };
  } finally {
    Object.defineProperty(process, 'stdin', stdin);
    out.stop();
    err.stop();
  }
}

/** Keeps what is written to a stream of this process instead of writing it. */
function listening(stream: NodeJS.WriteStream): { heard(): string; stop(): void } {
  const chunks: Buffer[] = [];
  const spy = vi.spyOn(stream, 'write').mockImplementation((chunk, ...more) => {
    chunks.push(Buffer.from(chunk));
    const done = more.at(-1);
    if (typeof done === 'function') (done as () => void)();
    return true;
  });
  return { heard: () => Buffer.concat(chunks).toString('utf8'), stop: () => spy.mockRestore() };
}

/** `partwise ARGS` as a process of its own, in the repository's folder, with `input` on standard input. */
export function partwiseProcess(args: readonly string[], input: string | Uint8Array = ''): Promise<Ran> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, ['src/cli/partwise.mjs', ...args], { cwd: ROOT });
    let out = '';
    let err = '';
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      out += text;
    });
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      err += text;
    });
    child.once('error', reject);
    child.once('close', (status) => resolve({ status, out, err }));
    child.stdin.on('error', () => {});
    child.stdin.end(input);
  });
}
