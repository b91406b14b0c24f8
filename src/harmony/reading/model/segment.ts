/**
 * Features of one segment of time taken as one chord, whatever the key: which tones belong and which do not, which
 * members are there, which of them the bass has, how long it lasts and how it begins.
 */
import { CROTCHET } from '../../../score/time.ts';
import { CHORD_TYPES } from '../../chord-types.ts';
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

const TYPES = CHORD_TYPES.length;
const SHAPES = 36;
const FOREIGN = 4;
const HELD_IN = ACCENTS.indexOf('held in');

/** Member index by type and distance in fifths (-12 to 12), -1 for foreign. */
const MEMBER = new Int8Array(TYPES * 25).fill(-1);
for (const [type, { offsets }] of CHORD_TYPES.entries())
  for (const [member, offset] of offsets.entries()) MEMBER[type * 25 + offset + 12] = member;

const HAS_SEVENTH = Uint8Array.from(CHORD_TYPES, ({ offsets }) => (offsets.length > 3 ? 1 : 0));

/** Which member a note is of a chord, by places on the line of fifths; -1 for a foreign note. */
export function memberAt(type: number, root: number, place: number): number {
  const distance = place - root + 12;
  return distance < 0 || distance > 24 ? -1 : MEMBER[type * 25 + distance]!;
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
const ROOM = 4 * (LONGEST * 8 + 8);

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
  const [held, crotchet] = [HELD, CROTCHET];
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
      segment.length[n] =
        duration <= crotchet / 4 ? 0 : duration <= crotchet / 2 ? 1 : duration <= crotchet ? 2 : 3;
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

const KIND_COUNT = KINDS.length;
const ACCENT_COUNT = ACCENTS.length;
const LENGTH_COUNT = LENGTHS.length;

/** Writes the indices of the chord's features into `out` from `n` on; gives the next free place. */
export function chordFeatures(
  segment: Segment,
  root: number,
  type: number,
  out: Int32Array,
  n: number,
): number {
  const seventhMatters = CHORD_TYPES[type]!.offsets.length > 3;
  const few = segment.grid.few[segment.from]!;
  let present = 0;
  let atStart = 0;
  let o = n;
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
  return o;
}

function fewKind(few: number, role: number, kind: number, accent: number): number {
  return FEW_KIND + ((few * 5 + role) * KIND_COUNT + kind) * ACCENT_COUNT + accent;
}

/** Features of taking `inversion` as the chord's position. Bare arguments, as in the steps: it runs in the innermost loop. */
export function bassFeatures(
  segment: Segment,
  root: number,
  type: number,
  inversion: number,
  out: Int32Array,
  n: number,
): number {
  let o = n;
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
  out[o++] = BASS_CHOICE + (type * 4 + inversion) * BASSES.length + choice;
  if (choice === 3) out[o++] = LATER_BASS + segment.accent[chosen]! * LENGTH_COUNT + segment.length[chosen]!;
  return o;
}

/** Features of the segment's place and length, whatever the chord. */
export function spanFeatures(segment: Segment, out: Int32Array, n: number): number {
  const { grid, from, to } = segment;
  const halves = Math.round((grid.until[to - 1]! - grid.at[from]!) / (CROTCHET / 2));
  const span =
    halves <= 1
      ? 0
      : halves === 2
        ? 1
        : halves === 3
          ? 2
          : halves <= 5
            ? 3
            : halves <= 7
              ? 4
              : halves === 8
                ? 5
                : 6;
  const start = grid.strength[from]!;
  const end = to < grid.atoms ? grid.strength[to]! : 4;
  out[n] = SEGMENT + (start * SPANS.length + span) * 5 + end;
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
  out[n + 1] = BOUNDARY + (start * 5 + bass) * 5 + attacks;
  const few = grid.few[from]!;
  if (few < 0) return n + 2;
  out[n + 2] = FEW_SEGMENT + (few * SPANS.length + span) * 5 + start;
  return n + 3;
}

const ROLE_COUNT = 8;

/** Of two voices one is taken to sing the root: full chords, from which the weights are learnt, hardly say so. */
export const ROOTLESS_COST = 3;

/**
 * Scores chords over one segment as {@link chordFeatures} would, but faster: what each tone is worth in each role is
 * summed once, before the chords are tried.
 */
export interface ChordScorer {
  /** Takes the segment in hand. */
  readonly prepare: () => void;
  readonly chord: (root: number, type: number) => number;
  readonly bass: (root: number, type: number, inversion: number) => number;
}

export function chordScorer(segment: Segment, weights: Float64Array): ChordScorer {
  // Imports are read once: loaders that compile modules as they go make every later read a call.
  const [shapeFrom, placeFrom, kindFrom, bassFrom] = [TONE_SHAPE, TONE_PLACE, TONE_KIND, BASS_PLACE];
  const [seventhFrom, presentFrom, startFrom] = [SEVENTH_KIND, MEMBERS_PRESENT, MEMBERS_AT_START];
  const [fewMembers, kindOfFew] = [FEW_MEMBERS, fewKind];
  const kindOfShape = KIND_OF_SHAPE;
  const worth = new Float64Array(ROOM * ROLE_COUNT);
  const buffer = new Int32Array(4);
  const prepare = () => {
    const few = segment.grid.few[segment.from]!;
    for (let i = 0; i < segment.tones; i++) {
      const shape = segment.shape[i]!;
      const accent = segment.accent[i]!;
      const place = accent * LENGTH_COUNT + segment.length[i]!;
      const kind = kindOfShape[shape]! * ACCENT_COUNT + accent;
      const inBass = i >= segment.bassFrom && i < segment.bassTo;
      for (let detailed = 0; detailed < ROLE_COUNT; detailed++) {
        const role = Math.min(detailed, FOREIGN);
        let score =
          weights[shapeFrom + detailed * SHAPES + shape]! +
          weights[placeFrom + detailed * ACCENT_COUNT * LENGTH_COUNT + place]! +
          weights[kindFrom + role * KIND_COUNT * ACCENT_COUNT + kind]!;
        if (inBass) score += weights[bassFrom + role * ACCENT_COUNT * LENGTH_COUNT + place]!;
        if (few >= 0) score += weights[kindOfFew(few, role, kindOfShape[shape]!, accent)]!;
        worth[i * ROLE_COUNT + detailed] = score;
      }
    }
  };
  const chord = (root: number, type: number): number => {
    const seventhMatters = HAS_SEVENTH[type] === 1;
    let present = 0;
    let atStart = 0;
    let score = 0;
    for (let i = 0; i < segment.tones; i++) {
      const member = memberAt(type, root, segment.place[i]!);
      if (member < 0) {
        const role =
          FOREIGN +
          (memberAt(type, root, segment.after[i]!) >= 0 ? 1 : 0) +
          (memberAt(type, root, segment.before[i]!) >= 0 ? 2 : 0);
        score += worth[i * ROLE_COUNT + role]!;
        continue;
      }
      present |= 1 << member;
      if (segment.atStart[i]) atStart |= 1 << member;
      score += worth[i * ROLE_COUNT + member]!;
      if (seventhMatters && member === 3) {
        const kind = kindOfShape[segment.shape[i]!]!;
        score += weights[seventhFrom + (type * KIND_COUNT + kind) * ACCENT_COUNT + segment.accent[i]!]!;
      }
    }
    const few = segment.grid.few[segment.from]!;
    if (few >= 0) {
      score += weights[fewMembers + (few * TYPES + type) * 16 + present]!;
      if ((present & 1) === 0 && few === 0) score -= ROOTLESS_COST;
    }
    return score + weights[presentFrom + type * 16 + present]! + weights[startFrom + type * 16 + atStart]!;
  };
  const bass = (root: number, type: number, inversion: number): number => {
    const n = bassFeatures(segment, root, type, inversion, buffer, 0);
    return weights[buffer[0]!]! + (n > 1 ? weights[buffer[1]!]! : 0);
  };
  return { prepare, chord, bass };
}
