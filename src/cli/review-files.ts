/** The worker of `many-files.ts`: reviews one file after another. */
import { type Bytes, readInput } from './input.ts';
import { type Manner, type Told, tellFile } from './review-file.ts';

export interface FileTask {
  readonly file: string;
  readonly manner: Manner;
  /** What was read already: standard input. */
  readonly input?: Bytes;
}

/** @returns what is printed of the file; never rejects for a file that can't be read */
export default async function reviewFile({ file, manner, input }: FileTask): Promise<Told> {
  return tellFile(file, input ?? (await readInput(file)), manner);
}
