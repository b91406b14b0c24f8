/**
 * Invented four-part settings of a tune, for demonstrations and tests: plain chords and smooth voices chosen by least
 * cost with a little chance, so that thirty of them differ as a class's do. Not part of the program, which writes no notes.
 */
import {
  type NoteName,
  type Pitch,
  printNoteName,
  STEPS,
  semitone,
  staffPlace,
} from '../../src/score/pitch.ts';
import type { Chance } from './chance.ts';

export interface TuneNote {
  readonly pitch: Pitch;
  readonly beats: number;
  readonly fermata?: boolean;
}

/** One chord under one note of the tune. */
export interface Column extends TuneNote {
  readonly lower: readonly [alto: Pitch, tenor: Pitch, bass: Pitch];
  /** Degree of the chord's root, 1 to 7. */
  readonly degree: number;
}

interface Chord {
  readonly degree: number;
  readonly inversion: 0 | 1;
  readonly cost: number;
}

const CHORDS: readonly Chord[] = [
  { degree: 1, inversion: 0, cost: 0 },
  { degree: 1, inversion: 1, cost: 0.4 },
  { degree: 2, inversion: 0, cost: 0.8 },
  { degree: 2, inversion: 1, cost: 0.5 },
  { degree: 3, inversion: 0, cost: 1.8 },
  { degree: 4, inversion: 0, cost: 0.3 },
  { degree: 4, inversion: 1, cost: 0.9 },
  { degree: 5, inversion: 0, cost: 0 },
  { degree: 5, inversion: 1, cost: 0.5 },
  { degree: 6, inversion: 0, cost: 0.4 },
  { degree: 7, inversion: 1, cost: 0.9 },
];

/** How well one degree follows another in major; common practice, no source. What is not named costs 1. */
const FOLLOWS: Readonly<Record<string, number>> = {
  '1 4': 0, '1 5': 0, '1 6': 0, '1 2': 0.2, '1 7': 0.4, '1 3': 0.6, '2 5': 0, '2 7': 0.3, '2 1': 2,
  '3 6': 0, '3 4': 0.2, '4 5': 0, '4 1': 0.3, '4 2': 0.2, '4 7': 0.4, '5 1': 0, '5 6': 0.4, '5 4': 3, '5 2': 3,
  '6 2': 0, '6 4': 0, '6 5': 0.4, '6 3': 0.6, '7 1': 0, '7 6': 2, '7 4': 3,
}; // biome-ignore format: a table
const REPEATED = 0.9;

/** The seven notes of a major scale from its tonic. */
export function majorScale(tonic: NoteName): NoteName[] {
  const start = STEPS.indexOf(tonic.step);
  const natural = [0, 2, 4, 5, 7, 9, 11];
  const low: Pitch = { ...tonic, octave: 0 };
  return natural.map((size, i) => {
    const place = start + i;
    const step = STEPS[place % 7]!;
    const plain = semitone({ step, alteration: 0, octave: Math.floor(place / 7) });
    return { step, alteration: semitone(low) + size - plain };
  });
}

/** A setting of a tune in a major key. The same chance gives the same setting. */
export function inventedSetting(tune: readonly TuneNote[], tonic: NoteName, random: Chance): Column[] {
  const scale = majorScale(tonic);
  const chords = chosenChords(tune, scale, random);
  const voicings = chords.map((chord, i) => voicingsOf(tune[i]!.pitch, chord, scale));
  const chosen = cheapest(
    voicings,
    (voicing) => voicing.cost + random() * 1.5,
    (from, to, i) =>
      movement(tune[i - 1]!.pitch, from.notes, tune[i]!.pitch, to.notes, tune[i - 1]!.fermata === true),
  );
  return tune.map((note, i) => ({ ...note, lower: chosen[i]!.notes, degree: chords[i]!.degree }));
}

function chosenChords(tune: readonly TuneNote[], scale: readonly NoteName[], random: Chance): Chord[] {
  const options = tune.map((note, i) => {
    const fits = CHORDS.filter((chord) => membersOf(chord, scale).some((name) => sameName(name, note.pitch)));
    if (!note.fermata) return fits;
    const last = i === tune.length - 1;
    const ends = fits.filter(
      ({ degree, inversion }) => inversion === 0 && (degree === 1 || (!last && degree === 5)),
    );
    return ends.length > 0 ? ends : fits;
  });
  return cheapest(
    options,
    (chord) => chord.cost + random() * 1.6,
    (from, to, i) => {
      const step =
        from.degree === to.degree
          ? from.inversion === to.inversion
            ? REPEATED
            : 0.5
          : (FOLLOWS[`${from.degree} ${to.degree}`] ?? 1);
      if (tune[i - 1]!.fermata) return step / 4;
      const closes = tune[i]!.fermata && to.degree === 1;
      const outer = outerParallels(tune[i - 1]!.pitch, from, tune[i]!.pitch, to, scale) ? 6 : 0;
      return step + outer + (closes && !(from.degree === 5 && from.inversion === 0) ? 3 : 0);
    },
  );
}

/** Tune and bass both move and keep an octave or a fifth between them: no setting of the inner voices could mend it. */
function outerParallels(s1: Pitch, from: Chord, s2: Pitch, to: Chord, scale: readonly NoteName[]): boolean {
  const between = (soprano: NoteName, chord: Chord): number => {
    const bass = membersOf(chord, scale)[chord.inversion]!;
    return (STEPS.indexOf(soprano.step) - STEPS.indexOf(bass.step) + 7) % 7;
  };
  const [before, after] = [between(s1, from), between(s2, to)];
  return before === after && (before === 0 || before === 4) && s1.step !== s2.step;
}

/** The cheapest way through a list of choices (Viterbi). */
function cheapest<T>(
  options: readonly (readonly T[])[],
  own: (option: T, index: number) => number,
  step: (from: T, to: T, index: number) => number,
): T[] {
  let costs = options[0]!.map((option) => own(option, 0));
  const origins: number[][] = [];
  for (let i = 1; i < options.length; i++) {
    const origin: number[] = [];
    const next = options[i]!.map((to) => {
      let best = Number.POSITIVE_INFINITY;
      let from = 0;
      for (const [k, option] of options[i - 1]!.entries()) {
        const cost = costs[k]! + step(option, to, i);
        if (cost < best) [best, from] = [cost, k];
      }
      origin.push(from);
      return best + own(to, i);
    });
    origins.push(origin);
    costs = next;
  }
  let index = costs.indexOf(Math.min(...costs));
  const chosen: T[] = [];
  for (let i = options.length - 1; i >= 0; i--) {
    chosen.push(options[i]![index]!);
    index = origins[i - 1]?.[index] ?? 0;
  }
  return chosen.reverse();
}

function membersOf({ degree }: Chord, scale: readonly NoteName[]): NoteName[] {
  return [0, 2, 4].map((third) => scale[(degree - 1 + third) % 7]!);
}

function sameName(a: NoteName, b: NoteName): boolean {
  return a.step === b.step && a.alteration === b.alteration;
}

type Lower = readonly [Pitch, Pitch, Pitch];
interface Voicing {
  readonly notes: Lower;
  readonly cost: number;
}

/** Usual ranges of the three lower voices in semitones above C0: alto G3–D5, tenor C3–G4, bass E2–C4. */
const RANGES = [
  [43, 62],
  [36, 55],
  [28, 48],
] as const;

const known = new Map<string, Voicing[]>();

/** All ways to set a chord under a note: complete, in range, nothing crossed, upper voices within an octave. */
function voicingsOf(soprano: Pitch, chord: Chord, scale: readonly NoteName[]): Voicing[] {
  const key = `${printNoteName(scale[0]!)} ${semitone(soprano)} ${chord.degree} ${chord.inversion}`;
  const before = known.get(key);
  if (before !== undefined) return before;
  const members = membersOf(chord, scale);
  const pitches = (voice: 0 | 1 | 2, names: readonly NoteName[]): Pitch[] =>
    names
      .flatMap((name) => [2, 3, 4, 5].map((octave): Pitch => ({ ...name, octave })))
      .filter((pitch) => semitone(pitch) >= RANGES[voice][0] && semitone(pitch) <= RANGES[voice][1]);
  const all: Voicing[] = [];
  for (const bass of pitches(2, [members[chord.inversion]!]))
    for (const tenor of pitches(1, members))
      for (const alto of pitches(0, members)) {
        const [s, a, t, b] = [soprano, alto, tenor, bass].map(semitone) as [number, number, number, number];
        if (a > s || t > a || b > t || s - a > 12 || a - t > 12 || t - b > 19) continue;
        const counts = members.map(
          (name) => [soprano, alto, tenor, bass].filter((p) => sameName(p, name)).length,
        );
        const leading = members.findIndex((name) => sameName(name, scale[6]!));
        if (counts.some((n) => n === 0) || (leading >= 0 && counts[leading]! > 1)) continue;
        all.push({
          notes: [alto, tenor, bass],
          cost:
            (counts[0] === 2 ? 0 : 0.6) + (a === s || t === a || b === t ? 1 : 0) + (t - b > 14 ? 0.5 : 0),
        });
      }
  const found = all.length > 0 ? all : loose(soprano, members, chord);
  known.set(key, found);
  return found;
}

/** Where nothing strict will do: the bass, and the other notes where they come. */
function loose(soprano: Pitch, members: readonly NoteName[], chord: Chord): Voicing[] {
  const below = (name: NoteName, under: Pitch): Pitch => {
    const same: Pitch = { ...name, octave: under.octave };
    return semitone(same) < semitone(under) ? same : { ...name, octave: under.octave - 1 };
  };
  const alto = below(members[1]!, soprano);
  const tenor = below(members[2]!, alto);
  return [{ notes: [alto, tenor, { ...members[chord.inversion]!, octave: 2 }], cost: 5 }];
}

function movement(s1: Pitch, from: Lower, s2: Pitch, to: Lower, newPhrase: boolean): number {
  const before = [semitone(s1), ...from.map(semitone)];
  const after = [semitone(s2), ...to.map(semitone)];
  let cost = 0;
  for (let v = 1; v < 4; v++) {
    const leap = Math.abs(after[v]! - before[v]!);
    cost += (v === 3 ? 0.06 : 0.15) * leap + (leap > (v === 3 ? 8 : 5) ? 2 : 0);
    const places = Math.abs(staffPlace(to[v - 1]!) - staffPlace(from[v - 1]!));
    // An augmented step: one place, three semitones; or a tritone.
    if ((places === 1 && leap === 3) || leap === 6) cost += 4;
  }
  if (newPhrase) return cost / 2;
  for (let upper = 0; upper < 4; upper++)
    for (let lower = upper + 1; lower < 4; lower++) {
      const [p, q] = [(before[upper]! - before[lower]!) % 12, (after[upper]! - after[lower]!) % 12];
      if (before[upper] !== after[upper] && p === q && (p === 7 || p === 0)) cost += 40;
      const similar = Math.sign(after[upper]! - before[upper]!) === Math.sign(after[lower]! - before[lower]!);
      const outer = upper === 0 && lower === 3;
      if (outer && similar && (q === 7 || q === 0) && Math.abs(after[0]! - before[0]!) > 2) cost += 3;
      // Overlap: the lower voice above where the upper has just been.
      if (lower === upper + 1 && (after[lower]! > before[upper]! || after[upper]! < before[lower]!))
        cost += 2;
    }
  return cost;
}
