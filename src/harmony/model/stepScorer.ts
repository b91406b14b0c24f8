/**
 * Finds the best way from the ends at a boundary to a chord in a key: the same sums as `stepFeatures` gives, taken
 * apart so that little is left for the innermost loop.
 */
import type { Grid } from './grid.ts';
import type { KeyNumber } from './keys.ts';
import {
  AGES,
  CADENCE,
  CONFIRMED,
  KEY_CHANGE,
  KEY_DISTANCE,
  KEY_ENTRY,
  KEY_EXIT,
  KEY_LEFT,
  KEY_PIVOT,
  NEW_PHRASE,
  PROGRESSION,
  RELATION,
  TURNED_PROGRESSION,
} from './layout.ts';
import type { End } from './search.ts';
import { type ChordNumber, relation } from './transition.ts';
import { VOCABULARY, vocabularyIndex } from './vocabulary.ts';

export interface StepScorer {
  /** Takes a boundary and the ends that meet it. */
  readonly arriveAt: (at: number, before: readonly End[]) => void;
  /** Takes a chord that may begin there. */
  readonly tryChord: (chord: ChordNumber) => void;
  /** The best end to come from into the chord in a key, where it is chord `v` of the vocabulary. */
  readonly best: (key: number, v: number) => End | undefined;
  /** The score of the last answer of `best`, the end's own score included; 0 at the beginning. */
  readonly score: () => number;
}

const ROOM = 64;

export function stepScorer(grid: Grid, weights: Float64Array, keys: readonly KeyNumber[]): StepScorer {
  const keyCount = keys.length;
  /** By end and key: the end's score, with what a change to that key costs whatever the chord. */
  const base = new Float64Array(ROOM * keyCount);
  /** By end and key: where the rows of the end's chord begin in the progression tables. */
  const row = new Int32Array(ROOM * keyCount);
  const turnedRow = new Int32Array(ROOM * keyCount);
  const fromKey = new Int16Array(ROOM);
  const related = new Float64Array(ROOM);
  const exits = new Float64Array(keyCount);
  let before: readonly End[] = [];
  let progression = 0;
  let newPhrase = false;
  let goal = false;
  let strength = 0;
  let chord: ChordNumber = { root: 0, type: 0, inversion: 0 };
  let last = 0;

  const arriveAt = (at: number, ends: readonly End[]): void => {
    before = ends;
    newPhrase = grid.phraseStart[at] === 1;
    goal = grid.goal[at] === 1;
    strength = grid.strength[at]!;
    progression = newPhrase ? NEW_PHRASE : PROGRESSION;
    const place = newPhrase ? 0 : goal ? 2 : 1;
    for (let e = 0; e < ends.length; e++) {
      const { start, score } = ends[e]!;
      const { standing } = start;
      const { root, type, inversion } = start.chord;
      const own = keys[start.key]!;
      fromKey[e] = start.key;
      for (let k = 0; k < keyCount; k++) {
        const { mode, tonic } = keys[k]!;
        const v = vocabularyIndex(mode, root - tonic, type);
        const i = e * keyCount + k;
        row[i] = (mode * VOCABULARY + v) * VOCABULARY;
        turnedRow[i] = TURNED_PROGRESSION + ((mode * VOCABULARY + v) * 4 + inversion) * VOCABULARY * 4;
        let value = score;
        if (k !== start.key) {
          const distance = Math.max(-KEY_DISTANCE, Math.min(KEY_DISTANCE, tonic - own.tonic)) + KEY_DISTANCE;
          value +=
            weights[KEY_CHANGE + ((place * 2 + own.mode) * 2 + mode) * (2 * KEY_DISTANCE + 1) + distance]! +
            weights[KEY_PIVOT + mode * VOCABULARY + v]! +
            weights[
              KEY_LEFT + (place * AGES.length + standing.age - 1) * CONFIRMED.length + standing.confirmed
            ]!;
        }
        base[i] = value;
      }
    }
  };

  const tryChord = (tried: ChordNumber): void => {
    chord = tried;
    for (let e = 0; e < before.length; e++)
      related[e] = newPhrase
        ? 0
        : weights[RELATION + relation(before[e]!.start.chord, tried) * 5 + strength]!;
    for (let k = 0; k < keyCount; k++) {
      const { mode, tonic } = keys[k]!;
      exits[k] =
        weights[KEY_EXIT + mode * VOCABULARY + vocabularyIndex(mode, tried.root - tonic, tried.type)]!;
    }
  };

  const best = (key: number, v: number): End | undefined => {
    last = 0;
    if (before.length === 0) return undefined;
    const entry = weights[KEY_ENTRY + keys[key]!.mode * VOCABULARY + v]!;
    const turned = v * 4 + chord.inversion;
    let top = Number.NEGATIVE_INFINITY;
    let from = 0;
    for (let e = 0; e < before.length; e++) {
      const i = e * keyCount + key;
      const pair = row[i]! + v;
      let score = base[i]! + related[e]! + weights[progression + pair]!;
      if (!newPhrase) {
        score += weights[turnedRow[i]! + turned]!;
        if (goal) score += weights[CADENCE + pair]!;
      }
      const own = fromKey[e]!;
      if (own !== key) score += entry + exits[own]!;
      if (score > top) {
        top = score;
        from = e;
      }
    }
    last = top;
    return before[from];
  };

  return { arriveAt, tryChord, best, score: () => last };
}
