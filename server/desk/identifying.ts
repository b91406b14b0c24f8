/** Whose scripts lie on a stack: settled from all names together, and what a teacher should know before marking. */
import { type CandidatePattern, type Intake, identify, type NamedFile } from '../../src/desk/index.ts';
import { carryOver } from './carrying.ts';
import type { Stack } from './records.ts';
import type { Desk } from './store.ts';

/**
 * Says anew whose each script is, from all file names of the stack together; what a person said stays. Drafts that come
 * to follow one another have what was decided carried over. Gives how many have changed.
 */
export function settleIdentities(desk: Desk, { id: stack, pattern }: Stack): number {
  const rows = desk.db
    .prepare('SELECT id, file, title, candidate, draft, by_hand FROM scripts WHERE stack = ? ORDER BY id')
    .all(stack) as (NamedFile & { candidate: string | null; draft: number; by_hand: number })[];
  const identified = identify(rows, pattern as CandidatePattern | undefined);
  const changed = identified.filter(({ candidate, draft }, i) => {
    const row = rows[i]!;
    return row.by_hand === 0 && ((candidate ?? null) !== row.candidate || draft !== row.draft);
  });
  const update = desk.db.prepare(
    'UPDATE scripts SET candidate = ?, draft = ?, revision = revision + 1 WHERE id = ?',
  );
  desk.db
    .transaction(() => {
      for (const { id, candidate, draft } of changed) update.run(candidate ?? null, draft, id);
    })
    .immediate();
  for (const { id, candidate } of changed) if (candidate !== undefined) carryOver(desk, id);
  return changed.length;
}

/** Keeps the name of a file that is no script. */
export function setApart(desk: Desk, stack: number, file: string, sum: string): void {
  desk.db
    .prepare('INSERT INTO apart (stack, file, sum) VALUES (?, ?, ?) ON CONFLICT DO NOTHING')
    .run(stack, file, sum);
}

/** True where the stack has a script with this very content under this name, in whatever folder. */
export function hasSame(desk: Desk, stack: number, file: string, sum: string): boolean {
  const files = desk.db
    .prepare('SELECT file FROM scripts WHERE stack = ? AND sum = ? AND NOT again')
    .pluck()
    .all(stack, sum) as string[];
  return files.some((other) => baseName(other) === baseName(file));
}

function baseName(file: string): string {
  return file.split(/[/\\]/).at(-1) ?? '';
}

export function intakeOf(desk: Desk, stack: number): Intake {
  const byCandidate = desk.db
    .prepare('SELECT candidate, count(*) AS n FROM scripts WHERE stack = ? GROUP BY candidate')
    .all(stack) as { candidate: string | null; n: number }[];
  return {
    byCandidate: new Map(byCandidate.map(({ candidate, n }) => [candidate ?? undefined, n])),
    unreadable: desk.count(stack).unreadable,
    apart: desk.db
      .prepare('SELECT file FROM apart WHERE stack = ? ORDER BY file')
      .pluck()
      .all(stack) as string[],
  };
}
