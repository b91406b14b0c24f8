/**
 * What overlaps what on the page, found from the drawn SVG alone: every sign's ink is measured anew with a canvas, so
 * that nothing here relies on the boxes by which the engraver placed things.
 */
interface Ink {
  readonly what: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

const context = document.createElement('canvas').getContext('2d')!;

/** The ink of a text element, in the units of its SVG. */
function inkOf(text: SVGTextElement, what: string): Ink {
  const style = getComputedStyle(text);
  context.font = `${style.fontStyle} ${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
  const measured = context.measureText(text.textContent ?? '');
  const anchor = style.textAnchor;
  const shift = anchor === 'middle' ? measured.width / 2 : anchor === 'end' ? measured.width : 0;
  // A bar that is kept from an earlier drawing may have been moved.
  const moved = text.closest<SVGGElement>('.vf-bar')?.transform.baseVal.consolidate()?.matrix.e ?? 0;
  const x = Number(text.getAttribute('x')) - shift + moved;
  const y = Number(text.getAttribute('y'));
  return {
    what,
    left: x - measured.actualBoundingBoxLeft,
    right: x + measured.actualBoundingBoxRight,
    top: y - measured.actualBoundingBoxAscent,
    bottom: y + measured.actualBoundingBoxDescent,
  };
}

function boxOf(element: SVGGraphicsElement, what: string): Ink {
  const { x, y, width, height } = element.getBBox();
  return { what, left: x, top: y, right: x + width, bottom: y + height };
}

function overlaps(a: Ink, b: Ink, slack = 0.3): boolean {
  return (
    a.left + slack < b.right &&
    b.left + slack < a.right &&
    a.top + slack < b.bottom &&
    b.top + slack < a.bottom
  );
}

const all = <T extends SVGGraphicsElement>(root: ParentNode, selector: string): T[] => [
  ...root.querySelectorAll<T>(selector),
];

export interface CollisionReport {
  readonly heads: number;
  readonly tags: number;
  readonly words: number;
  readonly strokes: number;
  /** Signs and strokes of brackets. */
  readonly brackets: number;
  readonly tempos: number;
  readonly collisions: readonly string[];
}

/** Marks that overlap a sign or another mark, strokes that run over a head, a signature or a mark, heads over heads or signatures. */
export function findCollisions(): CollisionReport {
  const collisions: string[] = [];
  let [heads, tags, words, strokes, brackets, tempos] = [0, 0, 0, 0, 0, 0];
  for (const [s, svg] of all<SVGSVGElement>(document, '.pw-system svg').entries()) {
    const headInk = all<SVGTextElement>(svg, '.vf-notehead > text:first-child').map((text) =>
      inkOf(text, 'head'),
    );
    const signInk = [
      ...all<SVGTextElement>(svg, '.vf-sign text').map((text) => inkOf(text, `sign ${text.textContent}`)),
      ...all<SVGTextElement>(svg, '.pw-glyph').map((text) => inkOf(text, 'fermata')),
      ...all<SVGTextElement>(svg, '.vf-stave text').map((text) => inkOf(text, 'clef or signature')),
      // The bracket stands left of the staves, which begin at 18.
      ...all<SVGTextElement>(svg, '.vf-bar > text[x="13"]').map((text) => inkOf(text, 'bracket')),
      ...all<SVGRectElement>(svg, '.vf-bar > rect[x="13"]').map((rect) => boxOf(rect, 'bracket')),
    ];
    brackets += signInk.filter(({ what }) => what === 'bracket').length;
    const signatureInk = signInk.filter(({ what }) => what === 'clef or signature' || what === 'bracket');
    const tempoInk = all<SVGTextElement>(svg, '.pw-tempo, .pw-tempo-note').map((text) =>
      inkOf(text, `tempo ${text.textContent}`),
    );
    tempos += tempoInk.length / 2;
    const tagInk = all<SVGPathElement>(svg, '.pw-tag').map((path) =>
      boxOf(path, `tag ${path.parentElement?.textContent}`),
    );
    const wordInk = [
      ...all<SVGGElement>(svg, '.pw-words').map(wordsInk),
      ...all<SVGTextElement>(svg, '.pw-lyric').map((text) => inkOf(text, `syllable ${text.textContent}`)),
    ];
    heads += headInk.length;
    tags += tagInk.length;
    words += wordInk.length;
    const marks = [...tagInk, ...wordInk, ...tempoInk];
    const say = (a: Ink, b: Ink) => collisions.push(`system ${s + 1}: ${a.what} overlaps ${b.what}`);
    for (const [i, mark] of marks.entries()) {
      for (const sign of signInk) if (overlaps(mark, sign)) say(mark, sign);
      for (const other of marks.slice(i + 1)) if (overlaps(mark, other)) say(mark, other);
    }
    for (const finding of all<SVGGElement>(svg, '.pw-finding')) {
      const path = finding.querySelector<SVGPathElement>('.pw-stroke')!;
      const own = finding.querySelector<SVGPathElement>('.pw-tag')!;
      const what = `stroke of ${finding.textContent}`;
      const others = marks.filter((mark) => mark.what !== `tag ${finding.textContent}`);
      strokes += 1;
      const length = path.getTotalLength();
      const hit = new Set<string>();
      for (let at = 0; at < length; at += 0.8) {
        const { x, y } = path.getPointAtLength(at);
        const dot = { what, left: x - 0.5, right: x + 0.5, top: y - 0.5, bottom: y + 0.5 };
        for (const ink of [...headInk, ...signatureInk, ...others]) {
          if (overlaps(dot, ink) && !hit.has(ink.what)) {
            hit.add(ink.what);
            say(dot, ink);
          }
        }
      }
      if (!own) collisions.push(`system ${s + 1}: ${what} has no tag`);
    }
    for (const head of headInk)
      for (const signature of signatureInk) if (overlaps(head, signature)) say(head, signature);
    for (const [i, head] of headInk.entries()) {
      for (const other of headInk.slice(i + 1)) {
        const shared = Math.abs(head.left - other.left) < 0.6 && Math.abs(head.top - other.top) < 0.6;
        if (!shared && overlaps(head, other, 1.2)) say(head, other);
      }
    }
    const box = svg.viewBox.baseVal;
    for (const mark of [...marks, ...signInk]) {
      const inside =
        mark.left >= box.x - 1 &&
        mark.right <= box.x + box.width + 1 &&
        mark.top >= box.y - 1 &&
        mark.bottom <= box.y + box.height + 1;
      if (!inside) collisions.push(`system ${s + 1}: ${mark.what} lies outside the picture`);
    }
  }
  return { heads, tags, words, strokes, brackets, tempos, collisions };
}

/** The ink of a label: its runs together. */
function wordsInk(group: SVGGElement): Ink {
  const inks = all<SVGTextElement>(group, 'text').map((text) => inkOf(text, ''));
  return {
    what: `words "${group.textContent}"`,
    left: Math.min(...inks.map((ink) => ink.left)),
    right: Math.max(...inks.map((ink) => ink.right)),
    top: Math.min(...inks.map((ink) => ink.top)),
    bottom: Math.max(...inks.map((ink) => ink.bottom)),
  };
}
