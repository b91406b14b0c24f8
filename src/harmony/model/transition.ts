/** Features of going from one chord in a key to the next. */
import { TYPE } from '../chordTypes.ts';
import type { Grid } from './grid.ts';
import type { KeyNumber } from './keys.ts';
import {
  AGES,
  CADENCE,
  CHORD_IN_KEY,
  CHORD_PLACE,
  CONFIRMED,
  FIRST_CHORD,
  KEY_CHANGE,
  KEY_DISTANCE,
  KEY_ENTRY,
  KEY_EXIT,
  KEY_LEFT,
  KEY_PIVOT,
  LAST_CHORD,
  NEW_PHRASE,
  PHRASE_CHORD,
  PROGRESSION,
  RELATION,
  RELATIONS,
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

const isSeventhOf = (seventh: number, triad: number): boolean =>
  (triad === TYPE.M && (seventh === TYPE.M7 || seventh === TYPE.Mmaj7)) ||
  (triad === TYPE.m && (seventh === TYPE.m7 || seventh === TYPE.mmaj7)) ||
  (triad === TYPE.o && (seventh === TYPE.ø7 || seventh === TYPE.o7));

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

/** How long a key has lasted, in harmonies (1 to 5), and what has confirmed it: 0 nothing, 1 dominant to tonic, 2 a phrase end. */
export interface Standing {
  readonly age: number;
  readonly confirmed: number;
}

export const NEW_KEY: Standing = { age: 1, confirmed: 0 };

/** The standing of `kb` after the step at atom `at` from chord `a` in `ka`, where `ka` stood as `before`. */
export function standingAfter(
  grid: Grid,
  at: number,
  before: Standing,
  a: ChordNumber,
  ka: KeyNumber,
  b: ChordNumber,
  kb: KeyNumber,
): Standing {
  if (ka.mode !== kb.mode || ka.tonic !== kb.tonic) return NEW_KEY;
  const age = Math.min(before.age + 1, AGES.length);
  if (before.confirmed === 2 || grid.phraseStart[at] === 1) return { age, confirmed: 2 };
  const from = a.root - kb.tonic;
  const dominant =
    (from === 1 && (a.type === TYPE.M || a.type === TYPE.M7)) ||
    (from === 5 && (a.type === TYPE.o || a.type === TYPE.o7 || a.type === TYPE.ø7));
  const tonic = b.root === kb.tonic && (b.type === TYPE.M || b.type === TYPE.m);
  return { age, confirmed: before.confirmed === 1 || (dominant && tonic) ? 1 : 0 };
}

/** Features of a chord standing in a key, for the segment from atom `from` to before `to`. */
export function placedFeatures(
  grid: Grid,
  from: number,
  to: number,
  chord: ChordNumber,
  key: KeyNumber,
  out: Int32Array,
  n: number,
): number {
  const { mode } = key;
  const v = vocabularyIndex(mode, chord.root - key.tonic, chord.type);
  const row = mode * VOCABULARY + v;
  let o = n;
  out[o++] = CHORD_IN_KEY + row * 4 + chord.inversion;
  out[o++] = CHORD_PLACE + row * 3 + placeClass(grid, from);
  if (from === 0) out[o++] = FIRST_CHORD + row;
  if (to === grid.atoms) out[o++] = LAST_CHORD + row;
  if (grid.phraseEnd[to - 1]) out[o++] = PHRASE_CHORD + row;
  return o;
}

/** Features of the step at atom `at` from chord `a` in key `ka`, which stands so, to chord `b` in key `kb`. */
export function stepFeatures(
  grid: Grid,
  at: number,
  a: ChordNumber,
  ka: KeyNumber,
  standing: Standing,
  b: ChordNumber,
  kb: KeyNumber,
  out: Int32Array,
  n: number,
): number {
  let o = n;
  const newPhrase = grid.phraseStart[at] === 1;
  const goal = grid.goal[at] === 1;
  if (!newPhrase) out[o++] = RELATION + relation(a, b) * 5 + grid.strength[at]!;
  const m = kb.mode;
  const va = vocabularyIndex(m, a.root - kb.tonic, a.type);
  const vb = vocabularyIndex(m, b.root - kb.tonic, b.type);
  const pair = (m * VOCABULARY + va) * VOCABULARY + vb;
  if (newPhrase) out[o++] = NEW_PHRASE + pair;
  else {
    out[o++] = PROGRESSION + pair;
    out[o++] =
      TURNED_PROGRESSION + ((m * VOCABULARY + va) * 4 + a.inversion) * VOCABULARY * 4 + vb * 4 + b.inversion;
    if (goal) out[o++] = CADENCE + pair;
  }
  if (ka.mode === m && ka.tonic === kb.tonic) return o;
  const distance = Math.max(-KEY_DISTANCE, Math.min(KEY_DISTANCE, kb.tonic - ka.tonic)) + KEY_DISTANCE;
  const place = newPhrase ? 0 : goal ? 2 : 1;
  out[o++] = KEY_CHANGE + ((place * 2 + ka.mode) * 2 + m) * (2 * KEY_DISTANCE + 1) + distance;
  out[o++] = KEY_LEFT + (place * AGES.length + standing.age - 1) * CONFIRMED.length + standing.confirmed;
  out[o++] = KEY_ENTRY + m * VOCABULARY + vb;
  out[o++] = KEY_PIVOT + m * VOCABULARY + va;
  out[o++] = KEY_EXIT + ka.mode * VOCABULARY + vocabularyIndex(ka.mode, b.root - ka.tonic, b.type);
  return o;
}
