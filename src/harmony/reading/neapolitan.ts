/**
 * The Neapolitan sixth where the search takes it for the subdominant with a foreign note: the chorales it learnt from
 * hardly have one. Where nothing else sounds, the notes decide.
 */
import type { Texture } from '../../score/texture.ts';
import { CHORD_TYPES, TYPE } from '../chord-types.ts';
import type { Harmony } from './harmony.ts';
import { soundingIn, soundsWhole } from './sounding.ts';

/** In fifths from the tonic. */
const LOWERED_SECOND = -5;
const SUBDOMINANT = -1;

/**
 * The harmony; or, where it is iv in a minor key, but what sounds from its beginning to its end is the whole major
 * triad on the lowered second degree in first inversion and nothing else, that triad.
 */
export function neapolitanAsHeard(texture: Texture, harmony: Harmony): Harmony {
  const { tonic, mode, root, type } = harmony;
  if (mode !== 'minor' || root !== tonic + SUBDOMINANT || type !== TYPE.m) return harmony;
  const heard = { ...harmony, root: tonic + LOWERED_SECOND, type: TYPE.M!, inversion: 1 } as const;
  const third = heard.root + CHORD_TYPES[heard.type]!.offsets[1]!;
  const bass = [...soundingIn(texture, heard, ['B'])];
  return soundsWhole(texture, heard) && bass.every((place) => place === third) ? heard : harmony;
}
