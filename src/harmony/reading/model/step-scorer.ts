/**
 * Finds the best way from the ends at a boundary to a chord in a key: the same sums as `stepFeatures` gives, taken
 * apart so that little is left for the innermost loop. `tests/harmony/scorers.test.ts` holds the two together.
 */
import { featureList } from './features.ts';
import type { Grid } from './grid.ts';
import { contradiction, type KeyNumber, scaleSet } from './keys.ts';
import {
  BASS_STEP,
  CADENCE,
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
import {
  bassPlace,
  type ChordNumber,
  changeFeatures,
  changePlace,
  keyChange,
  leaving,
  needOf,
  noteIndex,
  relation,
} from './transition.ts';
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

/** Ends a boundary may have, at most. */
const ROOM = 64;

/** Makes a scorer for one grid; what it has in hand (a boundary, a chord) is state of its own, reused from call to call. */
export function stepScorer(grid: Grid, weights: Float64Array, keys: readonly KeyNumber[]): StepScorer {
  return new FastSteps(grid, weights, keys);
}

// Imports are read once: loaders that compile modules as they go make every later read a call.
const [width, notes] = [VOCABULARY, NOTES];
const [within, intoPhrase, turnedFrom, cadence] = [PROGRESSION, NEW_PHRASE, TURNED_PROGRESSION, CADENCE];
const [entered, prepared, leftFor] = [KEY_ENTRY, KEY_PIVOT, KEY_EXIT];
const [rootFrom, bassFrom, relationFrom] = [ROOT_STEP, BASS_STEP, RELATION];
const [indexOf, relationOf] = [vocabularyIndex, relation];

class FastSteps implements StepScorer {
  readonly scores = { stay: 0, move: 0 };
  /** By end and key: the end's score, with what a change to that key costs whatever the chord. */
  private readonly base: Float64Array;
  /** By end and key: where the rows of the end's chord begin in the progression tables. */
  private readonly row: Int32Array;
  private readonly turnedRow: Int32Array;
  private readonly rootRow: Int32Array;
  private readonly bassRow: Int32Array;
  private readonly fromKey = new Int16Array(ROOM);
  private readonly scales: readonly (readonly [number, number])[];
  /** By key: whether the notes at the boundary contradict it. */
  private readonly against: Int8Array;
  private readonly changeList = featureList(4);
  /** By end: what the relation of its chord to the one on trial is worth. */
  private readonly related = new Float64Array(ROOM);
  /** By key: what leaving it for the chord on trial is worth. */
  private readonly exits: Float64Array;
  private before: readonly End[] = [];
  private newPhrase = false;
  private goal = false;
  private strength = 0;
  private chord: ChordNumber = { root: 0, type: 0, inversion: 0 };
  private stayed: End | undefined;
  private moved: End | undefined;

  constructor(
    private readonly grid: Grid,
    private readonly weights: Float64Array,
    private readonly keys: readonly KeyNumber[],
  ) {
    const size = ROOM * keys.length;
    this.base = new Float64Array(size);
    this.row = new Int32Array(size);
    this.turnedRow = new Int32Array(size);
    this.rootRow = new Int32Array(size);
    this.bassRow = new Int32Array(size);
    this.scales = keys.map(scaleSet);
    this.against = new Int8Array(keys.length);
    this.exits = new Float64Array(keys.length);
  }

  arriveAt(at: number, ends: readonly End[]): void {
    const { grid, keys } = this;
    this.before = ends;
    this.newPhrase = grid.phraseStart[at] === 1;
    this.goal = grid.goal[at] === 1;
    this.strength = grid.strength[at]!;
    for (let k = 0; k < keys.length; k++) this.against[k] = contradiction(grid, at, this.scales[k]!);
    for (let e = 0; e < ends.length; e++) {
      const { start, score } = ends[e]!;
      this.fromKey[e] = start.key;
      this.findRows(e, start.chord);
      const i = e * keys.length;
      for (let k = 0; k < keys.length; k++)
        this.base[i + k] = k === start.key ? score : this.changed(ends[e]!, k, at);
    }
  }

  /** Where the tables' rows for an end's chord begin, in every key. */
  private findRows(end: number, chord: ChordNumber): void {
    const { keys } = this;
    const { root, type, inversion } = chord;
    const bass = bassPlace(chord);
    for (let k = 0; k < keys.length; k++) {
      const { mode, tonic } = keys[k]!;
      const v = indexOf(mode, root - tonic, type);
      const i = end * keys.length + k;
      this.row[i] = (mode * width + v) * width;
      this.turnedRow[i] = turnedFrom + ((mode * width + v) * 4 + inversion) * width * 4;
      this.rootRow[i] = rootFrom + (mode * notes + noteIndex(root - tonic)) * notes;
      this.bassRow[i] = bassFrom + (mode * notes + noteIndex(bass - tonic)) * notes;
    }
  }

  /** An end's score with what a change to another key is worth, whatever the chord that follows. */
  private changed({ start, score }: End, key: number, at: number): number {
    const { key: left, chord, standing } = start;
    const { grid, weights, keys, against, changeList } = this;
    const { mode, tonic } = keys[key]!;
    const place = changePlace(grid, at);
    const v = indexOf(mode, chord.root - tonic, chord.type);
    changeList.count = 0;
    changeFeatures(grid, at, needOf(place, against[left]!, against[key]!), changeList);
    let value = score;
    for (let c = 0; c < changeList.count; c++) value += weights[changeList.indices[c]!]!;
    return (
      value +
      weights[keyChange(place, keys[left]!, keys[key]!)]! +
      weights[prepared + mode * width + v]! +
      weights[leaving(place, standing)]!
    );
  }

  tryChord(tried: ChordNumber): void {
    const { before, keys, weights, newPhrase, strength } = this;
    this.chord = tried;
    for (let e = 0; e < before.length; e++)
      this.related[e] = newPhrase
        ? 0
        : weights[relationFrom + relationOf(before[e]!.start.chord, tried) * 5 + strength]!;
    for (let k = 0; k < keys.length; k++) {
      const { mode, tonic } = keys[k]!;
      this.exits[k] = weights[leftFor + mode * width + indexOf(mode, tried.root - tonic, tried.type)]!;
    }
  }

  best(key: number, v: number): void {
    const { before, keys, weights, chord, newPhrase, goal, base, row, related, exits, fromKey } = this;
    const { turnedRow, rootRow, bassRow } = this;
    this.stayed = undefined;
    this.moved = undefined;
    if (before.length === 0) return;
    const keyCount = keys.length;
    const progression = newPhrase ? intoPhrase : within;
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
    this.stayed = before[stayFrom];
    this.moved = before[moveFrom];
    this.scores.stay = stay;
    this.scores.move = move;
  }

  stay(): End | undefined {
    return this.stayed;
  }

  move(): End | undefined {
    return this.moved;
  }
}
