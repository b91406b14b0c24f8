/** What is printed of the sheets, as one short text: it stands in the page's address, and so in that of a PDF. */
import * as z from 'zod';

/** What a sheet may have besides comments, strengths and things to work on. */
const SHEET_PARTS = ['marks', 'list', 'markers'] as const;
export type SheetPart = (typeof SHEET_PARTS)[number];

export interface SheetOptions {
  /** `marks`: by criterion; `list`: every mark on a second page; `markers`: the initials of whoever marked. */
  readonly parts: readonly SheetPart[];
  /** Numbers of the scripts whose sheets are wanted; none for all. */
  readonly scripts: readonly number[];
}

export const USUAL_SHEETS: SheetOptions = { parts: ['marks'], scripts: [] };

/** As in an address: `marks.list/12.15`; `none` where a sheet has none of the parts. */
export function printSheetOptions({ parts, scripts }: SheetOptions): string {
  const named = parts.length === 0 ? 'none' : SHEET_PARTS.filter((part) => parts.includes(part)).join('.');
  return scripts.length === 0 ? named : `${named}/${scripts.join('.')}`;
}

/** The inverse of {@link printSheetOptions}; what is not understood is left out, and nothing at all is the usual. */
export function readSheetOptions(parts: string | undefined, scripts: string | undefined): SheetOptions {
  const named = parts?.split('.') ?? USUAL_SHEETS.parts;
  return {
    parts: SHEET_PARTS.filter((part) => named.includes(part)),
    scripts: (scripts ?? '')
      .split('.')
      .map(Number)
      .filter((id) => Number.isSafeInteger(id) && id > 0)
      .slice(0, MOST_CHOSEN),
  };
}

/** More sheets than this are printed part by part. */
const MOST_CHOSEN = 500;

/** The same two texts in a query. */
export const sheetQuerySchema = z.object({
  parts: z.string().max(60).optional(),
  scripts: z.string().max(6_000).optional(),
});
