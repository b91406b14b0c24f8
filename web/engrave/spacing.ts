/** Horizontal spacing of one system: pure arithmetic on columns. Units are those of the drawing, a staff space is 10. */
import { CROTCHET, type Ticks } from '../../src/score/time.ts';

/** A moment at which something stands, with what it needs to its left and right of the head's left edge. */
export interface Column {
  readonly at: Ticks;
  /** Until the next column; the ideal space grows with it. */
  readonly duration: Ticks;
  /** Room for accidentals, shifted heads and grace notes before `x`. */
  readonly left: number;
  /** Room for heads, dots and flags after `x`. */
  readonly right: number;
  /** Room for the words under or above, each side of the head's middle. */
  readonly labels: readonly LabelRoom[];
}

/** How far a label in a lane reaches from the column's `x` to both sides. */
export interface LabelRoom {
  readonly lane: string;
  readonly left: number;
  readonly right: number;
}

/** The room wanted by labels, as [at, rooms]. */
export type LabelRooms = readonly (readonly [Ticks, readonly LabelRoom[]])[];

export interface SpacedBar {
  /** Room before the first column: clef, signatures, repeat sign. */
  readonly head: number;
  readonly columns: readonly Column[];
}

export interface BarSpace {
  readonly x: number;
  readonly width: number;
  /** The `x` of each column. */
  readonly columns: readonly number[];
}

/** From the last column's things to the barline, at the least. */
const BEFORE_BARLINE = 7;
/** Between one column's things and the next one's. */
const BETWEEN = 5;
const BETWEEN_LABELS = 7;

/**
 * The ideal distance from a column of this duration to the next before stretching: a crotchet 30, and a third more or
 * less for double or half of it (the usual engraver's rule of thumb; common practice, no source).
 */
export function idealSpace(duration: Ticks): number {
  return Math.max(14, 30 * 1.33 ** Math.log2(Math.max(1, duration) / CROTCHET));
}

/** The least and the natural width of a bar, without neighbours: for breaking into systems. */
export function barWidths(bar: SpacedBar): { least: number; natural: number } {
  const least = spaceAt([bar], 0).width;
  const natural = spaceAt([bar], 1.4).width;
  return { least, natural };
}

/**
 * Spaces the bars of a system over `width`. Every distance is the larger of what stands there needs and the ideal
 * times one stretch for the whole system, so that like values are set alike. With `ragged` the system is not drawn
 * out beyond `ragged` times the ideal. Where even the least does not fit, the answer is wider than asked.
 */
export function spaceSystem(
  bars: readonly SpacedBar[],
  width: number,
  ragged?: number,
): { bars: BarSpace[]; width: number } {
  let low = 0;
  let high = ragged ?? 8;
  const most = spaceAt(bars, high);
  if (most.width <= width) {
    if (ragged !== undefined) return most;
  } else {
    for (let i = 0; i < 30; i++) {
      const middle = (low + high) / 2;
      if (spaceAt(bars, middle).width > width) high = middle;
      else low = middle;
    }
  }
  const spaced = spaceAt(bars, most.width <= width ? high : low);
  return spaced.width < width ? fill(spaced, width) : spaced;
}

/** Two places nearer than this are the same, in drawing units. */
const SAME = 0.02;

/**
 * The bars in the room that each of them has already: `before` tells a bar's room, and `stays` whether its columns stand
 * there. Undefined where something does not find its room so.
 */
export function spaceWithin(
  bars: readonly SpacedBar[],
  before: readonly BarSpace[],
  stays: (i: number) => boolean,
): BarSpace[] | undefined {
  const spaces = bars.map((bar, i): BarSpace => {
    const { x, width, columns } = before[i]!;
    if (stays(i)) return { x, width, columns };
    const [own] = spaceSystem([bar], width).bars;
    return { x, width, columns: own!.columns.map((column) => column + x) };
  });
  return isClear(bars, spaces) ? spaces : undefined;
}

/** True where everything has the room it needs, however little beyond that. */
function isClear(bars: readonly SpacedBar[], spaces: readonly BarSpace[]): boolean {
  const ends = new Map<string, number>();
  return bars.every((bar, i) => {
    const { x, width, columns } = spaces[i]!;
    let edge = x + bar.head;
    const clear = bar.columns.every((column, c) => {
      const at = columns[c]!;
      let least = edge + column.left;
      for (const { lane, left, right } of column.labels) {
        least = Math.max(least, (ends.get(lane) ?? Number.NEGATIVE_INFINITY) + BETWEEN_LABELS + left);
        ends.set(lane, at + right);
      }
      edge = at + column.right + BETWEEN;
      return at > least - SAME;
    });
    return clear && x + width > edge - BETWEEN + BEFORE_BARLINE - SAME;
  });
}

/** True where a bar drawn with one spacing needs only to be moved to have the other. */
export function spacedAlike(a: BarSpace, b: BarSpace): boolean {
  return (
    Math.abs(a.width - b.width) < SAME &&
    a.columns.length === b.columns.length &&
    a.columns.every((x, i) => Math.abs(x - a.x - (b.columns[i]! - b.x)) < SAME)
  );
}

/** Lays out from left to right with one stretch. */
function spaceAt(bars: readonly SpacedBar[], stretch: number): { bars: BarSpace[]; width: number } {
  const ends = new Map<string, number>();
  let x = 0;
  const spaced = bars.map((bar) => {
    const start = x;
    const columns: number[] = [];
    let edge = start + bar.head;
    let ideal = 0;
    for (const [i, column] of bar.columns.entries()) {
      let at = Math.max(edge + column.left, ideal);
      for (const label of column.labels) {
        const free = ends.get(label.lane);
        if (free !== undefined) at = Math.max(at, free + BETWEEN_LABELS + label.left);
      }
      columns.push(at);
      for (const label of column.labels) ends.set(label.lane, at + label.right);
      edge = at + column.right + BETWEEN;
      ideal = at + idealSpace(column.duration) * stretch;
      if (i === bar.columns.length - 1) x = Math.max(edge - BETWEEN + BEFORE_BARLINE, ideal);
    }
    if (bar.columns.length === 0) x = edge + 20;
    return { x: start, width: x - start, columns };
  });
  return { bars: spaced, width: x };
}

/** Spreads what is left over (rounding, or a system of few notes) evenly between columns. */
function fill(
  spaced: { bars: BarSpace[]; width: number },
  width: number,
): { bars: BarSpace[]; width: number } {
  const gaps = spaced.bars.reduce((sum, bar) => sum + bar.columns.length, 0);
  if (gaps === 0) return spaced;
  const each = (width - spaced.width) / gaps;
  let shift = 0;
  const bars = spaced.bars.map((bar) => {
    const x = bar.x + shift;
    const columns = bar.columns.map((column, i) => column + shift + i * each);
    shift += bar.columns.length * each;
    return { x, width: bar.x + bar.width + shift - x, columns };
  });
  return { bars, width };
}

/** A bar as far as breaking into systems asks: what it must have and would like, and whether a phrase ends in it. */
export interface BrokenBar {
  readonly least: number;
  readonly natural: number;
  readonly closes: boolean;
}

/** As bad as two systems a third empty. */
const LONE_BAR = 2;
/** Breaks that cost no more than this beyond the best ones stay where they are. */
const SETTLED = 0.5;

/**
 * Breaks bars into systems; `head` is what the clef and signatures take that every system begins with. Chosen over the
 * whole score so that systems are evenly full; a break after a phrase's end (`closes`) is preferred to one inside a
 * phrase, and a last bar does not stand alone where the systems before it can spare one. Breaks from before stay while
 * they fit and are hardly worse: a note with an accidental does not set all the systems after it anew.
 */
export function breakSystems(
  bars: readonly BrokenBar[],
  width: number,
  head: number,
  before?: readonly number[],
): readonly number[] {
  const cost: number[] = [0];
  const from: number[] = [0];
  for (let end = 1; end <= bars.length; end++) {
    cost[end] = Number.POSITIVE_INFINITY;
    from[end] = end - 1;
    let least = head;
    let natural = head;
    for (let start = end - 1; start >= 0; start--) {
      least += bars[start]!.least;
      natural += bars[start]!.natural;
      if (least > width && start < end - 1) break;
      const here = cost[start]! + systemCost(bars, start, end, natural / width);
      if (here < cost[end]!) {
        cost[end] = here;
        from[end] = start;
      }
    }
  }
  if (before !== undefined && costOf(before, bars, width, head) < cost[bars.length]! + SETTLED) return before;
  const starts: number[] = [];
  for (let end = bars.length; end > 0; end = from[end]!) starts.unshift(from[end]!);
  return starts;
}

/** What a system from one bar to before another costs that would like to be `full` times the width. */
function systemCost(bars: readonly BrokenBar[], start: number, end: number, full: number): number {
  const last = end === bars.length;
  const alone = last && start > 0 && start === end - 1 ? LONE_BAR : 0;
  const over = Math.max(0, full - 1);
  const under = Math.max(0, 1 - full);
  const badness = over ** 2 * 40 + (last ? 0.15 : 1) * under ** 2 * 10 + 0.35 + alone;
  return badness + (last || bars[end - 1]!.closes ? 0 : 0.12);
}

/** What these breaks cost; infinite where they don't fit. */
function costOf(starts: readonly number[], bars: readonly BrokenBar[], width: number, head: number): number {
  // A piece that has become shorter than the breaks are for.
  if ((starts.at(-1) ?? bars.length) >= bars.length) return Number.POSITIVE_INFINITY;
  return starts.reduce((sum, start, i) => {
    const end = starts[i + 1] ?? bars.length;
    const own = bars.slice(start, end);
    const least = own.reduce((wide, bar) => wide + bar.least, head);
    const natural = own.reduce((wide, bar) => wide + bar.natural, head);
    const fits = own.length === 1 || least <= width;
    return fits ? sum + systemCost(bars, start, end, natural / width) : Number.POSITIVE_INFINITY;
  }, 0);
}
