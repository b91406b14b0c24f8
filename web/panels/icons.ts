/** Signs for buttons, drawn here since text fonts lack them. They say nothing by themselves: buttons carry names. */
import { html, svg, type TemplateResult } from 'lit';

function icon(body: TemplateResult): TemplateResult {
  return html`<svg class="icon" viewBox="0 0 20 20" width="20" height="20" aria-hidden="true" focusable="false">
    ${body}
  </svg>`;
}

const line = (d: string) =>
  svg`<path d=${d} fill="none" stroke="currentColor" stroke-width="1.6" stroke-linecap="round" stroke-linejoin="round" />`;

export const UNDO = icon(line('M7.5 4 3.5 8l4 4M4 8h8a4.5 4.5 0 0 1 0 9H9'));
export const REDO = icon(line('M12.5 4l4 4-4 4M16 8H8a4.5 4.5 0 0 0 0 9h3'));
export const TIE = icon(
  svg`<path d="M2.5 8c2.5 6 12.500 6 15 0-2.700 4.300-12.300 4.300-15 0z" fill="currentColor" stroke="currentColor" stroke-width="0.8" />`,
);
export const FERMATA = icon(
  svg`<path d="M2.500 14.500C2.500 1.500 17.500 1.500 17.500 14.500 16 5.500 4 5.500 2.500 14.500z" fill="currentColor" stroke="currentColor" stroke-width="0.6" /><circle cx="10" cy="13.200" r="1.600" fill="currentColor" />`,
);
export const LOCK = html`<svg class="lock" viewBox="0 0 12 12" width="11" height="11" aria-hidden="true" focusable="false">
  <rect x="1.500" y="5.500" width="9" height="6" rx="1" fill="currentColor" />
  <path d="M3.500 5.500V4a2.500 2.500 0 0 1 5 0v1.500" fill="none" stroke="currentColor" stroke-width="1.400" />
</svg>`;
export const PLAY = icon(svg`<path d="M5 3.500v13l11-6.500z" fill="currentColor" />`);
export const STOP = icon(svg`<rect x="4.500" y="4.500" width="11" height="11" fill="currentColor" />`);
