/** Where the seventh of a chord enters: until then the chord is a triad, and the figure changes there. */
import { fifthsPlace } from '../../score/pitch.ts';
import { VOICES } from '../../score/score.ts';
import { sliceAt, type Texture, toneIn } from '../../score/texture.ts';
import type { Ticks } from '../../score/time.ts';
import { CHORD_TYPES, memberIndex, TYPE } from '../chord-types.ts';
import type { Harmony } from './harmony.ts';

/** The triads that sevenths stand on, by type. */
const TRIAD_OF: Readonly<Record<number, number>> = Object.fromEntries(
  CHORD_TYPES.flatMap(({ offsets, special }, type) => {
    const triad = CHORD_TYPES.findIndex(
      (other) => other.offsets.length === 3 && other.offsets.every((offset, i) => offset === offsets[i]),
    );
    return offsets.length === 4 && special === undefined ? [[type, triad]] : [];
  }),
);

/**
 * A harmony cut where its seventh enters after its beginning; and a dominant, whose root falls a fifth to the next
 * harmony, where a passing seventh enters in it, however short.
 */
export function cutAtSeventh(
  texture: Texture,
  harmony: Harmony,
  next: { readonly root: number } | undefined,
): Harmony[] {
  const triad = TRIAD_OF[harmony.type];
  if (triad !== undefined) {
    const entry = firstSound(texture, harmony, harmony.root + CHORD_TYPES[harmony.type]!.offsets[3]!);
    return entry === undefined || entry <= harmony.at
      ? [harmony]
      : cut(texture, harmony, entry, triad, harmony.type);
  }
  if (harmony.type !== TYPE.M || next === undefined || next.root !== harmony.root - 1) return [harmony];
  const entry = passingSeventh(texture, harmony);
  return entry === undefined ? [harmony] : cut(texture, harmony, entry, TYPE.M!, TYPE.M7!);
}

function cut(texture: Texture, harmony: Harmony, at: Ticks, before: number, after: number): Harmony[] {
  const early = { ...harmony, until: at, type: before };
  return [
    { ...early, inversion: inversionOf(texture, early) },
    { ...harmony, at, type: after },
  ];
}

/** The position a triad stands in: its own, or, where the seventh was to be in the bass, what the bass has before. */
function inversionOf(texture: Texture, { at, root, type, inversion }: Harmony): Harmony['inversion'] {
  if (inversion < 3) return inversion;
  const slice = sliceAt(texture, at);
  const bass = slice && toneIn(slice, 'B');
  const member = bass === undefined ? 0 : memberIndex(root, type, fifthsPlace(bass.pitch));
  return Math.max(0, member) as Harmony['inversion'];
}

/** When a note first sounds in a harmony; undefined where it does not. */
function firstSound(texture: Texture, { at, until }: Harmony, place: number): Ticks | undefined {
  const times = VOICES.flatMap((voice) => {
    const tone = texture.tones[voice].find(
      (t) => t.until > at && t.at < until && fifthsPlace(t.pitch) === place,
    );
    return tone === undefined ? [] : [tone.at];
  });
  return times.length === 0 ? undefined : Math.min(...times);
}

/** When a seventh enters that then sounds to the dominant's end and leads to the next harmony. */
function passingSeventh(texture: Texture, { at, until, root }: Harmony): Ticks | undefined {
  for (const voice of VOICES) {
    const tone = texture.tones[voice].find((t) => t.until === until && t.at > at);
    if (tone !== undefined && fifthsPlace(tone.pitch) === root - 2) return tone.at;
  }
  return undefined;
}
