/** Taking decisions back, setting a script right, and finishing with it. */
import { ROUTES } from '../../src/desk/wire.ts';
import type { Handle } from './handle.ts';
import type { ScriptWork } from './script-work.ts';
import { ask } from './service.ts';
import { lastMade, placeBeside } from './steps.ts';

interface ScriptChange {
  readonly candidate?: string;
  readonly draft?: number;
  readonly done?: boolean;
}

export function createFinishing(desk: Handle, { toScript }: ScriptWork) {
  const { get, set, told } = desk;

  /** Takes back any decision, also one of another day. */
  const takeBack = (decision: string, forAll: boolean, what: string): Promise<void> =>
    toScript(async ({ script, stackRevision }) => {
      await ask(ROUTES.undo, {
        params: { decision },
        body: { revision: forAll ? stackRevision : script.revision },
      });
      set({ made: get().made.filter(({ id }) => id !== decision) });
      return what;
    });

  const change = (details: ScriptChange): Promise<void> =>
    toScript(async ({ script: { id, revision } }) => {
      await ask(ROUTES.changeScript, { params: { id }, body: { revision, ...details } });
      return undefined;
    });

  return {
    takeBack,
    change,
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
