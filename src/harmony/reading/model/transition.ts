/** Features of going from one chord in a key to the next. */
import { CHORD_TYPES, TYPE } from '../../chord-types.ts';
import type { FeatureList } from './features.ts';
import type { Grid } from './grid.ts';
import { clippedDistance, contradiction, type KeyNumber, scaleSet } from './keys.ts';
import {
  AGES,
  BASS_STEP,
  CADENCE,
  CHORD_IN_KEY,
  CHORD_PLACE,
  CONFIRMED,
  FEW_CHORD,
  FIRST_CHORD,
  KEY_CHANGE,
  KEY_DISTANCE,
  KEY_ENTRY,
  KEY_EXIT,
  KEY_LEFT,
  KEY_NEED,
  KEY_PIVOT,
  KEY_SINCE,
  KEY_STRENGTH,
  KEY_UNTIL,
  LAST_CHORD,
  LOWEST_NOTE,
  NEW_PHRASE,
  NOTES,
  PHRASE_CHORD,
  PROGRESSION,
  RELATION,
  RELATIONS,
  ROOT_STEP,
  TURNED_PROGRESSION,
} from './layout.ts';
import { VOCABULARY, vocabularyIndex } from './vocabulary.ts';

/** A chord in numbers, whatever the key. */
export interface ChordNumber {
  readonly root: number;
  readonly type: number;
  readonly inversion: number;
}

const index = (name: (typeof RELATIONS)[number]) => RELATIONS.indexOf(name);
const SAME = index('same');
const TURNED = index('turned');
const ADDED = index('seventh added');
const DROPPED = index('seventh dropped');
const QUALITY = index('quality changed');
const THIRD = index('third apart');
const FIFTH_UP = index('fifth up');
const FIFTH_DOWN = index('fifth down');
const STEP_UP = index('step up');
const STEP_DOWN = index('step down');
const TRITONE = index('tritone');

/** `1` at seventh × 16 + triad where the seventh chord is the triad with a seventh. */
const SEVENTH_OF = new Uint8Array(256);
for (const [seventh, triad] of [
  [TYPE.M7, TYPE.M],
  [TYPE.Mmaj7, TYPE.M],
  [TYPE.m7, TYPE.m],
  [TYPE.mmaj7, TYPE.m],
  [TYPE.ø7, TYPE.o],
  [TYPE.o7, TYPE.o],
])
  SEVENTH_OF[seventh! * 16 + triad!] = 1;
const isSeventhOf = (seventh: number, triad: number): boolean => SEVENTH_OF[seventh * 16 + triad] === 1;

/** How a chord stands to the one before: index into RELATIONS. */
export function relation(a: ChordNumber, b: ChordNumber): number {
  const distance = b.root - a.root;
  if (distance === 0) {
    if (a.type === b.type) return a.inversion === b.inversion ? SAME : TURNED;
    if (isSeventhOf(b.type, a.type)) return ADDED;
    return isSeventhOf(a.type, b.type) ? DROPPED : QUALITY;
  }
  // Steps of the scale from root to root, by spelling: a fifth is four steps, on the line of fifths one place.
  const steps = (((4 * distance) % 7) + 7) % 7;
  if (steps === 4) return Math.abs(distance) > 5 ? TRITONE : FIFTH_UP;
  if (steps === 3) return Math.abs(distance) > 5 ? TRITONE : FIFTH_DOWN;
  if (steps === 1) return STEP_UP;
  return steps === 6 ? STEP_DOWN : steps === 0 ? QUALITY : THIRD;
}

/** How the metre stands where a chord begins: 0 weak, 1 a beat, 2 a strong beat. */
export function placeClass(grid: Grid, at: number): number {
  const strength = grid.strength[at]!;
  return strength >= 3 ? 2 : strength === 2 ? 1 : 0;
}

/** The place of a chord's bass on the line of fifths. */
export function bassPlace({ root, type, inversion }: ChordNumber): number {
  return root + CHORD_TYPES[type]!.offsets[inversion]!;
}

/** Index of two notes, told from the tonic, in a table of mode, note and note. */
function notePair(mode: number, from: number, to: number): number {
  return (mode * NOTES + noteIndex(from)) * NOTES + noteIndex(to);
}

/** Index of a note told from the tonic in fifths, clipped to the range the tables know. */
export function noteIndex(distance: number): number {
  const index = distance - LOWEST_NOTE;
  return index < 0 ? 0 : index >= NOTES ? NOTES - 1 : index;
}

/** How long a key has lasted and what it has shown of itself. */
export interface Standing {
  /** In harmonies, 1 to 5. */
  readonly age: number;
  /** What has confirmed it: 0 nothing, 1 dominant to tonic, 2 a phrase end. */
  readonly confirmed: number;
  /** 1 when a chord was heard besides tonic and dominant. */
  readonly broad: number;
}

/** Index into KEY_LEFT of leaving a key that stands so; `place` is an index into PLACES. */
export function leaving(place: number, { age, confirmed, broad }: Standing): number {
  return KEY_LEFT + ((place * AGES.length + age - 1) * CONFIRMED.length + confirmed) * 2 + broad;
}

/** The standing of a key that has just been entered with a chord. */
export function newStanding(b: ChordNumber, kb: KeyNumber): Standing {
  return { age: 1, confirmed: 0, broad: isTonic(b, kb) || isDominant(b, kb) ? 0 : 1 };
}

function isDominant({ root, type }: ChordNumber, { tonic }: KeyNumber): boolean {
  return (
    (root - tonic === 1 && (type === TYPE.M || type === TYPE.M7)) ||
    (root - tonic === 5 && (type === TYPE.o || type === TYPE.o7 || type === TYPE.ø7))
  );
}

function isTonic({ root, type }: ChordNumber, { tonic }: KeyNumber): boolean {
  return root === tonic && (type === TYPE.M || type === TYPE.m);
}

/** A chord in a key. */
export interface Placed {
  readonly chord: ChordNumber;
  readonly key: KeyNumber;
}

/** The standing of the key after the step at atom `at` from a chord in a key that stood so. */
export function standingAfter(
  grid: Grid,
  at: number,
  from: Placed & { readonly standing: Standing },
  { chord, key }: Placed,
): Standing {
  return sameKeys(from.key, key) ? standingInKey(grid, at, from, chord, key) : newStanding(chord, key);
}

function sameKeys(a: KeyNumber, b: KeyNumber): boolean {
  return a.mode === b.mode && a.tonic === b.tonic;
}

/** What a step within a key tells of it. */
export interface StepWithin {
  readonly phraseStart: boolean;
  /** From dominant to tonic. */
  readonly confirms: boolean;
  /** To a chord that is neither. */
  readonly broadens: boolean;
}

/** What the step to a chord tells of the key it stays in; `from` is the chord before. */
export function stepWithin(
  grid: Grid,
  at: number,
  from: ChordNumber,
  chord: ChordNumber,
  key: KeyNumber,
): StepWithin {
  const tonic = isTonic(chord, key);
  return {
    phraseStart: grid.phraseStart[at] === 1,
    confirms: tonic && isDominant(from, key),
    broadens: !(tonic || isDominant(chord, key)),
  };
}

/** The standing of a key after one more step within it. */
export function stoodOn(before: Standing, { phraseStart, confirms, broadens }: StepWithin): Standing {
  const age = Math.min(before.age + 1, AGES.length);
  const broad = before.broad === 1 || broadens ? 1 : 0;
  if (before.confirmed === 2 || phraseStart) return { age, confirmed: 2, broad };
  return { age, confirmed: before.confirmed === 1 || confirms ? 1 : 0, broad };
}

/** The same, where the key has not changed. */
export function standingInKey(
  grid: Grid,
  at: number,
  from: { readonly chord: ChordNumber; readonly standing: Standing },
  chord: ChordNumber,
  key: KeyNumber,
): Standing {
  return stoodOn(from.standing, stepWithin(grid, at, from.chord, chord, key));
}

/** Lists the features of a chord standing in a key, for the segment from atom `from` to before `to`. */
export function placedFeatures(
  grid: Grid,
  { from, to }: { readonly from: number; readonly to: number },
  { chord, key }: Placed,
  list: FeatureList,
): void {
  const { mode } = key;
  const v = vocabularyIndex(mode, chord.root - key.tonic, chord.type);
  const row = mode * VOCABULARY + v;
  const out = list.indices;
  let o = list.count;
  out[o++] = CHORD_IN_KEY + row * 4 + chord.inversion;
  out[o++] = CHORD_PLACE + row * 3 + placeClass(grid, from);
  if (from === 0) out[o++] = FIRST_CHORD + row;
  if (to === grid.atoms) out[o++] = LAST_CHORD + row;
  if (grid.phraseEnd[to - 1]) out[o++] = PHRASE_CHORD + row;
  const few = grid.few[from]!;
  if (few >= 0) out[o++] = FEW_CHORD + (few * 2 * VOCABULARY + row) * 4 + chord.inversion;
  list.count = o;
}

/** Index into KEY_NEED; `old` and `fresh` tell whether notes contradict the keys, `place` is an index into PLACES. */
export function needOf(place: number, old: number, fresh: number): number {
  return (place * 3 + old) * 3 + fresh;
}

/** Lists the features of a change of key at an atom, whatever the keys; for `need` see {@link needOf}. */
export function changeFeatures(grid: Grid, at: number, need: number, list: FeatureList): void {
  const out = list.indices;
  const n = list.count;
  out[n] = KEY_STRENGTH + grid.strength[at]!;
  out[n + 1] = KEY_SINCE + grid.since[at]!;
  out[n + 2] = KEY_UNTIL + grid.left[at]!;
  out[n + 3] = KEY_NEED + need;
  list.count = n + 4;
}

/** Lists the features of the step at atom `at` from a chord in a key, which stands so, to the next. */
export function stepFeatures(
  grid: Grid,
  at: number,
  from: Placed & { readonly standing: Standing },
  to: Placed,
  list: FeatureList,
): void {
  progressionFeatures(grid, at, from.chord, to, list);
  if (sameKeys(from.key, to.key)) return;
  moveFeatures(grid, at, from, to, list);
  list.indices[list.count++] = leaving(changePlace(grid, at), from.standing);
}

/** Those of them that hold whatever the key before: the progression as the key it leads to hears it. */
export function progressionFeatures(
  grid: Grid,
  at: number,
  a: ChordNumber,
  { chord: b, key }: Placed,
  list: FeatureList,
): void {
  const newPhrase = grid.phraseStart[at] === 1;
  const out = list.indices;
  const m = key.mode;
  const va = vocabularyIndex(m, a.root - key.tonic, a.type);
  const vb = vocabularyIndex(m, b.root - key.tonic, b.type);
  const pair = (m * VOCABULARY + va) * VOCABULARY + vb;
  if (newPhrase) {
    out[list.count++] = NEW_PHRASE + pair;
    return;
  }
  out[list.count++] = RELATION + relation(a, b) * 5 + grid.strength[at]!;
  out[list.count++] = PROGRESSION + pair;
  out[list.count++] =
    TURNED_PROGRESSION + ((m * VOCABULARY + va) * 4 + a.inversion) * VOCABULARY * 4 + vb * 4 + b.inversion;
  out[list.count++] = ROOT_STEP + notePair(m, a.root - key.tonic, b.root - key.tonic);
  out[list.count++] = BASS_STEP + notePair(m, bassPlace(a) - key.tonic, bassPlace(b) - key.tonic);
  if (grid.goal[at] === 1) out[list.count++] = CADENCE + pair;
}

/** Where a change of key stands: index into PLACES. */
export function changePlace(grid: Grid, at: number): number {
  return grid.phraseStart[at] === 1 ? 0 : grid.goal[at] === 1 ? 2 : 1;
}

/** The feature of a change from one key to another at such a place. */
export function keyChange(place: number, from: KeyNumber, to: KeyNumber): number {
  const pair = (place * 2 + from.mode) * 2 + to.mode;
  return KEY_CHANGE + pair * (2 * KEY_DISTANCE + 1) + clippedDistance(to.tonic - from.tonic);
}

/** Lists the features of a change of key at atom `at`, all but how the key that is left has stood. */
function moveFeatures(
  grid: Grid,
  at: number,
  { chord: a, key: ka }: Placed,
  { chord: b, key: kb }: Placed,
  list: FeatureList,
): void {
  const out = list.indices;
  const m = kb.mode;
  const place = changePlace(grid, at);
  out[list.count++] = keyChange(place, ka, kb);
  const against = (key: KeyNumber) => contradiction(grid, at, scaleSet(key));
  changeFeatures(grid, at, needOf(place, against(ka), against(kb)), list);
  out[list.count++] = KEY_ENTRY + m * VOCABULARY + vocabularyIndex(m, b.root - kb.tonic, b.type);
  out[list.count++] = KEY_PIVOT + m * VOCABULARY + vocabularyIndex(m, a.root - kb.tonic, a.type);
  out[list.count++] = KEY_EXIT + ka.mode * VOCABULARY + vocabularyIndex(ka.mode, b.root - ka.tonic, b.type);
}
