/** Which keys a phrase may be in, and what each atom says for a key whatever the chord. */
import { CROTCHET } from '../../score/time.ts';
import type { Grid } from './grid.ts';
import {
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

const FARTHEST = 6;
/** Keys kept for each phrase. */
const KEYS_KEPT = 7;

/** Notes of the scale in fifths from the tonic; in minor both forms of 6 and 7. */
const IN_SCALE: readonly ReadonlySet<number>[] = [
  new Set([-1, 0, 1, 2, 3, 4, 5]),
  new Set([-4, -3, -2, -1, 0, 1, 2, 3, 5]),
];

/** What a phrase holds: how long each place on the line of fifths sounds, and its last outer notes. */
export interface PhraseNotes {
  readonly total: number;
  /** Parallel: places and the crotchets each sounds. */
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

/** Calls with place, crotchets within the atom, and voice number for each tone of an atom. */
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
      visit(voice.place[t]!, length / CROTCHET, v);
    }
  }
}

/** Keys worth trying for a phrase: those whose scales hold most of it, near the signature. */
export function likelyKeys(phrase: PhraseNotes): KeyNumber[] {
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

function clipped(distance: number): number {
  return Math.max(-KEY_DISTANCE, Math.min(KEY_DISTANCE, distance)) + KEY_DISTANCE;
}

function note(family: number, mode: number, distance: number): number {
  const index = Math.max(0, Math.min(NOTES - 1, distance - LOWEST_NOTE));
  return family + mode * NOTES + index;
}

/** Calls with every key feature of an atom and its value. */
export function keyFeatures(
  grid: Grid,
  phrases: readonly PhraseNotes[],
  atom: number,
  { tonic, mode }: KeyNumber,
  add: (index: number, value: number) => void,
): void {
  const crotchets = (grid.until[atom]! - grid.at[atom]!) / CROTCHET;
  const distance = clipped(tonic - (mode === 1 ? 3 : 0) - grid.signature[atom]!);
  add(SIGNATURE + mode * (2 * KEY_DISTANCE + 1) + distance, crotchets);
  add(STATED_MODE + mode * 3 + grid.statedMode[atom]!, crotchets);
  forEachTone(grid, atom, (place, length) => add(note(NOTE_IN_KEY, mode, place - tonic), length));
  const phrase = phrases[grid.phrase[atom]!]!;
  for (const [i, place] of phrase.places.entries())
    add(note(NOTE_IN_PHRASE, mode, place - tonic), (4 * crotchets * phrase.lengths[i]!) / phrase.total);
  if (phrase.lastBass !== undefined) add(note(PHRASE_BASS, mode, phrase.lastBass - tonic), crotchets);
  if (phrase.lastTop !== undefined) add(note(PHRASE_TOP, mode, phrase.lastTop - tonic), crotchets);
  if (atom === grid.atoms - 1) add(LAST_KEY + mode * (2 * KEY_DISTANCE + 1) + distance, 1);
}
