/**
 * The features the reading weighs, laid out in one array. Every feature belongs to a family with one to four
 * dimensions; the names of the dimensions' values are those of the weight table in `weights.ts`.
 */
import { CHORD_TYPES } from '../../chord-types.ts';
import { KINDS, REACH, WAYS } from './grid.ts';
import { CHORD_NAMES, MODES, VOCABULARY } from './vocabulary.ts';

export interface Family {
  readonly name: string;
  /** First index in the weight array. */
  readonly from: number;
  readonly size: number;
  /** Prints an index within the family: `major I V7`. */
  readonly label: (index: number) => string;
  /** The index within the family that a label names. */
  readonly find: (label: string) => number;
}

const range = (from: number, until: number): string[] =>
  Array.from({ length: until - from }, (_, i) => String(from + i));

/** Roles a tone may have in a chord; a foreign one by whether the tones before and after it belong. */
const ROLES = [
  'root',
  'third',
  'fifth',
  'seventh',
  'foreign',
  'foreign to-member',
  'foreign from-member',
  'foreign between-members',
] as const;
/** Where in the segment and the metre a tone begins. */
export const ACCENTS = ['downbeat', 'start', 'weak start', 'beat', 'offbeat', 'small', 'held in'] as const;
export const LENGTHS = ['semiquaver', 'quaver', 'crotchet', 'long'] as const;
/** How the chosen bass note stands among those of the segment. */
export const BASSES = ['only', 'first', 'after foreign', 'later', 'none'] as const;
/** How a chord differs from the one before. */
export const RELATIONS = [
  'same',
  'turned',
  'seventh added',
  'seventh dropped',
  'quality changed',
  'third apart',
  'fifth up',
  'fifth down',
  'step up',
  'step down',
  'tritone',
] as const;
const PLACES = ['phrase start', 'within', 'goal'] as const;
/** Harmonies a key has lasted. */
export const AGES = ['1', '2', '3', '4', 'more'] as const;
/** What has confirmed a key. */
export const CONFIRMED = ['nothing', 'dominant to tonic', 'phrase end'] as const;
/** What a key has held besides its tonic and dominant. */
const BREADTH = ['narrow', 'broad'] as const;
/** Whether notes foreign to a key's scale come at once, later in the phrase, or no more in it. */
const CONTRADICTED = ['never', 'later', 'at once'] as const;
export const SPANS = ['½', '1', '1½', '2', '3', '4', 'longer'] as const;
/** Relative places on the line of fifths, as far as notes go in a key. */
export const LOWEST_NOTE = -7;
export const NOTES = 18;
/** Distances of keys on the line of fifths, clipped. */
export const KEY_DISTANCE = 6;

const masks = Array.from({ length: 16 }, (_, mask) =>
  ['r', '3', '5', '7'].map((sign, i) => (mask & (1 << i) ? sign : '-')).join(''),
);
const shapes = WAYS.flatMap((into) => WAYS.map((out) => `${into}>${out}`));
const types = CHORD_TYPES.map((type) => type.name);
const notes = range(LOWEST_NOTE, LOWEST_NOTE + NOTES);
const distances = range(-KEY_DISTANCE, KEY_DISTANCE + 1);
const strengths = range(0, 5);
/** Vocabulary indices differ by mode, so the label needs both: `major` then a chord. */
const CHORD = 'chord' as const;
/** A chord with its inversion, a to d. */
const TURNED = 'turned chord' as const;

type Dimension = readonly string[] | typeof CHORD | typeof TURNED;

const families: Family[] = [];
let total = 0;

const known = new Map<Dimension, Map<string, number>[]>();

/** Values of a dimension by name; chords are named by mode. */
function valuesOf(
  dimension: Dimension,
  mode: number,
  size: number,
  nameOf: (value: number) => string,
): ReadonlyMap<string, number> {
  let byMode = known.get(dimension);
  if (byMode === undefined) {
    byMode = [];
    known.set(dimension, byMode);
  }
  let values = byMode[mode];
  if (values === undefined) {
    values = new Map(Array.from({ length: size }, (_, v) => [nameOf(v).replaceAll(' ', '_'), v]));
    byMode[mode] = values;
  }
  return values;
}

function family(name: string, ...dimensions: readonly Dimension[]): number {
  const sizes = dimensions.map((d) => (d === CHORD ? VOCABULARY : d === TURNED ? VOCABULARY * 4 : d.length));
  const size = sizes.reduce((product, s) => product * s, 1);
  const modeAt = dimensions.indexOf(MODES);
  /** The name of value `value` of dimension `d`, in the mode numbered `mode`. */
  const nameOf = (d: number, value: number, mode: number): string => {
    const dimension = dimensions[d]!;
    if (dimension === CHORD) return CHORD_NAMES[mode]![value]!;
    if (dimension === TURNED) return `${CHORD_NAMES[mode]![value >> 2]!}${'abcd'[value & 3]!}`;
    return dimension[value]!;
  };
  const label = (index: number): string => {
    const values = sizes.map(() => 0);
    let rest = index;
    for (let d = sizes.length - 1; d >= 0; d--) {
      values[d] = rest % sizes[d]!;
      rest = Math.floor(rest / sizes[d]!);
    }
    return values.map((value, d) => nameOf(d, value, values[modeAt] ?? 0).replaceAll(' ', '_')).join(' ');
  };
  const find = (text: string): number => {
    const parts = text.split(' ');
    const mode = modeAt < 0 ? 0 : MODES.indexOf(parts[modeAt] as (typeof MODES)[number]);
    let index = 0;
    for (const [d, size] of sizes.entries()) {
      const value = valuesOf(dimensions[d]!, mode, size, (v) => nameOf(d, v, mode)).get(parts[d]!);
      if (value === undefined) throw new RangeError(`"${text}" is no feature of "${name}".`);
      index = index * size + value;
    }
    return index;
  };
  families.push({ name, from: total, size, label, find });
  total += size;
  return total - size;
}

export const TONE_SHAPE = family('tone by shape', ROLES, shapes);
export const TONE_PLACE = family('tone by place', ROLES, ACCENTS, LENGTHS);
export const TONE_KIND = family('tone by kind', ROLES.slice(0, 5), KINDS, ACCENTS);
export const BASS_PLACE = family('bass tone by place', ROLES.slice(0, 5), ACCENTS, LENGTHS);
export const SEVENTH_KIND = family('seventh by kind', types, KINDS, ACCENTS);
export const MEMBERS_PRESENT = family('members present', types, masks);
export const MEMBERS_AT_START = family('members at start', types, masks);
export const BASS_CHOICE = family('bass chosen', types, ['a', 'b', 'c', 'd'], BASSES);
export const LATER_BASS = family('later bass', ACCENTS, LENGTHS);
export const SEGMENT = family('segment', strengths, SPANS, strengths);
export const BOUNDARY = family(
  'boundary',
  strengths,
  ['held', 'repeated', 'step', 'leap', 'none'],
  strengths,
);
export const CHORD_IN_KEY = family('chord in key', MODES, TURNED);
export const CHORD_PLACE = family('chord by place', MODES, CHORD, ['weak', 'beat', 'strong']);
export const PROGRESSION = family('progression', MODES, CHORD, CHORD);
export const TURNED_PROGRESSION = family('progression with inversions', MODES, TURNED, TURNED);
export const ROOT_STEP = family('root to root', MODES, notes, notes);
export const BASS_STEP = family('bass to bass', MODES, notes, notes);
export const NEW_PHRASE = family('progression into a phrase', MODES, CHORD, CHORD);
export const CADENCE = family('cadence', MODES, CHORD, CHORD);
export const RELATION = family('relation', RELATIONS, strengths);
export const KEY_CHANGE = family('key change', PLACES, MODES, MODES, distances);
export const KEY_ENTRY = family('key entered with', MODES, CHORD);
export const KEY_PIVOT = family('key prepared by', MODES, CHORD);
export const KEY_EXIT = family('key left for', MODES, CHORD);
export const KEY_LEFT = family('key left', PLACES, AGES, CONFIRMED, BREADTH);
export const KEY_STRENGTH = family('key change by metre', strengths);
export const KEY_SINCE = family('key change by crotchets into the phrase', range(0, REACH + 1));
export const KEY_UNTIL = family('key change by crotchets left of the phrase', range(0, REACH + 1));
export const KEY_NEED = family('key change by need', PLACES, CONTRADICTED, CONTRADICTED);
export const SIGNATURE = family('signature', MODES, distances);
export const STATED_MODE = family('stated mode', MODES, ['none', 'major', 'minor']);
export const FIRST_CHORD = family('first chord', MODES, CHORD);
export const LAST_CHORD = family('last chord', MODES, CHORD);
export const LAST_KEY = family('last key', MODES, distances);
export const PHRASE_CHORD = family('last chord of a phrase', MODES, CHORD);
export const NOTE_IN_KEY = family('note in key', MODES, notes);
export const NOTE_IN_PHRASE = family('note in phrase', MODES, notes);
export const PHRASE_BASS = family('last bass of a phrase', MODES, notes);
export const PHRASE_TOP = family('last melody note of a phrase', MODES, notes);
export const HOME_BASS = family('last bass of all', MODES, notes);

/** Where fewer than four voices sound: the same facts once more, since a missing voice changes what they are worth. */
const FEW = ['two', 'three'] as const;
export const FEW_MEMBERS = family('few voices: members present', FEW, types, masks);
export const FEW_KIND = family('few voices: tone by kind', FEW, ROLES.slice(0, 5), KINDS, ACCENTS);
export const FEW_SEGMENT = family('few voices: segment', FEW, SPANS, strengths);
export const FEW_CHORD = family('few voices: chord in key', FEW, MODES, TURNED);

export const FAMILIES: readonly Family[] = families;
export const FEATURES = total;
