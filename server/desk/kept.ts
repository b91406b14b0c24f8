/** Figures and prints kept beside the scripts, so that lists, class picture and comparison read no facts. */

import {
  type Decision,
  figuresOf,
  type LikenessPrint,
  type ScriptFacts,
  type ScriptFigures,
} from '../../src/desk/index.ts';
import type { Database } from './database.ts';
import { LATEST, ORDER } from './queue.ts';

/** Stores what is kept of a script's facts, and gives its figures; nothing is kept of one that can't be read. */
export function keepFigures(
  db: Database,
  script: number,
  facts: ScriptFacts | undefined,
): ScriptFigures | undefined {
  if (facts === undefined) {
    db.prepare('DELETE FROM kept WHERE script = ?').run(script);
    return undefined;
  }
  const figures = figuresOf(facts);
  db.prepare(
    `INSERT INTO kept (script, figures, print, version)
     VALUES (?, ?, ?, (SELECT coalesce(max(version), 0) + 1 FROM kept))
     ON CONFLICT (script) DO UPDATE SET figures = excluded.figures, print = excluded.print, version = excluded.version`,
  ).run(script, JSON.stringify(figures), JSON.stringify(facts.print));
  return figures;
}

/** One script's figures; undefined for one that can't be read. */
export function figuresOfScript(db: Database, script: number): ScriptFigures | undefined {
  const kept = db.prepare('SELECT figures FROM kept WHERE script = ?').pluck().get(script);
  if (kept !== undefined) return JSON.parse(String(kept)) as ScriptFigures;
  const facts = db.prepare('SELECT facts FROM scripts WHERE id = ?').pluck().get(script);
  return typeof facts === 'string' ? figuresOf(JSON.parse(facts) as ScriptFacts) : undefined;
}

export interface PrintedScript {
  readonly id: number;
  readonly candidate?: string;
  readonly file: string;
  readonly print: LikenessPrint;
}

/** The prints of each candidate's latest draft, in the order of the queue. */
export function latestPrints(db: Database, stack: number): PrintedScript[] {
  const rows = db
    .prepare(
      `SELECT id, candidate, file, ifnull(print, json_extract(facts, '$.print')) AS print
       FROM scripts LEFT JOIN kept ON kept.script = scripts.id WHERE stack = ? AND ${LATEST} ORDER BY ${ORDER}`,
    )
    .iterate(stack) as Iterable<{ id: number; candidate: string | null; file: string; print: string }>;
  const prints: PrintedScript[] = [];
  for (const { id, candidate, file, print } of rows)
    prints.push({
      id,
      ...(candidate === null ? {} : { candidate }),
      file,
      print: JSON.parse(print) as LikenessPrint,
    });
  return prints;
}

/** Changes whenever a comparison of the stack's scripts would come out otherwise. */
export function printsVersion(db: Database, stack: number): string {
  const whose = db
    .prepare(`SELECT id, candidate FROM scripts WHERE stack = ? AND ${LATEST} ORDER BY id`)
    .all(stack);
  const newest = db.prepare('SELECT max(version) FROM kept').pluck().get();
  const reference = db.prepare('SELECT reference FROM stacks WHERE id = ?').pluck().get(stack);
  return JSON.stringify([newest, reference, whose]);
}

/** The decisions that bear on each script: all are read once, and none is looked through twice. */
export function decisionsByScript(db: Database, stack: number): (script: number) => readonly Decision[] {
  const rows = db
    .prepare('SELECT script, decision FROM decisions WHERE stack = ? ORDER BY number')
    .all(stack) as { script: number | null; decision: string }[];
  const general: Decision[] = [];
  const own = new Map<number, Decision[]>();
  for (const { script, decision } of rows) {
    // Looked through when it was made.
    const made = JSON.parse(decision) as Decision;
    if (script === null) general.push(made);
    else if (own.has(script)) own.get(script)!.push(made);
    else own.set(script, [made]);
  }
  return (script) => [...general, ...(own.get(script) ?? [])];
}
