/** Decisions about findings, and marks. Each is stored by the service before the page shows it as done. */
import { ROUTES } from '../../src/desk/wire.ts';
import type { ScriptDecision, ScriptView } from '../../src/desk/wire-shapes.ts';
import type { Severity } from '../../src/rules/rule.ts';
import type { Handle } from './handle.ts';
import { ask } from './service.ts';
import { chosenFinding, lastMade, nextOpen, placeBeside, withMade } from './steps.ts';

export function createDeciding(desk: Handle) {
  const { get, set, inTurn, told } = desk;

  /** Does something to the script that was open when it was asked for, and shows how it stands then. */
  async function toScript(change: (view: ScriptView) => Promise<string | undefined>): Promise<void> {
    const id = get().script?.script.id;
    await inTurn(async () => {
      const { script } = get();
      if (id === undefined || script?.script.id !== id) return;
      const said = await change(script);
      await desk.loading.loadScript(id);
      if (said !== undefined) told(said);
    });
  }

  function remember(id: string, what: string, forAll: boolean, script: number): void {
    set({ made: withMade(get().made, { id, what, forAll, script }) });
  }

  /** `beside` is the rule whose finding a remark is written beside. */
  async function decide(decision: ScriptDecision, what: string, beside?: string): Promise<void> {
    await toScript(async ({ script: { id, revision } }) => {
      const answer = await ask(ROUTES.decide, {
        params: { id },
        body: { revision, decision, ...(beside === undefined ? {} : { beside }) },
      });
      remember(answer.decision.id, what, false, id);
      return what;
    });
  }

  /** Decides about the finding under hand, then goes on to the next that is open. */
  async function decideAndGoOn(
    decision: (finding: string) => ScriptDecision,
    did: 'Agreed' | 'Overruled',
  ): Promise<void> {
    const finding = chosenFinding(get());
    if (finding === undefined) return;
    await decide(decision(finding.id), `${did}: ${finding.name}, bar ${finding.bar}.`);
    const next = nextOpen(get(), finding);
    if (next !== undefined) set({ chosen: next });
  }

  async function overruleForAll(reach: 'place' | 'rule', reason: string | undefined): Promise<void> {
    const finding = chosenFinding(get());
    if (finding === undefined) return;
    const what = `Overruled for the whole class: ${finding.name}${reach === 'place' ? ', at places like this' : ''}.`;
    await toScript(async ({ script, stackRevision }) => {
      const answer = await ask(ROUTES.decideForAll, {
        params: { id: script.stack },
        body: {
          revision: stackRevision,
          decision: {
            kind: 'overrule for all',
            rule: finding.rule,
            ...(reach === 'place' ? { context: finding.context } : {}),
            ...(reason ? { reason } : {}),
          },
        },
      });
      remember(answer.decision.id, what, true, script.id);
      return what;
    });
    const next = nextOpen(get(), finding);
    if (next !== undefined) set({ chosen: next });
  }

  /** Takes back any decision, also one of another day. */
  async function takeBack(decision: string, forAll: boolean, what: string): Promise<void> {
    await toScript(async ({ script, stackRevision }) => {
      await ask(ROUTES.undo, {
        params: { decision },
        body: { revision: forAll ? stackRevision : script.revision },
      });
      set({ made: get().made.filter(({ id }) => id !== decision) });
      return what;
    });
  }

  async function change(details: {
    readonly candidate?: string;
    readonly draft?: number;
    readonly done?: boolean;
  }): Promise<void> {
    await toScript(async ({ script: { id, revision } }) => {
      await ask(ROUTES.changeScript, { params: { id }, body: { revision, ...details } });
      return undefined;
    });
  }

  return {
    decide,
    takeBack,
    change,
    overruleForAll,
    agree: () => decideAndGoOn((finding) => ({ kind: 'agree', finding }), 'Agreed'),
    overrule: (reason: string | undefined) =>
      decideAndGoOn((finding) => ({ kind: 'overrule', finding, ...(reason ? { reason } : {}) }), 'Overruled'),
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
    giveMark: (criterion: string, marks: number | null) =>
      toScript(async ({ script: { id, revision } }) => {
        await ask(ROUTES.mark, { params: { id, criterion }, body: { revision, marks } });
        return marks === null ? 'Mark taken back.' : `${marks} marks.`;
      }),
    /** Takes back what was decided last in this window. */
    undo: async (): Promise<void> => {
      await desk.settled();
      const last = lastMade(get());
      if (last === undefined) return told('Nothing to take back.');
      await takeBack(last.id, last.forAll, `Taken back: ${last.what}`);
    },
    /** Finished with this script: on to the next. */
    finish: async (): Promise<void> => {
      await change({ done: true });
      const next = placeBeside(get(), 'next');
      if (!get().notice?.wrong && next !== undefined) desk.go(next);
    },
  };
}
