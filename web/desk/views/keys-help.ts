/** The keys, on `?`: a dialog over the page. */
import { html, type TemplateResult } from 'lit';
import { ref } from 'lit/directives/ref.js';
import type { Actions } from '../actions.ts';
import { KEYS } from '../keys.ts';

export function keysDialog(actions: Actions): TemplateResult {
  return html`<dialog class="keys" aria-labelledby="keys-title" ${ref(showOnce)} @close=${() => actions.showKeys(false)}>
    <h2 id="keys-title">Keys</h2>
    <dl>
      ${KEYS.map(({ shown, help }) => html`<div><dt><kbd>${shown}</kbd></dt><dd>${help}</dd></div>`)}
    </dl>
    <form method="dialog"><button>Close <kbd>Esc</kbd></button></form>
  </dialog>`;
}

/** As a dialog that keeps the focus; the same function each time, so that it runs once. */
function showOnce(element: Element | undefined): void {
  queueMicrotask(() => {
    if (element instanceof HTMLDialogElement && element.isConnected && !element.open) element.showModal();
  });
}
