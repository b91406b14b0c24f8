/** A question to whoever sits at the terminal. */
import { createInterface } from 'node:readline/promises';

interface Terminal {
  readonly input: NodeJS.ReadableStream & { readonly isTTY?: boolean };
  readonly output: NodeJS.WritableStream & { readonly isTTY?: boolean };
}

/** True for a yes; undefined where nobody sits at a terminal. */
export async function askYesNo(
  question: string,
  { input, output }: Terminal = { input: process.stdin, output: process.stdout },
): Promise<boolean | undefined> {
  if (input.isTTY !== true || output.isTTY !== true) return undefined;
  const lines = createInterface({ input, output });
  try {
    return /^y(es)?$/i.test((await lines.question(`${question} [y/N] `)).trim());
  } finally {
    lines.close();
  }
}
