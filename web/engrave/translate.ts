/** The translator: planned bars become VexFlow's notes, ready to be placed. Nothing else builds VexFlow notes. */
import {
  Accidental,
  Beam,
  Dot,
  Formatter,
  GhostNote,
  GraceNote,
  GraceNoteGroup,
  type Stave,
  StaveNote,
  Stem,
  type TickContext,
  Tuplet,
  Voice,
} from 'vexflow/core';
import { STEPS, staffPlace } from '../../src/score/pitch.ts';
import { type ByVoice, byVoice, VOICES, type VoiceName } from '../../src/score/score.ts';
import type { Ticks } from '../../src/score/time.ts';
import { accidentalSign, keyString } from './accidentals.ts';
import { type PlannedBar, type Sign, STAFF_OF, STAFF_VOICES, type StaffName } from './bars.ts';
import { stemUp } from './extents.ts';
import type { Value } from './values.ts';

/**
 * While VexFlow aligns the voices each note is given its exact length, as our ticks divided by this: a quarter tick is
 * exact in floating point. (Its own 4096 to the crotchet would round triplets.) Before and after, a note has the
 * length of its written value, by which beams count their lines.
 */
const EXACT = 4;

/** One sign with its VexFlow note; a gap's is an empty place holder. */
export interface Drawn {
  readonly sign: Sign;
  readonly voice: VoiceName;
  readonly note: StaveNote | GhostNote;
}

/** What one moment of a bar needs to its left and right, measured. */
export interface Measure {
  readonly at: Ticks;
  readonly left: number;
  readonly right: number;
}

export interface TranslatedBar {
  readonly bar: PlannedBar;
  readonly staves: Readonly<Record<StaffName, Stave>>;
  readonly voices: ByVoice<Voice>;
  readonly drawn: ByVoice<readonly Drawn[]>;
  readonly beams: readonly Beam[];
  readonly contexts: ReadonlyMap<Ticks, TickContext>;
  readonly measures: readonly Measure[];
}

/** Makes the notes of a bar on its two staves (already at their heights) and measures them. */
export function translateBar(bar: PlannedBar, staves: Readonly<Record<StaffName, Stave>>): TranslatedBar {
  const drawn = byVoice((voice) =>
    bar.signs[voice].map((sign): Drawn => ({ sign, voice, note: makeNote(sign, voice) })),
  );
  const beams = VOICES.flatMap((voice) =>
    bar.beams[voice].map(([first, last]) => {
      const notes = drawn[voice].slice(first, last + 1).map(({ note }) => note as StaveNote);
      return new Beam(notes);
    }),
  );
  const written = VOICES.flatMap((voice) =>
    drawn[voice].map(({ sign, note }) => {
      const ticks = note.getIntrinsicTicks();
      note.setIntrinsicTicks(sign.duration / EXACT);
      return { note, ticks };
    }),
  );
  const voices = byVoice((voice) => {
    const made = new Voice({ numBeats: 4, beatValue: 4 }).setMode(Voice.Mode.SOFT);
    made.addTickables(drawn[voice].map(({ note }) => note));
    for (const { note } of drawn[voice]) note.setStave(staves[STAFF_OF[voice]]);
    return made;
  });
  const formatter = new Formatter();
  for (const staff of ['treble', 'bass'] as const) {
    const [upper, lower] = STAFF_VOICES[staff];
    formatter.joinVoices([voices[upper], voices[lower]]);
  }
  formatter.createTickContexts(VOICES.map((voice) => voices[voice]));
  formatter.preFormat();
  for (const { note, ticks } of written) note.setIntrinsicTicks(ticks);
  for (const voice of VOICES) {
    const direction = stemUp(voice) ? Stem.UP : Stem.DOWN;
    for (const { note } of drawn[voice]) {
      // VexFlow turns a stem where voices cross; turning it back would part a note from its beam, so only where needed.
      if (note instanceof StaveNote && note.getStemDirection() !== direction)
        note.setStemDirection(direction);
    }
  }
  const widened = new Map<Ticks, number>();
  for (const staff of ['treble', 'bass'] as const) settleNeighbours(drawn, staff, widened);
  formatter.postFormat();
  const contexts = new Map<Ticks, TickContext>();
  for (const voice of VOICES) {
    for (const { sign, note } of drawn[voice]) contexts.set(sign.at, note.checkTickContext());
  }
  return { bar, staves, voices, drawn, beams, contexts, measures: measure(bar, contexts, widened) };
}

/** The brackets of tuplets; made last, because VexFlow changes the notes' lengths as it makes them. */
export function translateTuplets({ bar, drawn }: TranslatedBar): Tuplet[] {
  return bar.tuplets.flatMap(({ voice, first, last, ratio }) => {
    const notes = drawn[voice].slice(first, last + 1).map(({ note }) => note);
    if (notes.some((note) => note instanceof GhostNote)) return [];
    return new Tuplet(notes, {
      numNotes: ratio.count,
      notesOccupied: ratio.inTimeOf,
      ratioed: false,
      location: stemUp(voice) ? Tuplet.LOCATION_TOP : Tuplet.LOCATION_BOTTOM,
    });
  });
}

function makeNote(sign: Sign, voice: VoiceName): StaveNote | GhostNote {
  const { base, dots } = sign.value;
  if (sign.kind === 'gap') return new GhostNote('q');
  const pitch = sign.pitch ?? placePitch(sign.place);
  const { beside = [] } = sign;
  const heads = [{ pitch, accidental: false }, ...beside].sort(
    (a, b) => staffPlace(a.pitch) - staffPlace(b.pitch),
  );
  const note = new StaveNote({
    keys: heads.map((head) => keyString(head.pitch)),
    duration: durationName(sign.value) + (sign.kind === 'rest' ? 'r' : ''),
    dots,
    clef: STAFF_OF[voice],
    stemDirection: stemUp(voice) ? Stem.UP : Stem.DOWN,
    autoStem: false,
  });
  if (sign.kind === 'rest') {
    // A semibreve rest hangs from the line above the middle; VexFlow counts its line accordingly.
    if (base === 1) note.setKeyLine(0, note.getKeyLine(0) + 1);
    if (sign.shared) note.renderOptions.draw = false;
  }
  const own = headIndex(sign);
  for (let i = 0; i < dots; i++) Dot.buildAndAttach([note], { all: true });
  if (sign.accidental && sign.pitch) {
    const accidental = new Accidental(accidentalSign(sign.pitch.alteration));
    if (sign.accidental === 'courtesy') accidental.setAsCautionary();
    note.addModifier(accidental, own);
  }
  for (const [i, head] of heads.entries()) {
    if (head.accidental) note.addModifier(new Accidental(accidentalSign(head.pitch.alteration)), i);
  }
  if (sign.grace) note.addModifier(graceNotes(sign, voice), 0);
  return note;
}

/** Which of a stem's heads, counted from the lowest, is the sign's own note; the others are notes too many. */
export function headIndex({ place, beside = [] }: Sign): number {
  return beside.filter(({ pitch }) => staffPlace(pitch) < place).length;
}

function graceNotes(sign: Sign, voice: VoiceName): GraceNoteGroup {
  const notes = (sign.grace ?? []).map((pitch) => {
    const grace = new GraceNote({
      keys: [keyString(pitch)],
      duration: '8',
      clef: STAFF_OF[voice],
      slash: sign.grace?.length === 1,
    });
    grace.setStemDirection(stemUp(voice) ? Stem.UP : Stem.DOWN);
    if (pitch.alteration !== 0) grace.addModifier(new Accidental(accidentalSign(pitch.alteration)), 0);
    return grace;
  });
  return notes.length > 1 ? new GraceNoteGroup(notes).beamNotes() : new GraceNoteGroup(notes);
}

function durationName({ base }: Value): string {
  return base === 0.5 ? '1/2' : String(base);
}

function placePitch(place: number) {
  return { step: STEPS[((place % 7) + 7) % 7]!, alteration: 0, octave: Math.floor(place / 7) };
}

/**
 * Sets two heads that cannot share a column side by side, more strictly than VexFlow does: the upper voice's to the
 * left, so that the two stems meet in the middle, but crossed voices the other way round, with their stems outside.
 */
function settleNeighbours(
  drawn: ByVoice<readonly Drawn[]>,
  staff: StaffName,
  widened: Map<Ticks, number>,
): void {
  const [upper, lower] = STAFF_VOICES[staff];
  for (const high of drawn[upper]) {
    const low = drawn[lower].find(({ sign }) => sign.at === high.sign.at);
    if (!low || !(high.note instanceof StaveNote) || !(low.note instanceof StaveNote)) continue;
    if (high.sign.kind !== 'note' || low.sign.kind !== 'note') continue;
    const steps = high.sign.place - low.sign.place;
    const apart = steps < 0 || high.note.getXShift() !== 0 || low.note.getXShift() !== 0;
    if (!apart) continue;
    const [left, right] = steps < 0 ? [low.note, high.note] : [high.note, low.note];
    left.setXShift(0);
    right.setXShift(left.getGlyphWidth() + (steps === 1 ? 1 : 2));
    const width = right.getGlyphWidth();
    widened.set(high.sign.at, right.getXShift() + width);
    // A dot stands right of both heads where they are near in height.
    const inside = right.getXShift() + width - left.getGlyphWidth();
    if (inside <= 0 || Math.abs(steps) > 2) continue;
    for (const dot of left.getModifiersByType(Dot.CATEGORY)) dot.setXShift(dot.getXShift() + inside);
  }
}

function measure(
  bar: PlannedBar,
  contexts: ReadonlyMap<Ticks, TickContext>,
  widened: ReadonlyMap<Ticks, number>,
): Measure[] {
  return bar.columns.map((at) => {
    const context = contexts.get(at);
    if (!context) return { at, left: 0, right: 14 };
    const { totalLeftPx, notePx, totalRightPx } = context.getMetrics();
    const head = 12;
    return {
      at,
      left: totalLeftPx,
      right: Math.max(head, notePx + totalRightPx, widened.get(at) ?? 0),
    };
  });
}
