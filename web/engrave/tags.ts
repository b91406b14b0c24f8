/** Numbered tags of findings and the strokes that tie them to their notes, for one system. Pure. */
import type { Severity } from '../../src/rules/rule.ts';
import { VOICES } from '../../src/score/score.ts';
import type { Ticks } from '../../src/score/time.ts';
import { STAFF_HEIGHT } from './extents.ts';
import { type Box, type HeadBox, overlap, type Point, type SystemGeometry, xAt } from './geometry.ts';
import type { MarkedFinding } from './input.ts';
import { type Anchored, clip, grow, type Routed, route, type Segment } from './strokes.ts';

export interface PlacedTag {
  readonly finding: string;
  readonly label: string;
  readonly severity: Severity;
  readonly waived: boolean;
  readonly own: boolean;
  readonly box: Box;
  /** Strokes, already broken where a head or a word stands. */
  readonly strokes: readonly Segment[];
  /** The finding's heads in this system, for the wash behind them. */
  readonly heads: readonly HeadBox[];
}

const TAG_HEIGHT = 16;
const tagWidth = (label: string) => Math.max(16, 7 + label.length * 7);

/** Places the tags of the findings that concern this system, in their order. `words` are boxes taken by words. */
export function placeTags(
  findings: readonly MarkedFinding[],
  geometry: SystemGeometry,
  words: readonly Box[],
): PlacedTag[] {
  const routed: (Routed | Stretched)[] = [];
  for (const finding of findings) {
    const anchored = anchor(finding, geometry);
    if (anchored) routed.push(route(anchored, geometry, routed.filter(isRouted)));
    else {
      const bare = stretched(finding, geometry);
      if (bare) routed.push(bare);
    }
  }
  const tags: Box[] = [];
  const drafts = routed.map((each) => {
    const box = placeTag(each, geometry, [...words, ...tags], routed);
    tags.push(box);
    return { each, box };
  });
  const soft = [...geometry.solid.map((box) => grow(box, 1.8)), ...words.map((box) => grow(box, 2.5))];
  return drafts.map(({ each, box }) => {
    const others = tags.filter((tag) => tag !== box).map((tag) => grow(tag, 1));
    const strokes = strokesOf(each, box).flatMap((segment) => clip(segment, [...soft, ...others]));
    return {
      finding: each.finding.id,
      label: each.finding.label,
      severity: each.finding.severity,
      waived: each.finding.waived === true,
      own: each.finding.own === true,
      box,
      strokes,
      heads: isRouted(each) ? each.heads : [],
    };
  });
}

/** A finding without notes here: a bracket over the stretch of time it speaks of. */
interface Stretched {
  readonly finding: MarkedFinding;
  readonly below: boolean;
  readonly from: number;
  readonly to: number;
}

function isRouted(each: Routed | Stretched): each is Routed {
  return 'branches' in each;
}

/** The heads of a finding in this system; the tag goes below where only tenor and bass are concerned. */
function anchor(finding: MarkedFinding, geometry: SystemGeometry): Anchored | undefined {
  const heads: HeadBox[] = [];
  for (const tone of finding.tones) {
    const own = geometry.heads.filter((head) => head.tone === tone.id);
    // Of a tone held over, the head that sounds when the matter begins.
    const head = own.find((each) => finding.from >= each.at && finding.from < each.until) ?? own[0];
    if (head) heads.push(head);
  }
  if (heads.length === 0) return undefined;
  heads.sort((a, b) => a.at - b.at || VOICES.indexOf(a.voice) - VOICES.indexOf(b.voice));
  return { finding, heads, below: isBelow(finding) };
}

function isBelow(finding: MarkedFinding): boolean {
  return finding.voices.length > 0 && finding.voices.every((voice) => voice === 'T' || voice === 'B');
}

function stretched(finding: MarkedFinding, geometry: SystemGeometry): Stretched | undefined {
  const start = geometry.bars[0]?.at ?? 0;
  const end = geometry.bars.at(-1)?.until ?? 0;
  const within = (at: Ticks) => at >= start && at < end;
  if (finding.tones.length > 0 || !within(finding.from)) return undefined;
  const from = xAt(geometry, finding.from);
  const until = Math.min(finding.until, end);
  const bar = geometry.bars.find((each) => each.until === until);
  const to = bar ? bar.x + bar.width - 5 : xAt(geometry, until) - 6;
  return { finding, below: isBelow(finding), from, to: Math.max(from + 12, to) };
}

/**
 * The nearest free place for a tag above (or below) its trunk; a little sideways where that brings it nearer. It keeps
 * off the trunks of others if it can; where the place is too crowded for that, those trunks are broken at the tag.
 */
function placeTag(
  each: Routed | Stretched,
  geometry: SystemGeometry,
  taken: readonly Box[],
  all: readonly (Routed | Stretched)[],
): Box {
  const isFree = (box: Box, room: Box) =>
    isClear(room, geometry, taken) &&
    isBracketClear(each, room, geometry, taken) &&
    offTrunks(box, each, all);
  const isPossible = (_: Box, room: Box) =>
    isClear(room, geometry, taken) && isBracketClear(each, room, geometry, taken);
  return seek(each, geometry, 45, isFree) ?? seek(each, geometry, 400, isPossible)!;
}

/** Tries places further and further from the staff; answers the cheapest, or undefined where none of `steps` will do. */
function seek(
  each: Routed | Stretched,
  geometry: SystemGeometry,
  steps: number,
  accepts: (box: Box, room: Box) => boolean,
): Box | undefined {
  const width = tagWidth(each.finding.label);
  const routed = isRouted(each);
  const middle = routed ? each.trunkX : (each.from + each.to) / 2;
  const off = routed ? 6 : 13;
  const bracket = routed ? 0 : 5;
  const start = each.below ? geometry.top.bass + STAFF_HEIGHT + off : -off - TAG_HEIGHT;
  let best: { box: Box; cost: number } | undefined;
  for (const shift of [0, -6, 6, -12, 12, -18, 18, -26, 26]) {
    const x = Math.max(1, Math.min(middle - width / 2 + shift, geometry.width - width - 1));
    for (let step = 0; step < steps; step++) {
      const y = start + (each.below ? 1 : -1) * step * 3;
      const cost = step * 3 + Math.abs(shift) * 0.7;
      if (best && cost >= best.cost) break;
      const box = { x, y, width, height: TAG_HEIGHT };
      const room = { ...box, y: each.below ? y - bracket : y, height: TAG_HEIGHT + bracket };
      if (accepts(box, room)) {
        best = { box, cost };
        break;
      }
    }
  }
  return best?.box;
}

function isClear(box: Box, geometry: SystemGeometry, taken: readonly Box[]): boolean {
  return (
    !geometry.solid.some((each) => overlap(box, each, 2)) &&
    !geometry.thin.some((each) => overlap(box, each, 1)) &&
    !taken.some((each) => overlap(box, each, 2))
  );
}

/** The bracket of a stretch must be as free as its tag. */
function isBracketClear(
  each: Routed | Stretched,
  room: Box,
  geometry: SystemGeometry,
  taken: readonly Box[],
): boolean {
  if (isRouted(each)) return true;
  const y = each.below ? room.y - 1 : room.y + room.height - 4;
  return isClear({ x: each.from, y, width: each.to - each.from, height: 5 }, geometry, taken);
}

/** A tag keeps off the trunks of others, which run past it to tags further out. */
function offTrunks(box: Box, own: Routed | Stretched, all: readonly (Routed | Stretched)[]): boolean {
  return all.every(
    (other) =>
      other === own ||
      !isRouted(other) ||
      other.below !== own.below ||
      other.trunkX < box.x - 2 ||
      other.trunkX > box.x + box.width + 2 ||
      // Two findings about the same place cannot keep off each other; the further tag's trunk is broken at the nearer.
      (isRouted(own) && Math.abs(other.trunkX - own.trunkX) < 4),
  );
}

function strokesOf(each: Routed | Stretched, tag: Box): Segment[] {
  const below = each.below;
  const edge = below ? tag.y : tag.y + tag.height;
  const middle = tag.x + tag.width / 2;
  if (!isRouted(each)) {
    const y = edge + (below ? -4 : 4);
    const foot = y + (below ? -3 : 3);
    const points: Point[] = [
      { x: each.from, y: foot },
      { x: each.from, y },
      { x: each.to, y },
      { x: each.to, y: foot },
    ];
    return [
      [
        { x: middle, y: edge },
        { x: middle, y },
      ],
      ...segments(points),
    ];
  }
  const far = below ? each.trunkTop : each.trunkBottom;
  const bend = Math.max(tag.x + 3, Math.min(each.trunkX, tag.x + tag.width - 3));
  const knee = edge + (below ? -4 : 4);
  const trunk = segments([
    { x: bend, y: edge },
    ...(Math.abs(bend - each.trunkX) > 0.5 ? [{ x: each.trunkX, y: knee }] : []),
    { x: each.trunkX, y: far },
  ]);
  return [...trunk, ...each.branches];
}

function segments(points: readonly Point[]): Segment[] {
  return points.slice(1).map((point, i): Segment => [points[i]!, point]);
}
