/** The SQLite that Node itself brings, in the shape that the desk uses. */
import { existsSync, rmSync } from 'node:fs';
import type { Database, OpenDatabase, OpenOptions, Statement } from './database.ts';

/** What of `node:sqlite` is used. It has no types for the earliest Node that is supported, which lacks it. */
interface NodeSqlite {
  readonly DatabaseSync: new (path: string, options: { readonly readOnly: boolean }) => NodeDatabase;
}
interface NodeDatabase {
  prepare(sql: string): NodeStatement;
  exec(sql: string): void;
  close(): void;
}
type NodeStatement = Pick<Statement, 'run' | 'get' | 'all' | 'iterate'>;

/** Undefined where this Node has none, as before 22.13. */
export function builtIn(): OpenDatabase | undefined {
  const node = quietly(() => process.getBuiltinModule('node:sqlite') as NodeSqlite | undefined);
  return node === undefined ? undefined : (path, options) => open(node, path, options);
}

/** Node calls its SQLite experimental in a line on the terminal, which says nothing to a teacher. */
function quietly<T>(load: () => T): T {
  const warn = process.emitWarning;
  process.emitWarning = () => {};
  try {
    return load();
  } finally {
    process.emitWarning = warn;
  }
}

function open(node: NodeSqlite, path: string, options: OpenOptions): Database {
  if (options.fileMustExist && !existsSync(path)) {
    throw Object.assign(new Error('There is no such file.'), { code: 'SQLITE_CANTOPEN' });
  }
  const db = named(() => new node.DatabaseSync(path, { readOnly: options.readonly ?? false }));
  db.exec(`PRAGMA busy_timeout = ${options.timeout ?? 5_000}`);
  return shaped(db);
}

function shaped(db: NodeDatabase): Database {
  let within = false;
  const pragma: Database['pragma'] = (text, { simple = false } = {}) => {
    const statement = named(() => plucked(db.prepare(`PRAGMA ${text}`), simple));
    return simple ? statement.get() : statement.all();
  };
  const immediate = (work: () => void): void => {
    if (within) {
      work();
      return;
    }
    named(() => db.exec('BEGIN IMMEDIATE'));
    within = true;
    try {
      work();
      named(() => db.exec('COMMIT'));
    } catch (error) {
      rollBack(db);
      throw error;
    } finally {
      within = false;
    }
  };
  return {
    prepare: (sql) => named(() => plucked(db.prepare(sql), false)),
    exec: (sql) => named(() => db.exec(sql)),
    pragma,
    transaction: (work) => ({ immediate: () => immediate(work) }),
    backup: async (to) => {
      rmSync(to, { force: true });
      named(() => db.prepare('VACUUM INTO ?').run(to));
    },
    close: () => db.close(),
  };
}

function rollBack(db: NodeDatabase): void {
  try {
    db.exec('ROLLBACK');
  } catch {
    // SQLite has done so itself, as it does on a full disk.
  }
}

function plucked(statement: NodeStatement, pluck: boolean): Statement {
  const shown = (row: unknown): unknown => {
    if (!pluck || row === undefined) return row;
    return Object.values(row as object)[0];
  };
  return {
    run: (...values) => named(() => statement.run(...values)),
    get: (...values) => shown(named(() => statement.get(...values))),
    all: (...values) => named(() => statement.all(...values)).map(shown),
    iterate: function* (...values) {
      for (const row of statement.iterate(...values)) yield shown(row);
    },
    pluck: () => plucked(statement, true),
  };
}

/** SQLite's names for its primary result codes, from its documentation ("Result and Error Codes"); those the desk tells apart. */
const CODES: Readonly<Record<number, string>> = {
  3: 'SQLITE_PERM',
  5: 'SQLITE_BUSY',
  8: 'SQLITE_READONLY',
  11: 'SQLITE_CORRUPT',
  14: 'SQLITE_CANTOPEN',
  26: 'SQLITE_NOTADB',
};

/** Runs, and gives an error of SQLite the name that the package would give it. */
function named<T>(work: () => T): T {
  try {
    return work();
  } catch (error) {
    const { errcode } = error as { readonly errcode?: unknown };
    // The lowest eight bits are the primary code; the others say more about it.
    if (typeof errcode === 'number')
      Object.assign(error as Error, { code: CODES[errcode & 255] ?? 'SQLITE_ERROR' });
    throw error;
  }
}
