/** How the four voices share out a chord: who sings which member, when, and what may be said of it yet. */
import { fifthsPlace, type NoteName, STEPS, sameNoteName, samePitch, stepIndex } from '../../score/pitch.ts';
import { remembered } from '../../score/remember.ts';
import { VOICES, type VoiceName } from '../../score/score.ts';
import { type Slice, type Tone, toneIn } from '../../score/texture.ts';
import type { Ticks } from '../../score/time.ts';
import type { Analysis, Chord } from '../analysis.ts';
import { sameHarmony } from './functions.ts';
import { type Member, memberOf } from './members.ts';

/** A tone while it is a member of a chord. */
export interface ChordTone {
  readonly voice: VoiceName;
  readonly tone: Tone;
  readonly member: Member;
  /** The stretch of the tone that lies within the chord. */
  readonly at: Ticks;
  readonly until: Ticks;
}

export interface Voicing {
  readonly chord: Chord;
  /** The slices that sound within the chord, in order of time. */
  readonly slices: readonly Slice[];
  /** The tones that belong to the chord, by voice from the top and then in time. */
  readonly tones: readonly ChordTone[];
  /** Voices that are written from the chord's beginning to its end: notes or rests, but no gap. */
  readonly written: readonly VoiceName[];
  /** All four voices are written, and all of them sing at some time in the chord. */
  readonly complete: boolean;
  /** No voice is still to be written, or without it every member of the chord is sung: it makes no other chord of this. */
  readonly settled: boolean;
  /** Settled, and three voices or more sing, the bass among them: the chord and its inversion can be judged. */
  readonly sure: boolean;
}

/** The voicing of each chord of an analysis, by the chords' order. Worked out once for an analysis. */
export const voicings: (analysis: Analysis) => readonly Voicing[] = remembered(({ chords, texture }) => {
  const { slices } = texture;
  let first = 0;
  return chords.map((chord) => {
    while (first < slices.length && slices[first]!.until <= chord.at) first++;
    let end = first;
    while (end < slices.length && slices[end]!.at < chord.until) end++;
    return voicingOf(chord, slices.slice(first, end));
  });
});

function voicingOf(chord: Chord, slices: readonly Slice[]): Voicing {
  const tones: ChordTone[] = [];
  for (const voice of VOICES) {
    let open: Tone | undefined;
    for (const slice of slices) {
      const tone = toneIn(slice, voice);
      if (tone === open || tone === undefined) continue;
      open = tone;
      const member = memberOf(chord, tone.pitch);
      if (member === undefined) continue;
      tones.push({
        voice,
        tone,
        member,
        at: Math.max(tone.at, chord.at),
        until: Math.min(tone.until, chord.until),
      });
    }
  }
  const written = VOICES.filter((voice) => slices.every((slice) => slice.parts[voice].kind !== 'gap'));
  const singing = VOICES.filter((voice) => slices.some((slice) => slice.parts[voice].kind === 'tone'));
  const sung = new Set(tones.map(({ member }) => member));
  const settled = written.length === VOICES.length || sung.size === Object.keys(chord.members).length;
  return {
    chord,
    slices,
    tones,
    written,
    complete: written.length === VOICES.length && singing.length === VOICES.length,
    settled,
    sure: settled && singing.length >= 3 && written.includes('B') && singing.includes('B'),
  };
}

/** The tones of a voicing that are this member of the chord. */
export function tonesOf(voicing: Voicing, member: Member): readonly Tone[] {
  return voicing.tones.filter((chordTone) => chordTone.member === member).map((chordTone) => chordTone.tone);
}

/**
 * Nobody sings a third above the chord's root, major or minor: what sounds decides, even where the reading expects the
 * other of the two.
 */
export function lacksThird({ chord, slices }: Voicing): boolean {
  const step = STEPS[(stepIndex(chord.root.step) + 2) % STEPS.length];
  return slices.every((slice) => VOICES.every((voice) => toneIn(slice, voice)?.pitch.step !== step));
}

/** What a voice sings last in a chord: the chord tone or foreign tone that sounds when the chord ends. */
export function lastTone(voicing: Voicing, voice: VoiceName): Tone | undefined {
  const slice = voicing.slices.at(-1);
  return slice && toneIn(slice, voice);
}

/** What a voice sings first in a chord. */
export function firstTone(voicing: Voicing, voice: VoiceName): Tone | undefined {
  const slice = voicing.slices[0];
  return slice && toneIn(slice, voice);
}

/** The chord before, where nothing lies between. */
export function previousChord(analysis: Analysis, index: number): Chord | undefined {
  const chord = analysis.chords[index];
  const previous = analysis.chords[index - 1];
  return chord && previous && previous.until === chord.at ? previous : undefined;
}

/** The chord after, where nothing lies between. */
export function nextChord(analysis: Analysis, index: number): Chord | undefined {
  const chord = analysis.chords[index];
  const next = analysis.chords[index + 1];
  return chord && next && chord.until === next.at ? next : undefined;
}

/** Same root, whatever the quality and the seventh: V and V7, or I and a I with its seventh passing. */
export function sameRoot(a: Chord, b: Chord): boolean {
  return sameNoteName(a.root, b.root);
}

/** The bass alone goes on, to another note of the harmony on which the other three voices stay: what it leaves still counts. */
export function isBrokenInBass(analysis: Analysis, { chord, slices }: Voicing): boolean {
  const before = previousChord(analysis, chord.index);
  const [early, late] = [before && voicings(analysis)[before.index]!.slices.at(-1), slices[0]];
  if (before === undefined || !early || !late || !sameHarmony(before, chord)) return false;
  return VOICES.every((voice) => {
    const [from, to] = [toneIn(early, voice), toneIn(late, voice)];
    return from !== undefined && to !== undefined && samePitch(from.pitch, to.pitch) === (voice !== 'B');
  });
}

/** These members of the chord sound, and nothing else, from beginning to end. */
export function soundsOnly({ chord, slices }: Voicing, members: readonly Member[]): boolean {
  return slices.every((slice) =>
    VOICES.every((voice) => {
      const tone = toneIn(slice, voice);
      const member = tone && memberOf(chord, tone.pitch);
      return tone === undefined || (member !== undefined && members.includes(member));
    }),
  );
}

/** A diminished triad as it sounds, with the member in the bass when it begins. */
export interface DiminishedTriad {
  readonly root: NoteName;
  readonly third: NoteName;
  readonly bass: 'root' | 'third' | 'fifth' | undefined;
}

/**
 * The diminished triad that a chord sounds as, if it does: viio or iio, and a dominant seventh of which nobody sings
 * the root, which is viio by another name.
 */
export function diminishedTriadOf(voicing: Voicing): DiminishedTriad | undefined {
  const { chord } = voicing;
  const { root, third, fifth, seventh } = chord.members;
  const rootless =
    chord.quality === 'major' && chord.roman.seventh === 'minor' && tonesOf(voicing, 'root').length === 0;
  const heard = soundingTriadOf(voicing);
  if (heard?.quality === 'diminished') {
    const bass = (['root', 'third', 'fifth'] as const)[heard.inversion];
    return { root: heard.root, third: heard.third, bass };
  }
  const plain = chord.quality === 'diminished' && seventh === undefined;
  if (!plain && !rootless) return undefined;
  const [low, middle, high] = plain ? [root, third, fifth] : [third, fifth, seventh!];
  const bass = voicing.slices[0] && toneIn(voicing.slices[0], 'B')?.pitch;
  const at = bass && [low, middle, high].findIndex((name) => sameNoteName(name, bass));
  return {
    root: low,
    third: middle,
    bass: at === undefined ? undefined : (['root', 'third', 'fifth'] as const)[at],
  };
}

/** A triad that sounds whole, and nothing else, as long as its chord lasts. */
export interface SoundingTriad {
  readonly root: NoteName;
  readonly third: NoteName;
  readonly fifth: NoteName;
  readonly quality: 'major' | 'minor' | 'diminished';
  /** By the bass note at the beginning. */
  readonly inversion: 0 | 1 | 2;
}

const TRIADS = [
  { quality: 'major', third: 4, fifth: 1 },
  { quality: 'minor', third: -3, fifth: 1 },
  { quality: 'diminished', third: -3, fifth: -6 },
] as const;

/** The triad a chord sounds as, by the notes alone, whatever the analysis takes it for. Worked out once. */
export const soundingTriadOf: (voicing: Voicing) => SoundingTriad | undefined = remembered(findTriad);

function findTriad(voicing: Voicing): SoundingTriad | undefined {
  const names = new Map<number, NoteName>();
  for (const slice of voicing.slices)
    for (const voice of VOICES) {
      const tone = toneIn(slice, voice);
      if (tone !== undefined) names.set(fifthsPlace(tone.pitch), tone.pitch);
    }
  const bass = voicing.slices[0] && toneIn(voicing.slices[0], 'B');
  if (names.size !== 3 || bass === undefined) return undefined;
  for (const [place, root] of names)
    for (const { quality, third, fifth } of TRIADS) {
      const members = [root, names.get(place + third), names.get(place + fifth)];
      const inversion = members.findIndex((name) => name !== undefined && sameNoteName(name, bass.pitch));
      if (members[1] && members[2] && inversion >= 0)
        return { root, third: members[1], fifth: members[2], quality, inversion: inversion as 0 | 1 | 2 };
    }
  return undefined;
}
