/** SQLite as the desk uses it, whoever brings it: the shape of the package better-sqlite3, as far as it is used. */
export interface Statement {
  run(...values: unknown[]): {
    readonly changes: number | bigint;
    readonly lastInsertRowid: number | bigint;
  };
  get(...values: unknown[]): unknown;
  all(...values: unknown[]): unknown[];
  iterate(...values: unknown[]): Iterable<unknown>;
  /** The first column alone, instead of the row. */
  pluck(): Statement;
}

export interface Database {
  prepare(sql: string): Statement;
  /** Several statements; gives nothing back. */
  exec(sql: string): unknown;
  /** The rows of a pragma, or with `simple` the first value of the first. */
  pragma(pragma: string, options?: { readonly simple?: boolean }): unknown;
  /** All of it or nothing; takes the right to write first. A transaction in a transaction is part of the outer one. */
  transaction(work: () => void): { immediate(): void };
  /** Copies a moment's state, whole, into a file that is not there yet or may be replaced. */
  backup(to: string): Promise<unknown>;
  close(): unknown;
}

export interface OpenOptions {
  readonly readonly?: boolean;
  readonly fileMustExist?: boolean;
  /** Milliseconds to wait for another writer. */
  readonly timeout?: number;
}

/** Errors carry SQLite's own name for them in `code`, for example SQLITE_BUSY. */
export type OpenDatabase = (path: string, options: OpenOptions) => Database;
