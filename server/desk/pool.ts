/** Reviews in worker threads: several at once, each with a limit of time and memory, so that one bad file harms none. */
import { createRequire } from 'node:module';
import { availableParallelism } from 'node:os';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { Piscina } from 'piscina';
import { factsSchema } from '../../src/desk/index.ts';
import type { ScriptResult, ScriptTask } from './review-script.ts';

export interface ReviewPool {
  /** Never rejects: a script that takes too long or too much memory is told like one that can't be read. */
  review(task: ScriptTask): Promise<ScriptResult>;
  /** How many are worked on at once; twice as many waiting keep all threads busy. */
  readonly threads: number;
  close(): Promise<void>;
}

/** A long exercise takes some 20 ms; what takes this long never ends. */
const MOST_MILLISECONDS = 20_000;
const MOST_MEGABYTES = 512;

export function reviewPool(
  threads = Math.max(1, availableParallelism()),
  log: (error: unknown) => void = console.error,
): ReviewPool {
  // The workers load TypeScript as this process does.
  const tsx = pathToFileURL(createRequire(import.meta.url).resolve('tsx')).href;
  const pool = new Piscina<ScriptTask, ScriptResult>({
    filename: fileURLToPath(new URL('./review-script.ts', import.meta.url)),
    minThreads: threads,
    maxThreads: threads,
    idleTimeout: 10_000,
    execArgv: ['--import', tsx],
    resourceLimits: { maxOldGenerationSizeMb: MOST_MEGABYTES },
  });
  // A task that is ended takes its worker with it; the pool starts another.
  pool.on('error', () => {});
  return {
    threads,
    review: async (task) => {
      try {
        const result = await pool.run(task, { signal: AbortSignal.timeout(MOST_MILLISECONDS) });
        if (result.facts !== undefined) factsSchema.parse(result.facts);
        return result;
      } catch (error) {
        log(error);
        return { draft: 1, error: { message: reason(error) }, again: true };
      }
    },
    close: () => pool.close({ force: true }),
  };
}

function reason(error: unknown): string {
  const { name, code } = error as { name?: string; code?: string };
  if (name === 'AbortError') {
    return `Reviewing this file took longer than ${MOST_MILLISECONDS / 1000} seconds and was stopped. Look at it by itself.`;
  }
  if (code === 'ERR_WORKER_OUT_OF_MEMORY') {
    return `Reviewing this file took more than ${MOST_MEGABYTES} MB of memory and was stopped. Look at it by itself.`;
  }
  return 'Reviewing this file failed through a fault of ours. Look at it by itself, and keep it for whoever mends the program.';
}
