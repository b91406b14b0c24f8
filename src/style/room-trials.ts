/** The changes that are tried to find room, one kind each. A trial's tries are whole scores with the change made. */
import type { Analysis } from '../harmony/analysis.ts';
import { isDominant } from '../harmony/questions/functions.ts';
import { memberOf, membersOf } from '../harmony/questions/members.ts';
import { chordAt, keyAt } from '../harmony/questions/moments.ts';
import { ornamentOf } from '../harmony/questions/ornaments.ts';
import { keyFacts } from '../harmony/tonal.ts';
import { type Pitch, sameNoteName, semitone, staffPlace } from '../score/pitch.ts';
import { barAt, metricalStrength } from '../score/place.ts';
import { type Score, VOICES, type VoiceName } from '../score/score.ts';
import type { Tone } from '../score/texture.ts';
import type { Ticks } from '../score/time.ts';
import { pitchAtPlace } from '../writing/pitches.ts';
import { write } from '../writing/write.ts';
import { feltBeat } from './music.ts';

export const ROOM_KINDS = ['passing note', 'suspension', 'move', 'seventh'] as const;
export type RoomKind = (typeof ROOM_KINDS)[number];

export interface Trial {
  readonly voice: VoiceName;
  readonly at: Ticks;
  readonly until: Ticks;
  readonly tries: readonly Score[];
  /** Whether the changed piece really has there what there was to be room for. */
  readonly holds: (changed: Analysis) => boolean;
}

/** Every kind of room and how it is tried; in order of time. */
export const ROOM_TRIALS: Readonly<Record<RoomKind, (analysis: Analysis) => Trial[]>> = {
  'passing note': passingNotes,
  suspension: suspensions,
  move: movesOfRepeated,
  seventh: sevenths,
};

interface Pair {
  readonly voice: VoiceName;
  readonly from: Tone;
  readonly to: Tone;
}

/** Neighbouring tones of the lower voices, in order of time. */
function pairs({ texture }: Analysis): Pair[] {
  return VOICES.filter((voice) => voice !== 'S')
    .flatMap((voice) =>
      texture.tones[voice].slice(1).flatMap((to, i) => {
        const from = texture.tones[voice][i]!;
        return from.until === to.at ? [{ voice, from, to }] : [];
      }),
    )
    .sort((a, b) => a.to.at - b.to.at);
}

/** Half a beat before a third is completed, the note between. */
function passingNotes(analysis: Analysis): Trial[] {
  return pairs(analysis).flatMap(({ voice, from, to }) => {
    const steps = staffPlace(to.pitch) - staffPlace(from.pitch);
    const half = halfBeat(analysis, from);
    if (Math.abs(steps) !== 2 || half === undefined || hasFermata(from)) return [];
    const place = (staffPlace(to.pitch) + staffPlace(from.pitch)) / 2;
    const at = from.until - half;
    const tries = pitchesAt(analysis, at, place).flatMap((pitch) =>
      written(analysis, { voice, at, length: half, pitch }),
    );
    return [{ voice, at: from.at, until: to.until, tries, holds: hasOrnament(voice, at, 'passing') }];
  });
}

/** A step down onto a beat that comes half a beat late. */
function suspensions(analysis: Analysis): Trial[] {
  return pairs(analysis).flatMap(({ voice, from, to }) => {
    const half = halfBeat(analysis, to);
    const onBeat = metricalStrength(barAt(analysis.texture.score, to.at), to.at) >= 2;
    const stepDown = staffPlace(to.pitch) - staffPlace(from.pitch) === -1;
    if (!stepDown || !onBeat || half === undefined || hasFermata(from)) return [];
    const tries = written(analysis, {
      voice,
      at: from.at,
      length: to.at - from.at + half,
      pitch: from.pitch,
    });
    return [{ voice, at: from.at, until: to.until, tries, holds: hasOrnament(voice, to.at, 'suspension') }];
  });
}

/** An inner voice's second note of two alike, on another note of the same chord not far away. */
function movesOfRepeated(analysis: Analysis): Trial[] {
  return pairs(analysis).flatMap(({ voice, from, to }) => {
    if (voice === 'B' || semitone(from.pitch) !== semitone(to.pitch) || hasFermata(from)) return [];
    const chord = chordAt(analysis, to.at);
    if (chord === undefined) return [];
    const place = staffPlace(to.pitch);
    const tries = [-1, 1, -2, 2, -3, 3].flatMap((by) =>
      membersOf(chord)
        .flatMap((name) => [-1, 0, 1].map((octave) => ({ ...name, octave: to.pitch.octave + octave })))
        .filter((pitch) => staffPlace(pitch) === place + by)
        .flatMap((pitch) => written(analysis, { voice, at: to.at, length: to.until - to.at, pitch })),
    );
    return [{ voice, at: from.at, until: to.until, tries, holds: () => true }];
  });
}

/** A doubled root of a plain dominant that comes down through the seventh. */
function sevenths(analysis: Analysis): Trial[] {
  return pairs(analysis).flatMap(({ voice, from, to }) => {
    const half = halfBeat(analysis, from);
    const chord = chordAt(analysis, from.until - 1);
    if (voice === 'B' || half === undefined || hasFermata(from) || chord === undefined) return [];
    const plain = isDominant(chord) && chord.roman.degree === 5 && chord.roman.seventh === undefined;
    if (!plain || memberOf(chord, from.pitch) !== 'root' || !sameNoteName(chord.root, from.pitch)) return [];
    const at = from.until - half;
    const tries = pitchesAt(analysis, at, staffPlace(from.pitch) - 1).flatMap((pitch) =>
      written(analysis, { voice, at, length: half, pitch }),
    );
    const holds = (changed: Analysis) =>
      chordAt(changed, at)?.roman.seventh !== undefined || hasOrnament(voice, at, 'passing')(changed);
    return [{ voice, at: from.at, until: to.until, tries, holds }];
  });
}

/** Half the felt beat where the tone is at least a beat long; undefined for a shorter one. */
function halfBeat({ texture }: Analysis, tone: Tone): Ticks | undefined {
  const beat = feltBeat(barAt(texture.score, tone.at));
  const third = beat % 3 === 0 && barAt(texture.score, tone.at).metre.unit >= 8;
  return tone.until - tone.at >= beat ? beat / (third ? 3 : 2) : undefined;
}

function hasFermata(tone: Tone): boolean {
  return tone.notes.some((note) => note.fermata);
}

/** What a staff place may be spelt as in the key there. */
function pitchesAt(analysis: Analysis, at: Ticks, place: number): Pitch[] {
  const key = keyAt(analysis, at);
  if (key === undefined) return [];
  const { scale, harmonic, melodic } = keyFacts(key);
  const plain = pitchAtPlace(place, { fifths: 0 });
  const alterations = [...scale, ...harmonic, ...melodic]
    .filter((name) => name.step === plain.step)
    .map((name) => name.alteration);
  return [...new Set(alterations)].map((alteration) => ({ ...plain, alteration }));
}

function written(
  { texture }: Analysis,
  { voice, at, length, pitch }: { voice: VoiceName; at: Ticks; length: Ticks; pitch: Pitch },
): Score[] {
  const change = write(texture.score, voice, at, length, { kind: 'note', pitch });
  return change.kind === 'changed' ? [change.score] : [];
}

function hasOrnament(
  voice: VoiceName,
  at: Ticks,
  kind: 'passing' | 'suspension',
): (changed: Analysis) => boolean {
  return (changed) => {
    const tone = changed.texture.tones[voice].find((one) => one.at <= at && at < one.until);
    return tone !== undefined && ornamentOf(changed, tone, at)?.kind === kind;
  };
}
