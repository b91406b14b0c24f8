/** What sounds in a stretch, by places on the line of fifths. */
import { fifthsPlace } from '../../score/pitch.ts';
import { VOICES, type VoiceName } from '../../score/score.ts';
import { stretchesWithin } from '../../score/search.ts';
import type { Texture } from '../../score/texture.ts';
import { CHORD_TYPES } from '../chord-types.ts';
import type { Harmony } from './harmony.ts';

/** The places of the notes that these voices sing from `at` to before `until`. */
export function soundingIn(
  texture: Texture,
  { at, until }: Pick<Harmony, 'at' | 'until'>,
  voices: readonly VoiceName[] = VOICES,
): ReadonlySet<number> {
  const tones = voices.flatMap((voice) => stretchesWithin(texture.tones[voice], at, until));
  return new Set(tones.map(({ pitch }) => fifthsPlace(pitch)));
}

/** All members of the chord sound in its time, and nothing else. */
export function soundsWhole(
  texture: Texture,
  harmony: Pick<Harmony, 'at' | 'until' | 'root' | 'type'>,
): boolean {
  const members = CHORD_TYPES[harmony.type]!.offsets.map((offset) => harmony.root + offset);
  const sounding = soundingIn(texture, harmony);
  return sounding.size === members.length && members.every((member) => sounding.has(member));
}
