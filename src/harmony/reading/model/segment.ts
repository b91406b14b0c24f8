/**
 * Features of one segment of time taken as one chord, whatever the key: which tones belong and which do not, which
 * members are there, which of them the bass has, how long it lasts and how it begins.
 */
import { CHORD_TYPES } from '../../chord-types.ts';
import type { FeatureList } from './features.ts';
import { type Grid, HELD, KIND_OF_SHAPE, KINDS, NO_PLACE } from './grid.ts';
import {
  ACCENTS,
  BASS_CHOICE,
  BASS_PLACE,
  BASSES,
  BOUNDARY,
  FEW_KIND,
  FEW_MEMBERS,
  FEW_SEGMENT,
  LATER_BASS,
  LENGTHS,
  MEMBERS_AT_START,
  MEMBERS_PRESENT,
  SEGMENT,
  SEVENTH_KIND,
  SPANS,
  TONE_KIND,
  TONE_PLACE,
  TONE_SHAPE,
} from './layout.ts';

export const TYPES = CHORD_TYPES.length;
export const SHAPES = 36;
export const FOREIGN = 4;
const HELD_IN = ACCENTS.indexOf('held in');

/** A type's places in {@link MEMBERS_BY_PLACE}: NO_PLACE lies within them, whatever the root. */
export const PLACE_SPAN = 256;
/** The place of the root within them. */
export const PLACE_ROOT = 128;

/** Which member a note is, by type and its distance from the root on the line of fifths; -1 for foreign. */
export const MEMBERS_BY_PLACE = new Int8Array(TYPES * PLACE_SPAN).fill(-1);
for (const [type, { offsets }] of CHORD_TYPES.entries())
  for (const [member, offset] of offsets.entries())
    MEMBERS_BY_PLACE[type * PLACE_SPAN + PLACE_ROOT + offset] = member;

/** Which member a note is of a chord, by places on the line of fifths; -1 for a foreign note. */
export function memberAt(type: number, root: number, place: number): number {
  return MEMBERS_BY_PLACE[type * PLACE_SPAN + PLACE_ROOT + place - root]!;
}

/** The tones of the segment in hand, in parallel arrays; reused from segment to segment. */
export interface Segment {
  readonly grid: Grid;
  from: number;
  to: number;
  tones: number;
  readonly place: Int8Array;
  readonly shape: Int8Array;
  readonly accent: Int8Array;
  readonly length: Int8Array;
  readonly duration: Int32Array;
  readonly before: Int8Array;
  readonly after: Int8Array;
  readonly atStart: Uint8Array;
  /** Where the lowest voice's tones begin and end in the arrays. */
  bassFrom: number;
  bassTo: number;
}

/** Longest segment tried, in atoms. */
export const LONGEST = 8;
export const ROOM = 4 * (LONGEST * 8 + 8);

export function newSegment(grid: Grid): Segment {
  return {
    grid,
    from: 0,
    to: 0,
    tones: 0,
    place: new Int8Array(ROOM),
    shape: new Int8Array(ROOM),
    accent: new Int8Array(ROOM),
    length: new Int8Array(ROOM),
    duration: new Int32Array(ROOM),
    before: new Int8Array(ROOM),
    after: new Int8Array(ROOM),
    atStart: new Uint8Array(ROOM),
    bassFrom: 0,
    bassTo: 0,
  };
}

/** Takes the atoms `from` (inclusive) to `to` (exclusive) in hand. */
export function loadSegment(segment: Segment, from: number, to: number): void {
  const { grid } = segment;
  const { beat } = grid;
  const held = HELD;
  const at = grid.at[from]!;
  const until = grid.until[to - 1]!;
  const startStrength = grid.strength[from]!;
  segment.from = from;
  segment.to = to;
  let n = 0;
  for (let v = 0; v < 4; v++) {
    const voice = grid.voices[v]!;
    const begun = n;
    for (let t = grid.first[v]![from]!; t < voice.at.length && n < ROOM; t++) {
      const toneAt = voice.at[t]!;
      if (toneAt >= until) break;
      const toneUntil = voice.until[t]!;
      const heldIn = toneAt < at;
      const heldOut = toneUntil > until;
      const duration = (heldOut ? until : toneUntil) - (heldIn ? at : toneAt);
      segment.place[n] = voice.place[t]!;
      segment.shape[n] = (heldIn ? held : voice.approach[t]!) * 6 + (heldOut ? held : voice.departure[t]!);
      segment.accent[n] = heldIn
        ? HELD_IN
        : toneAt === at
          ? startStrength >= 3
            ? 0
            : startStrength === 2
              ? 1
              : 2
          : voice.strength[t]! >= 2
            ? 3
            : voice.strength[t] === 1
              ? 4
              : 5;
      segment.length[n] = duration <= beat / 4 ? 0 : duration <= beat / 2 ? 1 : duration <= beat ? 2 : 3;
      segment.duration[n] = duration;
      segment.before[n] = voice.before[t]!;
      segment.after[n] = voice.after[t]!;
      segment.atStart[n] = toneAt <= at ? 1 : 0;
      n++;
    }
    if (n > begun) {
      segment.bassFrom = begun;
      segment.bassTo = n;
    }
  }
  segment.tones = n;
}

export const KIND_COUNT = KINDS.length;
export const ACCENT_COUNT = ACCENTS.length;
export const LENGTH_COUNT = LENGTHS.length;

/** Lists the chord's features, whatever its position. */
export function chordFeatures(segment: Segment, root: number, type: number, list: FeatureList): void {
  const seventhMatters = CHORD_TYPES[type]!.offsets.length > 3;
  const few = segment.grid.few[segment.from]!;
  let present = 0;
  let atStart = 0;
  const out = list.indices;
  let o = list.count;
  for (let i = 0; i < segment.tones; i++) {
    const member = memberAt(type, root, segment.place[i]!);
    const shape = segment.shape[i]!;
    const accent = segment.accent[i]!;
    const length = segment.length[i]!;
    let role = member;
    let detailed = member;
    if (member < 0) {
      role = FOREIGN;
      const after = segment.after[i]!;
      const before = segment.before[i]!;
      detailed =
        FOREIGN +
        (after !== NO_PLACE && memberAt(type, root, after) >= 0 ? 1 : 0) +
        (before !== NO_PLACE && memberAt(type, root, before) >= 0 ? 2 : 0);
    } else {
      present |= 1 << member;
      if (segment.atStart[i]) atStart |= 1 << member;
    }
    const kind = KIND_OF_SHAPE[shape]!;
    out[o++] = TONE_SHAPE + detailed * SHAPES + shape;
    out[o++] = TONE_PLACE + (detailed * ACCENT_COUNT + accent) * LENGTH_COUNT + length;
    out[o++] = TONE_KIND + (role * KIND_COUNT + kind) * ACCENT_COUNT + accent;
    if (few >= 0) out[o++] = fewKind(few, role, kind, accent);
    if (i >= segment.bassFrom && i < segment.bassTo)
      out[o++] = BASS_PLACE + (role * ACCENT_COUNT + accent) * LENGTH_COUNT + length;
    if (seventhMatters && member === 3)
      out[o++] = SEVENTH_KIND + (type * KIND_COUNT + kind) * ACCENT_COUNT + accent;
  }
  out[o++] = MEMBERS_PRESENT + type * 16 + present;
  out[o++] = MEMBERS_AT_START + type * 16 + atStart;
  if (few >= 0) out[o++] = FEW_MEMBERS + (few * TYPES + type) * 16 + present;
  list.count = o;
}

export function fewKind(few: number, role: number, kind: number, accent: number): number {
  return FEW_KIND + ((few * 5 + role) * KIND_COUNT + kind) * ACCENT_COUNT + accent;
}

/** Lists the features of taking `inversion` as the chord's position. */
export function bassFeatures(
  segment: Segment,
  root: number,
  type: number,
  inversion: number,
  list: FeatureList,
): void {
  let firstMember = -1;
  let others = false;
  let chosen = -1;
  for (let i = segment.bassFrom; i < segment.bassTo; i++) {
    const member = memberAt(type, root, segment.place[i]!);
    if (member < 0) continue;
    if (firstMember < 0) firstMember = i;
    if (member === inversion) {
      if (chosen < 0) chosen = i;
    } else others = true;
  }
  let choice: number;
  if (chosen < 0) choice = 4;
  else if (chosen !== firstMember) choice = 3;
  else if (chosen !== segment.bassFrom) choice = 2;
  else choice = others ? 1 : 0;
  list.indices[list.count++] = BASS_CHOICE + (type * 4 + inversion) * BASSES.length + choice;
  if (choice === 3)
    list.indices[list.count++] =
      LATER_BASS + segment.accent[chosen]! * LENGTH_COUNT + segment.length[chosen]!;
}

/** Index into SPANS of so many ticks. */
export function spanOf(length: number, beat: number): number {
  const halves = Math.round(length / (beat / 2));
  if (halves <= 3) return Math.max(halves, 1) - 1;
  if (halves <= 5) return 3;
  if (halves <= 7) return 4;
  return halves === 8 ? 5 : 6;
}

/** Lists the features of the segment's place and length, whatever the chord. */
export function spanFeatures(segment: Segment, list: FeatureList): void {
  const { grid, from, to } = segment;
  const span = spanOf(grid.until[to - 1]! - grid.at[from]!, grid.beat);
  const start = grid.strength[from]!;
  const end = to < grid.atoms ? grid.strength[to]! : 4;
  let attacks = 0;
  let bass = 4;
  const at = grid.at[from]!;
  for (let v = 0; v < 4; v++) {
    const voice = grid.voices[v]!;
    const t = grid.first[v]![from]!;
    if (t >= voice.at.length || voice.at[t]! > at) continue;
    if (voice.at[t] === at) {
      attacks++;
      const way = voice.approach[t]!;
      bass = way === 0 ? 4 : way === 1 ? 1 : way === 4 ? 3 : 2;
    } else bass = 0;
  }
  const few = grid.few[from]!;
  if (few >= 0) list.indices[list.count++] = FEW_SEGMENT + (few * SPANS.length + span) * 5 + start;
  list.indices[list.count++] = BOUNDARY + (start * 5 + bass) * 5 + attacks;
  list.indices[list.count++] = SEGMENT + (start * SPANS.length + span) * 5 + end;
}
