/** Faults as pupils make them, planted in an invented setting. */
import { type NoteName, type Pitch, semitone } from '../../src/score/pitch.ts';
import type { Chance } from './chance.ts';
import { type Column, majorScale } from './invented-harmony.ts';

const PLANTS = [
  'parallel octaves',
  'parallel fifths',
  'missing third',
  'doubled leading note',
  'wide leap',
  'voices crossed',
  'alto too far from soprano',
  'given melody changed',
  'bass stays at the close',
] as const;
export type Plant = (typeof PLANTS)[number];

export interface Planted {
  readonly kind: Plant;
  /** Index of the column it begins in. */
  readonly at: number;
}

const [ALTO, TENOR, BASS] = [0, 1, 2];

/** The setting with a fault at a place, or undefined where it can't be made there. */
export function plant(
  columns: readonly Column[],
  { kind, at }: Planted,
  tonic: NoteName,
): Column[] | undefined {
  const here = columns[at];
  const next = columns[at + 1];
  if (here === undefined || next === undefined || here.fermata) return undefined;
  const scale = majorScale(tonic);
  const [bass, nextBass] = [here.lower[BASS]!, next.lower[BASS]!];
  const moves = semitone(bass) !== semitone(nextBass);
  switch (kind) {
    case 'parallel octaves': {
      const [low, high] = [up(bass), up(nextBass)];
      return moves && fits(here, TENOR, low) && fits(next, TENOR, high)
        ? put(put(columns, at, TENOR, low), at + 1, TENOR, high)
        : undefined;
    }
    case 'parallel fifths': {
      const fifth = (of: Pitch): Pitch =>
        within(scale[(scale.findIndex((n) => n.step === of.step) + 4) % 7]!, of);
      const [low, high] = [fifth(bass), fifth(nextBass)];
      const perfect = semitone(low) - semitone(bass) === 7 && semitone(high) - semitone(nextBass) === 7;
      return moves && perfect && fits(here, TENOR, low) && fits(next, TENOR, high)
        ? put(put(columns, at, TENOR, low), at + 1, TENOR, high)
        : undefined;
    }
    case 'missing third': {
      const third = scale[(here.degree + 1) % 7]!;
      const voices = [ALTO, TENOR].filter((v) => here.lower[v]!.step === third.step);
      const others = [here.pitch, bass].some((pitch) => pitch.step === third.step);
      const root = scale[here.degree - 1]!;
      if (others || voices.length !== 1) return undefined;
      return put(columns, at, voices[0]!, nearest(root, here.lower[voices[0]!]!));
    }
    case 'doubled leading note': {
      if (here.degree !== 5) return undefined;
      const leading = scale[6]!;
      const sounding = [here.pitch, ...here.lower].filter((pitch) => pitch.step === leading.step).length;
      const voice = [ALTO, TENOR].find((v) => here.lower[v]!.step !== leading.step);
      if (sounding !== 1 || voice === undefined) return undefined;
      return put(columns, at, voice, nearest(leading, here.lower[voice]!));
    }
    case 'wide leap': {
      const low = semitone(nextBass) > 43 ? undefined : up(nextBass);
      return low === undefined ||
        semitone(low) > semitone(next.lower[TENOR]!) ||
        Math.abs(semitone(low) - semitone(bass)) < 10
        ? undefined
        : put(columns, at + 1, BASS, low);
    }
    case 'voices crossed': {
      const [alto, tenor] = [here.lower[ALTO]!, here.lower[TENOR]!];
      return semitone(alto) === semitone(tenor)
        ? undefined
        : put(put(columns, at, ALTO, tenor), at, TENOR, alto);
    }
    case 'alto too far from soprano': {
      const low = { ...here.lower[ALTO]!, octave: here.lower[ALTO]!.octave - 1 };
      return semitone(here.pitch) - semitone(low) > 12 && semitone(low) >= 41
        ? put(columns, at, ALTO, low)
        : undefined;
    }
    case 'given melody changed': {
      const index = scale.findIndex((name) => name.step === here.pitch.step);
      if (index < 0) return undefined;
      const pitch = nearest(scale[(index + 1) % 7]!, here.pitch);
      return columns.map((column, i) => (i === at ? { ...column, pitch } : column));
    }
    case 'bass stays at the close':
      return next.fermata && next.degree === 1 && here.degree === 5
        ? put(columns, at + 1, BASS, bass)
        : undefined;
  }
}

/** Some faults at places where they can be made, no two nearer than three chords. */
export function choosePlants(
  columns: readonly Column[],
  count: number,
  tonic: NoteName,
  random: Chance,
): Planted[] {
  const chosen: Planted[] = [];
  for (let tries = 0; chosen.length < count && tries < 200; tries++) {
    const planted = {
      kind: PLANTS[Math.floor(random() * PLANTS.length)]!,
      at: Math.floor(random() * (columns.length - 1)),
    };
    const apart = chosen.every((other) => Math.abs(other.at - planted.at) >= 3);
    if (apart && plant(columns, planted, tonic) !== undefined) chosen.push(planted);
  }
  return chosen.sort((a, b) => a.at - b.at);
}

function put(columns: readonly Column[], at: number, voice: number, pitch: Pitch): Column[] {
  return columns.map((column, i) => {
    if (i !== at) return column;
    const lower: [Pitch, Pitch, Pitch] = [...column.lower];
    lower[voice] = pitch;
    return { ...column, lower };
  });
}

function up(pitch: Pitch): Pitch {
  return { ...pitch, octave: pitch.octave + 1 };
}

/** The first place of a note name above a pitch. */
function within(name: NoteName, above: Pitch): Pitch {
  const same: Pitch = { ...name, octave: above.octave };
  return semitone(same) > semitone(above) ? same : up(same);
}

/** The place of a note name that lies nearest to a pitch. */
function nearest(name: NoteName, to: Pitch): Pitch {
  return [-1, 0, 1]
    .map((octaves): Pitch => ({ ...name, octave: to.octave + octaves }))
    .reduce((best, pitch) =>
      Math.abs(semitone(pitch) - semitone(to)) < Math.abs(semitone(best) - semitone(to)) ? pitch : best,
    );
}

/** In the tenor's range, and neither above the alto nor below the bass. */
function fits(column: Column, voice: number, pitch: Pitch): boolean {
  const place = semitone(pitch);
  return (
    voice === TENOR &&
    place >= 36 &&
    place <= 57 &&
    place <= semitone(column.lower[ALTO]!) &&
    place >= semitone(column.lower[BASS]!)
  );
}
