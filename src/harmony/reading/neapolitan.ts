/**
 * The Neapolitan sixth where the search takes it for the subdominant with a foreign note: the chorales it learnt from
 * hardly have one. Where nothing else sounds, the notes decide.
 */
import { fifthsPlace } from '../../score/pitch.ts';
import { VOICES } from '../../score/score.ts';
import { stretchesWithin } from '../../score/search.ts';
import type { Texture } from '../../score/texture.ts';
import { CHORD_TYPES, TYPE } from '../chord-types.ts';
import type { Harmony } from './harmony.ts';

/** In fifths from the tonic. */
const LOWERED_SECOND = -5;
const SUBDOMINANT = -1;

/**
 * The harmony; or, where it is iv in a minor key, but what sounds from its beginning to its end is the whole major
 * triad on the lowered second degree in first inversion and nothing else, that triad.
 */
export function neapolitanAsHeard(texture: Texture, harmony: Harmony): Harmony {
  const { at, until, tonic, mode, root, type } = harmony;
  if (mode !== 'minor' || root !== tonic + SUBDOMINANT || type !== TYPE.m) return harmony;
  const lowered = tonic + LOWERED_SECOND;
  const places = (voice: (typeof VOICES)[number]) =>
    stretchesWithin(texture.tones[voice], at, until).map(({ pitch }) => fifthsPlace(pitch));
  const members = CHORD_TYPES[TYPE.M!]!.offsets.map((offset) => lowered + offset);
  const sounding = new Set(VOICES.flatMap(places));
  const whole = sounding.size === members.length && members.every((member) => sounding.has(member));
  if (!whole || !places('B').every((place) => place === members[1])) return harmony;
  return { ...harmony, root: lowered, type: TYPE.M!, inversion: 1 };
}
