/** Fetches what the page shows into its state. @throws {Refused} */
import type { Store } from '../state/store.ts';
import {
  type Judged,
  latestAnswer,
  moderationAnswer,
  type ScriptView,
  type SheetView,
  scriptAnswer,
  sheetAnswer,
  stackAnswer,
} from './answers.ts';
import { ask } from './service.ts';
import type { DeskState, Place } from './state.ts';

/** How many of a long list are shown at a time: what a browser draws, and a person looks through, at one go. */
export const SHOWN_AT_ONCE = { queue: 200, moderation: 8, sheets: 60 } as const;

type At<V extends Place['view']> = Extract<Place, { view: V }>;

export function createLoading(store: Store<DeskState>) {
  const set = (change: Partial<DeskState>): void => store.update((state) => ({ ...state, ...change }));

  /** The stack itself with some of its scripts. */
  async function loadStack(id: number, after = 0, most: number = SHOWN_AT_ONCE.queue): Promise<void> {
    const { stack, ...queue } = await ask(stackAnswer, `/stacks/${id}?after=${after}&most=${most}`);
    set({ stack, queue });
  }

  async function loadScript(id: number): Promise<void> {
    const script = await ask(scriptAnswer, `/scripts/${id}`);
    const { stack, place, chosen } = store.get();
    if (stack?.id !== script.script.stack) await loadStack(script.script.stack, 0, 1);
    const kept = place.view === 'script' && script.findings.some((finding) => finding.id === chosen);
    set({ script, chosen: kept ? chosen : firstOpen(script)?.id });
  }

  async function loadModeration({ stack, criterion, after }: At<'moderation'>): Promise<void> {
    const query = new URLSearchParams({
      after: String(after),
      most: String(SHOWN_AT_ONCE.moderation),
      ...(criterion === '' ? {} : { criterion }),
    });
    const moderation = await ask(moderationAnswer, `/stacks/${stack}/moderation?${query}`);
    set({ moderation, beside: {} });
    const beside: Record<number, ScriptView> = {};
    for (const { script } of moderation.ranked)
      beside[script.id] = await ask(scriptAnswer, `/scripts/${script.id}`);
    if (store.get().moderation === moderation) set({ beside });
  }

  async function loadSheets({ stack, after }: At<'sheets'>): Promise<void> {
    set({ sheets: undefined });
    const { total, scripts } = await ask(
      latestAnswer,
      `/stacks/${stack}/latest?after=${after}&most=${SHOWN_AT_ONCE.sheets}`,
    );
    const shown: SheetView[] = [];
    for (const id of scripts) shown.push(await ask(sheetAnswer, `/scripts/${id}/sheet`));
    const { place } = store.get();
    if (place.view === 'sheets' && place.stack === stack && place.after === after)
      set({ sheets: { total, shown } });
  }

  return { loadStack, loadScript, loadModeration, loadSheets };
}

/** Nobody has decided about it, and it is more than a remark. */
export function isOpen({ standing, severity }: Judged): boolean {
  return standing === 'open' && severity !== 'remark';
}

function firstOpen(script: ScriptView): Judged | undefined {
  return script.findings.find(isOpen) ?? script.findings[0];
}
