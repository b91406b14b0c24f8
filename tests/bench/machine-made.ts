/**
 * The open chorales composed by a machine (O. Peracha, The JS Fake Chorales, 2021, CC BY 4.0), from
 * `../shared/corpus/machine-made` beside the repository.
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { openScore } from '../../src/open/open.ts';
import type { Score } from '../../src/score/score.ts';

const FOLDER = fileURLToPath(new URL('../../../shared/corpus/machine-made/', import.meta.url));

export function machineMadePresent(): boolean {
  return existsSync(FOLDER);
}

/** Reads them in order of name. Throws where one cannot be read. */
export function readMachineMade(): { readonly name: string; readonly score: Score }[] {
  return readdirSync(FOLDER)
    .filter((name) => name.endsWith('.mxl'))
    .sort()
    .map((name) => {
      const opened = openScore(readFileSync(FOLDER + name));
      if (!opened.ok) throw new Error(`${name} cannot be read: ${opened.message}`);
      return { name: name.replace('.mxl', ''), score: opened.score };
    });
}
