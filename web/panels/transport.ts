/** Hearing the exercise. */
import { html, type TemplateResult } from 'lit';
import type { Panel } from './context.ts';

export function transportView(_panel: Panel): TemplateResult {
  return html``;
}
