/** Changing the script that is open. Each change is stored by the service before the page shows it as done. */
import { ROUTES } from '../../src/desk/wire.ts';
import type { ScriptDecision, ScriptView } from '../../src/desk/wire-shapes.ts';
import type { Handle } from './handle.ts';
import { ask } from './service.ts';
import { withMade } from './steps.ts';

export type ScriptWork = ReturnType<typeof createScriptWork>;

export function createScriptWork(desk: Handle) {
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

  /** What <kbd>U</kbd> can take back. */
  function remember(id: string, what: string, forAll: boolean, script: number): void {
    set({ made: withMade(get().made, { id, what, forAll, script }) });
  }

  /** `beside` is the rule whose finding a remark is written beside. */
  function decide(decision: ScriptDecision, what: string, beside?: string): Promise<void> {
    return toScript(async ({ script: { id, revision } }) => {
      const answer = await ask(ROUTES.decide, {
        params: { id },
        body: { revision, decision, ...(beside === undefined ? {} : { beside }) },
      });
      remember(answer.decision.id, what, false, id);
      return what;
    });
  }

  return { toScript, remember, decide };
}
