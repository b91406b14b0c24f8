/** The marks that were given, one marker's beside the other's, and where the two differ. */

import {
  type Difference,
  differencesIn,
  type Mark,
  markSchema,
  SECOND_MARKINGS,
  type SecondMarking,
} from '../../src/desk/index.ts';
import type { Database } from './database.ts';

export interface MarksGiven {
  /** The last that each marker gave at each criterion, in the order in which they were given. */
  readonly given: readonly Mark[];
  readonly second?: SecondMarking;
}

/** With one marker, the last at each criterion, whoever gave it. */
export function marksGiven(db: Database, script: number): MarksGiven {
  const rows = db
    .prepare(
      `SELECT criterion, mark, marker, agreed, second FROM marks
       JOIN scripts ON scripts.id = marks.script JOIN stacks ON stacks.id = scripts.stack
       WHERE script = ? ORDER BY number`,
    )
    .all(script) as {
    criterion: string;
    mark: string | null;
    marker: string | null;
    agreed: number;
    second: string | null;
  }[];
  const second = SECOND_MARKINGS.find((one) => one === rows[0]?.second);
  const latest = new Map<string, Mark>();
  for (const { criterion, mark, marker, agreed } of rows) {
    const key = JSON.stringify(
      second === undefined ? [criterion] : [criterion, agreed === 0 && marker, agreed],
    );
    latest.delete(key);
    if (mark !== null) latest.set(key, markSchema.parse(JSON.parse(mark)));
  }
  return { given: [...latest.values()], ...(second === undefined ? {} : { second }) };
}

/** A script at which two markers differ. */
export interface DifferingScript {
  readonly id: number;
  readonly candidate?: string;
  readonly draft: number;
  readonly revision: number;
  readonly differences: readonly Difference[];
}

/** The scripts of a stack at which two markers differ and have not agreed yet, in the order of the queue. */
export function differingScripts(db: Database, stack: number): DifferingScript[] {
  const rows = db
    .prepare(
      `SELECT scripts.id, candidate, draft, revision FROM scripts
       JOIN marks ON marks.script = scripts.id WHERE stack = ? AND agreed = 0
       GROUP BY scripts.id HAVING count(DISTINCT ifnull(marker, '')) > 1
       ORDER BY candidate IS NULL, candidate, draft, scripts.id`,
    )
    .all(stack) as { id: number; candidate: string | null; draft: number; revision: number }[];
  return rows.flatMap(({ id, candidate, draft, revision }) => {
    const differences = differencesIn(marksGiven(db, id).given);
    return differences.length === 0
      ? []
      : [{ id, ...(candidate === null ? {} : { candidate }), draft, revision, differences }];
  });
}
