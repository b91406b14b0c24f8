/**
 * What of a file is ours. Everything this program writes into a pupil's file stands between two processing instructions,
 * which every reader of XML passes over: so it can be taken out again, leaving the file as it was, byte for byte.
 */
import { element } from '../markup.ts';

const BEGIN = '<?partwise begin?>';
const END = '<?partwise end?>';
/** Before a notehead of the pupil's own that was given our colour. */
const COLOURED = '<?partwise coloured?>';
const OURS =
  /<\?partwise begin\?>(?:(?!<\?partwise )[\s\S])*?<\?partwise end\?>|<\?partwise coloured\?>(?=(<notehead\b[^<>]*?)( color="#[0-9A-F]{6}")\/?>)/g;

/** An insertion: at a place in the text, counted from 0, something is added. */
export interface Insertion {
  readonly at: number;
  readonly xml: string;
}

export interface Range {
  readonly from: number;
  readonly until: number;
}

/** Elements of ours, to be found again. */
export function ours(at: number, xml: string): Insertion {
  return { at, xml: BEGIN + xml + END };
}

/** Our colour for a notehead element of the pupil's, from where it begins to where its opening tag has ended. */
export function coloured(text: string, tag: Range, colour: string): Insertion[] {
  const tagEnd = tag.until - (text[tag.until - 2] === '/' ? 2 : 1);
  const attribute = element('x', { color: colour }).slice('<x'.length, -'/>'.length);
  return [
    { at: tag.from, xml: COLOURED },
    { at: tagEnd, xml: attribute },
  ];
}

/** Everything of ours in a text, in order. */
export function rangesOfOurs(text: string): Range[] {
  if (!holdsMarks(text)) return [];
  return [...text.matchAll(OURS)].flatMap((found) => {
    const from = found.index;
    const until = from + found[0].length;
    const [, tag, attribute] = found;
    if (tag === undefined || attribute === undefined) return [{ from, until }];
    const at = until + tag.length;
    return [
      { from, until },
      { from: at, until: at + attribute.length },
    ];
  });
}

/** The text without some stretches of it. */
export function without(text: string, ranges: readonly Range[]): string {
  if (ranges.length === 0) return text;
  let kept = '';
  let at = 0;
  for (const { from, until } of ranges) {
    kept += text.slice(at, from);
    at = until;
  }
  return kept + text.slice(at);
}

/** The text as it was before anything of ours was put in. */
export function withoutMarks(text: string): string {
  return without(text, rangesOfOurs(text));
}

/** Something of ours is in the text. */
export function holdsMarks(text: string): boolean {
  return text.includes('<?partwise ');
}
