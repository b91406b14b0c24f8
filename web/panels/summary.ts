/** What the exercise shows, in sentences. */
import { html, type TemplateResult } from 'lit';
import type { Panel } from './context.ts';

export function summaryPanel(_panel: Panel): TemplateResult {
  return html``;
}
