/**
 * Chords by the notes alone. The analysis weighs everything that is around and may explain a note away, or take a
 * chord with a wrong note in it for another chord in another key; what sounds at one moment, taken by itself, is a
 * second witness, which rules call where a fault could hide behind the reading.
 */

import { fifthsPlace, type NoteName, sameNoteName } from '../../score/pitch.ts';
import { remembered } from '../../score/remember.ts';
import { VOICES } from '../../score/score.ts';
import { lastBegun, stretchAt } from '../../score/search.ts';
import { isAllWritten, type Slice, type Texture, type Tone, toneIn } from '../../score/texture.ts';
import type { Ticks } from '../../score/time.ts';
import type { Members, TriadQuality } from '../analysis.ts';
import { CHORD_TYPES, membersAt } from '../chord-types.ts';

/**
 * A stretch in which all that sounds is one triad or seventh chord, of which only the fifth may be missing; a triad
 * without its fifth counts in root position only.
 */
export interface Hearing {
  readonly at: Ticks;
  readonly until: Ticks;
  readonly slices: readonly Slice[];
  readonly members: Members;
  readonly quality: TriadQuality;
  /** The lowest note when it begins. */
  readonly bass: NoteName;
}

/** The plain chords of {@link CHORD_TYPES}: none with a name of its own, none with an augmented fifth. */
const PLAIN = CHORD_TYPES.map((type, index) => ({ type, index })).filter(
  ({ type }) => type.special === undefined && type.quality !== 'augmented',
);

/** All stretches that sound as a plain chord with three voices or more, in order of time. Worked out once. */
export const hearings: (texture: Texture) => readonly Hearing[] = remembered((texture) => {
  const found: (Hearing & { readonly slices: Slice[]; until: Ticks })[] = [];
  for (const slice of texture.slices) {
    const heard = hear(slice);
    if (heard === undefined) continue;
    const last = found.at(-1);
    if (last !== undefined && last.until === heard.at && sameChord(last, heard)) {
      last.until = heard.until;
      last.slices.push(slice);
    } else found.push({ ...heard, slices: [slice] });
  }
  return found;
});

/** The first chord heard from a moment on; undefined at the end. */
export function hearingFrom(texture: Texture, at: Ticks): Hearing | undefined {
  const all = hearings(texture);
  return all[firstFrom(all, at)];
}

/** The chord heard at a moment, if a plain one is. */
export function hearingAt(texture: Texture, at: Ticks): Hearing | undefined {
  return stretchAt(hearings(texture), at);
}

/** The major chord whose third a tone is, or the diminished one whose root: it sounds as a leading note there. */
export function chordLedBy(texture: Texture, tone: Tone): Hearing | undefined {
  const heard = hearingAt(texture, tone.at);
  if (heard?.quality !== 'major' && heard?.quality !== 'diminished') return undefined;
  const { root, third } = heard.members;
  return sameNoteName(heard.quality === 'major' ? third : root, tone.pitch) ? heard : undefined;
}

/** The chord goes on to that on whose root the tone, its leading note, would rise. */
export function reachesItsTonic(texture: Texture, { until }: Hearing, tone: Tone): boolean {
  const goal = hearingAt(texture, until);
  return goal !== undefined && fifthsPlace(tone.pitch) - fifthsPlace(goal.members.root) === 5;
}

/** The index of the first hearing that begins at a moment or later; the length where none does. */
function firstFrom(all: readonly Hearing[], at: Ticks): number {
  return lastBegun(all, at - 1, (hearing) => hearing.at) + 1;
}

/** The tones that sound in a slice, from the top. */
export function tonesIn(slice: Slice): readonly Tone[] {
  const tones: Tone[] = [];
  for (const voice of VOICES) {
    const tone = toneIn(slice, voice);
    if (tone !== undefined) tones.push(tone);
  }
  return tones;
}

/** No voice is still to be written in it, whose note could make it another chord. */
export function isWritten({ slices }: Hearing): boolean {
  return slices.every(isAllWritten);
}

function hear(slice: Slice): Hearing | undefined {
  const tones = tonesIn(slice);
  const bass = toneIn(slice, 'B');
  if (tones.length < 3 || bass === undefined) return undefined;
  const places = new Set(tones.map((tone) => fifthsPlace(tone.pitch)));
  // Two notes are a chord only where the lower, in the bass, has the other for its third.
  const needed = places.size === 2 ? fifthsPlace(bass.pitch) : undefined;
  if (places.size < 2 || places.size > 4) return undefined;
  for (const { type, index } of PLAIN) {
    const { offsets } = type;
    if (places.size > offsets.length) continue;
    for (const root of places) {
      if (needed !== undefined && root !== needed) continue;
      const whole = offsets.every((offset, i) => i === 2 || places.has(root + offset));
      if (!whole || ![...places].every((place) => offsets.includes(place - root))) continue;
      return {
        at: slice.at,
        until: slice.until,
        slices: [slice],
        members: membersAt(root, index),
        quality: type.quality,
        bass: bass.pitch,
      };
    }
  }
  return undefined;
}

function sameChord(a: Hearing, b: Hearing): boolean {
  const same = (x: NoteName | undefined, y: NoteName | undefined) =>
    x === undefined || y === undefined ? x === y : fifthsPlace(x) === fifthsPlace(y);
  return (
    same(a.members.root, b.members.root) &&
    same(a.members.seventh, b.members.seventh) &&
    a.quality === b.quality
  );
}
