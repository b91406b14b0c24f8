/** How many single-note changes would clear a finding, and in which voice; a teacher sees which. */
import { html, type nothing, type TemplateResult } from 'lit';
import type { Finding } from '../../src/review/review.ts';
import type { Panel } from './context.ts';

export function waysOutView(_panel: Panel, _finding: Finding): TemplateResult | typeof nothing {
  return html``;
}
