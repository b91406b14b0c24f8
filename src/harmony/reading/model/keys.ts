/** Which keys a phrase may be in, and what each atom says for a key whatever the chord. */
import { type Grid, placeBit } from './grid.ts';
import {
  HOME_BASS,
  KEY_DISTANCE,
  LAST_KEY,
  LOWEST_NOTE,
  NOTE_IN_KEY,
  NOTE_IN_PHRASE,
  NOTES,
  PHRASE_BASS,
  PHRASE_TOP,
  SIGNATURE,
  STATED_MODE,
} from './layout.ts';

/** A key in numbers: place of the tonic on the line of fifths, and 0 major or 1 minor. */
export interface KeyNumber {
  readonly tonic: number;
  readonly mode: number;
}

/** The index of a key among others; -1 where it is none of them. */
export function keyIndex(keys: readonly KeyNumber[], { tonic, mode }: KeyNumber): number {
  return keys.findIndex((key) => key.tonic === tonic && key.mode === mode);
}

const FARTHEST = 6;
/** Keys kept for each phrase. */
const KEYS_KEPT = 7;

/** Notes of the scale in fifths from the tonic; in minor both forms of 6 and 7. */
const IN_SCALE: readonly ReadonlySet<number>[] = [
  new Set([-1, 0, 1, 2, 3, 4, 5]),
  new Set([-4, -3, -2, -1, 0, 1, 2, 3, 5]),
];

/** A set of places on the line of fifths, both halves ({@link placeBit}). */
type PlaceSet = readonly [number, number];

/** The scales asked for so far, by mode and tonic. */
const scaleSets: readonly Map<number, PlaceSet>[] = [new Map(), new Map()];

/** The key's scale as a set of places, both halves; in minor with both forms of 6 and 7. */
export function scaleSet({ tonic, mode }: KeyNumber): PlaceSet {
  const known = scaleSets[mode]!.get(tonic);
  if (known !== undefined) return known;
  const set: [number, number] = [0, 0];
  for (const distance of IN_SCALE[mode]!) {
    const [half, bit] = placeBit(tonic + distance);
    set[half]! |= bit;
  }
  scaleSets[mode]!.set(tonic, set);
  return set;
}

/** Whether foreign notes come: index into CONTRADICTED. */
export function contradiction(grid: Grid, atom: number, scale: readonly [number, number]): number {
  if ((grid.soon[0][atom]! & ~scale[0]) !== 0 || (grid.soon[1][atom]! & ~scale[1]) !== 0) return 2;
  return (grid.rest[0][atom]! & ~scale[0]) !== 0 || (grid.rest[1][atom]! & ~scale[1]) !== 0 ? 1 : 0;
}

/** What a phrase holds: how long each place on the line of fifths sounds, and its last outer notes. */
export interface PhraseNotes {
  readonly total: number;
  /** Parallel: places and the beats each sounds. */
  readonly places: readonly number[];
  readonly lengths: readonly number[];
  readonly lastBass: number | undefined;
  readonly lastTop: number | undefined;
  readonly signature: number;
}

/** One entry for each phrase number in the grid; phrases without atoms are empty. */
export function phraseNotes(grid: Grid): PhraseNotes[] {
  const count = grid.atoms === 0 ? 0 : grid.phrase[grid.atoms - 1]! + 1;
  const lengths = Array.from({ length: count }, () => new Map<number, number>());
  const lastBass: (number | undefined)[] = [];
  const lastTop: (number | undefined)[] = [];
  const signature: number[] = [];
  for (let a = 0; a < grid.atoms; a++) {
    const phrase = grid.phrase[a]!;
    signature[phrase] = grid.signature[a]!;
    forEachTone(grid, a, (place, length, voice) => {
      const map = lengths[phrase]!;
      map.set(place, (map.get(place) ?? 0) + length);
      if (grid.phraseEnd[a] === 0) return;
      if (lastTop[phrase] === undefined) lastTop[phrase] = place;
      if (voice > 0) lastBass[phrase] = place;
    });
  }
  return lengths.map((map, i) => ({
    total: [...map.values()].reduce((sum, length) => sum + length, 0),
    places: [...map.keys()],
    lengths: [...map.values()],
    lastBass: lastBass[i],
    lastTop: lastTop[i],
    signature: signature[i] ?? 0,
  }));
}

/** Calls with place, beats within the atom, and voice number for each tone of an atom. */
function forEachTone(
  grid: Grid,
  atom: number,
  visit: (place: number, length: number, voice: number) => void,
): void {
  const at = grid.at[atom]!;
  const until = grid.until[atom]!;
  for (let v = 0; v < 4; v++) {
    const voice = grid.voices[v]!;
    for (let t = grid.first[v]![atom]!; t < voice.at.length && voice.at[t]! < until; t++) {
      const length = Math.min(voice.until[t]!, until) - Math.max(voice.at[t]!, at);
      visit(voice.place[t]!, length / grid.beat, v);
    }
  }
}

/** Keys worth trying for a phrase: those whose scales hold most of it, near the signature. */
function likelyKeys(phrase: PhraseNotes): KeyNumber[] {
  const scored: { key: KeyNumber; score: number }[] = [];
  for (let mode = 0; mode < 2; mode++) {
    const home = phrase.signature + (mode === 1 ? 3 : 0);
    for (let tonic = home - FARTHEST; tonic <= home + FARTHEST; tonic++) {
      let inside = 0;
      let tonicLength = 0;
      for (const [i, place] of phrase.places.entries()) {
        if (IN_SCALE[mode]!.has(place - tonic)) inside += phrase.lengths[i]!;
        if (place === tonic) tonicLength = phrase.lengths[i]!;
      }
      const far = Math.abs(tonic - home);
      // The wider minor scale holds more by chance, hence the handicap.
      const closes = phrase.lastBass === tonic ? 0.05 : 0;
      const score =
        inside / Math.max(phrase.total, 1) -
        (mode === 1 ? 0.04 : 0) -
        0.02 * far +
        (0.3 * tonicLength) / Math.max(phrase.total, 1) +
        closes;
      scored.push({ key: { tonic, mode }, score });
    }
  }
  scored.sort((a, b) => b.score - a.score);
  return scored.slice(0, KEYS_KEPT).map(({ key }) => key);
}

/** A distance between keys in fifths, as the features count it: from 0, the far ones as one. */
export function clippedDistance(distance: number): number {
  return Math.max(-KEY_DISTANCE, Math.min(KEY_DISTANCE, distance)) + KEY_DISTANCE;
}

// Imports are read once: loaders that compile modules as they go make every later read a call.
const [LOWEST, COUNT] = [LOWEST_NOTE, NOTES];

function note(family: number, mode: number, distance: number): number {
  const index = distance - LOWEST;
  return family + mode * COUNT + (index < 0 ? 0 : index >= COUNT ? COUNT - 1 : index);
}

/** Calls with every key feature of an atom and its value. */
export function keyFeatures(
  grid: Grid,
  phrases: readonly PhraseNotes[],
  atom: number,
  { tonic, mode }: KeyNumber,
  add: (index: number, value: number) => void,
): void {
  const beats = (grid.until[atom]! - grid.at[atom]!) / grid.beat;
  const distance = clippedDistance(tonic - (mode === 1 ? 3 : 0) - grid.signature[atom]!);
  add(SIGNATURE + mode * (2 * KEY_DISTANCE + 1) + distance, beats);
  add(STATED_MODE + mode * 3 + grid.statedMode[atom]!, beats);
  forEachTone(grid, atom, (place, length) => add(note(NOTE_IN_KEY, mode, place - tonic), length));
  const phrase = phrases[grid.phrase[atom]!]!;
  for (const [i, place] of phrase.places.entries())
    add(note(NOTE_IN_PHRASE, mode, place - tonic), (4 * beats * phrase.lengths[i]!) / phrase.total);
  const home = phrases.at(-1)!.lastBass;
  if (home !== undefined) add(note(HOME_BASS, mode, home - tonic), beats);
  if (phrase.lastBass !== undefined) add(note(PHRASE_BASS, mode, phrase.lastBass - tonic), beats);
  if (phrase.lastTop !== undefined) add(note(PHRASE_TOP, mode, phrase.lastTop - tonic), beats);
  if (atom === grid.atoms - 1) add(LAST_KEY + mode * (2 * KEY_DISTANCE + 1) + distance, 1);
}

export interface KeyScores {
  readonly keys: readonly KeyNumber[];
  /** For each phrase, the indices of the keys it may be in. */
  readonly allowed: readonly (readonly number[])[];
  /** For each key, its score summed over the atoms before each. */
  readonly sums: readonly Float64Array[];
}

/** Keys of the piece, those allowed in each phrase, and running sums of each key's score over the atoms. */
export function keyScores(
  grid: Grid,
  weights: Float64Array,
  lean?: (atom: number, key: KeyNumber) => number,
): KeyScores {
  const phrases = phraseNotes(grid);
  const keys: KeyNumber[] = [];
  const allowed = phrases.map((phrase) =>
    (phrase.total === 0 ? [] : likelyKeys(phrase)).map((key) => {
      const known = keyIndex(keys, key);
      return known >= 0 ? known : keys.push(key) - 1;
    }),
  );
  const sums = keys.map((key, index) => {
    const running = new Float64Array(grid.atoms + 1);
    for (let atom = 0; atom < grid.atoms; atom++) {
      let score = lean ? lean(atom, key) : 0;
      if (allowed[grid.phrase[atom]!]!.includes(index))
        keyFeatures(grid, phrases, atom, key, (feature, value) => {
          score += weights[feature]! * value;
        });
      running[atom + 1] = running[atom]! + score;
    }
    return running;
  });
  return { keys, allowed, sums };
}
