/** Puts placed marks into a system's SVG. Shapes tell severity as well as colour does. */
import type { Severity } from '../../src/rules/rule.ts';
import type { Box } from './geometry.ts';
import type { PlacedWords } from './lanes.ts';
import type { PlacedMarks } from './placing.ts';
import type { Segment } from './strokes.ts';
import { addPath, addText, addTo } from './svg.ts';
import type { PlacedTag } from './tags.ts';

/** Draws the marks over the notes; answers the group, to be taken away when they change. */
export function inkMarks(svg: SVGSVGElement, marks: PlacedMarks): SVGGElement {
  const group = addTo(svg, 'g', { class: 'pw-marks' });
  for (const words of marks.words) inkWords(group, words);
  // All strokes lie under all tags.
  const tagged = marks.tags.map((tag) => {
    const one = addTo(group, 'g', {
      class: `pw-finding pw-${tag.own ? 'own' : tag.severity}${tag.waived ? ' pw-waived' : ''}`,
    });
    one.dataset.finding = tag.finding;
    addPath(
      one,
      tag.strokes.map(strokePath).join(''),
      `pw-stroke pw-stroke-${tag.own ? 'own' : tag.severity}`,
    );
    return { tag, one };
  });
  for (const { tag, one } of tagged) inkTag(one, tag);
  return group;
}

function strokePath([a, b]: Segment): string {
  return `M${round(a.x)} ${round(a.y)}L${round(b.x)} ${round(b.y)}`;
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}

function inkWords(group: SVGGElement, words: PlacedWords): void {
  const carried = words.carried ? ' pw-carried' : '';
  const one = addTo(group, 'g', { class: `pw-words${carried}` });
  inkLabel(one, words);
  if (words.line && words.line.to > words.line.from) {
    const y = words.y - 4;
    const { from, to, goesOn } = words.line;
    addPath(
      one,
      `M${round(from)} ${round(y)}H${round(to)}${goesOn ? '' : `v-4`}`,
      `pw-key-line pw-line-${words.kind}`,
    );
  }
}

function inkLabel(parent: SVGGElement, { kind, label, x, y }: PlacedWords): void {
  for (const run of label.runs) {
    const text = addText(
      parent,
      run.text,
      { x: x + run.x, y: y + run.y },
      `${run.signs ? 'pw-sign' : 'pw-word'} pw-${kind}`,
    );
    text.setAttribute('font-size', String(run.size));
  }
}

function inkTag(one: SVGGElement, tag: PlacedTag): void {
  const { box } = tag;
  addPath(one, tag.own ? speechShape(box) : tagShape(tag.severity, box), 'pw-tag');
  const middle = { x: box.x + box.width / 2, y: box.y + box.height - 4.2 };
  addText(one, tag.label, middle, 'pw-tag-label', 'middle');
  if (tag.waived)
    addPath(one, `M${box.x - 2} ${box.y + box.height}L${box.x + box.width + 2} ${box.y}`, 'pw-strike');
}

/** What a person says: a sheet with its corner folded, its outline drawn twice. */
function speechShape({ x, y, width, height }: Box): string {
  const fold = 5;
  const sheet = (by: number): string =>
    `M${x - by} ${y - by}h${width - fold + by}l${fold + by} ${fold + by}v${height - fold + by}h${-width - 2 * by}Z`;
  return `${sheet(0)}${sheet(2.2)}`;
}

/** A fault is a filled square, a query a ring, a remark an open lozenge-ended slip. */
function tagShape(severity: Severity, { x, y, width, height }: Box): string {
  if (severity === 'fault') {
    return `M${x + 2} ${y}h${width - 4}q2 0 2 2v${height - 4}q0 2 -2 2h${4 - width}q-2 0 -2 -2v${4 - height}q0 -2 2 -2Z`;
  }
  if (severity === 'query') {
    const r = height / 2;
    return `M${x + r} ${y}h${width - 2 * r}a${r} ${r} 0 0 1 0 ${height}h${2 * r - width}a${r} ${r} 0 0 1 0 ${-height}Z`;
  }
  const cut = 4;
  return (
    `M${x + cut} ${y}h${width - 2 * cut}l${cut} ${height / 2}l${-cut} ${height / 2}` +
    `h${2 * cut - width}l${-cut} ${-height / 2}Z`
  );
}
