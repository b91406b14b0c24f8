/**
 * Which kinds of chord may stand on a root, by what sounds above it: asked for each root of each segment, so that the
 * answers are worked out once for each set of notes.
 */
import { CHORD_TYPES, TYPE } from '../../chord-types.ts';

/** Every distance a member may lie from its root, on the line of fifths. A set of notes has a bit for each: its slot. */
export const REACH = Int8Array.from(new Set(CHORD_TYPES.flatMap(({ offsets }) => offsets)));
export const SLOTS = REACH.length;

/** Stands for no note at all: no member lies thirteen fifths from its root. */
const NOWHERE = 13;
/** The slots of each type's members, four a type; -1 for the seventh that a triad lacks. */
export const MEMBER_SLOTS = Int8Array.from(
  CHORD_TYPES.flatMap(({ offsets }) => [0, 1, 2, 3].map((m) => REACH.indexOf(offsets[m] ?? NOWHERE))),
);

/** What a chord's rarity costs before any weight is asked. */
export const RARITY = CHORD_TYPES.map((_, type) =>
  type === TYPE.M || type === TYPE.m ? 0 : type >= TYPE.mmaj7! ? 0.1 : 0.02,
);

/** Sevenths whose third is the leading note: they may lack their root. */
const dominant = (type: number): boolean => type === TYPE.M7 || type === TYPE.Fr;

/** What besides the notes decides: more than two different ones sound; all voices sing for a beat or more; nothing else fits. */
const SEVERAL = 1;
const ALL_SING = 2;
const DESPERATE = 4;

/** By flags and notes: the types as bits; -1 where it was not asked yet. */
const known = new Int32Array(8 << SLOTS).fill(-1);

/**
 * The types that may stand on a root, as bits from type 0 up.
 * @param sounding the set of notes that sound, by slots
 * @param flags 1 where more than two different notes sound, 2 where all voices sing for a beat or more, 4 where no
 *   chord fits otherwise
 */
export function admittedTypes(sounding: number, flags: number): number {
  const at = (flags << SLOTS) + sounding;
  const before = known[at]!;
  if (before >= 0) return before;
  let types = 0;
  for (let type = 0; type < CHORD_TYPES.length; type++)
    if (isAdmitted(type, sounding, flags)) types |= 1 << type;
  known[at] = types;
  return types;
}

function isAdmitted(type: number, sounding: number, flags: number): boolean {
  if ((flags & DESPERATE) === 0 && isDenied(type, sounding, flags)) return false;
  const lacking = CHORD_TYPES[type]!.offsets.map((offset) => !has(sounding, offset));
  if (lacking[3]) return false;
  const count = lacking.filter(Boolean).length;
  return count < 2 || (count === 2 && (flags & SEVERAL) === 0);
}

/**
 * What no ear allows: a chord against its own third; a seventh, or an augmented sixth, that lacks both its root and
 * its leading note; a triad that lacks its root where every voice sings for a beat or more.
 */
function isDenied(type: number, sounding: number, flags: number): boolean {
  const { offsets } = CHORD_TYPES[type]!;
  const third = has(sounding, offsets[1]!);
  if (!third && (offsets[1] === 4 || offsets[1] === -3) && has(sounding, offsets[1] === 4 ? -3 : 4))
    return true;
  if (has(sounding, 0)) return false;
  if (type >= TYPE.It! || offsets.length > 3) return !(third && dominant(type));
  return (flags & ALL_SING) !== 0;
}

/** Whether a note so far from the root, on the line of fifths, is in a set. */
function has(sounding: number, offset: number): boolean {
  return (sounding & (1 << REACH.indexOf(offset))) !== 0;
}
