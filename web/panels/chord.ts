/** The chord at the caret. */
import { html, type TemplateResult } from 'lit';
import type { Panel } from './context.ts';

export function chordPanel(_panel: Panel): TemplateResult {
  return html`<p class="empty">No chord here.</p>`;
}
