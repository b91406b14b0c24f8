/**
 * One bar on paper, with VexFlow: the unit of drawing. A bar whose signs are the same and stand as far apart as before
 * is kept, and moved where it has another place.
 */
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
  TimeSignature,
} from 'vexflow/core';
import { VOICES } from '../../src/score/score.ts';
import { type Metre, printMetre } from '../../src/score/time.ts';
import { signatureName } from './accidentals.ts';
import type { PlannedBar, StaffName } from './bars.ts';
import { STAFF_HEIGHT, stemUp } from './extents.ts';
import type { Box, Gathered } from './geometry.ts';
import type { BarSpace } from './spacing.ts';
import { LEFT_MARGIN, type SystemPlan } from './systems.ts';
import {
  type Drawn,
  headIndex,
  type Measure,
  type TranslatedBar,
  translateBar,
  translateTuplets,
} from './translate.ts';

/** From a staff's note start to VexFlow's own zero for notes (`Stave.padding`). */
const VEXFLOW_PADDING = 12;
/** From clef, signature or barline to the first head's own room. */
const AFTER_HEAD = 9;
/** Two places nearer than this are the same, in drawing units. */
const SAME = 0.02;

/** What a bar wants of the spacing, measured. */
export interface MeasuredBar {
  readonly measures: readonly Measure[];
  /** Room before the first column: clef, signatures, repeat sign. */
  readonly head: number;
  /** Room that signatures take before the last barline, which warn of the next system's. */
  readonly tail: number;
}

/** A bar made of VexFlow's notes, and not drawn yet. Drawing uses it up. */
export interface PreparedBar extends MeasuredBar {
  readonly translated: TranslatedBar;
}

/** A bar as it stands on paper. */
export interface BarPicture extends MeasuredBar {
  /** What it was made from: equal for bars that look alike when they are spaced alike. */
  readonly key: string;
  readonly group: SVGGElement;
  /** The spacing it was drawn with. */
  readonly space: BarSpace;
  /** Where its things stood when it was drawn. */
  readonly boxes: Gathered;
}

/** What decides how the bar of a system looks, save for its spacing. */
export function barKey(plan: SystemPlan, i: number): string {
  const last = i === plan.bars.length - 1;
  return JSON.stringify([
    plan.bars[i],
    plan.distance,
    i === 0,
    last ? [plan.nextKey, plan.nextMetre] : undefined,
  ]);
}

export function prepareBar(plan: SystemPlan, i: number, context: SVGContext): PreparedBar {
  const staves = makeStaves(plan, i, context);
  const translated = translateBar(plan.bars[i]!, staves);
  return {
    translated,
    measures: translated.measures,
    head: Math.max(headOf(staves.treble), headOf(staves.bass)) + AFTER_HEAD,
    tail: i === plan.bars.length - 1 ? endWidth(staves.treble) : 0,
  };
}

/** Draws a bar into a group of its own, at the end of the context's drawing. */
export function drawBar(
  { translated, measures, head, tail }: PreparedBar,
  space: BarSpace,
  context: SVGContext,
  at: { readonly i: number; readonly key: string },
): BarPicture {
  placeBar(translated, space, tail);
  const group = context.openGroup('bar') as SVGGElement;
  const boxes = inkBar(translated, at.i, context);
  context.closeGroup();
  return { key: at.key, group, space, boxes, measures, head, tail };
}

/** Moves a bar on the paper; answers where its things now stand. */
export function movedTo({ group, space, boxes }: BarPicture, x: number): Gathered {
  const by = x - space.x;
  if (Math.abs(by) < SAME) {
    group.removeAttribute('transform');
    return boxes;
  }
  group.setAttribute('transform', `translate(${by} 0)`);
  const move = <T extends Box>(all: readonly T[]) => all.map((box) => ({ ...box, x: box.x + by }));
  return {
    heads: move(boxes.heads),
    gaps: move(boxes.gaps),
    solid: move(boxes.solid),
    thin: move(boxes.thin),
  };
}

function makeStaves(plan: SystemPlan, i: number, context: SVGContext): Readonly<Record<StaffName, Stave>> {
  const bar = plan.bars[i]!;
  const top = { treble: 0, bass: plan.distance };
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
function placeBar(
  { bar, staves, contexts, measures, drawn }: TranslatedBar,
  space: BarSpace,
  extra: number,
): void {
  const x = LEFT_MARGIN + space.x;
  for (const staff of [staves.treble, staves.bass]) staff.setX(x).setWidth(space.width + extra);
  const start = x + Math.max(headOf(staves.treble), headOf(staves.bass));
  for (const staff of [staves.treble, staves.bass]) {
    const room = changeRoom(staff);
    for (const each of staff.getModifiers(StaveModifierPosition.BEGIN)) each.setX(each.getX() + room);
    staff.setNoteStartX(start);
  }
  for (const [i, { at }] of measures.entries())
    contexts.get(at)?.setX(LEFT_MARGIN + space.columns[i]! - start - VEXFLOW_PADDING);
  const middle = (start + x + space.width) / 2;
  for (const voice of VOICES) {
    for (const { sign, note } of drawn[voice]) {
      if (!sign.wholeBar || bar.duration === 0 || !(note instanceof StaveNote)) continue;
      note.setXShift(middle - note.getGlyphWidth() / 2 - note.getAbsoluteX());
    }
  }
}

/** Draws a bar that has been placed, and gathers where its things stand. */
function inkBar(translated: TranslatedBar, i: number, context: SVGContext): Gathered {
  const { staves, drawn, beams } = translated;
  const boxes: Gathered = { heads: [], gaps: [], solid: [], thin: [] };
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
  inkTuplets(translated, context, boxes);
  const beamed = new Set(beams.flatMap((beam: Beam) => beam.getNotes()));
  for (const voice of VOICES) for (const each of drawn[voice]) gather(each, beamed.has(each.note), boxes);
  for (const beam of beams) boxes.thin.push(...beamBoxes(beam));
  for (const stave of [staves.treble, staves.bass]) {
    boxes.solid.push(...headBoxes(stave));
    boxes.thin.push(...endBoxes(translated.bar, stave));
  }
  if (i === 0) boxes.solid.push(...bracketEnds(staves));
  return boxes;
}

function inkTuplets(translated: TranslatedBar, context: SVGContext, boxes: Gathered): void {
  for (const tuplet of translateTuplets(translated)) {
    tuplet.setContext(context).drawWithStyle();
    const notes = tuplet.getNotes();
    const first = notes[0]!.getAbsoluteX();
    const width = notes.at(-1)!.getAbsoluteX() + 12 - first;
    boxes.thin.push({ x: first, y: tuplet.getYPosition() - 8, width, height: 16 });
  }
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
function headBoxes(stave: Stave): Box[] {
  const width = stave.getNoteStartX() - stave.getX();
  return width < 12 ? [] : [{ x: stave.getX(), y: stave.getY() - 12, width, height: STAFF_HEIGHT + 24 }];
}

/** The hooks of the bracket, above and below the staves, which VexFlow draws 5 left of them and 6 beyond. */
function bracketEnds({ treble, bass }: TranslatedBar['staves']): Box[] {
  const hook = { x: treble.getX() - 5, width: 20, height: 12 };
  return [
    { ...hook, y: treble.getY() - 6 - hook.height },
    { ...hook, y: bass.getY() + STAFF_HEIGHT + 6 },
  ];
}

/** A repeat sign or a final double bar. */
function endBoxes(bar: PlannedBar, stave: Stave): Box[] {
  const width = bar.repeatEnd ? 15 : bar.final ? 7 : 0;
  const x = stave.getX() + stave.getWidth() - width;
  return width === 0 ? [] : [{ x, y: stave.getY(), width, height: STAFF_HEIGHT }];
}
