/** Checks that a marked file is the pupil's own with something put in, by means of its own: no code of the marker is used. */

/** Tags with their attributes, texts, comments and processing instructions, in order. */
function tokens(xml: string): string[] {
  return xml.match(/<!--[\s\S]*?-->|<!\[CDATA\[[\s\S]*?\]\]>|<\?[\s\S]*?\?>|<[^>]*>|[^<]+/g) ?? [];
}

const OURS = new Set([
  'direction',
  'direction-type',
  'words',
  'offset',
  'staff',
  'lyric',
  'syllabic',
  'text',
  'notehead',
]);

/**
 * What is wrong with a marked file beside its original, in words; empty where every token of the original is there, in
 * its order, and only elements of ours stand between.
 */
export function lostOrForeign(original: string, marked: string): string[] {
  const wanted = tokens(original);
  const wrong: string[] = [];
  let next = 0;
  let added: string[] = [];
  for (const token of tokens(marked)) {
    if (next < wanted.length && added.length === 0 && sameToken(wanted[next]!, token)) next++;
    else if (token === '<?partwise begin?>') added = [token];
    else if (token === '<?partwise end?>') added = [];
    else if (token === '<?partwise coloured?>') continue;
    else if (added.length > 0) {
      const name = /^<\/?([\w-]+)/.exec(token)?.[1];
      if (name !== undefined && !OURS.has(name)) wrong.push(`put in: ${token}`);
    } else wrong.push(`not of the original: ${token.slice(0, 60)}`);
  }
  if (next < wanted.length) wrong.push(`lost: ${wanted[next]!.slice(0, 60)} and what follows`);
  return wrong.slice(0, 5);
}

/** A notehead of the pupil's own may have our colour. */
function sameToken(own: string, token: string): boolean {
  return own === token || (own.startsWith('<notehead') && own === token.replace(/ color="#[0-9A-F]{6}"/, ''));
}
