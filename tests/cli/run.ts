/** Runs the command line as a person does, and tells what it printed and how it ended. */
import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

export interface Ran {
  readonly status: number | null;
  readonly out: string;
  readonly err: string;
}

export interface Running {
  /** Waits until it has printed something like this on standard output. */
  says(what: RegExp): Promise<void>;
  /** Ctrl-C; resolves when it has ended. */
  stop(): Promise<void>;
}

/** `partwise ARGS` that goes on until it is stopped. */
export function startPartwise(args: readonly string[]): Running {
  const child = spawn(process.execPath, ['--import', 'tsx', 'src/cli/main.ts', ...args], {
    cwd: ROOT,
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  let out = '';
  let heard = (): void => {};
  const ended = new Promise<void>((resolve) => {
    child.once('close', () => resolve());
  });
  child.stdout.setEncoding('utf8').on('data', (text: string) => {
    out += text;
    heard();
  });
  return {
    says: (what) =>
      new Promise((resolve, reject) => {
        heard = () => {
          if (what.test(out)) resolve();
        };
        heard();
        void ended.then(() => reject(new Error(`It ended without saying ${what}: ${out}`)));
      }),
    stop: async () => {
      child.kill('SIGINT');
      await ended;
    },
  };
}

/** `partwise ARGS` in the repository's folder, with `input` on standard input. */
export function partwise(args: readonly string[], input: string | Uint8Array = ''): Promise<Ran> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, ['--import', 'tsx', 'src/cli/main.ts', ...args], { cwd: ROOT });
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
