/** The order in which scripts are marked, asked for a page at a time: a stack of ten thousand is no burden. */
import type { Database } from './database.ts';
import { entryOf, type Row, type ScriptEntry } from './records.ts';

/** A desk, as far as its database goes. */
interface InDatabase {
  readonly db: Database;
}

const COLUMNS =
  'id, stack, file, candidate, draft, received, error, faults, queries, remarks, done, revision';
/** By candidate, then draft; those without a number last. Also as a value that can be compared. */
export const ORDER = 'candidate IS NULL, candidate, draft, id';
const PLACE = "(candidate IS NULL, ifnull(candidate, ''), draft, id)";

/** Where a script lies in its stack. */
export interface QueuePlace {
  /** From 1. */
  readonly at: number;
  readonly of: number;
  readonly before?: number;
  readonly next?: number;
}

export function placeInQueue({ db }: InDatabase, { id, stack, candidate, draft }: ScriptEntry): QueuePlace {
  const place = [candidate === undefined ? 1 : 0, candidate ?? '', draft, id];
  const neighbour = (sign: '<' | '>'): number | undefined => {
    const way = sign === '<' ? 'DESC' : 'ASC';
    const order = ORDER.split(', ')
      .map((column) => `${column} ${way}`)
      .join(', ');
    return db
      .prepare(
        `SELECT id FROM scripts WHERE stack = ? AND ${PLACE} ${sign} (?, ?, ?, ?) ORDER BY ${order} LIMIT 1`,
      )
      .pluck()
      .get(stack, ...place) as number | undefined;
  };
  const { at, of } = db
    .prepare(
      `SELECT coalesce(sum(${PLACE} <= (?, ?, ?, ?)), 0) AS at, count(*) AS "of" FROM scripts WHERE stack = ?`,
    )
    .get(...place, stack) as { at: number; of: number };
  const [before, next] = [neighbour('<'), neighbour('>')];
  return { at, of, ...(before === undefined ? {} : { before }), ...(next === undefined ? {} : { next }) };
}

/** The first script that can be read and is not done. */
export function nextToMark({ db }: InDatabase, stack: number): number | undefined {
  return db
    .prepare(
      `SELECT id FROM scripts WHERE stack = ? AND error IS NULL AND NOT done ORDER BY ${ORDER} LIMIT 1`,
    )
    .pluck()
    .get(stack) as number | undefined;
}

/** Each candidate's latest draft that can be read; a script without a number stands for itself. */
export const LATEST = `scripts.error IS NULL AND (scripts.candidate IS NULL OR NOT EXISTS (
  SELECT 1 FROM scripts later
  WHERE later.stack = scripts.stack AND later.candidate = scripts.candidate AND later.error IS NULL
    AND (later.draft, later.id) > (scripts.draft, scripts.id)))`;

export function latestEntries({ db }: InDatabase, stack: number, most: number, after = 0): ScriptEntry[] {
  return db
    .prepare(
      `SELECT ${COLUMNS} FROM scripts WHERE stack = ? AND ${LATEST} ORDER BY ${ORDER} LIMIT ? OFFSET ?`,
    )
    .all(stack, most, after)
    .map((row) => entryOf(row as Row));
}

export function countLatest({ db }: InDatabase, stack: number): number {
  return db
    .prepare(`SELECT count(*) FROM scripts WHERE stack = ? AND ${LATEST}`)
    .pluck()
    .get(stack) as number;
}

/** A person has decided something about it, marked it or finished with it; what was only carried over is not looked at. */
const SEEN = `(done OR EXISTS (SELECT 1 FROM marks WHERE marks.script = scripts.id)
  OR EXISTS (SELECT 1 FROM decisions WHERE decisions.script = scripts.id AND decisions.stack = scripts.stack
    AND json_extract(decision, '$.carriedFrom') IS NULL))`;

export function isSeen({ db }: InDatabase, { id }: ScriptEntry): boolean {
  return db.prepare(`SELECT ${SEEN} FROM scripts WHERE id = ?`).pluck().get(id) === 1;
}

/** Latest drafts that nobody has looked at. */
export function countUnseen({ db }: InDatabase, stack: number): number {
  return db
    .prepare(`SELECT count(*) FROM scripts WHERE stack = ? AND ${LATEST} AND NOT ${SEEN}`)
    .pluck()
    .get(stack) as number;
}
