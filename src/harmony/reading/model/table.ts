/** The weight table as text, both ways: one heading a family, one line for all features that share all but the last name. */
import { FAMILIES, FEATURES } from './layout.ts';

/**
 * Reads a table. A line is `names: name weight, name weight …` under a heading `# family`.
 *
 * @throws RangeError for a family or feature that does not exist: the table and the layout belong together.
 */
export function parseTable(text: string): Float64Array {
  const weights = new Float64Array(FEATURES);
  let family = FAMILIES[0]!;
  for (const line of text.split('\n')) {
    if (line.trim() === '') continue;
    if (line.startsWith('# ')) {
      const named = FAMILIES.find(({ name }) => name === line.slice(2));
      if (named === undefined) throw new RangeError(`"${line.slice(2)}" is no family of features.`);
      family = named;
      continue;
    }
    const colon = line.indexOf(': ');
    const shared = line.slice(0, colon);
    for (const entry of line.slice(colon + 2).split(', ')) {
      const space = entry.lastIndexOf(' ');
      const label = shared === '' ? entry.slice(0, space) : `${shared} ${entry.slice(0, space)}`;
      weights[family.from + family.find(label)] = Number(entry.slice(space + 1));
    }
  }
  return weights;
}

/** Prints a table without the weights that round to nothing. */
export function printTable(weights: Float64Array, digits: number): string {
  const lines: string[] = [];
  for (const family of FAMILIES) {
    const rows = new Map<string, string[]>();
    for (let i = 0; i < family.size; i++) {
      const rounded = Number(weights[family.from + i]!.toFixed(digits));
      if (rounded === 0) continue;
      const label = family.label(i);
      const space = label.lastIndexOf(' ');
      const shared = label.slice(0, Math.max(space, 0));
      const row = rows.get(shared) ?? [];
      row.push(`${label.slice(space + 1)} ${rounded}`);
      rows.set(shared, row);
    }
    if (rows.size === 0) continue;
    lines.push(`# ${family.name}`);
    for (const [shared, entries] of rows) lines.push(`${shared}: ${entries.join(', ')}`);
  }
  return lines.join('\n');
}
