/** Findings as a teacher goes through them: a slip with what follows from it, and the same slip again, is one group. */
import type { JudgedFinding } from './decisions.ts';

type Grouped = Pick<JudgedFinding, 'id' | 'name' | 'mark' | 'because'>;

export interface FindingGroup<F extends Grouped = JudgedFinding> {
  /** Of the rule that leads. */
  readonly name: string;
  /** In the order of the list: each slip, then what follows from it. */
  readonly findings: readonly F[];
  /** How many of them are slips; the others follow from one. */
  readonly slips: number;
}

/** The findings in groups: those told under one mark (see `src/review/marks.ts`), in the order of the list. Pure. */
export function groupsOf<F extends Grouped>(findings: readonly F[]): FindingGroup<F>[] {
  const groups = new Map<number | string, F[]>();
  for (const finding of findings) {
    const key = finding.mark ?? finding.id;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [finding]);
    else group.push(finding);
  }
  return [...groups.values()].map((group) => {
    const slips = group.filter(({ because }) => because === undefined);
    return { name: (slips[0] ?? group[0]!).name, findings: group, slips: Math.max(1, slips.length) };
  });
}

/** The group that a finding is in. */
export function groupWith<F extends Grouped>(
  findings: readonly F[],
  id: string,
): FindingGroup<F> | undefined {
  return groupsOf(findings).find((group) => group.findings.some((finding) => finding.id === id));
}

/**
 * The number of each finding by its id, the same on the desk, on the sheet, in the score handed back and on the pupil's
 * own page: that of its mark. What has none, since it is only still to be written, counts on.
 */
export function numbersOf(findings: readonly Pick<JudgedFinding, 'id' | 'mark'>[]): Map<string, number> {
  let last = findings.reduce((most, { mark = 0 }) => Math.max(most, mark), 0);
  return new Map(findings.map(({ id, mark }) => [id, mark ?? ++last]));
}
