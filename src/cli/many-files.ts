/** Many files on every core, told in the order they were given. */

import { createRequire } from 'node:module';
import { availableParallelism } from 'node:os';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { Piscina } from 'piscina';
import { refuse } from '../refusal/refusal.ts';
import { readInput, reason } from './input.ts';
import { type Manner, type Told, tellFile } from './review-file.ts';
import type { FileTask } from './review-files.ts';
import { compileForShortRuns } from './short-runs.mjs';

/** Files under way or waiting to be told, for each thread: the slow one in front holds no more back. */
const AHEAD = 8;

/** What is printed of each file, in order. A worker that fails tells so of its file, and the others still come. */
export async function* tellMany(
  files: readonly string[],
  manner: Manner,
  threads = Math.max(1, availableParallelism()),
): AsyncGenerator<Told> {
  compileForShortRuns();
  const pool = new Piscina({ ...worker(), minThreads: threads, maxThreads: threads });
  const tell = async (task: FileTask): Promise<Told> => {
    try {
      return await pool.run(task);
    } catch (error) {
      const why = error instanceof Error ? error.message : reason(error);
      return tellFile(task.file, refuse(`Its review stopped, which is our mistake (${why}).`), manner);
    }
  };
  const ahead: Promise<Told>[] = [];
  try {
    for (const file of files) {
      // Standard input is this thread's alone.
      const input = file === '-' ? await readInput(file) : undefined;
      ahead.push(tell({ file, manner, ...(input === undefined ? {} : { input }) }));
      if (ahead.length >= AHEAD * threads) yield await ahead.shift()!;
    }
    for (const one of ahead) yield await one;
  } finally {
    await pool.close({ force: true });
  }
}

/** The folder of the bundle this is part of (see `bundle.mjs`); unknown where the sources run as they are. */
declare const PARTWISE_BUNDLE: string | undefined;

/** Where the workers' code lies, and what they need to load it. */
function worker(): { readonly filename: string; readonly execArgv: string[] } {
  if (typeof PARTWISE_BUNDLE === 'string')
    return { filename: fileURLToPath(new URL('review-files.js', PARTWISE_BUNDLE)), execArgv: [] };
  const tsx = pathToFileURL(createRequire(import.meta.url).resolve('tsx')).href;
  return {
    filename: fileURLToPath(new URL('./review-files.ts', import.meta.url)),
    execArgv: ['--import', tsx],
  };
}
