/**
 * The strokes that tie a finding's tag to its notes: a trunk that comes down (or up) from the tag in the space between
 * two columns, and branches along each voice from note to note. Pure. No stroke runs over a head: where one would, it
 * is broken and goes on behind.
 */
import type { VoiceName } from '../../src/score/score.ts';
import { type Box, type HeadBox, overlap, type Point, type SystemGeometry, spanInside } from './geometry.ts';
import type { MarkedFinding } from './input.ts';

export type Segment = readonly [Point, Point];

/** A finding's notes in one system. */
export interface Anchored {
  readonly finding: MarkedFinding;
  /** One for each tone that stands here, by time. */
  readonly heads: readonly HeadBox[];
  /** The tag goes under the bass rather than above the soprano. */
  readonly below: boolean;
}

export interface Routed extends Anchored {
  /** Where the trunk stands, and the ends of its way across the notes. */
  readonly trunkX: number;
  readonly trunkTop: number;
  readonly trunkBottom: number;
  readonly branches: readonly Segment[];
}

const CLEAR = 2;

/** Chooses the trunk's x and draws the branches. `trunks` are those already there, to keep off. */
export function route(anchored: Anchored, geometry: SystemGeometry, trunks: readonly Routed[]): Routed {
  const { heads, below } = anchored;
  const ys = heads.map((head) => head.y + head.height / 2);
  const far = below ? Math.min(...ys) : Math.max(...ys);
  const near = below ? geometry.lowest : geometry.highest;
  let best = { x: heads[0]!.x - 4, cost: Number.POSITIVE_INFINITY };
  for (const { x, cost } of trunkPlaces(heads, geometry)) {
    const total = cost + obstruction(x, Math.min(far, near), Math.max(far, near), geometry, trunks);
    if (total < best.cost) best = { x, cost: total };
  }
  const branches = branchesOf(heads, best.x, geometry);
  const crossings = branches.flatMap((segment) => {
    const y = yOn(segment, best.x);
    return y === undefined ? [] : [y];
  });
  const reach = crossings.length > 0 ? crossings : ys;
  return {
    ...anchored,
    trunkX: best.x,
    trunkTop: Math.min(...reach),
    trunkBottom: Math.max(...reach),
    branches,
  };
}

/** Places worth trying for the trunk: between the two first moments concerned, or on either side of a single one. */
function trunkPlaces(heads: readonly HeadBox[], geometry: SystemGeometry): { x: number; cost: number }[] {
  const moments = [...new Set(heads.map((head) => head.at))].sort((a, b) => a - b);
  const places: { x: number; cost: number }[] = [];
  const fill = (from: number, to: number, wanted: number, weight: number) => {
    for (let x = from; x <= to; x += 1.5) places.push({ x, cost: Math.abs(x - wanted) * weight });
  };
  const first = heads.filter((head) => head.at === moments[0]);
  const left = Math.min(...first.map((head) => head.x));
  const right = Math.max(...first.map((head) => head.x + head.width));
  if (moments.length > 1) {
    const next = heads.filter((head) => head.at === moments[1]);
    const until = Math.min(...next.map((head) => head.x));
    // A tag of its own stands over its strokes best when it is nearer to the second note, where the fault is heard.
    fill(right + 3, until - 3, right + (until - right) * 0.5, 0.2);
  }
  if (places.length === 0) {
    fill(left - 16, left - 3, left - 6, 0.4);
    fill(right + 3, right + 14, right + 5, 0.5);
  }
  return places.filter(({ x }) => x > geometry.left + 2 && x < geometry.right - 1);
}

function obstruction(
  x: number,
  top: number,
  bottom: number,
  geometry: SystemGeometry,
  trunks: readonly Routed[],
): number {
  let cost = 0;
  for (const box of geometry.solid)
    if (overlap({ x, y: top, width: 0, height: bottom - top }, box, 1.5)) cost += 30;
  for (const box of geometry.thin) {
    if (box.height > box.width && overlap({ x: x - 1.5, y: top, width: 3, height: bottom - top }, box))
      cost += 8;
  }
  for (const bar of geometry.bars) if (Math.abs(bar.x - x) < 2.5) cost += 10;
  for (const trunk of trunks) {
    if (Math.abs(trunk.trunkX - x) < 4) cost += 12;
  }
  return cost;
}

/** From note to note in each voice; a voice with one note is tied to the trunk. */
function branchesOf(heads: readonly HeadBox[], trunkX: number, geometry: SystemGeometry): Segment[] {
  const voices = [...new Set(heads.map((head) => head.voice))];
  return voices.flatMap((voice: VoiceName) => {
    const own = heads.filter((head) => head.voice === voice);
    const single = own[0];
    if (own.length === 1 && single) return [toTrunk(single, trunkX)];
    return own.slice(1).map((head, i): Segment => {
      const from = own[i]!;
      const end = { x: leftEdge(head, geometry) - CLEAR, y: middle(head) };
      return [{ x: from.x + from.width + CLEAR, y: middle(from) }, end];
    });
  });
}

function toTrunk(head: HeadBox, trunkX: number): Segment {
  const y = middle(head);
  const fromLeft = trunkX < head.x + head.width / 2;
  return fromLeft
    ? [
        { x: trunkX, y },
        { x: head.x - CLEAR, y },
      ]
    : [
        { x: head.x + head.width + CLEAR, y },
        { x: trunkX, y },
      ];
}

/** The left edge of a head with its accidental. */
function leftEdge(head: HeadBox, geometry: SystemGeometry): number {
  let edge = head.x;
  for (const box of geometry.solid) {
    const before = box.x + box.width <= head.x + 1 && box.x > head.x - 30;
    const level = box.y < middle(head) && box.y + box.height > middle(head);
    if (before && level && box.x + box.width > edge - 8) edge = Math.min(edge, box.x);
  }
  return edge;
}

function middle(box: Box): number {
  return box.y + box.height / 2;
}

function yOn([a, b]: Segment, x: number): number | undefined {
  const from = Math.min(a.x, b.x) - 0.01;
  const to = Math.max(a.x, b.x) + 0.01;
  if (x < from || x > to) return undefined;
  return a.x === b.x ? a.y : a.y + ((b.y - a.y) * (x - a.x)) / (b.x - a.x);
}

export function grow(box: Box, by: number): Box {
  return { x: box.x - by, y: box.y - by, width: box.width + 2 * by, height: box.height + 2 * by };
}

/** What is left of a segment when the parts inside the boxes are taken out; pieces too short to see are dropped. */
export function clip(segment: Segment, boxes: readonly Box[]): Segment[] {
  const [a, b] = segment;
  const cuts: (readonly [number, number])[] = [];
  for (const box of boxes) {
    const span = spanInside(a, b, box);
    if (span) cuts.push(span);
  }
  cuts.sort((p, q) => p[0] - q[0]);
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  const pieces: Segment[] = [];
  let from = 0;
  const keep = (to: number) => {
    if ((to - from) * length >= 2) pieces.push([along(a, b, from), along(a, b, to)]);
  };
  for (const [start, end] of cuts) {
    if (start > from) keep(start);
    from = Math.max(from, end);
  }
  if (from < 1) keep(1);
  return pieces;
}

function along(a: Point, b: Point, t: number): Point {
  return { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t };
}
