/** What was found around one place, put into an older review. */
import type { Ticks } from '../score/time.ts';
import type { Finding } from './finding.ts';
import { inOrderOfMarks } from './marks.ts';

export interface NearFindings {
  /** The stretch that was looked at closely: all findings that begin in it are here. */
  readonly from: Ticks;
  readonly until: Ticks;
  /** In the order of a review; times and tones are those of the whole score. */
  readonly findings: readonly Finding[];
}

/** A review's findings with those near the caret taken from a newer look at that place, numbered anew. */
export function withNear(findings: readonly Finding[], near: NearFindings): Finding[] {
  const all = [...findings.filter((f) => f.from < near.from || f.from >= near.until), ...near.findings];
  const ids = new Set(all.map(({ id }) => id));
  return inOrderOfMarks(
    all.map(({ because, ...finding }) =>
      because !== undefined && ids.has(because) ? { ...finding, because } : finding,
    ),
  );
}
