/** What the rules say about the unaltered chorales: good writing should be left alone. */
import { CHORALE } from '../../../src/profiles/profile.ts';
import { type Finding, reviewScore } from '../../../src/review/review.ts';
import type { Severity } from '../../../src/rules/rule.ts';
import { crotchets } from '../../../src/score/time.ts';
import type { Piece } from './planter.ts';

export interface Quiet {
  /** Beats taken as crotchets, upbeats included. */
  readonly beats: number;
  readonly counts: Readonly<Record<Severity, number>>;
  readonly byRule: ReadonlyMap<string, Readonly<Record<Severity, number>>>;
  readonly findings: readonly { readonly piece: Piece; readonly finding: Finding }[];
}

export function listen(pieces: readonly Piece[]): Quiet {
  const byRule = new Map<string, Record<Severity, number>>();
  const counts = { fault: 0, query: 0, remark: 0 };
  const findings: { piece: Piece; finding: Finding }[] = [];
  let beats = 0;
  for (const piece of pieces) {
    beats += crotchets(piece.plain.end);
    for (const finding of reviewScore(piece.score, CHORALE).findings) {
      const row = byRule.get(finding.rule.id) ?? { fault: 0, query: 0, remark: 0 };
      row[finding.severity]++;
      byRule.set(finding.rule.id, row);
      counts[finding.severity]++;
      findings.push({ piece, finding });
    }
  }
  return { beats, counts, byRule, findings };
}
