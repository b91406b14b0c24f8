/** Stacks: made, set up otherwise, and filled with files. */

import { ROUTES, type SettingTexts } from '../../src/desk/wire.ts';
import { counted } from '../../src/english/words.ts';
import type { Handle } from './handle.ts';
import { ask } from './service.ts';
import { type StackTexts, saveSettings } from './settings.ts';
import { takeFiles } from './taking.ts';

export function createStacks(desk: Handle) {
  const { store, get, set, attempt, told } = desk;

  return {
    makeStack: (settings: SettingTexts): Promise<void> =>
      attempt(async () => {
        const { stack } = await ask(ROUTES.makeStack, { body: settings });
        desk.go({ view: 'queue', stack: stack.id, after: 0 });
      }),
    changeSettings: (texts: StackTexts): Promise<void> =>
      desk.inTurn(async () => {
        const kept = await saveSettings(store, texts);
        const { stack } = get();
        // What is to be reviewed again shows by itself, and goes on wherever one goes.
        if (kept && stack !== undefined) await desk.loading.loadStack(stack.id, 0, 1);
        told(kept ? 'The settings are kept.' : 'Nothing was changed.');
      }),
    take: async (files: readonly File[]): Promise<void> => {
      const { stack, queue } = get();
      if (stack === undefined) return;
      await attempt(async () => {
        const { taken, messages } = await takeFiles(stack.id, files, (done, of) =>
          set({ taking: { done, of, messages: [] } }),
        );
        set({ taking: messages.length > 0 ? { done: taken, of: taken, messages } : undefined });
        await desk.loading.loadStack(stack.id, queue?.after);
        told(`${counted(taken, 'file')} taken in.`);
      });
      if (get().notice?.wrong) set({ taking: undefined });
    },
  };
}
