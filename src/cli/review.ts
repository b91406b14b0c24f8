/** `partwise review`: one exercise after another, for people or as JSON lines. */

import type { LabelStyle } from '../harmony/words/labels.ts';
import type { VoiceAssignment } from '../musicxml/index.ts';
import { EXIT } from './exit.ts';
import { readInput } from './input.ts';
import { loadProfile } from './profile.ts';
import { type Manner, type Told, tellFile } from './review-file.ts';

export interface ReviewOptions {
  readonly json?: true;
  readonly profile: string;
  readonly labels: LabelStyle;
  readonly voices?: VoiceAssignment;
}

/** So many files are worth starting workers for: each takes as long to start as it takes to review some ten. */
const MANY = 24;

/** Reviews the files in the order given; one that can't be read is told and the others still come. */
export async function reviewCommand(files: readonly string[], options: ReviewOptions): Promise<number> {
  const { json = false, labels, voices } = options;
  const profile = await loadProfile(options.profile);
  const manner: Manner = { json, profile, labels, ...(voices === undefined ? {} : { voices }) };
  let status: number = EXIT.fine;
  let first = true;
  for await (const { out, err, status: own } of told(files, manner)) {
    if (!json && !first) process.stdout.write('\n');
    first = false;
    process.stdout.write(out);
    process.stderr.write(err);
    status = Math.max(status, own);
  }
  return status;
}

/** Many files on every core, as long as nobody watches: colours are for the terminal, which only this thread has. */
async function* told(files: readonly string[], manner: Manner): AsyncGenerator<Told> {
  if (files.length >= MANY && process.stdout.isTTY !== true) {
    const { tellMany } = await import('./many-files.ts');
    yield* tellMany(files, manner);
  } else for (const file of files) yield await tellFile(file, await readInput(file), manner);
}
