/** The desk's SQLite behaves alike, whoever brings it: the package, and Node itself where it has one. */
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { builtIn } from '../../server/desk/built-in-sqlite.ts';
import type { Database, OpenDatabase } from '../../server/desk/database.ts';
import { fromPackage, NO_SQLITE } from '../../server/desk/sqlite.ts';
import { Refused } from '../../src/refusal/refusal.ts';

const fromNode = builtIn();
if (fromNode === undefined)
  console.warn(`Node ${process.version} brings no SQLite: those tests are for 22.13 and later.`);
const fromNpm = await installed();

/** The package, where it is installed and was compiled for this Node. */
async function installed(): Promise<OpenDatabase | undefined> {
  try {
    const open = await fromPackage();
    open(':memory:', {}).close();
    return open;
  } catch (error) {
    const otherNode = (error as { code?: unknown }).code === 'ERR_DLOPEN_FAILED';
    if (!otherNode && !(error instanceof Refused && error.message === NO_SQLITE)) throw error;
    console.warn('better-sqlite3 is not installed for this Node: its tests are skipped.');
    return undefined;
  }
}

it('there is one of the two', () => {
  expect(fromNode ?? fromNpm).toBeDefined();
});

describe.each([
  ['that Node brings', fromNode],
  ['of the package', fromNpm],
] as const)('the SQLite %s', (_, brought) => {
  const there = it.skipIf(brought === undefined);
  const open = brought as OpenDatabase;
  let folder: string;
  let path: string;
  let opened: Database[];
  const database = (options: Parameters<OpenDatabase>[1] = {}): Database => {
    const db = open(path, options);
    opened.push(db);
    return db;
  };
  const furnished = (): Database => {
    const db = database();
    db.exec('CREATE TABLE notes (id INTEGER PRIMARY KEY, name TEXT, sound BLOB); PRAGMA user_version = 7');
    return db;
  };
  const codeOf = (work: () => unknown): unknown => {
    try {
      work();
    } catch (error) {
      return (error as { code?: unknown }).code;
    }
    return 'nothing was thrown';
  };
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'partwise-sqlite-'));
    path = join(folder, 'desk.sqlite');
    opened = [];
  });
  afterEach(() => {
    for (const db of opened) db.close();
    rmSync(folder, { recursive: true });
  });

  there('gives rows, first columns, bytes, and undefined where nothing is', () => {
    const db = furnished();
    const add = db.prepare('INSERT INTO notes (name, sound) VALUES (?, ?)');
    expect(Number(add.run('C', Buffer.from([1, 0, 255])).lastInsertRowid)).toBe(1);
    expect(Number(add.run('D', null).changes)).toBe(1);
    expect(db.prepare('SELECT id, name FROM notes WHERE id = ?').get(2)).toEqual({ id: 2, name: 'D' });
    expect(db.prepare('SELECT name FROM notes ORDER BY id').pluck().all()).toEqual(['C', 'D']);
    expect([...db.prepare('SELECT name FROM notes ORDER BY id').pluck().iterate()]).toEqual(['C', 'D']);
    expect([...db.prepare('SELECT id FROM notes').iterate()]).toEqual([{ id: 1 }, { id: 2 }]);
    const sound = db.prepare('SELECT sound FROM notes WHERE id = 1').pluck().get();
    expect(sound).toBeInstanceOf(Uint8Array);
    expect([...(sound as Uint8Array)]).toEqual([1, 0, 255]);
    expect(db.prepare('SELECT sound FROM notes WHERE id = 2').pluck().get()).toBeNull();
    expect(db.prepare('SELECT * FROM notes WHERE id = 3').get()).toBeUndefined();
    expect(db.prepare('SELECT name FROM notes WHERE id = 3').pluck().get()).toBeUndefined();
    expect(Number(db.pragma('user_version', { simple: true }))).toBe(7);
    expect(db.pragma('integrity_check(1)')).toEqual([{ integrity_check: 'ok' }]);
  });

  there('keeps all of a transaction or nothing, and one within another goes with it', () => {
    const db = furnished();
    const add = (name: string) => db.prepare('INSERT INTO notes (name) VALUES (?)').run(name);
    const count = () => db.prepare('SELECT count(*) FROM notes').pluck().get();
    expect(() =>
      db
        .transaction(() => {
          add('C');
          db.transaction(() => add('D')).immediate();
          throw new Error('stopped');
        })
        .immediate(),
    ).toThrow('stopped');
    expect(count()).toBe(0);
    db.transaction(() => {
      add('C');
      db.transaction(() => add('D')).immediate();
    }).immediate();
    expect(count()).toBe(2);
  });

  there('copies a moment’s state while it is in use, over an earlier half copy', async () => {
    const db = furnished();
    db.pragma('journal_mode = WAL');
    db.prepare('INSERT INTO notes (name) VALUES (?)').run('C');
    const copy = join(folder, 'copy.sqlite');
    writeFileSync(copy, '');
    await db.backup(copy);
    db.prepare('INSERT INTO notes (name) VALUES (?)').run('D');
    path = copy;
    const copied = database({ readonly: true, fileMustExist: true });
    expect(copied.prepare('SELECT name FROM notes').pluck().all()).toEqual(['C']);
    expect(Number(copied.pragma('user_version', { simple: true }))).toBe(7);
  });

  there('calls what goes wrong by SQLite’s names', () => {
    expect(codeOf(() => open(path, { fileMustExist: true }))).toBe('SQLITE_CANTOPEN');
    expect(existsSync(path)).toBe(false);
    const db = furnished();
    const other = database({ timeout: 0 });
    db.transaction(() => {
      expect(codeOf(() => other.transaction(() => {}).immediate())).toBe('SQLITE_BUSY');
    }).immediate();
    const reader = database({ readonly: true });
    expect(codeOf(() => reader.exec('DELETE FROM notes'))).toBe('SQLITE_READONLY');
    expect(codeOf(() => db.prepare('SELECT nothing FROM nowhere'))).toBe('SQLITE_ERROR');
    path = join(folder, 'letters.sqlite');
    writeFileSync(path, 'These are lesson notes, not a desk. '.repeat(200));
    expect(codeOf(() => database().pragma('user_version'))).toBe('SQLITE_NOTADB');
  });
});
