/**
 * What each script brings to the class picture, kept beside it: counted as it comes in and with each decision about it,
 * so that the picture only adds up. A decision for the whole class has the scripts it bears on counted again when the
 * picture is next asked for, some at a time, so that the desk goes on answering.
 */
import { setImmediate as turn } from 'node:timers/promises';
import {
  applyDecisions,
  type ClassPicture,
  type ClassTally,
  classPicture,
  type Decision,
  joined,
  NO_SCRIPTS,
  type ScriptFigures,
  withScript,
} from '../../src/desk/index.ts';
import type { Database } from './database.ts';
import { decisionsByScript, figuresOfScript } from './kept.ts';
import { LATEST } from './queue.ts';

/** Scripts counted, and tallies added up, before others have their turn. */
const COUNTED_AT_ONCE = 50;
const ADDED_AT_ONCE = 500;

/** Counts one script, as the decisions that bear on it leave it. Give its figures where they are at hand. */
export function keepTally(
  db: Database,
  script: number,
  decisions: readonly Decision[],
  figures: ScriptFigures | undefined = figuresOfScript(db, script),
): void {
  if (figures === undefined) {
    db.prepare('DELETE FROM tallies WHERE script = ?').run(script);
    return;
  }
  const { findings } = applyDecisions(String(script), figures.findings, decisions);
  const rules = [...new Set(findings.map(({ rule }) => rule))];
  db.prepare(
    `INSERT INTO tallies (script, rules, tally) VALUES (?, ?, ?)
     ON CONFLICT (script) DO UPDATE SET rules = excluded.rules, tally = excluded.tally`,
  ).run(script, JSON.stringify(rules), JSON.stringify(withScript(NO_SCRIPTS, { script, figures, findings })));
}

/** Has a stack's scripts counted again: those in which the rule found something, or all. */
export function forgetTallies(db: Database, stack: number, rule?: string): void {
  db.prepare(
    `UPDATE tallies SET tally = NULL WHERE script IN (SELECT id FROM scripts WHERE stack = ?)
     AND (? IS NULL OR instr(rules, ?) > 0)`,
  ).run(stack, rule ?? null, JSON.stringify(rule ?? ''));
}

/** The class picture of each candidate's latest draft. */
export async function classPictureOf(db: Database, stack: number): Promise<ClassPicture> {
  await countMissing(db, stack);
  let tally: ClassTally = NO_SCRIPTS;
  const page = db.prepare(
    `SELECT id, tally FROM scripts JOIN tallies ON tallies.script = scripts.id
     WHERE stack = ? AND id > ? AND tally IS NOT NULL AND ${LATEST} ORDER BY id LIMIT ${ADDED_AT_ONCE}`,
  );
  for (let after = 0; ; await turn()) {
    const rows = page.all(stack, after) as { id: number; tally: string }[];
    for (const row of rows) tally = joined(tally, JSON.parse(row.tally) as ClassTally);
    after = rows.at(-1)?.id ?? after;
    if (rows.length < ADDED_AT_ONCE) break;
  }
  return classPicture(tally, (script) => figuresOfScript(db, script) ?? NO_BARS);
}

const NO_BARS = { boardBars: [], goodBars: [] };

/** Counts what has to be counted again, and what came onto the desk before tallies were kept. */
async function countMissing(db: Database, stack: number): Promise<void> {
  const missing = db
    .prepare(
      `SELECT id FROM scripts LEFT JOIN tallies ON tallies.script = scripts.id
       WHERE stack = ? AND error IS NULL AND tally IS NULL`,
    )
    .pluck()
    .all(stack) as number[];
  for (let done = 0; done < missing.length; done += COUNTED_AT_ONCE) {
    // Read anew each time: somebody may have decided something meanwhile.
    const decisions = decisionsByScript(db, stack);
    db.transaction(() => {
      for (const script of missing.slice(done, done + COUNTED_AT_ONCE))
        keepTally(db, script, decisions(script));
    }).immediate();
    await turn();
  }
}
