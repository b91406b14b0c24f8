/** Takes files onto a stack: reviewed in the pool, stored one by one, none of them able to stop the rest. */
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
  const { file, content } = incoming;
  const sum = createHash('sha256').update(content).digest('hex');
  if (desk.has(stack.id, file, sum) || hasSame(desk, stack.id, file, sum)) return { file, outcome: 'known' };
  if (isNoScript(file, content)) {
    setApart(desk, stack.id, file, sum);
    return { file, outcome: 'no script' };
  }
  const result = await pool.review(taskFor(stack, incoming));
  const script = desk.addScript(stack.id, { file, sum, content, ...result });
  if (result.facts !== undefined && result.candidate !== undefined) carryOver(desk, script);
  return result.error === undefined
    ? { file, outcome: 'new', script }
    : { file, outcome: 'unreadable', script, message: result.error.message };
}

/**
 * Takes in any number of files, a few at a time: no more are read than the threads can work on, so that memory stays
 * flat however many there are. Gives the outcomes as they come, in no order.
 */
export async function* takeAll(
  desk: Desk,
  pool: ReviewPool,
  stack: Stack,
  incoming: AsyncIterable<Incoming> | Iterable<Incoming>,
): AsyncGenerator<Taken> {
  const working = new Set<Promise<Taken>>();
  const settled = async (): Promise<Taken> => {
    const [first, taken] = await Promise.race(
      [...working].map((one) => one.then((result): [Promise<Taken>, Taken] => [one, result])),
    );
    working.delete(first);
    return taken;
  };
  for await (const one of incoming) {
    working.add(takeIn(desk, pool, stack, one));
    if (working.size >= 2 * pool.threads) yield await settled();
  }
  while (working.size > 0) yield await settled();
}
