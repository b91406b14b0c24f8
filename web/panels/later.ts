/** Views that are fetched when they are first shown, so that nobody waits for what is not looked at. */
import { html, type TemplateResult } from 'lit';
import type { Panel } from './context.ts';

export type PanelView = (panel: Panel) => TemplateResult;

const arrivals = new Set<() => void>();

/** Calls back each time a view has come that the page waits for; it is then to be drawn again. */
export function whenArrived(listener: () => void): void {
  arrivals.add(listener);
}

/** The view that `load` fetches; until it has come, a line in its place. */
export function later(load: () => Promise<PanelView>): PanelView {
  let view: PanelView | undefined;
  let state: 'unasked' | 'coming' | 'failed' = 'unasked';
  const fetchIt = async (): Promise<void> => {
    state = 'coming';
    try {
      view = await load();
    } catch {
      state = 'failed';
    }
    for (const listener of arrivals) listener();
  };
  return (panel) => {
    if (view !== undefined) return view(panel);
    if (state === 'failed')
      return html`<div class="view empty">
        <p>This part of the page could not be loaded. Once you are online, try again.</p>
        <button type="button" @click=${() => void fetchIt()}>Try again</button>
      </div>`;
    if (state === 'unasked') void fetchIt();
    return html`<p class="view empty">Fetching this part of the page…</p>`;
  };
}
