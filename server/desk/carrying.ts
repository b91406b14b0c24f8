/** From draft to draft: what the teacher decided about the one before, carried over or asked about. */
import {
  type CarriedDecision,
  type CarriedStanding,
  carriedDecisions,
  carriedStanding,
  compareDrafts,
  type Decision,
  madeAgain,
} from '../../src/desk/index.ts';
import type { Proposed, Script, ScriptEntry } from './records.ts';
import { scoreOf } from './reports.ts';
import type { Desk } from './store.ts';

export interface CarriedOver {
  /** Number of the draft before. */
  readonly draft: number;
  readonly decisions: readonly (CarriedDecision & {
    readonly standing: CarriedStanding;
    /** The decision made again for this draft, where it was. */
    readonly made?: string;
  })[];
}

/** What was decided about the candidate's draft before and bears on this one; undefined where there is nothing. */
export function carriedInto(desk: Desk, script: Script): CarriedOver | undefined {
  const before = desk.draftBefore(script);
  if (before === undefined || script.facts === undefined) return undefined;
  const decided = desk.decisions(before.stack, before.id);
  if (!decided.some((decision) => isAbout(decision, before))) return undefined;
  const [old, now] = [scoreOf(desk, before), scoreOf(desk, script)];
  if (old === undefined || now === undefined || before.facts === undefined) return undefined;
  const comparison = compareDrafts(
    { score: old, findings: before.facts.findings },
    { score: now, findings: script.facts.findings },
  );
  const own = desk.decisions(script.stack, script.id);
  const carried = carriedDecisions(String(before.id), decided, comparison, { before: old, after: now });
  if (carried.length === 0) return undefined;
  return {
    draft: before.draft,
    decisions: carried.map((one) => ({
      ...one,
      ...carriedStanding(String(script.id), one.decision.id, own),
    })),
  };
}

/**
 * As a draft comes in, decides again what is sure: the same notes at the same place. What the teacher was asked about
 * or answered before is left as it is. Gives how many were carried.
 */
export function carryOver(desk: Desk, id: number): number {
  const script = desk.script(id);
  const answered = new Set(
    desk
      .decisions(script.stack, id)
      .map((decision) => ('carriedFrom' in decision ? decision.carriedFrom : undefined)),
  );
  const sure = (carriedInto(desk, script)?.decisions ?? []).filter(
    (one) => one.sure && !answered.has(one.decision.id),
  );
  if (sure.length > 0)
    desk.carry(
      script.stack,
      id,
      sure.map((one) => madeAgain(one, String(id)) as Proposed),
    );
  return sure.length;
}

function isAbout(decision: Decision, { id }: ScriptEntry): boolean {
  return 'script' in decision && decision.script === String(id);
}
