/** Which keys a moment may be heard in: what rules ask that should not hang on one reading of the key. */
import { fifthsPlace, type NoteName, sameNoteName } from '../../score/pitch.ts';
import { remembered } from '../../score/remember.ts';
import type { Ticks } from '../../score/time.ts';
import type { Analysis, Chord, Key } from '../analysis.ts';
import { sameKey } from '../key.ts';
import { appliedKey, leadingNoteOf } from '../questions/degrees.ts';
import { chordAt } from '../questions/moments.ts';
import { secondOf } from '../questions/seconds.ts';
import type { Hearing } from './hearing.ts';

type Reach = 1 | 2;

/**
 * The keys in which a chord may be heard, the likeliest first: that of the reading, of the second reading, the key an
 * applied chord points to, and those of so many chords before and after it. Worked out once for an analysis.
 */
export function keysNear(analysis: Analysis, chord: Chord, reach: Reach = 2): readonly Key[] {
  return keysByReach[reach](analysis)[chord.index]!;
}

const keysByReach: Readonly<Record<Reach, (analysis: Analysis) => readonly (readonly Key[])[]>> = {
  1: remembered((analysis) => analysis.chords.map((chord) => keysAround(analysis, chord, 1))),
  2: remembered((analysis) => analysis.chords.map((chord) => keysAround(analysis, chord, 2))),
};

function keysAround(analysis: Analysis, chord: Chord, reach: Reach): readonly Key[] {
  const keys: Key[] = [];
  const add = (key: Key) => {
    if (!keys.some((other) => sameKey(other, key))) keys.push(key);
  };
  for (const by of [0, -1, 1, -2, 2].slice(0, 1 + 2 * reach)) {
    const near = analysis.chords[chord.index + by];
    if (near === undefined) continue;
    add(near.key);
    const second = secondOf(analysis, near);
    if (second !== undefined) add(second.key);
    if (near.roman.applied !== undefined) add(appliedKey(near.key, near.roman.applied));
  }
  return keys;
}

/** The keys in which a moment may be heard; none where no chord sounds. */
export function keysNearTo(analysis: Analysis, at: Ticks): readonly Key[] {
  const chord = chordAt(analysis, at);
  return chord === undefined ? [] : keysNear(analysis, chord);
}

/** A chord that sounds as a dominant, with the note that leads and the note it leads to. */
export interface DominantSound {
  readonly key: Key;
  readonly leading: NoteName;
  readonly tonic: NoteName;
}

/**
 * The near key in which what is heard is a dominant: its V, or the diminished chord on its leading note, with or
 * without a seventh. Undefined where it is none in any key near.
 */
export function dominantIn(analysis: Analysis, { at, members, quality }: Hearing): DominantSound | undefined {
  const leading = quality === 'diminished' ? members.root : quality === 'major' ? members.third : undefined;
  if (leading === undefined) return undefined;
  // A major seventh on a major triad is no dominant.
  const { root, seventh } = members;
  if (quality === 'major' && seventh !== undefined && fifthsPlace(seventh) !== fifthsPlace(root) - 2)
    return undefined;
  // On the second degree of the minor key that reigns a diminished triad leads nowhere but to the dominant.
  const own = chordAt(analysis, at)?.key;
  if (quality === 'diminished' && own?.mode === 'minor' && fifthsPlace(root) === fifthsPlace(own.tonic) + 2)
    return undefined;
  const key = keysNearTo(analysis, at).find((near) => sameNoteName(leadingNoteOf(near), leading));
  return key === undefined ? undefined : { key, leading, tonic: key.tonic };
}
