/** Tables for spreadsheets, as RFC 4180 has them. */

export type Cell = string | number | undefined;

/** Goes before the first line, so that spreadsheets read the text as UTF-8. */
export const BYTE_ORDER_MARK = '\uFEFF';

/** A whole table, byte-order mark and all. */
export function csv(rows: readonly (readonly Cell[])[]): string {
  return BYTE_ORDER_MARK + rows.map(csvLine).join('');
}

/** One line, ended by CR LF, for tables that are written bit by bit. */
export function csvLine(row: readonly Cell[]): string {
  return `${row.map(field).join(',')}\r\n`;
}

/**
 * A text that a spreadsheet would run as a formula gets an apostrophe before it: one that begins with = + - @ (or their
 * wide forms), a tab or a carriage return, also behind white space. Numbers of ours are numbers: a minus is safe there.
 */
function field(cell: Cell): string {
  if (cell === undefined) return '';
  if (typeof cell === 'number') return Number.isFinite(cell) ? String(cell) : '';
  const safe = /^[\s\uFEFF]*[=+\-@＝＋－＠]|^[\t\r]/u.test(cell) ? `'${cell}` : cell;
  return /[",\r\n\t]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
