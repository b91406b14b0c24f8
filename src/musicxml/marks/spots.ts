/** The children of an element, found in the text itself, so that something can be put between them. */

export interface Spot {
  readonly name: string;
  /** Where its opening tag begins and has ended, and where the whole element has ended; counted from 0. */
  readonly from: number;
  readonly inside: number;
  readonly until: number;
}

const MARKUP =
  /<!--[\s\S]*?-->|<!\[CDATA\[[\s\S]*?\]\]>|<\?[\s\S]*?\?>|<(\/?)([^\s/>]+)(?:[^>"']|"[^"]*"|'[^']*')*?(\/?)>/g;

/** Children of the element whose content begins at `inside`, in order. The text is known to be well-formed. */
export function childrenIn(text: string, inside: number): Spot[] {
  const markup = new RegExp(MARKUP);
  markup.lastIndex = inside;
  const spots: Spot[] = [];
  let depth = 0;
  let open: Omit<Spot, 'until'> | undefined;
  for (let found = markup.exec(text); found !== null; found = markup.exec(text)) {
    const [whole, closes, name, empty] = found;
    if (name === undefined) continue;
    const until = found.index + whole.length;
    if (closes === '/') {
      depth--;
      if (depth < 0) break;
      if (depth === 0 && open !== undefined) spots.push({ ...open, until });
      continue;
    }
    if (depth === 0) open = { name, from: found.index, inside: until };
    if (empty !== '/') depth++;
    else if (depth === 0) spots.push({ ...open!, until });
  }
  return spots;
}

/** Where the tag that ends at `inside` begins: no tag holds another `<`. */
export function tagStart(text: string, inside: number): number {
  return text.lastIndexOf('<', inside - 1);
}

/** The text of a child that holds nothing else. */
export function textIn(text: string, spot: Spot | undefined): string {
  if (spot === undefined || spot.inside === spot.until) return '';
  return text.slice(spot.inside, text.lastIndexOf('</', spot.until - 1)).trim();
}
