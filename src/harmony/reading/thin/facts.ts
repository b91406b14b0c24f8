/** What is told of each atom to the network for few voices: a handful of plain facts, each a number. */
import { type Grid, HELD, NO_PLACE, REACH, WAYS } from '../model/grid.ts';
import { type PhraseNotes, phraseNotes } from '../model/keys.ts';
import { SPANS } from '../model/layout.ts';
import { spanOf } from '../model/segment.ts';

/** Notes are told by their places on the line of fifths from the signature's major tonic, the far ones as one. */
const LOWEST = -9;
export const PLACES = 25;
const SHAPES = WAYS.length * WAYS.length;
const STRENGTHS = 5;

let total = 0;
const room = (size: number): number => {
  total += size;
  return total - size;
};
const VOICE = room(4 * (2 * PLACES + SHAPES));
const STRENGTH = room(STRENGTHS);
const LENGTH = room(SPANS.length);
const SINCE = room(REACH + 1);
const LEFT = room(REACH + 1);
const FLAGS = room(4);
const STATED = room(3);
const HOME = room(PLACES);
const PHRASE_BASS = room(PLACES);
const PHRASE_TOP = room(PLACES);
/** How many facts there are. */
export const FACTS = total;

/** A note's place as a fact counts it. */
export function placeFrom(signature: number, place: number): number {
  return Math.max(0, Math.min(PLACES - 1, place - signature - LOWEST));
}

/** The facts of every atom, in no particular order. */
export function factsOf(grid: Grid): number[][] {
  const phrases = phraseNotes(grid);
  return Array.from({ length: grid.atoms }, (_, atom) => factsAt(grid, phrases, atom));
}

function factsAt(grid: Grid, phrases: readonly PhraseNotes[], atom: number): number[] {
  const signature = grid.signature[atom]!;
  const facts: number[] = [];
  for (let v = 0; v < 4; v++) voiceFacts(grid, atom, v, facts);
  facts.push(STRENGTH + grid.strength[atom]!);
  facts.push(LENGTH + spanOf(grid.until[atom]! - grid.at[atom]!, grid.beat));
  facts.push(SINCE + grid.since[atom]!, LEFT + grid.left[atom]!);
  if (grid.goal[atom]) facts.push(FLAGS);
  if (grid.phraseEnd[atom]) facts.push(FLAGS + 1);
  if (grid.phraseStart[atom]) facts.push(FLAGS + 2);
  if (grid.gapBefore[atom]) facts.push(FLAGS + 3);
  facts.push(STATED + grid.statedMode[atom]!);
  const phrase = phrases[grid.phrase[atom]!]!;
  const tell = (from: number, place: number | undefined) => {
    if (place !== undefined) facts.push(from + placeFrom(signature, place));
  };
  tell(HOME, phrases.at(-1)!.lastBass);
  tell(PHRASE_BASS, phrase.lastBass);
  tell(PHRASE_TOP, phrase.lastTop);
  return facts;
}

function voiceFacts(grid: Grid, atom: number, v: number, facts: number[]): void {
  const [at, until] = [grid.at[atom]!, grid.until[atom]!];
  const signature = grid.signature[atom]!;
  const tones = grid.voices[v]!;
  const from = VOICE + v * (2 * PLACES + SHAPES);
  let last = NO_PLACE;
  for (let t = grid.first[v]![atom]!; t < tones.at.length && tones.at[t]! < until; t++) {
    last = tones.place[t]!;
    if (tones.at[t]! > at) continue;
    const into = tones.at[t]! < at ? HELD : tones.approach[t]!;
    const out = tones.until[t]! > until ? HELD : tones.departure[t]!;
    facts.push(from + placeFrom(signature, last), from + 2 * PLACES + into * WAYS.length + out);
  }
  if (last !== NO_PLACE) facts.push(from + PLACES + placeFrom(signature, last));
}
