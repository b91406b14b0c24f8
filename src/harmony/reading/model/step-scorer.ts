/**
 * Finds the best way from the ends at a boundary to a chord in a key: the same sums as `stepFeatures` gives, taken
 * apart so that little is left for the innermost loop.
 */
import type { Grid } from './grid.ts';
import { contradiction, type KeyNumber, scaleSet } from './keys.ts';
import {
  BASS_STEP,
  CADENCE,
  KEY_CHANGE,
  KEY_DISTANCE,
  KEY_ENTRY,
  KEY_EXIT,
  KEY_PIVOT,
  NEW_PHRASE,
  NOTES,
  PROGRESSION,
  RELATION,
  ROOT_STEP,
  TURNED_PROGRESSION,
} from './layout.ts';
import type { End } from './path.ts';
import { bassPlace, type ChordNumber, changeFeatures, leaving, noteIndex, relation } from './transition.ts';
import { VOCABULARY, vocabularyIndex } from './vocabulary.ts';

export interface StepScorer {
  /** Takes a boundary and the ends that meet it. */
  readonly arriveAt: (at: number, before: readonly End[]) => void;
  /** Takes a chord that may begin there. */
  readonly tryChord: (chord: ChordNumber) => void;
  /** Finds the best ends to come from into the chord in a key, where it is chord `v` of the vocabulary. */
  readonly best: (key: number, v: number) => void;
  /** Of the ends in the same key; undefined if there is none. */
  readonly stay: () => End | undefined;
  /** Of the ends in another key. */
  readonly move: () => End | undefined;
  /** The scores of both, the ends' own scores included. */
  readonly scores: { readonly stay: number; readonly move: number };
}

const ROOM = 64;

export function stepScorer(grid: Grid, weights: Float64Array, keys: readonly KeyNumber[]): StepScorer {
  // Imports are read once: loaders that compile modules as they go make every later read a call.
  const [width, distances] = [VOCABULARY, KEY_DISTANCE];
  const [within, intoPhrase, turnedFrom, cadence] = [PROGRESSION, NEW_PHRASE, TURNED_PROGRESSION, CADENCE];
  const [changed, entered, prepared, leftFor] = [KEY_CHANGE, KEY_ENTRY, KEY_PIVOT, KEY_EXIT];
  const [rootFrom, bassFrom, notes] = [ROOT_STEP, BASS_STEP, NOTES];
  const [indexOf, relationOf, relationFrom] = [vocabularyIndex, relation, RELATION];
  const keyCount = keys.length;
  /** By end and key: the end's score, with what a change to that key costs whatever the chord. */
  const base = new Float64Array(ROOM * keyCount);
  /** By end and key: where the rows of the end's chord begin in the progression tables. */
  const row = new Int32Array(ROOM * keyCount);
  const turnedRow = new Int32Array(ROOM * keyCount);
  const rootRow = new Int32Array(ROOM * keyCount);
  const bassRow = new Int32Array(ROOM * keyCount);
  const fromKey = new Int16Array(ROOM);
  const scales = keys.map(scaleSet);
  const against = new Int8Array(keyCount);
  const changeBuffer = new Int32Array(4);
  const related = new Float64Array(ROOM);
  const exits = new Float64Array(keyCount);
  let before: readonly End[] = [];
  let progression = 0;
  let newPhrase = false;
  let goal = false;
  let strength = 0;
  let chord: ChordNumber = { root: 0, type: 0, inversion: 0 };
  let stayed: End | undefined;
  let moved: End | undefined;
  const scores = { stay: 0, move: 0 };

  const arriveAt = (at: number, ends: readonly End[]): void => {
    before = ends;
    newPhrase = grid.phraseStart[at] === 1;
    goal = grid.goal[at] === 1;
    strength = grid.strength[at]!;
    progression = newPhrase ? intoPhrase : within;
    const place = newPhrase ? 0 : goal ? 2 : 1;
    for (let k = 0; k < keyCount; k++) against[k] = contradiction(grid, at, scales[k]!);
    for (let e = 0; e < ends.length; e++) {
      const { start, score } = ends[e]!;
      const { standing } = start;
      const { root, type, inversion } = start.chord;
      const own = keys[start.key]!;
      const bass = bassPlace(start.chord);
      fromKey[e] = start.key;
      for (let k = 0; k < keyCount; k++) {
        const { mode, tonic } = keys[k]!;
        const v = indexOf(mode, root - tonic, type);
        const i = e * keyCount + k;
        row[i] = (mode * width + v) * width;
        turnedRow[i] = turnedFrom + ((mode * width + v) * 4 + inversion) * width * 4;
        rootRow[i] = rootFrom + (mode * notes + noteIndex(root - tonic)) * notes;
        bassRow[i] = bassFrom + (mode * notes + noteIndex(bass - tonic)) * notes;
        let value = score;
        if (k !== start.key) {
          const distance = Math.max(-distances, Math.min(distances, tonic - own.tonic)) + distances;
          changeFeatures(grid, at, place, against[start.key]!, against[k]!, changeBuffer, 0);
          for (let c = 0; c < 4; c++) value += weights[changeBuffer[c]!]!;
          value +=
            weights[changed + ((place * 2 + own.mode) * 2 + mode) * (2 * distances + 1) + distance]! +
            weights[prepared + mode * width + v]! +
            weights[leaving(place, standing)]!;
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
        : weights[relationFrom + relationOf(before[e]!.start.chord, tried) * 5 + strength]!;
    for (let k = 0; k < keyCount; k++) {
      const { mode, tonic } = keys[k]!;
      exits[k] = weights[leftFor + mode * width + indexOf(mode, tried.root - tonic, tried.type)]!;
    }
  };

  const best = (key: number, v: number): void => {
    stayed = undefined;
    moved = undefined;
    if (before.length === 0) return;
    const { mode, tonic } = keys[key]!;
    const entry = weights[entered + mode * width + v]!;
    const turned = v * 4 + chord.inversion;
    const root = noteIndex(chord.root - tonic);
    const bass = noteIndex(bassPlace(chord) - tonic);
    let stay = Number.NEGATIVE_INFINITY;
    let move = Number.NEGATIVE_INFINITY;
    let stayFrom = -1;
    let moveFrom = -1;
    for (let e = 0; e < before.length; e++) {
      const i = e * keyCount + key;
      const pair = row[i]! + v;
      let score = base[i]! + related[e]! + weights[progression + pair]!;
      if (!newPhrase) {
        score +=
          weights[turnedRow[i]! + turned]! + weights[rootRow[i]! + root]! + weights[bassRow[i]! + bass]!;
        if (goal) score += weights[cadence + pair]!;
      }
      const own = fromKey[e]!;
      if (own === key) {
        if (score > stay) {
          stay = score;
          stayFrom = e;
        }
      } else {
        score += entry + exits[own]!;
        if (score > move) {
          move = score;
          moveFrom = e;
        }
      }
    }
    stayed = before[stayFrom];
    moved = before[moveFrom];
    scores.stay = stay;
    scores.move = move;
  };

  return {
    arriveAt,
    tryChord,
    best,
    stay: () => stayed,
    move: () => moved,
    scores,
  };
}
