/** Progress over a candidate's drafts, as a small picture: a bar a draft, faults below, queries above. */
import { html, nothing, svg, type TemplateResult } from 'lit';
import type { SheetView } from '../../../src/desk/wire-shapes.ts';
import { counted, listed } from '../../../src/english/words.ts';

type Draft = SheetView['drafts'][number];

const STEP = 46;
const WIDTH = 22;
const HEIGHT = 64;

export function progressPicture(drafts: readonly Draft[]): TemplateResult | typeof nothing {
  if (drafts.length < 2) return nothing;
  const most = Math.max(1, ...drafts.map(({ faults, queries }) => faults + queries));
  const words = listed(
    drafts.map(
      ({ draft, faults, queries }) =>
        `draft ${draft} with ${counted(faults, 'fault')} and ${counted(queries, 'query', 'queries')}`,
    ),
  );
  return html`<figure class="progress">
    <svg
      viewBox=${`0 0 ${STEP * drafts.length} ${HEIGHT + 34}`}
      width=${STEP * drafts.length}
      height=${HEIGHT + 34}
      role="img"
      aria-label=${`From draft to draft: ${words}`}
    >
      ${drafts.map((one, i) => bar(one, i * STEP + (STEP - WIDTH) / 2, (HEIGHT - 4) / most))}
    </svg>
    <figcaption>Faults (filled) and queries (open) from draft to draft</figcaption>
  </figure>`;
}

function bar({ draft, faults, queries }: Draft, x: number, unit: number): TemplateResult {
  const ground = HEIGHT + 16;
  const middle = x + WIDTH / 2;
  const top = ground - (faults + queries) * unit;
  return svg`
    <rect class="bar-faults" x=${x} y=${ground - faults * unit} width=${WIDTH} height=${faults * unit}></rect>
    <rect class="bar-queries" x=${x} y=${top} width=${WIDTH} height=${queries * unit}></rect>
    <line class="bar-ground" x1=${x - 8} x2=${x + WIDTH + 8} y1=${ground} y2=${ground}></line>
    <text x=${middle} y=${top - 4}>${faults + queries === 0 ? '0' : `${faults}+${queries}`}</text>
    <text x=${middle} y=${ground + 14}>${draft}</text>
  `;
}
