/** Fetches what the page shows into its state. @throws {Refused} */

import { ROUTES } from '../../src/desk/wire.ts';
import type { ScriptView, SheetView } from '../../src/desk/wire-shapes.ts';
import type { Store } from '../state/store.ts';
import { ask } from './service.ts';
import { type DeskState, type Place, SHOWN_AT_ONCE } from './state.ts';
import { chosenStill, firstOpen } from './steps.ts';

type At<V extends Place['view']> = Extract<Place, { view: V }>;

export function createLoading(store: Store<DeskState>) {
  const set = (change: Partial<DeskState>): void => store.update((state) => ({ ...state, ...change }));

  /** The stack itself with some of its scripts. */
  async function loadStack(id: number, after = 0, most: number = SHOWN_AT_ONCE.queue): Promise<void> {
    const { stack, ...queue } = await ask(ROUTES.stack, { params: { id }, query: { after, most } });
    set({ stack, queue });
    const { left, of, going } = queue.again;
    const known = store.get().reviewing;
    const timeLeft = known?.stack === id ? known.timeLeft : '';
    set({ reviewing: left === 0 ? undefined : { stack: id, left, of, going, timeLeft } });
  }

  async function loadScript(id: number): Promise<void> {
    const script = await ask(ROUTES.script, { params: { id } });
    const { stack, place, chosen, script: shown } = store.get();
    if (stack?.id !== script.script.stack) await loadStack(script.script.stack, 0, 1);
    // Looked at again, it is where it was; else work begins at what is open.
    const again = shown?.script.id === id && place.view === 'script';
    set({ script, chosen: again ? chosenStill(script, chosen) : firstOpen(script)?.id });
  }

  async function loadModeration({ stack, criterion, after }: At<'moderation'>): Promise<void> {
    const moderation = await ask(ROUTES.moderation, {
      params: { id: stack },
      query: { after, most: SHOWN_AT_ONCE.moderation, ...(criterion === '' ? {} : { criterion }) },
    });
    set({ moderation, beside: {} });
    const beside: Record<number, ScriptView> = {};
    for (const { script } of moderation.ranked)
      beside[script.id] = await ask(ROUTES.script, { params: { id: script.id } });
    if (store.get().moderation === moderation) set({ beside });
  }

  async function loadDifferences({ stack, after }: At<'differences'>): Promise<void> {
    const query = { after, most: SHOWN_AT_ONCE.differences };
    set({ differences: await ask(ROUTES.differences, { params: { id: stack }, query }) });
  }

  async function loadLikeness({ stack, after }: At<'likeness'>): Promise<void> {
    const query = { after, most: SHOWN_AT_ONCE.likeness };
    set({ likeness: await ask(ROUTES.likeness, { params: { id: stack }, query }), pairs: {} });
  }

  async function loadSheets(asked: At<'sheets'>): Promise<void> {
    const { stack, after, options } = asked;
    set({ sheets: undefined, ticked: new Set() });
    const { total, unseen, scripts } = await ask(ROUTES.latest, {
      params: { id: stack },
      query: { after, most: SHOWN_AT_ONCE.sheets },
    });
    const wanted = options.scripts.length > 0 ? options.scripts : scripts;
    const shown: SheetView[] = [];
    for (const id of wanted) shown.push(await ask(ROUTES.sheet, { params: { id } }));
    // Meanwhile somebody may have gone elsewhere.
    if (store.get().place === asked) set({ sheets: { total, unseen, shown } });
  }

  return { loadStack, loadScript, loadModeration, loadDifferences, loadLikeness, loadSheets };
}
