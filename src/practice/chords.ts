/** The chords that a search for answers may use, and which may follow which. Common practice, no source. */
import type { Degree, Mode } from './scale.ts';

export const CHORDS = [
  'I',
  'I6',
  'ii',
  'ii6',
  'IV',
  'V',
  'V6',
  'V7',
  'V65',
  'V42',
  'vi',
  'viio6',
  'I64',
] as const;
export type ChordName = (typeof CHORDS)[number];

interface Kind {
  /** Degree of the root, from 0. */
  readonly root: number;
  /** Which member is in the bass, from 0. */
  readonly bass: number;
  readonly seventh?: true;
}

const KINDS: Readonly<Record<ChordName, Kind>> = {
  I: { root: 0, bass: 0 },
  I6: { root: 0, bass: 1 },
  ii: { root: 1, bass: 0 },
  ii6: { root: 1, bass: 1 },
  IV: { root: 3, bass: 0 },
  V: { root: 4, bass: 0 },
  V6: { root: 4, bass: 1 },
  V7: { root: 4, bass: 0, seventh: true },
  V65: { root: 4, bass: 1, seventh: true },
  V42: { root: 4, bass: 3, seventh: true },
  vi: { root: 5, bass: 0 },
  viio6: { root: 6, bass: 1 },
  I64: { root: 0, bass: 2 },
};

const FOLLOWING: Readonly<Record<ChordName, readonly ChordName[]>> = {
  I: ['I6', 'ii', 'ii6', 'IV', 'V', 'V6', 'V7', 'V65', 'V42', 'vi', 'viio6'],
  I6: ['I', 'ii', 'ii6', 'IV', 'V', 'V7', 'V65', 'viio6'],
  ii: ['V', 'V6', 'V7', 'V65'],
  ii6: ['V', 'V7', 'I64'],
  IV: ['I', 'I6', 'ii', 'ii6', 'V', 'V7', 'V42', 'viio6', 'I64'],
  V: ['I', 'vi', 'V42'],
  V6: ['I'],
  V7: ['I', 'vi'],
  V65: ['I'],
  V42: ['I6'],
  vi: ['I6', 'ii', 'ii6', 'IV', 'V', 'V6'],
  viio6: ['I', 'I6'],
  I64: ['V', 'V7'],
};

/** The members from the root up; the seventh degree of minor is raised where it leads. */
export function membersOf(chord: ChordName, mode: Mode, last = false): Degree[] {
  const { root, seventh } = KINDS[chord];
  const members = [0, 2, 4, ...(seventh ? [6] : [])].map((above) => (root + above) % 7);
  return members.map((degree) => ({
    degree,
    raised:
      mode === 'minor' &&
      // A leading note, or at the very end the third of a major chord on the tonic.
      (degree === 6 || (last && chord === 'I' && degree === 2)),
  }));
}

export function bassMember(chord: ChordName): number {
  return KINDS[chord].bass;
}

export function isSeventh(chord: ChordName): boolean {
  return KINDS[chord].seventh === true;
}

/** The leading note's degree where it is a member, which must not be doubled. */
export function leads(chord: ChordName): boolean {
  return KINDS[chord].root === 4 || KINDS[chord].root === 6;
}

export function mayFollow(before: ChordName, after: ChordName, mode: Mode): boolean {
  // The diminished triad on the second degree of minor stands in first inversion only.
  if (mode === 'minor' && (before === 'ii' || after === 'ii')) return false;
  return FOLLOWING[before].includes(after);
}
