/** Fetches what the page shows into its state. @throws {Refused} */
import type { Store } from '../state/store.ts';
import {
  type Judged,
  moderationAnswer,
  type ScriptView,
  scriptAnswer,
  sheetAnswer,
  stackAnswer,
} from './answers.ts';
import { ask } from './service.ts';
import type { DeskState } from './state.ts';

export function createLoading(store: Store<DeskState>) {
  const set = (change: Partial<DeskState>): void => store.update((state) => ({ ...state, ...change }));

  async function loadStack(id: number): Promise<void> {
    const { stack, scripts } = await ask(stackAnswer, `/stacks/${id}?most=500`);
    set({ stack, queue: scripts });
  }

  async function loadScript(id: number): Promise<void> {
    const script = await ask(scriptAnswer, `/scripts/${id}`);
    const { stack, place, chosen } = store.get();
    if (stack?.id !== script.script.stack || !store.get().queue.some((entry) => entry.id === id)) {
      await loadStack(script.script.stack);
    }
    const kept = place.view === 'script' && script.findings.some((finding) => finding.id === chosen);
    set({ script, chosen: kept ? chosen : firstOpen(script)?.id });
  }

  async function loadModeration(stack: number, criterion: string): Promise<void> {
    const moderation = await ask(
      moderationAnswer,
      `/stacks/${stack}/moderation${criterion === '' ? '' : `?criterion=${encodeURIComponent(criterion)}`}`,
    );
    set({ moderation });
    const beside: Record<number, ScriptView> = {};
    for (const { script } of moderation.ranked)
      beside[script.id] = await ask(scriptAnswer, `/scripts/${script.id}`);
    set({ beside });
  }

  async function loadSheets(stack: number): Promise<void> {
    set({ sheets: [] });
    const latest = new Map<string, number>();
    for (const { id, candidate, error } of store.get().queue) {
      if (error === undefined) latest.set(candidate ?? `script ${id}`, id);
    }
    const sheets = [];
    for (const id of latest.values()) sheets.push(await ask(sheetAnswer, `/scripts/${id}/sheet`));
    if (store.get().stack?.id === stack) set({ sheets });
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
