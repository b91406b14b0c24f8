/**
 * Who brings SQLite: Node itself from 22.13 on, else the package better-sqlite3, which has to be compiled for each
 * version of Node.
 */
import { Refused } from '../../src/refusal/refusal.ts';
import { builtIn } from './built-in-sqlite.ts';
import type { OpenDatabase } from './database.ts';

/**
 * Whatever SQLite there is, loaded when a desk is first opened: reviews need none.
 * @throws {Refused} where there is none
 */
export async function sqlite(): Promise<OpenDatabase> {
  return builtIn() ?? (await fromPackage());
}

/** The package. @throws {Refused} where it is not installed */
export async function fromPackage(): Promise<OpenDatabase> {
  try {
    const { default: Sqlite } = await import('better-sqlite3');
    return (path, options) => new Sqlite(path, options);
  } catch {
    throw new Refused(NO_SQLITE);
  }
}

export const NO_SQLITE =
  'The marking desk needs SQLite, and there is none here. Node brings it from version 22.13 on; for earlier ones the package better-sqlite3 has it, which is compiled at npm ci where python3, make and g++ are installed. Bring either, then run npm ci again. Reviews work without it.';
