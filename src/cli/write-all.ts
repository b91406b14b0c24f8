/** Writes several files into a folder. */
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { Refused } from '../refusal/refusal.ts';
import { reason } from './input.ts';

/** Nothing that is there already is replaced unasked. @throws {Refused} */
export async function writeAll(
  { output, force }: { readonly output: string; readonly force?: true },
  files: Readonly<Record<string, string | Uint8Array>>,
): Promise<void> {
  const flag = force === undefined ? 'wx' : 'w';
  try {
    await mkdir(output, { recursive: true });
  } catch (error) {
    throw new Refused(`${output}: ${reason(error)}`);
  }
  for (const [name, content] of Object.entries(files)) {
    const path = join(output, name);
    try {
      await writeFile(path, content, { flag });
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code === 'EEXIST')
        throw new Refused(`${path} is there already. Name another folder, or add --force to replace it.`);
      throw new Refused(`${path}: ${reason(error)}`);
    }
  }
}
