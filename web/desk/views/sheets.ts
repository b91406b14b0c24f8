/** The feedback sheets: which are shown, what stands on them, and the ways to paper and file. */
import { html, nothing, type TemplateResult } from 'lit';
import type { SheetOptions, SheetPart } from '../../../src/desk/sheet-options.ts';
import { addressOf, ROUTES } from '../../../src/desk/wire.ts';
import type { Stack } from '../../../src/desk/wire-shapes.ts';
import { counted } from '../../../src/english/words.ts';
import type { Actions } from '../actions.ts';
import { type DeskState, hashOf, type Place, SHOWN_AT_ONCE } from '../state.ts';
import { pageLinks } from './pages.ts';
import { sheetView } from './sheet.ts';

type SheetsPlace = Extract<Place, { view: 'sheets' }>;

export function sheetsPage(state: DeskState, place: SheetsPlace, actions: Actions): TemplateResult {
  const { sheets, stack } = state;
  if (stack === undefined || sheets === undefined) return html`<p class="empty">Writing the sheets…</p>`;
  const { shown } = sheets;
  return html`
    <header class="sheets-head no-print">
      <h1>Sheets</h1>
      ${unseenNote(sheets, place)} ${apartNote(stack)} ${partsForm(place, actions)} ${filesPart(stack, sheets, place, actions)}
      ${choosing(state, place, actions)}
      ${place.options.scripts.length > 0 ? nothing : pageLinks(place, shown.length, sheets.total, SHOWN_AT_ONCE.sheets)}
    </header>
    <div class="sheets" data-count=${shown.length}>
      ${shown.map(
        (sheet) => html`
          <label class="tick no-print">
            <input
              type="checkbox"
              .checked=${state.ticked.has(sheet.script.id)}
              @change=${() => actions.tick(sheet.script.id)}
            />
            choose ${sheet.script.candidate ?? sheet.script.file}
          </label>
          ${sheetView(sheet, stack, place.options)}
        `,
      )}
    </div>
  `;
}

type Shown = NonNullable<DeskState['sheets']>;

/** Before anything is handed out: how many scripts nobody has looked at. */
function unseenNote(
  { shown, unseen, total }: Shown,
  { options }: SheetsPlace,
): TemplateResult | typeof nothing {
  const all = options.scripts.length === 0;
  const not = all ? unseen : shown.filter(({ seen }) => !seen).length;
  if (not === 0) return nothing;
  return html`<p class="wrong unseen-count" role="status">
    Nobody has looked at ${not} of these ${all ? total : shown.length} scripts yet. What only the program has found is
    printed as such.
  </p>`;
}

/** Why marks that were given are not on the sheets. */
function apartNote({ second }: Stack): TemplateResult | typeof nothing {
  if (second !== 'blind') return nothing;
  return html`<p role="note">
    Two people mark this stack, and neither is to see the other’s marks. A mark comes onto the sheet, into the mark book
    and into the JSON once both have given the same one or have agreed on one.
  </p>`;
}

const PARTS: readonly (readonly [SheetPart, string])[] = [
  ['marks', 'marks by criterion'],
  ['list', 'every mark, on a second page'],
  ['markers', 'initials of whoever marked'],
];

function partsForm(place: SheetsPlace, actions: Actions): TemplateResult {
  const { parts } = place.options;
  const toggled = (part: SheetPart): SheetOptions => ({
    ...place.options,
    parts: parts.includes(part) ? parts.filter((other) => other !== part) : [...parts, part],
  });
  return html`<fieldset class="sheet-parts">
    <legend>On each sheet</legend>
    ${PARTS.map(
      ([part, words]) => html`<label>
        <input
          type="checkbox"
          .checked=${parts.includes(part)}
          @change=${() => actions.go({ ...place, options: toggled(part) })}
        />
        ${words}
      </label>`,
    )}
  </fieldset>`;
}

function filesPart(
  stack: Stack,
  { shown, total, unseen }: Shown,
  place: SheetsPlace,
  actions: Actions,
): TemplateResult {
  const { after, options } = place;
  const query = {
    after,
    most: SHOWN_AT_ONCE.sheets,
    parts: options.parts.length === 0 ? 'none' : options.parts.join('.'),
    ...(options.scripts.length === 0 ? {} : { scripts: options.scripts.join('.') }),
  };
  const params = { id: stack.id };
  const all = options.scripts.length === 0 && shown.length === total;
  const not = all ? unseen : shown.filter(({ seen }) => !seen).length;
  return html`<p class="sheet-files">
    <button type="button" class="main" @click=${() => window.print()}>Print</button>
    <a class="button plain" href=${addressOf(ROUTES.sheetsPdf, { params, query })} download>
      ${all ? 'All' : 'These'} as PDF${not === 0 ? '' : `, ${not} looked at by nobody`}
    </a>
    <a class="button plain" href=${addressOf(ROUTES.sheetsZip, { params, query })} download>
      A PDF for each candidate (zip)
    </a>
    <button type="button" @click=${() => void actions.saveSheets()}>
      ${shown.length === 1 ? 'As a web page' : 'A web page for each candidate (zip)'}
    </button>
    <span class="aside">A PDF takes some seconds a candidate, and Chromium on this machine.</span>
  </p>`;
}

function choosing(
  { ticked, stack }: DeskState,
  place: SheetsPlace,
  actions: Actions,
): TemplateResult | typeof nothing {
  if (place.options.scripts.length > 0) {
    const all = { ...place, after: 0, options: { ...place.options, scripts: [] } };
    return html`<p><a href=${hashOf(all)}>All sheets of ${stack?.name}</a></p>`;
  }
  if (ticked.size === 0) return nothing;
  const chosen = { ...place, after: 0, options: { ...place.options, scripts: [...ticked] } };
  return html`<p><button type="button" @click=${() => actions.go(chosen)}>Only the ${counted(ticked.size, 'chosen sheet')}</button></p>`;
}
