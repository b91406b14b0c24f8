/** Names a chord in a key: from root and type to a Roman numeral, applied chords included. */
import { fifthsPlace } from '../../score/pitch.ts';
import type { Degree, Key, Roman } from '../analysis.ts';
import { CHORD_TYPES, TYPE } from '../chord-types.ts';
import { keyFacts } from '../tonal.ts';

/** What follows a chord, for telling V7/IV from a tonic seventh and a subtonic from V/III. */
export interface Following {
  readonly root: number;
  readonly type: number;
}

/** Degrees of the scale in fifths from the tonic. */
const SCALES: Readonly<Record<Key['mode'], readonly number[]>> = {
  major: scalePlaces('major'),
  minor: scalePlaces('minor'),
};
/** Triads that stand on the degrees without any alteration; in minor, of both forms of 6 and 7. */
const DIATONIC: Readonly<Record<Key['mode'], ReadonlySet<string>>> = {
  major: set('0M 0Mmaj7 2m 2m7 4m 4m7 -1M -1Mmaj7 1M 1M7 3m 3m7 5o 5ø7'),
  minor: set(
    '0m 0m7 0mmaj7 2o 2ø7 2m 2m7 -3M -3Mmaj7 -3+ -3+maj7 -1m -1m7 -1M -1M7 1m 1m7 1M 1M7 -4M -4Mmaj7 3o 3ø7 -2M -2M7 5o 5o7',
  ),
};
/** Chromatic chords that are borrowed from the other mode rather than applied to a degree. */
const BORROWED: Readonly<Record<Key['mode'], ReadonlySet<string>>> = {
  major: set('0m -1m -1m7 2o 2ø7 -4M -4Mmaj7 5o7 -3M 1m 1m7 -2M'),
  minor: set('0M 5ø7'),
};
/** Degrees that can be made a passing tonic, in fifths from the tonic, with the quality of their triads. */
const TARGETS: Readonly<Record<Key['mode'], readonly (readonly [number, 'major' | 'minor'])[]>> = {
  major: [
    [1, 'major'],
    [3, 'minor'],
    [-1, 'major'],
    [2, 'minor'],
    [4, 'minor'],
  ],
  minor: [
    [-1, 'minor'],
    [-3, 'major'],
    [1, 'major'],
    [-4, 'major'],
    [-2, 'major'],
  ],
};

function scalePlaces(mode: Key['mode']): number[] {
  return keyFacts({ tonic: { step: 'C', alteration: 0 }, mode }).scale.map(fifthsPlace);
}

function set(text: string): ReadonlySet<string> {
  return new Set(text.split(' '));
}

/**
 * Names a chord.
 *
 * @param root place of the root on the line of fifths
 * @param type index into CHORD_TYPES
 * @param inversion 0 to 3
 * @param following the next different chord, if any: where a chord can be read as applied to it, it is
 */
export function romanOf(
  key: Key,
  root: number,
  type: number,
  inversion: Roman['inversion'],
  following?: Following,
): Roman {
  const tonic = fifthsPlace(key.tonic);
  const offset = root - tonic;
  const { quality, seventh, special } = CHORD_TYPES[type]!;
  const shape = { quality, inversion, ...(seventh === undefined ? {} : { seventh }) };
  if (special !== undefined) {
    // All three lead to the note a semitone above their lowest: to the dominant when that is the sixth degree.
    const goal = special === 'French sixth' ? offset - 2 : offset - 6;
    const degree = special === 'French sixth' ? 2 : 4;
    const alteration = special === 'French sixth' ? 0 : 1;
    const applied = goal === 0 ? undefined : plainDegree(key, goal, key.mode === 'major' ? 'minor' : 'major');
    return { ...shape, degree, alteration, special, ...(applied ? { applied } : {}) };
  }
  if (offset === -5 && type === TYPE.M) return { ...shape, degree: 2, alteration: -1, special: 'Neapolitan' };
  const name = `${offset}${CHORD_TYPES[type]!.name}`;
  const plain = { ...shape, ...plainDegree(key, offset, quality) };
  const applied = appliedTo(key, offset, type, following === undefined ? undefined : following.root - tonic);
  if (applied === undefined) return plain;
  const resolves = following !== undefined && following.root - tonic === applied.target;
  const ambiguous = DIATONIC[key.mode].has(name) || BORROWED[key.mode].has(name);
  // A chord that belongs to the key, or is borrowed, is called applied only when it also behaves so.
  if (ambiguous && !(resolves && behavesApplied(key, offset, type))) return plain;
  const dominant = CHORD_TYPES[type]!.quality === 'major';
  return {
    ...shape,
    degree: dominant ? 5 : 7,
    alteration: 0,
    applied: plainDegree(key, applied.target, applied.quality),
  };
}

/** Chords of the key that, going where they point, are heard as applied: VII7 and VII6 to III, IV7 to VII in minor. */
function behavesApplied(key: Key, offset: number, type: number): boolean {
  if (key.mode === 'major') return false;
  const name = `${offset}${CHORD_TYPES[type]!.name}`;
  return (
    name === '-2M7' || name === '-2M' || name === '-1M7' || name === '0M' || name === '3o' || name === '2o'
  );
}

/** The degree a dominant or leading-note chord points to; the one that follows, where there is a choice. */
function appliedTo(
  key: Key,
  offset: number,
  type: number,
  following: number | undefined,
): { target: number; quality: 'major' | 'minor' } | undefined {
  const distance =
    type === TYPE.M || type === TYPE.M7 ? 1 : type === TYPE.o || type === TYPE.ø7 || type === TYPE.o7 ? 5 : 0;
  if (distance === 0) return undefined;
  const target = TARGETS[key.mode].find(([place]) => place === offset - distance);
  if (target === undefined) return undefined;
  const minorDominant = key.mode === 'minor' && target[0] === 1 && following === 1;
  return { target: target[0], quality: minorDominant ? 'major' : target[1] };
}

/** The degree whose root stands `offset` fifths from the tonic. */
function plainDegree(key: Key, offset: number, quality: Roman['quality']): Degree {
  const scale = SCALES[key.mode];
  for (const alteration of [0, 1, -1, 2, -2]) {
    const index = scale.indexOf(offset - 7 * alteration);
    if (index < 0) continue;
    const degree = (index + 1) as Degree['degree'];
    // The leading note of minor is its own: alteration 0 for viio.
    const own = key.mode === 'minor' && degree === 7 && quality === 'diminished';
    return { degree, alteration: clamp(own ? alteration - 1 : alteration), quality };
  }
  return { degree: 1, alteration: 0, quality };
}

function clamp(alteration: number): -1 | 0 | 1 {
  return alteration > 0 ? 1 : alteration < 0 ? -1 : 0;
}
