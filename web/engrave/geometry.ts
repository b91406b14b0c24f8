/** Plain geometry of a drawn system, in its own units (a staff space is 10). What marks are placed by. */
import type { VoiceName } from '../../src/score/score.ts';
import type { Ticks } from '../../src/score/time.ts';
import type { StaffName } from './bars.ts';

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface HeadBox extends Box {
  readonly voice: VoiceName;
  readonly at: Ticks;
  readonly until: Ticks;
  /** Absent for a rest. */
  readonly tone?: string;
  readonly place: number;
  /** Where the stem ends; the head's own edge where there is none. */
  readonly tip: number;
}

/** A stretch of a voice not written yet, as the box drawn for it. */
export interface GapBox extends Box {
  readonly voice: VoiceName;
  readonly at: Ticks;
  readonly until: Ticks;
}

export interface ColumnPlace {
  readonly at: Ticks;
  /** Left edge of a head that stands here unshifted. */
  readonly x: number;
}

export interface BarPlace {
  readonly index: number;
  readonly number: string;
  readonly at: Ticks;
  readonly until: Ticks;
  readonly x: number;
  readonly width: number;
}

export interface SystemGeometry {
  readonly width: number;
  /** Left end of the staves. */
  readonly left: number;
  readonly right: number;
  /** The y of each staff's top line. */
  readonly top: Readonly<Record<StaffName, number>>;
  readonly bars: readonly BarPlace[];
  readonly columns: readonly ColumnPlace[];
  readonly heads: readonly HeadBox[];
  readonly gaps: readonly GapBox[];
  /** Everything that no mark may cover, heads included: accidentals, dots, flags, rests, fermatas, clefs, signatures. */
  readonly solid: readonly Box[];
  /** Stems, beams, ties, tuplet brackets: strokes may cross them, words and tags may not. */
  readonly thin: readonly Box[];
  /** Topmost and lowest ink. */
  readonly highest: number;
  readonly lowest: number;
}

/** Boxes gathered while drawing. */
export interface Gathered {
  readonly heads: HeadBox[];
  readonly gaps: GapBox[];
  readonly solid: Box[];
  readonly thin: Box[];
}

/** True where two boxes share more than a touch. `margin` is added around the first. */
export function overlap(a: Box, b: Box, margin = 0): boolean {
  return (
    a.x - margin < b.x + b.width &&
    b.x < a.x + a.width + margin &&
    a.y - margin < b.y + b.height &&
    b.y < a.y + a.height + margin
  );
}

/** The x of a moment, between columns by proportion of time. */
export function xAt(geometry: SystemGeometry, at: Ticks): number {
  const { columns, bars } = geometry;
  let before: ColumnPlace | undefined;
  let after: ColumnPlace | undefined;
  for (const column of columns) {
    if (column.at <= at) before = column;
    else {
      after = column;
      break;
    }
  }
  if (!before) return columns[0]?.x ?? geometry.left;
  if (before.at === at) return before.x;
  const bar = bars.find((each) => at >= each.at && at < each.until) ?? bars.at(-1);
  const end = after ?? { at: bar?.until ?? before.at + 1, x: (bar?.x ?? 0) + (bar?.width ?? 0) };
  const part = Math.min(1, (at - before.at) / Math.max(1, end.at - before.at));
  return before.x + (end.x - before.x) * part;
}

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** The stretch of the segment from `a` to `b`, 0 to 1, that lies in a box; undefined where none does. */
export function spanInside(a: Point, b: Point, box: Box): readonly [number, number] | undefined {
  let from = 0;
  let to = 1;
  // The box is four half planes p·t <= q (Liang and Barsky's way of clipping a line).
  const sides: readonly (readonly [number, number])[] = [
    [a.x - b.x, a.x - box.x],
    [b.x - a.x, box.x + box.width - a.x],
    [a.y - b.y, a.y - box.y],
    [b.y - a.y, box.y + box.height - a.y],
  ];
  for (const [p, q] of sides) {
    if (p === 0) {
      if (q <= 0) return undefined;
    } else if (p < 0) from = Math.max(from, q / p);
    else to = Math.min(to, q / p);
  }
  return from < to ? [from, to] : undefined;
}
