/** Takes files onto a stack: reviewed in the pool, stored some at a time, none of them able to stop the rest. */
import { createHash } from 'node:crypto';
import { isNoScript } from '../../src/desk/index.ts';
import { carryOver } from './carrying.ts';
import { hasSame, setApart } from './identifying.ts';
import { saidVoices } from './open-script.ts';
import type { ReviewPool } from './pool.ts';
import type { Stack } from './records.ts';
import type { ScriptTask } from './review-script.ts';
import type { Desk } from './store.ts';

export interface Incoming {
  readonly file: string;
  readonly content: Uint8Array;
}

export interface Taken {
  readonly file: string;
  /**
   * `new`; `known`: this very file is on the stack already; `unreadable`: kept, with the reason; `no script`: a picture,
   * a document, of which the name is kept.
   */
  readonly outcome: 'new' | 'known' | 'unreadable' | 'no script';
  readonly script?: number;
  readonly message?: string;
}

/** What the pool is asked, under a stack's settings; `own` are voices given out for this script alone. */
export function taskFor(stack: Stack, { file, content }: Incoming, own?: string): ScriptTask {
  return {
    file,
    content,
    profile: stack.profile,
    voices: saidVoices(stack.voices, own),
    ...(stack.brief === undefined ? {} : { brief: stack.brief }),
    ...(stack.pattern === undefined ? {} : { pattern: stack.pattern }),
  };
}

/** Reviews one file and stores it. */
export async function takeIn(desk: Desk, pool: ReviewPool, stack: Stack, incoming: Incoming): Promise<Taken> {
  return keepTogether(desk, [await lookAt(desk, pool, stack, incoming)])[0]!;
}

/** Stores what a file came to; only then is it taken in. */
type Keep = () => Taken;

async function lookAt(desk: Desk, pool: ReviewPool, stack: Stack, incoming: Incoming): Promise<Keep> {
  const { file, content } = incoming;
  const sum = createHash('sha256').update(content).digest('hex');
  const known = (): boolean => desk.has(stack.id, file, sum) || hasSame(desk, stack.id, file, sum);
  if (known()) return () => ({ file, outcome: 'known' });
  if (isNoScript(file, content))
    return () => {
      setApart(desk, stack.id, file, sum);
      return { file, outcome: 'no script' };
    };
  const result = await pool.review(taskFor(stack, incoming));
  return () => {
    // The same may have come in another folder meanwhile.
    if (known()) return { file, outcome: 'known' };
    const script = desk.addScript(stack.id, { file, sum, content, ...result });
    return result.error === undefined
      ? { file, outcome: 'new', script }
      : { file, outcome: 'unreadable', script, message: result.error.message };
  };
}

/** One transaction for several: each waits for the disk, and the workers would wait with it. */
function keepTogether(desk: Desk, keeps: readonly Keep[]): Taken[] {
  let taken: Taken[] = [];
  desk.db
    .transaction(() => {
      taken = keeps.map((keep) => keep());
    })
    .immediate();
  for (const { outcome, script } of taken)
    if (outcome === 'new' && script !== undefined) carryOver(desk, script);
  return taken;
}

/** What is looked at is stored when there are so many, or when one has waited so long. */
const MOST_TO_KEEP = 16;
const MOST_MILLISECONDS_UNKEPT = 500;

/**
 * Takes in any number of files, a few at a time: no more are read than the threads can work on, so that memory stays
 * flat however many there are. Gives the outcomes as they are stored, in no order.
 */
export async function* takeAll(
  desk: Desk,
  pool: ReviewPool,
  stack: Stack,
  incoming: AsyncIterable<Incoming> | Iterable<Incoming>,
): AsyncGenerator<Taken> {
  const working = new Set<Promise<void>>();
  let looked: Keep[] = [];
  let kept = performance.now();
  const keep = (): Taken[] => {
    const taken = keepTogether(desk, looked);
    looked = [];
    kept = performance.now();
    return taken;
  };
  for await (const one of incoming) {
    const work = lookAt(desk, pool, stack, one).then((done) => {
      looked.push(done);
      working.delete(work);
    });
    // Told below, by whichever wait it ends.
    work.catch(() => {});
    working.add(work);
    if (working.size >= 2 * pool.threads) await Promise.race(working);
    const waited = performance.now() - kept > MOST_MILLISECONDS_UNKEPT;
    if (looked.length >= (waited ? 1 : MOST_TO_KEEP)) yield* keep();
  }
  await Promise.all(working);
  yield* keep();
}
