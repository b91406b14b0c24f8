/**
 * Reviews in worker threads, for the page's service and the desk alike: several at once, each with a limit of time and
 * memory, so that one bad file harms none. The event loop reads, validates and answers; it never reviews.
 */
import { createRequire } from 'node:module';
import { availableParallelism } from 'node:os';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { Piscina } from 'piscina';
import { compileForShortRuns } from '../../src/cli/short-runs.mjs';
import { factsSchema } from '../../src/desk/index.ts';
import { refusalOf } from '../../src/refusal/refusal.ts';
import type { LikenessReport, LikenessTask } from './likeness-report.ts';
import type { ExerciseResult, ExerciseTask } from './review-exercise.ts';
import { type ScriptResult, type ScriptTask, whose } from './review-script.ts';

export interface ReviewPool {
  /** Never rejects: a script that takes too long or too much memory is told like one that can't be read. */
  review(task: ScriptTask): Promise<ScriptResult>;
  /**
   * One exercise for whoever asks, as the bytes of its answer. @throws {Busy} where it could not be begun in time
   * @throws {Overdue} where it took too long or too much memory
   */
  exercise(task: ExerciseTask): Promise<ExerciseResult>;
  /** Compares the scripts of a stack; in a thread like the others, with more time. */
  likeness(task: LikenessTask): Promise<LikenessReport>;
  /** How many are worked on at once; twice as many waiting keep all threads busy. */
  readonly threads: number;
  close(): Promise<void>;
}

/** More is asked for than can be begun in time. */
export class Busy extends Error {}
/** Begun, and stopped. The message is for the person. */
export class Overdue extends Error {}

/** The hardest file within the limits takes two seconds of processor; what takes this long never ends. */
const MOST_MILLISECONDS = 20_000;
/** Five thousand scripts are compared in some seconds. */
const MOST_COMPARING_MILLISECONDS = 120_000;
/** The hardest takes a quarter of this. */
const MOST_MEGABYTES = 256;
/** How long a request may wait for its turn, and how many may, for each thread. */
const MOST_WAITING_MILLISECONDS = 1_500;
const MOST_WAITING = 32;

/** The folder of the bundle this is part of (see `src/cli/bundle.mjs`); unknown where the sources run as they are. */
declare const PARTWISE_BUNDLE: string | undefined;
const BUNDLE = typeof PARTWISE_BUNDLE === 'string' ? PARTWISE_BUNDLE : undefined;

/** The file of a worker. */
function worker(name: string): string {
  const file =
    BUNDLE === undefined ? new URL(`./${name}.ts`, import.meta.url) : new URL(`${name}.js`, BUNDLE);
  return fileURLToPath(file);
}

const EXERCISE = worker('review-exercise');
const LIKENESS = worker('likeness-report');
const SCRIPT = worker('review-script');

export interface PoolOptions {
  readonly threads?: number;
  /** From the moment it is begun. */
  readonly mostMilliseconds?: number;
  readonly log?: (error: unknown) => void;
}

export function reviewPool({
  threads = Math.max(1, availableParallelism()),
  mostMilliseconds = MOST_MILLISECONDS,
  log = console.error,
}: PoolOptions = {}): ReviewPool {
  const pool = poolOf(threads);
  let closing = false;
  /** What is cut off because the desk is shut is no failure. */
  const tell = (error: unknown): void => {
    if (!closing) log(error);
  };
  const turns = turnstile(threads);
  /** The deadline counts from here: whoever waited has not used any of it. */
  const run = async <T>(task: unknown, filename: string, most = mostMilliseconds): Promise<T> => {
    try {
      return await pool.run(task, { filename, signal: AbortSignal.timeout(most) });
    } finally {
      turns.leave();
    }
  };
  return {
    threads,
    review: async (task) => {
      for (let tries = 1; ; tries++) {
        try {
          await turns.enter();
          const result = await run<ScriptResult>(task, SCRIPT);
          if (result.facts !== undefined) factsSchema.parse(result.facts);
          return result;
        } catch (error) {
          // A machine that was busy with something else may have been the reason: once more, then it is told.
          if (isTimeout(error) && tries === 1) continue;
          tell(error);
          const message = `${reason(error, mostMilliseconds)}${tries > 1 ? ' It was tried twice.' : ''}`;
          return { ...whose(task, ''), error: refusalOf({ message }), again: true };
        }
      }
    },
    exercise: async (task) => {
      if (turns.waiting() >= MOST_WAITING * threads) throw new Busy();
      if (!(await turns.enter(MOST_WAITING_MILLISECONDS))) throw new Busy();
      try {
        return await run<ExerciseResult>(task, EXERCISE);
      } catch (error) {
        if (!isTimeout(error)) tell(error);
        throw new Overdue(reason(error, mostMilliseconds));
      }
    },
    likeness: async (task) => {
      await turns.enter();
      return run<LikenessReport>(task, LIKENESS, MOST_COMPARING_MILLISECONDS);
    },
    close: () => {
      closing = true;
      return pool.close({ force: true });
    },
  };
}

/** The workers load TypeScript as this process does, or the bundle's JavaScript. */
function poolOf(threads: number): Piscina {
  compileForShortRuns();
  // Sources are compiled as they are loaded; a bundle is JavaScript.
  const tsx = pathToFileURL(createRequire(import.meta.url).resolve('tsx')).href;
  const pool = new Piscina({
    filename: SCRIPT,
    minThreads: threads,
    maxThreads: threads,
    idleTimeout: 10_000,
    execArgv: BUNDLE === undefined ? ['--import', tsx] : [],
    resourceLimits: { maxOldGenerationSizeMb: MOST_MEGABYTES },
  });
  // A task that is ended takes its worker with it; the pool starts another.
  pool.on('error', () => {});
  return pool;
}

interface Turnstile {
  /** In turn; false where that took longer than so many milliseconds. */
  enter(atMost?: number): Promise<boolean>;
  leave(): void;
  waiting(): number;
}

/** Lets so many in at once. */
function turnstile(places: number): Turnstile {
  let free = places;
  const queue = new Set<() => void>();
  return {
    waiting: () => queue.size,
    enter: (atMost) => {
      if (free > 0) {
        free--;
        return Promise.resolve(true);
      }
      return new Promise((resolve) => {
        let timer: NodeJS.Timeout | undefined;
        const admit = (): void => {
          clearTimeout(timer);
          resolve(true);
        };
        queue.add(admit);
        if (atMost === undefined) return;
        timer = setTimeout(() => {
          queue.delete(admit);
          resolve(false);
        }, atMost);
      });
    },
    leave: () => {
      const [next] = queue;
      if (next === undefined) free++;
      else {
        queue.delete(next);
        next();
      }
    },
  };
}

function isTimeout(error: unknown): boolean {
  return (error as { name?: string }).name === 'AbortError';
}

function reason(error: unknown, mostMilliseconds: number): string {
  if (isTimeout(error)) {
    return `Reviewing this file took longer than ${mostMilliseconds / 1000} seconds and was stopped. Look at it by itself.`;
  }
  if ((error as { code?: string }).code === 'ERR_WORKER_OUT_OF_MEMORY') {
    return `Reviewing this file took more than ${MOST_MEGABYTES} MB of memory and was stopped. Look at it by itself.`;
  }
  return 'Reviewing this file failed through a fault of ours. Look at it by itself, and keep it for whoever mends the program.';
}
