/** Opening the desk, its stacks and what they hold. */
import { ROUTES, type SettingTexts } from '../../src/desk/wire.ts';
import type { Handle } from './handle.ts';
import { ask, useToken } from './service.ts';
import { type StackTexts, saveSettings } from './settings.ts';
import { placeOf } from './state.ts';
import { takeFiles } from './taking.ts';

export function createStacks(desk: Handle) {
  const { store, get, set, attempt, told } = desk;
  const { loadStack, loadScript, loadModeration, loadSheets } = desk.loading;

  async function start(): Promise<void> {
    await attempt(async () => {
      const { passphraseNeeded, signedIn, token } = await ask(ROUTES.session, {});
      useToken(token);
      set({ signedIn: signedIn || !passphraseNeeded });
      if (signedIn) await load();
    });
  }

  async function signIn(passphrase: string): Promise<void> {
    await attempt(async () => {
      const answer = await ask(ROUTES.signIn, { body: { passphrase } });
      useToken(answer.token);
      set({ signedIn: true, notice: undefined });
      await load();
    });
  }

  /** Fetches what the address asks for. */
  async function load(): Promise<void> {
    const place = placeOf(location.hash);
    set({ place, notice: undefined, writing: undefined, editing: undefined });
    await attempt(async () => {
      if (place.view === 'stacks') set({ stacks: (await ask(ROUTES.stacks, {})).stacks });
      else if (place.view === 'script') await loadScript(place.script);
      else if (place.view === 'queue') await loadStack(place.stack, place.after);
      else await loadStack(place.stack, 0, 1);
      if (place.view === 'class')
        set({ classView: await ask(ROUTES.class, { params: { id: place.stack } }) });
      if (place.view === 'likeness')
        set({ likeness: await ask(ROUTES.likeness, { params: { id: place.stack } }) });
      const { stack } = get();
      if (place.view === 'settings' && stack !== undefined) set({ editing: { base: stack, now: stack } });
      if (place.view === 'moderation') await loadModeration(place);
      if (place.view === 'sheets') await loadSheets(place);
    });
  }

  async function makeStack(settings: SettingTexts): Promise<void> {
    await attempt(async () => {
      const { stack } = await ask(ROUTES.makeStack, { body: settings });
      desk.go({ view: 'queue', stack: stack.id, after: 0 });
    });
  }

  async function changeSettings(texts: StackTexts): Promise<void> {
    await desk.inTurn(async () => {
      told('Keeping the settings, and reviewing again where they call for it…');
      const kept = await saveSettings(store, texts);
      told(kept ? 'The settings are kept.' : 'Nothing was changed.');
    });
  }

  async function take(files: readonly File[]): Promise<void> {
    const { stack, queue } = get();
    if (stack === undefined) return;
    await attempt(async () => {
      const { taken, messages } = await takeFiles(stack.id, files, (done, of) =>
        set({ taking: { done, of, messages: [] } }),
      );
      set({ taking: messages.length > 0 ? { done: taken, of: taken, messages } : undefined });
      await loadStack(stack.id, queue?.after);
      told(`${taken} ${taken === 1 ? 'file' : 'files'} taken in.`);
    });
    if (get().notice?.wrong) set({ taking: undefined });
  }

  return { start, signIn, load, makeStack, changeSettings, take };
}
