/** The scripts in a folder or a zip. */
import { readdir, readFile, stat } from 'node:fs/promises';
import { join, relative } from 'node:path';
import { isBrief } from '../brief/brief.ts';
import { isStackOfFiles, unzipStack } from '../open/zip.ts';
import { reason } from './input.ts';

const MOST_BYTES = 8 * 1024 * 1024;
const MOST_ZIP_BYTES = 512 * 1024 * 1024;

export interface ScriptFile {
  readonly file: string;
  readonly content: Uint8Array;
}

/** The brief that lies with the scripts as `brief.txt`, `brief.musicxml`, `brief.xml` or `brief.mxl`, if there is one. */
export async function briefIn(place: string): Promise<string | undefined> {
  for (const ending of ['txt', 'musicxml', 'xml', 'mxl']) {
    const path = join(place, `brief.${ending}`);
    try {
      const content = await readFile(path);
      if (ending !== 'txt' || isBrief(content.toString('utf8'))) return path;
    } catch {
      // There is none of this kind.
    }
  }
  return undefined;
}

/**
 * Files in a folder and its folders, or in a zip, one at a time. Hidden files are passed over, and so is what
 * `notScripts` names by its whole path: the desk's own folder, the brief.
 */
export async function* filesIn(
  place: string,
  notScripts: ReadonlySet<string>,
  tell: (text: string) => void,
): AsyncGenerator<ScriptFile> {
  if (!(await stat(place)).isDirectory()) {
    yield* filesOf(place, place, tell);
    return;
  }
  const folders = [place];
  for (let folder = folders.pop(); folder !== undefined; folder = folders.pop()) {
    const entries = await readdir(folder, { withFileTypes: true }).catch((error: unknown) => {
      tell(`${relative(place, folder) || folder}: ${reason(error)}`);
      return [];
    });
    for (const entry of entries.sort((a, b) => (a.name < b.name ? -1 : 1))) {
      const full = join(folder, entry.name);
      if (entry.name.startsWith('.') || notScripts.has(full)) continue;
      if (entry.isDirectory()) folders.push(full);
      else if (entry.isFile()) yield* filesOf(full, place, tell);
    }
  }
}

/** How many files there are to look at; undefined for a zip, or where one is among them, whose content is not known. */
export async function countFiles(
  place: string,
  notScripts: ReadonlySet<string>,
): Promise<number | undefined> {
  if (!(await stat(place)).isDirectory()) return undefined;
  let count = 0;
  const folders = [place];
  for (let folder = folders.pop(); folder !== undefined; folder = folders.pop()) {
    const entries = await readdir(folder, { withFileTypes: true }).catch(() => []);
    for (const entry of entries) {
      const full = join(folder, entry.name);
      if (entry.name.startsWith('.') || notScripts.has(full)) continue;
      if (/\.zip$/i.test(entry.name)) return undefined;
      if (entry.isDirectory()) folders.push(full);
      else if (entry.isFile()) count++;
    }
  }
  return count;
}

async function* filesOf(
  full: string,
  place: string,
  tell: (text: string) => void,
): AsyncGenerator<ScriptFile> {
  const file = relative(place, full) || full;
  try {
    const { size } = await stat(full);
    const zip = /\.zip$/i.test(full);
    if (size > (zip ? MOST_ZIP_BYTES : MOST_BYTES)) {
      tell(`${file}: too large to be an exercise; passed over.`);
      return;
    }
    const content = await readFile(full);
    if (!zip || !isStackOfFiles(content)) yield { file, content };
    else {
      const { files, left } = unzipStack(content);
      for (const message of left) tell(`${file}: ${message}`);
      for (const { name, content: inner } of files) yield { file: `${file}/${name}`, content: inner };
    }
  } catch (error) {
    tell(`${file}: ${reason(error)}`);
  }
}
