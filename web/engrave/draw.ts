/** Draws the notes of one system and tells where everything stands. What did not change is kept from before. */
import { type SVGContext, SVGContext as Svg } from 'vexflow/core';
import { VOICES } from '../../src/score/score.ts';
import {
  type BarPicture,
  barKey,
  drawBar,
  type MeasuredBar,
  movedTo,
  type PreparedBar,
  prepareBar,
} from './bar-picture.ts';
import type { PlannedBar } from './bars.ts';
import { STAFF_HEIGHT } from './extents.ts';
import { drawBySelf } from './extras.ts';
import type { BarPlace, Box, Gathered, SystemGeometry } from './geometry.ts';
import { type BarSpace, type SpacedBar, spacedAlike, spaceSystem, spaceWithin } from './spacing.ts';
import { addTo } from './svg.ts';
import { LEFT_MARGIN, RAGGED_STRETCH, RIGHT_MARGIN, type SystemPlan } from './systems.ts';

export interface DrawnSystem {
  readonly plan: SystemPlan;
  /** Bars were held in the room they had; a drawing from nothing would set them otherwise. */
  readonly held: boolean;
  readonly spaces: readonly BarSpace[];
  readonly svg: SVGSVGElement;
  readonly geometry: SystemGeometry;
  readonly context: SVGContext;
  readonly bars: readonly BarPicture[];
  /** Ties, fermatas and whatever else is drawn from bar to bar. */
  readonly between: SVGGElement;
}

/**
 * Draws a system, off the page unless `before` stands on it: then that drawing becomes this one, and bars that are the
 * same in both are left as they are, or moved. With `hold` a bar that is new is set into the room of the one in whose
 * place it comes, where that is enough, so that no other bar is touched. The music font must have loaded.
 */
export function drawSystem(plan: SystemPlan, before?: DrawnSystem, hold = false): DrawnSystem {
  const context = before?.context ?? newContext();
  const svg = context.svg;
  const known = new Map(before?.bars.map((picture) => [picture.key, picture]));
  const made = plan.bars.map((_, i): Made => {
    const key = barKey(plan, i);
    const picture = known.get(key);
    return { key, picture, prepared: picture ? undefined : prepareBar(plan, i, context) };
  });
  const wanted = made.map(({ picture, prepared }) => (picture ?? prepared)!);
  const tail = wanted.at(-1)!.tail;
  const best = spaceBars(plan, wanted, tail);
  const kept = hold && before ? holdBars(plan, wanted, made, before) : undefined;
  const spaces = kept ?? best;
  const bars = made.map(({ key, picture, prepared }, i) =>
    picture && spacedAlike(picture.space, spaces[i]!)
      ? picture
      : drawBar(prepared ?? prepareBar(plan, i, context), spaces[i]!, context, { i, key }),
  );
  for (const { group } of before?.bars ?? []) if (!bars.some((bar) => bar.group === group)) group.remove();
  const between = addTo(svg, 'g', { class: 'pw-between' });
  // What lies over the notes still does.
  if (before !== undefined) {
    for (const { group } of bars)
      if (!before.bars.some((bar) => bar.group === group)) before.between.before(group);
    before.between.replaceWith(between);
  }
  const boxes = joined(bars.map((bar, i) => movedTo(bar, spaces[i]!.x)));
  const lines = linesOf(plan, bars, spaces);
  // Signatures that warn of the next system's: no stroke runs through them.
  if (tail > 0)
    for (const y of [lines.top.treble, lines.top.bass])
      boxes.solid.push({ x: lines.right - tail, y: y - 8, width: tail, height: STAFF_HEIGHT + 16 });
  drawBySelf(between, plan, lines, boxes);
  const held = spaces.some((space, i) => !spacedAlike(space, best[i]!));
  return { plan, held, spaces, svg, context, bars, between, geometry: geometryOf(plan, lines, boxes) };
}

interface Made {
  readonly key: string;
  /** From before, where the bar is the same. */
  readonly picture: BarPicture | undefined;
  readonly prepared: PreparedBar | undefined;
}

function newContext(): SVGContext {
  const context = new Svg(document.createElement('div'));
  context.svg.setAttribute('class', 'pw-notes');
  return context;
}

function spaceBars(plan: SystemPlan, measured: readonly MeasuredBar[], tail: number): readonly BarSpace[] {
  const room = plan.width - LEFT_MARGIN - RIGHT_MARGIN - tail;
  return spaceSystem(wantedSpace(plan, measured), room, plan.ragged ? RAGGED_STRETCH : undefined).bars;
}

/** The bars in the room that those in their places had; undefined where there is not enough, or they are others. */
function holdBars(
  plan: SystemPlan,
  measured: readonly MeasuredBar[],
  made: readonly Made[],
  before: DrawnSystem,
): readonly BarSpace[] | undefined {
  const places =
    before.plan.width === plan.width &&
    before.bars.at(-1)!.tail === measured.at(-1)!.tail &&
    before.plan.bars.length === plan.bars.length &&
    before.plan.bars.every(({ index }, i) => index === plan.bars[i]!.index);
  if (!places) return undefined;
  return spaceWithin(
    wantedSpace(plan, measured),
    before.spaces,
    (i) => made[i]!.picture !== undefined && made[i]!.picture === before.bars[i],
  );
}

/** What the bars ask of the spacing, with the room for the words under them. */
function wantedSpace(plan: SystemPlan, measured: readonly MeasuredBar[]): SpacedBar[] {
  const rooms = new Map(plan.labels);
  return measured.map(({ measures, head }, i): SpacedBar => {
    const bar = plan.bars[i]!;
    const columns = measures.map((measure, c) => ({
      ...measure,
      left: i === 0 && c === 0 ? measure.left + tieRoom(bar) : measure.left,
      duration: (measures[c + 1]?.at ?? bar.at + bar.duration) - measure.at,
      labels: rooms.get(measure.at) ?? [],
    }));
    return { head, columns };
  });
}

/** Room at a system's beginning for a tie that comes from the system before. */
function tieRoom(bar: PlannedBar): number {
  return VOICES.some((voice) => bar.signs[voice][0]?.continued) ? 14 : 0;
}

type Lines = Pick<SystemGeometry, 'left' | 'right' | 'top' | 'columns' | 'bars'>;

function linesOf(plan: SystemPlan, bars: readonly BarPicture[], spaces: readonly BarSpace[]): Lines {
  const places = plan.bars.map(
    (bar, i): BarPlace => ({
      index: bar.index,
      number: bar.number,
      at: bar.at,
      until: bar.at + bar.duration,
      x: LEFT_MARGIN + spaces[i]!.x,
      width: spaces[i]!.width + bars[i]!.tail,
    }),
  );
  const columns = bars.flatMap(({ measures }, i) =>
    measures.map(({ at }, c) => ({ at, x: LEFT_MARGIN + spaces[i]!.columns[c]! })),
  );
  const last = places.at(-1)!;
  const top = { treble: 0, bass: plan.distance };
  return { left: LEFT_MARGIN, right: last.x + last.width, top, columns, bars: places };
}

function joined(all: readonly Gathered[]): Gathered {
  return {
    heads: all.flatMap(({ heads }) => heads),
    gaps: all.flatMap(({ gaps }) => gaps),
    solid: all.flatMap(({ solid }) => solid),
    thin: all.flatMap(({ thin }) => thin),
  };
}

function geometryOf(plan: SystemPlan, lines: Lines, { heads, gaps, solid, thin }: Gathered): SystemGeometry {
  const all: readonly Box[] = [...solid, ...thin];
  return {
    width: Math.max(plan.width, lines.right + RIGHT_MARGIN),
    ...lines,
    heads,
    gaps,
    solid,
    thin,
    highest: Math.min(-8, ...all.map((box) => box.y)),
    lowest: Math.max(lines.top.bass + STAFF_HEIGHT + 8, ...all.map((box) => box.y + box.height)),
  };
}
