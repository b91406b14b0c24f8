/** How far something long is, and how much longer it takes: in place on a terminal, else a line now and then. */
import { timeLeft } from '../english/time-left.ts';

/** Where there is no terminal, a line after so many milliseconds. */
const LINE_EVERY = 10_000;
/** On a terminal, no more often than a person reads. */
const DRAW_EVERY = 200;

export interface Progress {
  at(done: number): void;
  end(): void;
}

interface Out {
  readonly isTTY?: boolean;
  write(text: string): unknown;
}

/**
 * @param what `files`
 * @param of how many there are, where that is known
 */
export function createProgress(
  what: string,
  of: number | undefined,
  out: Out = process.stderr,
  now: () => number = () => performance.now(),
): Progress {
  const began = now();
  let shown = began;
  return {
    at: (done) => {
      const time = now();
      if (time - shown < (out.isTTY ? DRAW_EVERY : LINE_EVERY)) return;
      shown = time;
      const left = of === undefined ? '' : timeLeft(done, of - done, time - began);
      const line = `${done}${of === undefined ? '' : ` of ${of}`} ${what}${left === '' ? '' : `, ${left}`}`;
      out.write(out.isTTY ? `\r\u001b[K${line}` : `${line}\n`);
    },
    end: () => {
      if (out.isTTY) out.write('\r\u001b[K');
    },
  };
}
