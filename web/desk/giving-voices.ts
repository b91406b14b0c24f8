/** Which lines of the files sing which voices, said by hand: for one script, or for the whole stack. */
import { ROUTES } from '../../src/desk/wire.ts';
import type { Handle } from './handle.ts';
import type { ScriptWork } from './script-work.ts';
import { ask } from './service.ts';

export function createGivingVoices({ get, set }: Handle, { toScript }: ScriptWork) {
  const forScript = (voices: string) =>
    toScript(async ({ script: { id, revision } }) => {
      await ask(ROUTES.changeScript, { params: { id }, body: { revision, voices } });
      return 'Read again, with the voices as you said.';
    });

  const forStack = (voices: string) =>
    toScript(async ({ script: { id, revision }, stackRevision }) => {
      const { stack } = get();
      if (stack === undefined) return undefined;
      // The others are read while one looks at this.
      await ask(ROUTES.changeScript, { params: { id }, body: { revision, voices } });
      const answer = await ask(ROUTES.changeStack, {
        params: { id: stack.id },
        body: { revision: stackRevision, name: stack.name, voices },
      });
      set({ stack: answer.stack });
      return 'Read again, with the voices as you said; the rest of the stack follows.';
    });

  return {
    /** As typed, `S=1,A=2`; an empty text leaves it to the file. */
    giveVoices: (voices: string, forAll: boolean) => (forAll ? forStack(voices) : forScript(voices)),
  };
}
