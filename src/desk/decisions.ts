/**
 * The teacher's decisions as data, and what the findings come to under them. Nothing is ever changed or taken away:
 * a decision is added to the list, and an undo is one more decision. The order of the list is the order in time.
 */
import * as z from 'zod';
import type { ScriptFinding } from './finding.ts';

const DECISION_LIMITS = { reason: 500, remark: 2_000 } as const;

const id = z.string().min(1).max(100);
const text = (most: number, what: string) =>
  z
    .string()
    .trim()
    .min(1, `${what} is empty: write something, or leave it out.`)
    .max(most, `${what} is longer than ${most} characters: shorten it.`);
const reason = text(DECISION_LIMITS.reason, 'The reason').optional();
const severity = z.enum(['fault', 'query', 'remark']);
const crotchets = z.number().min(0);

const made = {
  /** Unique on the desk. */
  id,
  /** When, ISO 8601 in UTC. Told to people; the order is that of the list. */
  at: z.iso.datetime(),
  /** Who, where several teachers share a desk: initials or whatever they go by. */
  by: z.string().max(40).optional(),
};
/** The script (one draft of one candidate) a decision is about, by the desk's own id. */
const script = id;
/** The decision about the draft before that is made again here. */
const carriedFrom = id.optional();

export const decisionSchema = z.discriminatedUnion('kind', [
  z.object({
    kind: z.literal('agree'),
    ...made,
    script,
    finding: id,
    /** Agreed to with it, since they come from the same slip: one decision, taken back as one. */
    also: z.array(id).max(500).optional(),
  }),
  z.object({ kind: z.literal('overrule'), ...made, script, finding: id, reason, carriedFrom }),
  z.object({
    kind: z.literal('overrule for all'),
    ...made,
    rule: id,
    /** Only where the music around the finding is of this kind (`ScriptFinding.context`); left out: the whole rule. */
    context: z.string().max(300).optional(),
    reason,
  }),
  z.object({ kind: z.literal('severity'), ...made, script, finding: id, severity, carriedFrom }),
  z.object({
    kind: z.literal('remark'),
    ...made,
    script,
    voice: z.enum(['S', 'A', 'T', 'B']).optional(),
    /** Left out where it is about the whole script. */
    from: crotchets.optional(),
    /** The end of the stretch; left out where the remark is about one beat. */
    until: crotchets.optional(),
    text: text(DECISION_LIMITS.remark, 'The remark'),
    carriedFrom,
  }),
  /** Takes back any decision, an earlier undo included (which is a redo). */
  z.object({ kind: z.literal('undo'), ...made, decision: id }),
  /** A decision about the draft before does not hold for this one, whether it was carried over or only offered. */
  z.object({ kind: z.literal('leave'), ...made, script, carriedFrom: id }),
]);
export type Decision = z.infer<typeof decisionSchema>;
export type DecisionKind = Decision['kind'];
type Of<K extends DecisionKind> = Extract<Decision, { kind: K }>;

/** How a finding stands: nobody has decided yet, the teacher agrees, or the teacher overrules. */
export type Standing = 'open' | 'agreed' | 'overruled';

/** What must be known of a finding to apply decisions to it. */
type Decidable = Pick<ScriptFinding, 'id' | 'rule' | 'severity' | 'context'>;

/** How a finding stands, and by what decision. */
export interface Judgement {
  readonly standing: Standing;
  /** The severity that the review gave. */
  readonly foundAs: ScriptFinding['severity'];
  /** Why it is overruled, where the teacher said so. */
  readonly reason?: string;
  /** Overruled by a decision for the whole class, not for this finding. */
  readonly forAll?: true;
  /** The decision that settled the standing, so that it can be undone. */
  readonly decision?: string;
  /** Who made it, where that is known. */
  readonly by?: string;
}

/** A finding as it stands under the teacher's decisions. `severity` is the teacher's where one was set. */
export type JudgedFinding = ScriptFinding & Judgement;

export type TeacherRemark = Of<'remark'>;

export interface Judged<F = ScriptFinding> {
  readonly findings: readonly (F & Judgement)[];
  /** The teacher's own remarks on this script: those about all of it, then by place. */
  readonly remarks: readonly TeacherRemark[];
}

/**
 * The decisions that hold: those that no later, still-holding undo takes back, and of those carried over from the draft
 * before, those that were not left. Undos themselves are left out.
 */
export function decisionsInForce(decisions: readonly Decision[]): readonly Exclude<Decision, Of<'undo'>>[] {
  const undone = new Set<string>();
  const left = new Set<string>();
  // From the last backwards: an undo counts only if nothing after it undid it.
  for (const decision of [...decisions].reverse()) {
    if (undone.has(decision.id)) continue;
    if (decision.kind === 'undo') undone.add(decision.decision);
    else if (decision.kind === 'leave') left.add(carriedKey(decision.script, decision.carriedFrom));
  }
  return decisions.flatMap((decision) => {
    if (decision.kind === 'undo' || undone.has(decision.id)) return [];
    if (!('carriedFrom' in decision) || decision.kind === 'leave') return [decision];
    const { script: to, carriedFrom: from } = decision;
    return from !== undefined && left.has(carriedKey(to, from)) ? [] : [decision];
  });
}

function carriedKey(to: string, from: string): string {
  return JSON.stringify([to, from]);
}

/**
 * What a script's findings come to. Pure. The later decision about a finding holds; a decision about this one finding
 * goes before one for the whole class, whichever came first, so that a teacher can except one place from a general
 * overruling. Of several general ones the later holds.
 *
 * @param script the script's id; decisions about other scripts are passed over
 */
export function applyDecisions<F extends Decidable>(
  script: string,
  findings: readonly F[],
  decisions: readonly Decision[],
): Judged<F> {
  const settled = new Map<string, Of<'agree'> | Of<'overrule'>>();
  const severities = new Map<string, Of<'severity'>>();
  const general = new Map<string, Of<'overrule for all'>>();
  const remarks: TeacherRemark[] = [];
  for (const decision of decisionsInForce(decisions)) {
    if (decision.kind === 'overrule for all') general.set(kindKey(decision.rule, decision.context), decision);
    else if (decision.script !== script || decision.kind === 'leave') continue;
    else if (decision.kind === 'remark') remarks.push(decision);
    else if (decision.kind === 'severity') severities.set(decision.finding, decision);
    else for (const finding of decidedWith(decision)) settled.set(finding, decision);
  }
  return {
    findings: findings.map((finding) => {
      const own = settled.get(finding.id);
      const all =
        general.get(kindKey(finding.rule, finding.context)) ?? general.get(kindKey(finding.rule, undefined));
      return {
        ...finding,
        severity: severities.get(finding.id)?.severity ?? finding.severity,
        foundAs: finding.severity,
        ...standingOf(own, all),
      };
    }),
    remarks: remarks.sort((a, b) => (a.from ?? -1) - (b.from ?? -1)),
  };
}

/** Every finding that a decision settles. */
function decidedWith(decision: Of<'agree'> | Of<'overrule'>): readonly string[] {
  return decision.kind === 'agree' ? [decision.finding, ...(decision.also ?? [])] : [decision.finding];
}

function kindKey(rule: string, context: string | undefined): string {
  return JSON.stringify(context === undefined ? [rule] : [rule, context]);
}

type Settled = Pick<JudgedFinding, 'standing' | 'reason' | 'forAll' | 'decision' | 'by'>;

function standingOf(
  own: Of<'agree'> | Of<'overrule'> | undefined,
  all: Of<'overrule for all'> | undefined,
): Settled {
  const settling = own ?? all;
  if (settling === undefined) return { standing: 'open' };
  const made = { decision: settling.id, ...(settling.by === undefined ? {} : { by: settling.by }) };
  if (settling.kind === 'agree') return { standing: 'agreed', ...made };
  return {
    standing: 'overruled',
    ...made,
    ...(settling.reason === undefined ? {} : { reason: settling.reason }),
    ...(settling.kind === 'overrule for all' ? { forAll: true as const } : {}),
  };
}

/** The findings that count: all but the overruled. */
export function standingFindings<F extends { readonly standing: Standing }>(findings: readonly F[]): F[] {
  return findings.filter((finding) => finding.standing !== 'overruled');
}
