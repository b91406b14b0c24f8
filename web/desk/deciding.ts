/** Decisions about findings. */

import { ROUTES } from '../../src/desk/wire.ts';
import type { Judged, ScriptDecision } from '../../src/desk/wire-shapes.ts';
import { counted } from '../../src/english/words.ts';
import type { Severity } from '../../src/rules/rule.ts';
import type { Handle } from './handle.ts';
import { barInWords } from './places.ts';
import type { ScriptWork } from './script-work.ts';
import { ask } from './service.ts';
import { chosenFinding, nextOpen, openWithChosen } from './steps.ts';

type Reason = string | undefined;

const withReason = (reason: Reason): { reason?: string } => (reason ? { reason } : {});

/** `Agreed: Parallel fifths, bar 3.` */
export function wordsFor(did: string, { name, bar }: Pick<Judged, 'name' | 'bar'>): string {
  return `${did}: ${name}, ${barInWords(bar)}.`;
}

/** Agreement with several findings as one decision, and how it is told; nothing where none is open. */
function agreementWith(
  group: string,
  [first, ...others]: readonly Judged[],
): { readonly decision: ScriptDecision; readonly what: string } | undefined {
  if (first === undefined) return undefined;
  if (others.length === 0)
    return { decision: { kind: 'agree', finding: first.id }, what: wordsFor('Agreed', first) };
  return {
    decision: { kind: 'agree', finding: first.id, also: others.map(({ id }) => id) },
    what: `Agreed: ${group}, ${counted(others.length + 1, 'mark')}.`,
  };
}

/** A rule overruled in every script, everywhere or at places like this, and how it is told. */
function overrulingForAll({ name, rule, context }: Judged, reach: 'place' | 'rule', reason: Reason) {
  const here = reach === 'place';
  return {
    decision: {
      kind: 'overrule for all' as const,
      rule,
      ...(here ? { context } : {}),
      ...withReason(reason),
    },
    what: `Overruled for the whole class: ${name}${here ? ', at places like this' : ''}.`,
  };
}

export function createDeciding(desk: Handle, { toScript, remember, decide }: ScriptWork) {
  const { get, set } = desk;

  /** Decides about the finding under hand, then goes on to the next that is open. */
  async function andGoOn(run: (finding: Judged) => Promise<void>): Promise<void> {
    const finding = chosenFinding(get());
    if (finding === undefined) return;
    await run(finding);
    const next = nextOpen(get(), finding);
    if (next !== undefined) set({ chosen: next });
  }

  return {
    agree: () =>
      andGoOn((finding) => decide({ kind: 'agree', finding: finding.id }, wordsFor('Agreed', finding))),
    /** With everything that comes from the same slip. */
    agreeWithGroup: () =>
      andGoOn(async () => {
        const { group, open } = openWithChosen(get());
        const agreement = agreementWith(group, open);
        if (agreement === undefined) desk.told('All of these are decided.');
        else await decide(agreement.decision, agreement.what);
      }),
    overrule: (reason: Reason) =>
      andGoOn((finding) =>
        decide(
          { kind: 'overrule', finding: finding.id, ...withReason(reason) },
          wordsFor('Overruled', finding),
        ),
      ),
    overruleForAll: (reach: 'place' | 'rule', reason: Reason) =>
      andGoOn((finding) => {
        const { decision, what } = overrulingForAll(finding, reach, reason);
        return toScript(async ({ script, stackRevision: revision }) => {
          const answer = await ask(ROUTES.decideForAll, {
            params: { id: script.stack },
            body: { revision, decision },
          });
          remember(answer.decision.id, what, true, script.id);
          return what;
        });
      }),
    setSeverity: async (severity: Severity): Promise<void> => {
      const finding = chosenFinding(get());
      if (finding === undefined) return;
      await decide(
        { kind: 'severity', finding: finding.id, severity },
        `${finding.name} counts as a ${severity}.`,
      );
    },
    /** A decision about the draft before: it holds here too, or is left. */
    carry: (from: string, keep: boolean, what: string) =>
      toScript(async ({ script: { id, revision } }) => {
        const answer = await ask(ROUTES.carry, { params: { id }, body: { revision, from, keep } });
        remember(answer.decision.id, what, false, id);
        return what;
      }),
  };
}
