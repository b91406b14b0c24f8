/** Draws the notes of one system with VexFlow and tells where everything stands. */
import {
  BarlineType,
  type Beam,
  Clef,
  GraceNoteGroup,
  KeySignature,
  Stave,
  StaveConnector,
  type StaveConnectorType,
  StaveModifierPosition,
  StaveNote,
  type SVGContext,
  SVGContext as Svg,
  TimeSignature,
} from 'vexflow/core';
import { VOICES } from '../../src/score/score.ts';
import { type Metre, printMetre } from '../../src/score/time.ts';
import { signatureName } from './accidentals.ts';
import type { PlannedBar, StaffName } from './bars.ts';
import { STAFF_HEIGHT, stemUp } from './extents.ts';
import { drawBySelf } from './extras.ts';
import type { BarPlace, Box, ColumnPlace, Gathered, SystemGeometry } from './geometry.ts';
import { type BarSpace, type SpacedBar, spaceSystem } from './spacing.ts';
import { LEFT_MARGIN, RAGGED_STRETCH, RIGHT_MARGIN, type SystemPlan } from './systems.ts';
import { type Drawn, headIndex, type TranslatedBar, translateBar, translateTuplets } from './translate.ts';

export interface DrawnSystem {
  readonly svg: SVGSVGElement;
  readonly geometry: SystemGeometry;
}

/** From a staff's note start to VexFlow's own zero for notes (`Stave.padding`). */
const VEXFLOW_PADDING = 12;
/** From clef, signature or barline to the first head's own room. */
const AFTER_HEAD = 9;

/** Draws a system off the page. The music font must have loaded. */
export function drawSystem(plan: SystemPlan): DrawnSystem {
  const holder = document.createElement('div');
  const context = new Svg(holder as HTMLDivElement);
  const svg = context.svg;
  const top = { treble: 0, bass: plan.distance };
  const staves = plan.bars.map((bar, i) => makeStaves(bar, plan, i, top, context));
  const bars = plan.bars.map((bar, i) => translateBar(bar, staves[i]!));
  const rooms = new Map(plan.labels);
  const wanted = bars.map((translated, i): SpacedBar => {
    const { bar, measures } = translated;
    const columns = measures.map((measure, c) => ({
      ...measure,
      left: i === 0 && c === 0 ? measure.left + tieRoom(bar) : measure.left,
      duration: (measures[c + 1]?.at ?? bar.at + bar.duration) - measure.at,
      labels: rooms.get(measure.at) ?? [],
    }));
    const { treble, bass } = staves[i]!;
    return { head: Math.max(headOf(treble), headOf(bass)) + AFTER_HEAD, columns };
  });
  const tail = endWidth(staves.at(-1)!.treble);
  const room = plan.width - LEFT_MARGIN - RIGHT_MARGIN - tail;
  const spaced = spaceSystem(wanted, room, plan.ragged ? RAGGED_STRETCH : undefined);
  const columns: ColumnPlace[] = [];
  for (const [i, translated] of bars.entries()) {
    const extra = i === bars.length - 1 ? tail : 0;
    placeBar(translated, spaced.bars[i]!, extra, columns);
  }
  const boxes = collect();
  svg.setAttribute('class', 'pw-notes');
  for (const [i, translated] of bars.entries()) drawBar(translated, i, context, boxes);
  const last = staves.at(-1)!.treble;
  const places = bars.map(
    ({ bar, staves: own }): BarPlace => ({
      index: bar.index,
      number: bar.number,
      at: bar.at,
      until: bar.at + bar.duration,
      x: own.treble.getX(),
      width: own.treble.getWidth(),
    }),
  );
  for (const place of places) {
    for (const staff of ['treble', 'bass'] as const) {
      boxes.solid.push(...headBoxes(place, plan, staff, bars));
      boxes.thin.push(...endBoxes(place, top[staff], bars));
    }
  }
  const right = last.getX() + last.getWidth();
  // Signatures that warn of the next system's: no stroke runs through them.
  if (tail > 0)
    for (const staff of ['treble', 'bass'] as const)
      boxes.solid.push({ x: right - tail, y: top[staff] - 8, width: tail, height: STAFF_HEIGHT + 16 });
  const lines = { left: LEFT_MARGIN, right, top, columns, bars: places };
  drawBySelf(svg, plan, lines, boxes);
  const all: readonly Box[] = [...boxes.solid, ...boxes.thin];
  return {
    svg,
    geometry: {
      width: Math.max(plan.width, right + RIGHT_MARGIN),
      ...lines,
      heads: boxes.heads,
      gaps: boxes.gaps,
      solid: boxes.solid,
      thin: boxes.thin,
      highest: Math.min(-8, ...all.map((box) => box.y)),
      lowest: Math.max(top.bass + STAFF_HEIGHT + 8, ...all.map((box) => box.y + box.height)),
    },
  };
}

/** Room at a system's beginning for a tie that comes from the system before. */
function tieRoom(bar: PlannedBar): number {
  return VOICES.some((voice) => bar.signs[voice][0]?.continued) ? 14 : 0;
}

function collect(): Gathered {
  return { heads: [], gaps: [], solid: [], thin: [] };
}

function makeStaves(
  bar: PlannedBar,
  plan: SystemPlan,
  i: number,
  top: Readonly<Record<StaffName, number>>,
  context: SVGContext,
): Readonly<Record<StaffName, Stave>> {
  const make = (staff: StaffName): Stave => {
    const stave = new Stave(LEFT_MARGIN, top[staff], 100, { spaceAboveStaffLn: 0 });
    stave.setContext(context);
    const begins = i === 0;
    if (begins) stave.addClef(staff);
    const signature = signatureName(bar.key.fifths);
    if (begins && (bar.key.fifths !== 0 || bar.keyBefore !== undefined)) {
      const cancel = bar.key.fifths === 0 ? signatureName(bar.keyBefore ?? 0) : undefined;
      stave.addKeySignature(signature, cancel);
    } else if (!begins && bar.keyBefore !== undefined) {
      stave.addKeySignature(signature, signatureName(bar.keyBefore));
    }
    if (bar.index === 0 || bar.metreChanges) stave.addTimeSignature(metreText(bar.metre));
    stave.setBegBarType(bar.repeatStart ? BarlineType.REPEAT_BEGIN : BarlineType.NONE);
    stave.setEndBarType(endBarline(bar));
    if (i === plan.bars.length - 1 && plan.nextKey) {
      stave.setEndKeySignature(signatureName(plan.nextKey.fifths), signatureName(plan.nextKey.before));
    }
    if (i === plan.bars.length - 1 && plan.nextMetre) stave.addEndTimeSignature(metreText(plan.nextMetre));
    return stave;
  };
  return { treble: make('treble'), bass: make('bass') };
}

function metreText(metre: Metre): string {
  return printMetre(metre);
}

function endBarline(bar: PlannedBar): BarlineType {
  if (bar.repeatEnd) return BarlineType.REPEAT_END;
  return bar.final ? BarlineType.END : BarlineType.SINGLE;
}

/** Between a barline and a signature that changes there. */
const BEFORE_SIGNATURE = 8;

function headOf(stave: Stave): number {
  return stave.getNoteStartX() - stave.getX() + changeRoom(stave);
}

/** VexFlow sets a changed signature right against the barline; this much room is put between. */
function changeRoom(stave: Stave): number {
  const begins = stave.getModifiers(StaveModifierPosition.BEGIN);
  const signatures = begins.some((each) => each instanceof KeySignature || each instanceof TimeSignature);
  return signatures && !begins.some((each) => each instanceof Clef) ? BEFORE_SIGNATURE : 0;
}

/** Room that an end signature takes before the last barline. */
function endWidth(stave: Stave): number {
  const taken = stave.getX() + stave.getWidth() - stave.getNoteEndX();
  return taken > 20 ? taken : 0;
}

/** Gives the staves their x and width, and every moment its place. */
function placeBar(translated: TranslatedBar, space: BarSpace, extra: number, columns: ColumnPlace[]): void {
  const { bar, staves, contexts, measures } = translated;
  const x = LEFT_MARGIN + space.x;
  for (const staff of [staves.treble, staves.bass]) staff.setX(x).setWidth(space.width + extra);
  const start = x + Math.max(headOf(staves.treble), headOf(staves.bass));
  for (const staff of [staves.treble, staves.bass]) {
    const room = changeRoom(staff);
    for (const each of staff.getModifiers(StaveModifierPosition.BEGIN)) each.setX(each.getX() + room);
    staff.setNoteStartX(start);
  }
  for (const [i, { at }] of measures.entries()) {
    const here = LEFT_MARGIN + space.columns[i]!;
    columns.push({ at, x: here });
    contexts.get(at)?.setX(here - start - VEXFLOW_PADDING);
  }
  const middle = (start + x + space.width) / 2;
  for (const voice of VOICES) {
    for (const { sign, note } of translated.drawn[voice]) {
      if (!sign.wholeBar || bar.duration === 0 || !(note instanceof StaveNote)) continue;
      note.setXShift(middle - note.getGlyphWidth() / 2 - note.getAbsoluteX());
    }
  }
}

function drawBar(translated: TranslatedBar, i: number, context: SVGContext, boxes: Gathered): void {
  const { staves, drawn, beams } = translated;
  for (const stave of [staves.treble, staves.bass]) stave.drawWithStyle();
  connect(translated, i, context);
  for (const voice of VOICES) {
    for (const each of drawn[voice]) {
      if (!(each.note instanceof StaveNote)) continue;
      const group = context.openGroup('sign') as SVGGElement;
      group.dataset.tone = each.sign.tone ?? '';
      each.note.setContext(context).drawWithStyle();
      context.closeGroup();
    }
  }
  for (const beam of beams) beam.setContext(context).drawWithStyle();
  for (const tuplet of translateTuplets(translated)) {
    tuplet.setContext(context).drawWithStyle();
    const notes = tuplet.getNotes();
    const first = notes[0]!.getAbsoluteX();
    const width = notes.at(-1)!.getAbsoluteX() + 12 - first;
    boxes.thin.push({ x: first, y: tuplet.getYPosition() - 8, width, height: 16 });
  }
  const beamed = new Set(beams.flatMap((beam: Beam) => beam.getNotes()));
  for (const voice of VOICES) for (const each of drawn[voice]) gather(each, beamed.has(each.note), boxes);
  for (const beam of beams) boxes.thin.push(...beamBoxes(beam));
}

/** Bracket at the left, barlines through both staves. */
function connect({ bar, staves }: TranslatedBar, i: number, context: SVGContext): void {
  const draw = (type: StaveConnectorType, shift = 0) => {
    const connector = new StaveConnector(staves.treble, staves.bass).setType(type);
    connector.setXShift(shift).setContext(context).drawWithStyle();
  };
  if (i === 0) {
    // A bracket: the staves are a choir's. A brace would make them one player's.
    draw('bracket');
    draw('singleLeft');
  }
  if (bar.repeatStart) draw('boldDoubleLeft', staves.treble.getModifierXShift());
  draw(bar.repeatEnd || bar.final ? 'boldDoubleRight' : 'singleRight');
}

/** Where a note's parts stand, once drawn. */
function gather({ sign, voice, note }: Drawn, beamed: boolean, boxes: Gathered): void {
  if (!(note instanceof StaveNote) || sign.shared) return;
  const { x, y, w, h } = note.noteHeads[headIndex(sign)]!.getBoundingBox();
  const head = { x, y, width: w, height: h };
  const up = stemUp(voice);
  let tip = up ? y : y + h;
  if (sign.kind === 'note' && note.hasStem()) {
    tip = note.getStemExtents().topY;
    const stemX = note.getStemX();
    boxes.thin.push({
      x: stemX - 1,
      y: Math.min(tip, y + h / 2),
      width: 2,
      height: Math.abs(tip - y - h / 2),
    });
    if (sign.value.base >= 8 && !beamed) {
      const tall = 33 + Math.max(0, Math.log2(sign.value.base) - 3) * 7;
      boxes.solid.push({ x: stemX, y: up ? tip : tip - tall, width: 11, height: tall });
    }
  }
  const tone = sign.tone === undefined ? {} : { tone: sign.tone };
  boxes.heads.push({
    ...head,
    voice,
    at: sign.at,
    until: sign.at + sign.duration,
    place: sign.place,
    tip,
    ...tone,
  });
  boxes.solid.push(head, ...spareHeads(note, headIndex(sign)));
  for (const modifier of note.getModifiers()) {
    if (modifier instanceof GraceNoteGroup) boxes.solid.push(...graceBoxes(modifier));
    else {
      const box = modifier.getBoundingBox();
      boxes.solid.push({ x: box.x, y: box.y, width: box.w, height: box.h });
    }
  }
}

/** Heads of notes too many. */
function spareHeads(note: StaveNote, own: number): Box[] {
  return note.noteHeads.flatMap((head, i) => {
    const { x, y, w, h } = head.getBoundingBox();
    return i === own ? [] : [{ x, y, width: w, height: h }];
  });
}

/** Grace notes with their stems, flags and accidentals. */
function graceBoxes(group: GraceNoteGroup): Box[] {
  return group.getGraceNotes().flatMap((note) => {
    if (!(note instanceof StaveNote)) return [];
    const { x, y, w, h } = note.noteHeads[0]!.getBoundingBox();
    const { topY } = note.getStemExtents();
    const top = Math.min(y, topY) - 2;
    const stem = { x: x - 1, y: top, width: w + 9, height: Math.max(y + h, topY) + 2 - top };
    const accidentals = note.getModifiers().map((modifier) => {
      const box = modifier.getBoundingBox();
      return { x: box.x, y: box.y, width: box.w, height: box.h };
    });
    return [stem, ...accidentals];
  });
}

function beamBoxes(beam: Beam): Box[] {
  const notes = beam.getNotes();
  return notes.slice(1).map((note, i) => {
    const before = notes[i]!;
    const tips = [before.getStemExtents().topY, note.getStemExtents().topY];
    const y = Math.min(...tips) - 6;
    return {
      x: before.getStemX(),
      y,
      width: note.getStemX() - before.getStemX(),
      height: Math.max(...tips) + 6 - y,
    };
  });
}

/** Clef, signatures and repeat dots at the beginning of a bar, as one box a staff. */
function headBoxes(
  place: BarPlace,
  plan: SystemPlan,
  staff: StaffName,
  bars: readonly TranslatedBar[],
): Box[] {
  const own = bars.find(({ bar }) => bar.index === place.index)!;
  const width = own.staves[staff].getNoteStartX() - place.x;
  if (width < 12) return [];
  const y = staff === 'treble' ? 0 : plan.distance;
  return [{ x: place.x, y: y - 12, width, height: STAFF_HEIGHT + 24 }];
}

/** A repeat sign or a final double bar. */
function endBoxes(place: BarPlace, y: number, bars: readonly TranslatedBar[]): Box[] {
  const { bar } = bars.find((each) => each.bar.index === place.index)!;
  const width = bar.repeatEnd ? 15 : bar.final ? 7 : 0;
  return width === 0 ? [] : [{ x: place.x + place.width - width, y, width, height: STAFF_HEIGHT }];
}
