/** Opens a desk's database file: whole, of our kind, and brought up to this version, or a sentence saying why not. */
import { chmodSync, closeSync, existsSync, mkdirSync, openSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { Refused } from '../../src/refusal/refusal.ts';
import type { Database } from './database.ts';
import { APPLICATION_ID, MIGRATIONS } from './schema.ts';
import { sqlite } from './sqlite.ts';

/**
 * Opens the file for reading and writing, making it where there is none.
 *
 * Write-ahead mode, and every commit is on the disk before it is answered: what was confirmed on screen outlives a kill
 * and a power cut. @throws {Refused}
 */
export async function openForWriting(path: string): Promise<Database> {
  const open = await sqlite();
  const fresh = !existsSync(path);
  keepPrivate(path);
  const db = guarded(path, () => {
    const opened = open(path, { timeout: 5_000 });
    if (!fresh) check(opened, path);
    opened.pragma('journal_mode = WAL');
    opened.pragma('synchronous = FULL');
    opened.pragma('foreign_keys = ON');
    return opened;
  });
  migrate(db, path);
  return db;
}

/** Pupils' work is for whoever started the desk alone: nobody else on the machine may read it. @throws {Refused} */
function keepPrivate(path: string): void {
  try {
    mkdirSync(dirname(path), { recursive: true });
    // SQLite gives its other files the same rights as this one.
    closeSync(openSync(path, 'a', PRIVATE));
  } catch (error) {
    throw refusal(path, error);
  }
  try {
    chmodSync(path, PRIVATE);
  } catch {
    // Somebody else's file that we may write: theirs to close.
  }
}

/** Read and written by its owner alone. */
export const PRIVATE = 0o600;

/** Opens an existing file for reading alone: reports can't change it, whatever they do. @throws {Refused} */
export async function openForReading(path: string): Promise<Database> {
  const open = await sqlite();
  if (!existsSync(path)) throw new Refused(`There is no desk at ${path}.`);
  return guarded(path, () => {
    const db = open(path, { readonly: true, fileMustExist: true, timeout: 5_000 });
    db.pragma('query_only = ON');
    return db;
  });
}

/**
 * True where another process, or another connection, has the desk open. In write-ahead mode each holds a lock for as
 * long as it lives, which giving that mode up asks for alone; a kill frees it.
 */
export async function isInUse(path: string): Promise<boolean> {
  const open = await sqlite();
  if (!existsSync(path)) return false;
  let db: Database | undefined;
  try {
    db = open(path, { fileMustExist: true, timeout: 0 });
    db.pragma('journal_mode = DELETE');
    return false;
  } catch (error) {
    // A damaged file nobody has open: that is what a backup is brought back for.
    return String((error as { code?: string }).code).startsWith('SQLITE_BUSY');
  } finally {
    db?.close();
  }
}

function guarded(path: string, open: () => Database): Database {
  try {
    return open();
  } catch (error) {
    if (error instanceof Refused) throw error;
    throw refusal(path, error);
  }
}

/** Reads every page once. @throws {Refused} */
function check(db: Database, path: string): void {
  try {
    const id: unknown = db.pragma('application_id', { simple: true });
    const version = Number(db.pragma('user_version', { simple: true }));
    if (id !== APPLICATION_ID && !(id === 0 && version === 0 && isEmpty(db))) {
      throw new Refused(`${path} is a database, but not of a marking desk. Choose another file.`);
    }
    if (version > MIGRATIONS.length) {
      throw new Refused(`${path} was written by a newer Partwise. Install that version to open it.`);
    }
    const verdict: unknown = db.pragma('integrity_check(1)', { simple: true });
    if (verdict !== 'ok') throw refusal(path, new Error(String(verdict)));
  } catch (error) {
    db.close();
    throw error instanceof Refused ? error : refusal(path, error);
  }
}

function isEmpty(db: Database): boolean {
  return db.prepare('SELECT count(*) AS n FROM sqlite_master').pluck().get() === 0;
}

const CLOSED_TO_US: ReadonlySet<string> = new Set([
  ...['SQLITE_CANTOPEN', 'SQLITE_PERM', 'SQLITE_READONLY', 'SQLITE_READONLY_DIRECTORY'],
  ...['EACCES', 'EPERM', 'EROFS', 'EISDIR', 'ENOTDIR', 'EEXIST'],
]);

function refusal(path: string, error: unknown): Refused {
  const { code, message } = error as { code?: string; message: string };
  if (code === 'ERR_DLOPEN_FAILED') {
    return new Refused(
      `The library that keeps the desk was built for another version of Node than this one (${process.version}). Run npm ci here once, and start again. The desk's file was not touched.`,
    );
  }
  if (code !== undefined && CLOSED_TO_US.has(code)) {
    return new Refused(
      `${path} could not be opened: the folder must be there, and you must be allowed to write in it.`,
    );
  }
  if (code === 'SQLITE_BUSY') {
    return new Refused(`${path} is held by another program. Close it there and try again.`);
  }
  return new Refused(
    `The desk's file ${path} is damaged (${message}). Nothing was changed. The way back: the backups lie in ${backupFolder(path)}; ` +
      `bring the latest back with: partwise mark FOLDER --restore BACKUP. The damaged file is kept beside it.`,
  );
}

/** Where a desk's backups are kept. */
export function backupFolder(path: string): string {
  return join(dirname(path), 'backups');
}

/** The name of today's backup: one a day is kept. */
export function backupName(path: string, day: string): string {
  return join(backupFolder(path), `${basename(path, '.sqlite')}-${day}.sqlite`);
}

function migrate(db: Database, path: string): void {
  try {
    // One writer at a time: a second process waits here and then finds the work done.
    db.transaction(() => {
      const version = Number(db.pragma('user_version', { simple: true }));
      for (const step of MIGRATIONS.slice(version)) db.exec(step);
      if (version < MIGRATIONS.length) {
        db.pragma(`application_id = ${APPLICATION_ID}`);
        db.pragma(`user_version = ${MIGRATIONS.length}`);
      }
    }).immediate();
  } catch (error) {
    db.close();
    throw refusal(path, error);
  }
}
