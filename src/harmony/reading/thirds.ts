/** Triads of which nobody sings the third: what is not heard is not claimed. */
import { stretchesWithin } from '../../score/search.ts';
import { isAllWritten, type Texture } from '../../score/texture.ts';
import { CHORD_TYPES, TYPE } from '../chord-types.ts';
import type { Harmony } from './harmony.ts';
import { soundingIn } from './sounding.ts';

/** Major triads of a key, by how many fifths their roots lie above its tonic; the dominant of a minor key leads. */
const MAJOR_ON: Readonly<Record<Harmony['mode'], readonly number[]>> = {
  major: [-1, 0, 1],
  minor: [-4, -3, -2, 1],
};
const MINOR_ON: Readonly<Record<Harmony['mode'], readonly number[]>> = {
  major: [2, 3, 4],
  minor: [-1, 0],
};

/**
 * The harmonies; a triad on a degree of its key is major or minor as the key has it where neither it nor what lies
 * beside it on the same root has a third. An open fifth on the tonic of a minor key is no tierce. Where a voice is still
 * to be written its third may come, so that stays as it is likely.
 */
export function withOwnThirds(texture: Texture, harmonies: readonly Harmony[]): Harmony[] {
  return harmonies.map((harmony, i) => {
    const own = ownType(harmony);
    if (own === undefined || own === harmony.type || !isWritten(texture, harmony)) return harmony;
    const around = [harmonies[i - 1], harmony, harmonies[i + 1]].filter(
      (h) => h !== undefined && h.root === harmony.root && h.at <= harmony.until && h.until >= harmony.at,
    );
    return around.some((h) => singsThird(texture, h!)) ? harmony : { ...harmony, type: own };
  });
}

/** Undefined for what is no plain triad, or stands on no degree that a plain triad of the key has. */
function ownType({ tonic, mode, root, type }: Harmony): number | undefined {
  if (type !== TYPE.M && type !== TYPE.m) return undefined;
  if (MAJOR_ON[mode].includes(root - tonic)) return TYPE.M;
  return MINOR_ON[mode].includes(root - tonic) ? TYPE.m : undefined;
}

function isWritten(texture: Texture, { at, until }: Harmony): boolean {
  return stretchesWithin(texture.slices, at, until).every(isAllWritten);
}

function singsThird(texture: Texture, harmony: Harmony): boolean {
  return soundingIn(texture, harmony).has(harmony.root + CHORD_TYPES[harmony.type]!.offsets[1]!);
}
