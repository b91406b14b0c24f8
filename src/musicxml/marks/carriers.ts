/** Which written note carries a mark. */

import type { ByVoice, VoiceName } from '../../score/score.ts';
import type { Ticks } from '../../score/time.ts';
import type { ReadFrom } from '../assemble.ts';

/** From the lowest: what is under the bass is carried by it or by the voice next above. */
const FROM_BELOW = ['B', 'T', 'A', 'S'] as const;

type Notes = ByVoice<readonly ReadFrom[]>;

/** The note of a voice that begins at a moment, or sounds through it. */
export function noteAt(notes: Notes, voice: VoiceName, at: Ticks): ReadFrom | undefined {
  const all = notes[voice];
  let low = 0;
  let high = all.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (all[middle]!.until <= at) low = middle + 1;
    else high = middle;
  }
  const found = all[low];
  return found !== undefined && found.at <= at ? found : undefined;
}

/**
 * The note under which a word about a moment stands: the one that began last on the bass's staff, the bass before the
 * tenor of a closed score, so that the row stays one and in order; where the bass is silent, the lowest voice's.
 */
export function carrierOfLabel(notes: Notes, at: Ticks): ReadFrom | undefined {
  const [lowest, ...others] = FROM_BELOW.flatMap((voice) => noteAt(notes, voice, at) ?? []);
  const beside = others.filter((note) => note.part === lowest?.part && note.note.staff === lowest.note.staff);
  return beside.reduce((last, note) => (last !== undefined && note.at > last.at ? note : last), lowest);
}

/** The note over which a number stands: the voice's own, else one that sounds then, else the last before. */
export function carrierOfNumber(notes: Notes, voice: VoiceName, at: Ticks): ReadFrom | undefined {
  const own = noteAt(notes, voice, at);
  if (own !== undefined) return own;
  const others = [...FROM_BELOW].reverse().flatMap((other) => noteAt(notes, other, at) ?? []);
  if (others.length > 0) return others[0];
  return notes[voice].findLast((note) => note.at <= at) ?? notes[voice][0];
}
