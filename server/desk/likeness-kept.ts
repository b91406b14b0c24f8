/** Comparisons that were made, kept until a script, its owner or the reference changes. */
import { printsVersion } from './kept.ts';
import type { LikenessReport } from './likeness-report.ts';
import type { ReviewPool } from './pool.ts';
import type { Desk } from './store.ts';

/** Comparisons kept at once: a desk has few stacks, and each is small. */
const MOST_KEPT = 8;

export function likenessKept(
  path: string,
  reports: Desk,
  workers: () => ReviewPool,
): (stack: number) => Promise<LikenessReport> {
  const kept = new Map<number, { readonly version: string; readonly report: Promise<LikenessReport> }>();
  return (stack) => {
    const version = printsVersion(reports.db, stack);
    const known = kept.get(stack);
    if (known?.version === version) return known.report;
    const report = workers().likeness({ path, stack });
    if (kept.size >= MOST_KEPT) kept.clear();
    kept.set(stack, { version, report });
    // What failed is tried again when it is next asked for.
    report.catch(() => kept.delete(stack));
    return report;
  };
}
