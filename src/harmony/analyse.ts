import type { Texture } from '../score/texture.ts';
import type { Analysis } from './analysis.ts';

/** Reads the harmony of a texture: phrases, keys, chords, ornaments and cadences. Pure. */
export function analyse(texture: Texture): Analysis {
  return { texture, phrases: [], keys: [], chords: [], ornaments: [], cadences: [] };
}
