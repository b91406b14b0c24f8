/** Tables for spreadsheets, as RFC 4180 has them. */

export type Cell = string | number | undefined;

/** Lines end with CR LF; a byte-order mark goes before, so that spreadsheets read the text as UTF-8. */
export function csv(rows: readonly (readonly Cell[])[]): string {
  return `\uFEFF${rows.map((row) => row.map(field).join(',')).join('\r\n')}\r\n`;
}

/**
 * A text that a spreadsheet would run as a formula gets an apostrophe before it: it begins with = + - @, a tab or a
 * carriage return (also behind white space). Numbers of ours are numbers, so a minus there is safe.
 */
function field(cell: Cell): string {
  if (cell === undefined) return '';
  if (typeof cell === 'number') return String(cell);
  const safe = /^[\s\uFEFF]*[=+\-@\t\r＝＋－＠]/u.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
