/** The members of a chord, and which of them a note is. */
import { type NoteName, sameNoteName } from '../../score/pitch.ts';
import type { Members } from '../analysis.ts';

export type Member = 'root' | 'third' | 'fifth' | 'seventh';

export const MEMBERS: readonly Member[] = ['root', 'third', 'fifth', 'seventh'];

/** Which member of the chord a note is, by spelling; undefined for a foreign note. */
export function memberOf(chord: { readonly members: Members }, note: NoteName): Member | undefined {
  const { root, third, fifth, seventh } = chord.members;
  if (sameNoteName(note, root)) return 'root';
  if (sameNoteName(note, third)) return 'third';
  if (sameNoteName(note, fifth)) return 'fifth';
  return seventh !== undefined && sameNoteName(note, seventh) ? 'seventh' : undefined;
}

/** The members a chord has, from the root up. */
export function membersOf(chord: { readonly members: Members }): readonly NoteName[] {
  const { root, third, fifth, seventh } = chord.members;
  return seventh === undefined ? [root, third, fifth] : [root, third, fifth, seventh];
}
