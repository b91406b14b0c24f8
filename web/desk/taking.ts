/** Files dropped on the desk: zips opened here, each script handed to the service by itself. */

import { ROUTES } from '../../src/desk/wire.ts';
import { isStackOfFiles, unzipStack } from '../../src/open/zip.ts';
import { type RefusalKind, Refused } from '../../src/refusal/refusal.ts';
import { ask } from './service.ts';

/** Scripts on their way at once: as many as keep the service's workers busy. */
const AT_ONCE = 4;
const MOST_ZIP_BYTES = 256 * 1024 * 1024;

/** Without a service, or without leave, none of the others would come through either. */
const ENDS_ALL: ReadonlySet<RefusalKind> = new Set<RefusalKind>(['no answer', 'signed out']);

interface Loaded {
  readonly name: string;
  readonly bytes: () => Promise<Uint8Array<ArrayBuffer>>;
}

/** One that can't be read or sent is told and the rest go on. */
export async function takeFiles(
  stack: number,
  files: readonly File[],
  progress: (done: number, of: number) => void,
): Promise<{ readonly taken: number; readonly messages: readonly string[] }> {
  const messages: string[] = [];
  const waiting: Loaded[] = [];
  for (const file of files) waiting.push(...(await opened(file, messages)));
  const total = waiting.length;
  let done = 0;
  let taken = 0;
  progress(0, total);
  const work = async (): Promise<void> => {
    for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
      const { name } = next;
      try {
        const answer = await ask(
          ROUTES.takeIn,
          { params: { id: stack }, query: { file: name.slice(0, 300) } },
          await next.bytes(),
        );
        if (answer.outcome === 'new' || answer.outcome === 'unreadable') taken++;
        if (answer.outcome === 'unreadable')
          messages.push(`${name}: ${answer.message ?? 'could not be read.'}`);
      } catch (error) {
        if (!(error instanceof Refused) || ENDS_ALL.has(error.kind)) throw error;
        messages.push(`${name}: ${error.message}`);
      }
      progress(++done, total);
    }
  };
  await Promise.all(Array.from({ length: AT_ONCE }, work));
  await ask(ROUTES.settle, { params: { id: stack } });
  return { taken, messages };
}

async function opened(file: File, messages: string[]): Promise<Loaded[]> {
  const whole = async (): Promise<Uint8Array<ArrayBuffer>> => new Uint8Array(await file.arrayBuffer());
  if (!/\.zip$/i.test(file.name)) return [{ name: file.webkitRelativePath || file.name, bytes: whole }];
  if (file.size > MOST_ZIP_BYTES) {
    messages.push(
      `${file.name} is larger than ${MOST_ZIP_BYTES / 1024 / 1024} MB: unpack it, or use partwise mark.`,
    );
    return [];
  }
  const bytes = await whole();
  if (!isStackOfFiles(bytes)) return [{ name: file.name, bytes: async () => bytes }];
  const { files, left } = unzipStack(bytes);
  messages.push(...left.map((message) => `${file.name}: ${message}`));
  return files.map(({ name, content }) => ({ name, bytes: async () => new Uint8Array(content) }));
}
