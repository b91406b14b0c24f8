/** What was decided about the draft before, and bears on the next. */
import { barAt } from '../score/place.ts';
import type { Score } from '../score/score.ts';
import { CROTCHET, crotchets } from '../score/time.ts';
import { type Decision, decisionsInForce, type TeacherRemark } from './decisions.ts';
import type { DraftComparison } from './drafts.ts';

type Judgement = Extract<Decision, { kind: 'overrule' | 'severity' }>;

/** A decision about the earlier draft, with its place in the later one. */
export type CarriedDecision =
  | {
      readonly decision: Judgement;
      /** Id of the later draft's finding. */
      readonly finding: string;
      /** False where the notes around it have changed: to be asked, not carried over silently. */
      readonly sure: boolean;
    }
  | {
      readonly decision: TeacherRemark;
      /** In the later draft, in crotchets. */
      readonly from: number;
      readonly until?: number;
      /** A teacher's own words are about a bar as it stood then: always to be asked. */
      readonly sure: false;
    };

/**
 * The overrulings, changes of severity and remarks that bear on the next draft. Agreement is not carried: a fault that
 * is still there deserves another look. Decisions for the whole class need no carrying. Remarks come along with their
 * bar; one on a bar that is gone has no place any more, and one about the whole script was about that draft.
 *
 * @param script the earlier draft's id, as its decisions have it
 */
export function carriedDecisions(
  script: string,
  decisions: readonly Decision[],
  comparison: Pick<DraftComparison, 'stillThere' | 'barsFrom'>,
  scores: { readonly before: Score; readonly after: Score },
): CarriedDecision[] {
  const latest = new Map<string, Judgement | undefined>();
  const severities = new Map<string, Judgement>();
  const remarks: TeacherRemark[] = [];
  for (const decision of decisionsInForce(decisions)) {
    if (decision.kind === 'overrule for all' || decision.kind === 'leave' || decision.script !== script)
      continue;
    if (decision.kind === 'remark') remarks.push(decision);
    else if (decision.kind === 'severity') severities.set(decision.finding, decision);
    else if (decision.kind === 'overrule') latest.set(decision.finding, decision);
    else for (const finding of [decision.finding, ...(decision.also ?? [])]) latest.set(finding, undefined);
  }
  const judged = comparison.stillThere.flatMap(({ before, after, unchanged }) =>
    [latest.get(before.id), severities.get(before.id)].flatMap((decision) =>
      decision === undefined ? [] : [{ finding: after.id, decision, sure: unchanged }],
    ),
  );
  return [...judged, ...remarks.flatMap((remark) => movedRemark(remark, comparison.barsFrom, scores))];
}

function movedRemark(
  remark: TeacherRemark,
  barsFrom: DraftComparison['barsFrom'],
  { before, after }: { readonly before: Score; readonly after: Score },
): CarriedDecision[] {
  if (remark.from === undefined) return [];
  const at = Math.round(remark.from * CROTCHET);
  const old = barAt(before, at);
  const bar = after.bars[barsFrom.indexOf(old.index)];
  if (bar === undefined) return [];
  const from = crotchets(bar.at - bar.offset + (at - old.at + old.offset));
  const end = after.bars.at(-1)!;
  const until =
    remark.until === undefined
      ? undefined
      : Math.min(from + remark.until - remark.from, crotchets(end.at + end.duration));
  return [
    {
      decision: remark,
      from: Math.max(from, crotchets(bar.at)),
      ...(until === undefined || until <= from ? {} : { until }),
      sure: false,
    },
  ];
}

/** How a decision about the draft before stands for this one: made again, left, or not answered yet. */
export type CarriedStanding = 'carried' | 'left' | 'asked';

/**
 * @param from the id of the decision about the draft before
 * @param decisions those about the later draft
 */
export function carriedStanding(
  script: string,
  from: string,
  decisions: readonly Decision[],
): { readonly standing: CarriedStanding; readonly made?: string } {
  const answer = decisionsInForce(decisions).findLast(
    (decision) => 'carriedFrom' in decision && decision.script === script && decision.carriedFrom === from,
  );
  if (answer === undefined) return { standing: 'asked' };
  return answer.kind === 'leave' ? { standing: 'left' } : { standing: 'carried', made: answer.id };
}

type Unmade<D> = D extends Decision ? Omit<D, 'id' | 'at' | 'by'> : never;

/** The decision made again, for the draft with this id; whoever stores it adds its own id and time. */
export function madeAgain(
  carried: CarriedDecision,
  script: string,
): Unmade<Extract<Decision, { kind: 'overrule' | 'severity' | 'remark' }>> {
  const { id: carriedFrom, at: _at, by: _by, ...decision } = carried.decision;
  if (!('from' in carried)) {
    return { ...decision, script, finding: carried.finding, carriedFrom } as Unmade<Judgement>;
  }
  const { until: _until, ...remark } = decision as Unmade<TeacherRemark>;
  const { from, until } = carried;
  return { ...remark, script, from, ...(until === undefined ? {} : { until }), carriedFrom };
}
