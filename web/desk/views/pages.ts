/** Ways to the parts of a list that is too long to be shown at once. */
import { html, nothing, type TemplateResult } from 'lit';
import { hashOf, type Place } from '../state.ts';

type Paged = Extract<Place, { readonly after: number }>;

/** `place` is where the list is shown; `of` how many there are in all. */
export function pageLinks(
  place: Paged,
  shown: number,
  of: number,
  most: number,
): TemplateResult | typeof nothing {
  const { after } = place;
  if (after === 0 && shown >= of) return nothing;
  return html`<nav class="pages no-print" aria-label="Parts of the list">
    ${after === 0 ? nothing : html`<a href=${hashOf({ ...place, after: Math.max(0, after - most) })}>Earlier</a>`}
    <span>${shown === 0 ? `none of ${of}` : `${after + 1} to ${after + shown} of ${of}`}</span>
    ${after + shown >= of ? nothing : html`<a href=${hashOf({ ...place, after: after + shown })}>Later</a>`}
  </nav>`;
}
