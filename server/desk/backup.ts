/** Copies of a desk, and the way back to one. */
import { chmodSync, copyFileSync, existsSync, mkdirSync, readdirSync, renameSync, rmSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { Refused } from '../../src/refusal/refusal.ts';
import type { Database } from './database.ts';
import { backupFolder, backupName, isInUse, openForReading, PRIVATE } from './open.ts';

/** Daily copies that are kept. */
const KEPT = 14;

/** Copies the desk while it is in use: a moment's state, whole. Gives the copy's path. */
export async function backUp(db: Database, to: string): Promise<string> {
  mkdirSync(dirname(to), { recursive: true });
  // Written beside and renamed, so that a copy is either whole or not there.
  const half = `${to}.partial`;
  await db.backup(half);
  chmodSync(half, PRIVATE);
  renameSync(half, to);
  return to;
}

/** Today's copy, in the place of an earlier one of today; of the days before, the last fourteen are kept. */
export async function backUpDaily(db: Database, path: string, now: Date): Promise<void> {
  await backUp(db, backupName(path, now.toISOString().slice(0, 10)));
  const stem = `${basename(path, '.sqlite')}-`;
  const copies = readdirSync(backupFolder(path))
    .filter((name) => name.startsWith(stem) && name.endsWith('.sqlite'))
    .sort();
  for (const name of copies.slice(0, -KEPT)) rmSync(join(backupFolder(path), name));
}

/**
 * Puts a backup in the desk's place. The backup is checked first; what stood there before is kept beside it, with
 * `before-restoring` in its name. No desk may be open on the file. @throws {Refused}
 */
export async function restore(path: string, backup: string, now: Date): Promise<{ readonly kept?: string }> {
  const copy = await openForReading(backup);
  let verdict: unknown;
  try {
    verdict = copy.pragma('integrity_check(1)', { simple: true });
  } catch (error) {
    verdict = (error as Error).message;
  } finally {
    copy.close();
  }
  if (verdict !== 'ok')
    throw new Refused(`The backup ${backup} is damaged too (${String(verdict)}). Try an older one.`);
  await refuseInUse(path);
  mkdirSync(dirname(path), { recursive: true });
  let kept: string | undefined;
  if (existsSync(path)) {
    const stamp = now.toISOString().replaceAll(/[:.]/g, '-');
    kept = `${path}.before-restoring-${stamp}`;
    renameSync(path, kept);
    // Their pages belong to the old file.
    for (const tail of ['-wal', '-shm']) if (existsSync(path + tail)) renameSync(path + tail, kept + tail);
  }
  copyFileSync(backup, path);
  chmodSync(path, PRIVATE);
  return kept === undefined ? {} : { kept };
}

/** Whoever serves the desk would go on writing into the file that was put aside. @throws {Refused} */
async function refuseInUse(path: string): Promise<void> {
  if (!(await isInUse(path))) return;
  throw new Refused(
    `The desk ${path} is in use: stop what serves it (Ctrl-C there), then bring the backup back. Nothing was changed.`,
  );
}
