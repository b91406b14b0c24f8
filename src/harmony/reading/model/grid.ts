/**
 * The texture as the reading sees it: atoms of time between which a harmony may change, and flat integer arrays of
 * tones, so that the search in `search.ts` touches no objects.
 */
import { fifthsPlace, semitone, staffPlace } from '../../../score/pitch.ts';
import { VOICES } from '../../../score/score.ts';
import { isAllWritten, type Texture, type Tone } from '../../../score/texture.ts';
import { beatLength, CROTCHET, isCompound, type Metre, type Ticks } from '../../../score/time.ts';
import type { Phrase } from '../../analysis.ts';

/** How a tone is reached or left. */
export const WAYS = ['none', 'repeated', 'step up', 'step down', 'leap', 'held'] as const;
const NONE = 0;
const REPEATED = 1;
const STEP_UP = 2;
const STEP_DOWN = 3;
const LEAP = 4;
/** The tone sounds on across the edge of the segment. */
export const HELD = 5;

/** A place on the line of fifths that no note has: "there is no note". */
export const NO_PLACE = 99;

export interface Tones {
  readonly at: Int32Array;
  readonly until: Int32Array;
  readonly place: Int8Array;
  readonly approach: Int8Array;
  readonly departure: Int8Array;
  /** Places of the tones before and after in the same voice, or NO_PLACE. */
  readonly before: Int8Array;
  readonly after: Int8Array;
  /** Metrical strength of the tone's beginning. */
  readonly strength: Int8Array;
}

export interface Grid {
  readonly atoms: number;
  /** Ticks of a beat; what the features call a crotchet is this, so that 3/2 is read as 3/4 is. */
  readonly beat: Ticks;
  readonly at: Int32Array;
  readonly until: Int32Array;
  readonly strength: Int8Array;
  /** 1 where silence lies before the atom: no segment reaches across. */
  readonly gapBefore: Uint8Array;
  readonly phrase: Int16Array;
  readonly phraseStart: Uint8Array;
  /** 1 for the atom in which the phrase's sound ends. */
  readonly phraseEnd: Uint8Array;
  /** 1 from the beginning of the melody's last note in the phrase. */
  readonly goal: Uint8Array;
  /** Beats since the phrase began and until it ends, rounded and clipped. */
  readonly since: Int8Array;
  readonly left: Int8Array;
  /** Sets of places on the line of fifths ({@link placeBit}): what sounds from the atom to the phrase's end, and within a beat. */
  readonly rest: readonly [Int32Array, Int32Array];
  readonly soon: readonly [Int32Array, Int32Array];
  readonly signature: Int8Array;
  /** What the exercise states: 0 nothing, 1 major, 2 minor. */
  readonly statedMode: Int8Array;
  /** How many voices sound when the atom begins. */
  readonly sounding: Int8Array;
  /** The same as an index into the families for few voices: 0 two, 1 three, -1 where all sound. */
  readonly few: Int8Array;
  /** Whether something is still to be written: a voice that neither sings nor rests. */
  readonly unfinished: boolean;
  /** Tones of soprano, alto, tenor, bass. */
  readonly voices: readonly Tones[];
  /** For each voice and atom, the first tone that has not ended by the atom's beginning. */
  readonly first: readonly Int32Array[];
}

export function gridOf(texture: Texture, phrases: readonly Phrase[]): Grid {
  const starts: Ticks[] = [];
  const ends: Ticks[] = [];
  const strengths: number[] = [];
  const signatures: number[] = [];
  const modes: number[] = [];
  const counts: number[] = [];
  const gaps: number[] = [];
  const beat = commonBeat(texture);
  let open = false;
  for (const slice of texture.slices) {
    let sounding = 0;
    for (const voice of VOICES) if (slice.parts[voice].kind === 'tone') sounding++;
    if (sounding < 2) {
      open = false;
      // A harmony stays in force through a rest, but not where voices are still to be written.
      if (isAllWritten(slice) && ends.length > 0 && ends.at(-1) === slice.at)
        ends[ends.length - 1] = slice.until;
      continue;
    }
    const into = slice.at - slice.bar.at + slice.bar.offset;
    // Harmonies change at most on half beats: what is shorter belongs to the atom it falls in.
    if (open && into % (beat / 2) !== 0) {
      ends[ends.length - 1] = slice.until;
      continue;
    }
    gaps.push(starts.length > 0 && !open ? 1 : 0);
    open = true;
    starts.push(slice.at);
    ends.push(slice.until);
    strengths.push(slice.strength);
    signatures.push(slice.bar.key.fifths);
    modes.push(slice.bar.key.mode === 'major' ? 1 : slice.bar.key.mode === 'minor' ? 2 : 0);
    counts.push(sounding);
  }
  const atoms = starts.length;
  const voices = VOICES.map((voice) => tonesOf(texture, texture.tones[voice]));
  const grid = {
    atoms,
    beat,
    at: Int32Array.from(starts),
    until: Int32Array.from(ends),
    strength: Int8Array.from(strengths),
    gapBefore: Uint8Array.from(gaps),
    phrase: new Int16Array(atoms),
    phraseStart: new Uint8Array(atoms),
    phraseEnd: new Uint8Array(atoms),
    goal: new Uint8Array(atoms),
    since: new Int8Array(atoms),
    left: new Int8Array(atoms),
    rest: [new Int32Array(atoms), new Int32Array(atoms)] as const,
    soon: [new Int32Array(atoms), new Int32Array(atoms)] as const,
    signature: Int8Array.from(signatures),
    statedMode: Int8Array.from(modes),
    sounding: Int8Array.from(counts),
    unfinished: !texture.slices.every(isAllWritten),
    few: Int8Array.from(counts, (count) => (count < 4 ? count - 2 : -1)),
    voices,
    first: voices.map((tones) => firstTones(tones, starts)),
  };
  markPhrases(grid, phrases);
  markReach(grid);
  return grid;
}

/** The beat of the metre that lasts longest. */
function commonBeat({ score }: Texture): Ticks {
  const lengths = new Map<Ticks, Ticks>();
  for (const { metre, duration } of score.bars) {
    const beat = harmonicBeat(metre);
    lengths.set(beat, (lengths.get(beat) ?? 0) + duration);
  }
  return [...lengths].reduce((most, each) => (each[1] > most[1] ? each : most), [CROTCHET, 0])[0];
}

/** What chorales change their harmony by: the lower figure, but in 6/8 and its like the crotchet within the beat. */
function harmonicBeat(metre: Metre): Ticks {
  return metre.unit >= 8 && isCompound(metre) ? 2 * beatLength(metre) : beatLength(metre);
}

function tonesOf(texture: Texture, tones: readonly Tone[]): Tones {
  const count = tones.length;
  const out = {
    at: new Int32Array(count),
    until: new Int32Array(count),
    place: new Int8Array(count),
    approach: new Int8Array(count),
    departure: new Int8Array(count),
    before: new Int8Array(count).fill(NO_PLACE),
    after: new Int8Array(count).fill(NO_PLACE),
    strength: new Int8Array(count),
  };
  let slice = 0;
  for (let i = 0; i < count; i++) {
    const tone = tones[i]!;
    out.at[i] = tone.at;
    out.until[i] = tone.until;
    out.place[i] = fifthsPlace(tone.pitch);
    while (texture.slices[slice]!.at < tone.at) slice++;
    out.strength[i] = texture.slices[slice]!.strength;
    const before = tones[i - 1];
    if (before === undefined || before.until !== tone.at) continue;
    const way = wayOf(before, tone);
    out.approach[i] = way;
    out.departure[i - 1] = way;
    out.before[i] = out.place[i - 1]!;
    out.after[i - 1] = out.place[i]!;
  }
  return out;
}

function wayOf(from: Tone, to: Tone): number {
  const places = staffPlace(to.pitch) - staffPlace(from.pitch);
  const semitones = semitone(to.pitch) - semitone(from.pitch);
  if (semitones === 0) return REPEATED;
  if (Math.abs(places) > 1 || Math.abs(semitones) > 2) return LEAP;
  return semitones > 0 ? STEP_UP : STEP_DOWN;
}

function firstTones(tones: Tones, starts: readonly Ticks[]): Int32Array {
  let tone = 0;
  return Int32Array.from(starts, (at) => {
    while (tone < tones.until.length && tones.until[tone]! <= at) tone++;
    return tone;
  });
}

function markPhrases(grid: Grid, phrases: readonly Phrase[]): void {
  let phrase = 0;
  for (let i = 0; i < grid.atoms; i++) {
    while (phrase + 1 < phrases.length && grid.at[i]! >= phrases[phrase]!.until) phrase++;
    grid.phrase[i] = phrase;
    if (i > 0 && grid.phrase[i - 1] !== phrase) grid.phraseStart[i] = 1;
  }
  const melody = grid.voices.find((tones) => tones.at.length > 0);
  for (let i = grid.atoms - 1; i >= 0; i--) {
    const last = i === grid.atoms - 1 || grid.phrase[i + 1] !== grid.phrase[i];
    if (!last || melody === undefined) continue;
    grid.phraseEnd[i] = 1;
    const end = grid.until[i]!;
    let tone = melody.at.length - 1;
    while (tone > 0 && melody.at[tone]! >= end) tone--;
    const from = melody.at[tone] ?? 0;
    for (let j = i; j >= 0 && grid.at[j]! >= from && grid.phrase[j] === grid.phrase[i]; j--) grid.goal[j] = 1;
    grid.goal[i] = 1;
  }
}

/** Where a place on the line of fifths stands in a set of two 32-bit halves: half and bit. */
export function placeBit(place: number): readonly [number, number] {
  const bit = place + 28;
  return [bit >= 32 ? 1 : 0, 1 << (bit & 31)];
}

/** Beats since a phrase began and until it ends are counted to this many. */
export const REACH = 9;

function markReach(grid: Grid): void {
  let end = 0;
  for (let i = grid.atoms - 1; i >= 0; i--) {
    const closes = i === grid.atoms - 1 || grid.phrase[i + 1] !== grid.phrase[i];
    if (closes) end = grid.until[i]!;
    grid.left[i] = Math.min(REACH, Math.round((end - grid.at[i]!) / grid.beat));
    for (let half = 0; half < 2; half++) grid.rest[half]![i] = closes ? 0 : grid.rest[half]![i + 1]!;
    const soon = grid.at[i]! + grid.beat;
    for (let v = 0; v < 4; v++) {
      const voice = grid.voices[v]!;
      for (
        let t = grid.first[v]![i]!;
        t < voice.at.length && voice.at[t]! < Math.max(soon, grid.until[i]!);
        t++
      ) {
        const [half, bit] = placeBit(voice.place[t]!);
        if (voice.at[t]! < grid.until[i]!) grid.rest[half]![i]! |= bit;
        if (voice.at[t]! < soon) grid.soon[half]![i]! |= bit;
      }
    }
  }
  let from = 0;
  for (let i = 0; i < grid.atoms; i++) {
    if (i === 0 || grid.phraseStart[i] === 1) from = grid.at[i]!;
    grid.since[i] = Math.min(REACH, Math.round((grid.at[i]! - from) / grid.beat));
  }
}

const SUSPENSION = 0;
const RETARDATION = 1;
const PEDAL = 2;
const PASSING = 3;
const NEIGHBOUR = 4;
const ESCAPE = 5;
const APPOGGIATURA = 6;
const ANTICIPATION = 7;
const LEAPING = 8;
const EDGE = 9;
/** What a tone would be if it were foreign, by its ways alone. */
export const KINDS = [
  'suspension',
  'retardation',
  'pedal',
  'passing',
  'neighbour',
  'escape',
  'appoggiatura',
  'anticipation',
  'leaping',
  'edge',
] as const;

/** Kind by approach × 6 + departure. */
export const KIND_OF_SHAPE: Int8Array = Int8Array.from({ length: 36 }, (_, shape) => {
  const approach = Math.floor(shape / 6);
  const departure = shape % 6;
  const prepared = approach === HELD || approach === REPEATED;
  const stays = departure === HELD || departure === REPEATED;
  if (departure === NONE) return EDGE;
  if (prepared) {
    if (stays) return PEDAL;
    if (departure === STEP_DOWN) return SUSPENSION;
    return departure === STEP_UP ? RETARDATION : LEAPING;
  }
  if (stays) return ANTICIPATION;
  if (approach === NONE) return EDGE;
  if (approach === LEAP) return departure === LEAP ? LEAPING : APPOGGIATURA;
  if (departure === LEAP) return ESCAPE;
  return approach === departure ? PASSING : NEIGHBOUR;
});
