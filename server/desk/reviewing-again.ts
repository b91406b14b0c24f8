/** Reviewing again what a change of settings calls for: it goes on by itself, tells how far it is, and can be stopped. */
import { carryOver } from './carrying.ts';
import { settleIdentities } from './identifying.ts';
import { taskFor } from './intake.ts';
import type { ReviewPool } from './pool.ts';
import type { Desk } from './store.ts';

/** Scripts that the settings call to be reviewed again. */
export interface Reviewing {
  readonly left: number;
  readonly of: number;
  readonly going: boolean;
}

type Progress = (done: number, of: number) => void;

export interface ReviewingAgain {
  /** Gives how many there were. */
  review(stack: number, progress?: Progress): Promise<number>;
  inBackground(stack: number): void;
  standing(stack: number): Reviewing;
  /** No other script is begun. */
  stop(): void;
  /** When the last that was begun has ended. */
  stopped(): Promise<void>;
}

export function reviewingAgain(
  desk: Desk,
  workers: () => ReviewPool,
  log: (error: unknown) => void,
): ReviewingAgain {
  let stopping = false;
  const going = new Map<number, { readonly of: number; done: number; readonly ended: Promise<unknown> }>();

  const review = (stack: number, progress: Progress = () => {}): Promise<number> =>
    reviewAll(desk, workers, stack, { progress, stopping: () => stopping });

  function inBackground(stack: number): void {
    if (going.has(stack)) return;
    const of = countToReviewAgain(desk, stack);
    const { revision } = desk.stack(stack);
    if (of === 0) return;
    const ended = review(stack, (done) => {
      going.get(stack)!.done = done;
    })
      .then(() => {
        if (!stopping) settleIdentities(desk, desk.stack(stack));
      })
      .catch(log)
      .finally(() => {
        going.delete(stack);
        // The settings may have been changed once more meanwhile.
        if (!stopping && desk.stack(stack).revision !== revision) inBackground(stack);
      });
    going.set(stack, { of, done: 0, ended });
  }

  return {
    review,
    inBackground,
    standing: (stack) => {
      const now = going.get(stack);
      if (now !== undefined) return { left: now.of - now.done, of: now.of, going: true };
      const left = countToReviewAgain(desk, stack);
      return { left, of: left, going: false };
    },
    stop: () => {
      stopping = true;
    },
    stopped: async () => {
      await Promise.all([...going.values()].map(({ ended }) => ended));
    },
  };
}

/** From the files kept on the desk. Decisions stay as they are. Gives how many there were. */
async function reviewAll(
  desk: Desk,
  workers: () => ReviewPool,
  stack: number,
  { progress, stopping }: { readonly progress: Progress; readonly stopping: () => boolean },
): Promise<number> {
  const waiting = toReviewAgain(desk, stack);
  const total = waiting.length;
  if (total === 0) return 0;
  const pool = workers();
  let done = 0;
  const work = async (): Promise<void> => {
    for (let next = waiting.shift(); next !== undefined && !stopping(); next = waiting.shift()) {
      const { id, file, sum } = next;
      const content = desk.content(id);
      const result = await pool.review(taskFor(desk.stack(stack), { file, content }, desk.script(id).voices));
      // What is stopped on the way is no fault of the file's: it is reviewed when the desk is next opened.
      if (stopping()) return;
      // A failure of ours leaves what is known as it is, to be tried once more.
      if (result.again === undefined) desk.addScript(stack, { file, sum, content, ...result });
      if (result.facts !== undefined) carryOver(desk, id);
      progress(++done, total);
    }
  };
  await Promise.all(Array.from({ length: pool.threads }, work));
  return total;
}

/** The failure was ours, or the stack has another profile or brief since. */
function toReviewAgain(
  { db }: Desk,
  stack: number,
): { readonly id: number; readonly file: string; readonly sum: string }[] {
  return db.prepare('SELECT id, file, sum FROM scripts WHERE stack = ? AND again ORDER BY id').all(stack) as {
    id: number;
    file: string;
    sum: string;
  }[];
}

function countToReviewAgain({ db }: Desk, stack: number): number {
  return db.prepare('SELECT count(*) FROM scripts WHERE stack = ? AND again').pluck().get(stack) as number;
}
