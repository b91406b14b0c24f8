/** Questions about how voices move against each other that need nothing but the texture. */
import { intervalBetween, isOctave, isPerfectFifth, isUnison } from './interval.ts';
import type { VoiceName } from './score.ts';
import type { Move, Texture, Tone, Transition } from './texture.ts';

/** Two voices, the upper one first. */
export type Pair = readonly [VoiceName, VoiceName];

/** All six pairs of voices, from the top. */
export const PAIRS: readonly Pair[] = [
  ['S', 'A'],
  ['S', 'T'],
  ['S', 'B'],
  ['A', 'T'],
  ['A', 'B'],
  ['T', 'B'],
];

/** The three pairs of voices that lie next to each other. */
export const NEIGHBOURS: readonly Pair[] = [
  ['S', 'A'],
  ['A', 'T'],
  ['T', 'B'],
];

/** Soprano and bass: the outer voices. */
export function isOuterPair(pair: Pair): boolean {
  return pair[0] === 'S' && pair[1] === 'B';
}

export function isInner(voice: VoiceName): boolean {
  return voice === 'A' || voice === 'T';
}

/**
 * How two voices move against each other: `similar` both the same way, `contrary` opposite ways, `oblique` one of
 * them keeps its pitch, `still` both do.
 */
export type Motion = 'similar' | 'contrary' | 'oblique' | 'still';

export function motionOf(a: Pick<Move, 'direction'>, b: Pick<Move, 'direction'>): Motion {
  if (a.direction === 'level') return b.direction === 'level' ? 'still' : 'oblique';
  if (b.direction === 'level') return 'oblique';
  return a.direction === b.direction ? 'similar' : 'contrary';
}

/** Perfect consonances by spelling, compounds included; an octave and a unison are told apart. */
export type PerfectInterval = 'fifth' | 'octave' | 'unison';

export function perfectInterval(a: Tone, b: Tone): PerfectInterval | undefined {
  const interval = intervalBetween(a.pitch, b.pitch);
  if (isUnison(interval)) return 'unison';
  if (isOctave(interval)) return 'octave';
  return isPerfectFifth(interval) ? 'fifth' : undefined;
}

/**
 * True where a phrase ends under a fermata between two slices: a fermata stands in the first, and the soprano does
 * not sing on through it (a bass that moves under a held note is still inside the phrase).
 */
export function crossesFermata(transition: Pick<Transition, 'from' | 'to'>): boolean {
  const { from, to } = transition;
  if (!from.fermata) return false;
  const soprano = from.parts.S;
  if (soprano.kind === 'tone') return soprano.tone.until <= to.at;
  return true;
}

/** The next tone of the same voice where nothing lies between the two: no rest, no gap. */
export function nextTone(texture: Texture, tone: Tone): Tone | undefined {
  const next = texture.tones[tone.voice][tone.index + 1];
  return next !== undefined && next.at === tone.until ? next : undefined;
}

/** The tone before, likewise. */
export function previousTone(texture: Texture, tone: Tone): Tone | undefined {
  const previous = texture.tones[tone.voice][tone.index - 1];
  return previous !== undefined && previous.until === tone.at ? previous : undefined;
}
