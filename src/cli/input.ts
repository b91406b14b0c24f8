/** Bytes of the files named on the command line; `-` is standard input. */
import { readFile, stat } from 'node:fs/promises';
import { buffer } from 'node:stream/consumers';
import { kindOf, readyFor } from '../open/open.ts';
import { type Outcome, refuse } from '../refusal/refusal.ts';

/** Larger files are refused before they are read: an exercise has some kilobytes. */
const MOST_BYTES = 64 * 1024 * 1024;

export type Bytes = Outcome<{ readonly bytes: Uint8Array }>;

/** The bytes of a file, or a sentence saying why there are none. Never throws. */
export async function readInput(file: string): Promise<Bytes> {
  try {
    if (file === '-') return await ready(await buffer(process.stdin));
    const info = await stat(file);
    if (info.isDirectory()) {
      return refuse(
        `This is a folder. Name the files in it, or mark a whole folder with: partwise mark ${file}`,
      );
    }
    if (info.size > MOST_BYTES) {
      return refuse(
        `The file is ${Math.round(info.size / 2 ** 20)} MB long; at most ${MOST_BYTES / 2 ** 20} MB are read.`,
      );
    }
    return await ready(await readFile(file));
  } catch (error) {
    return refuse(reason(error));
  }
}

/** With what it is to be opened with. */
async function ready(bytes: Uint8Array): Promise<Bytes> {
  await readyFor(kindOf(bytes));
  return { ok: true, bytes };
}

/** What went wrong with a file, in words; the code of the system for what is rare. */
export function reason(error: unknown): string {
  const code = (error as NodeJS.ErrnoException | undefined)?.code;
  switch (code) {
    case 'ENOENT':
      return 'There is no such file. Look at the spelling and the folder.';
    case 'EACCES':
    case 'EPERM':
      return 'You may not read or write here: the system refused.';
    case 'EISDIR':
      return 'This is a folder, not a file.';
    case 'ENOSPC':
      return 'The disk is full.';
    default:
      return `The system could not read or write it (${code ?? String(error)}).`;
  }
}
