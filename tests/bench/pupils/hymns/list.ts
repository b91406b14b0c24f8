import type { HymnTune } from './hymn-tune.ts';
import { INVENTED } from './invented.ts';
import { type TypedHymn, typedHymn } from './print.ts';
import { REMEMBERED } from './remembered.ts';

export const TUNES: readonly HymnTune[] = [...REMEMBERED, ...INVENTED];

/** Every second tune is in the half that the committed table learns from. */
export type Half = 'learnt from' | 'kept back';

export function halfOf(tune: HymnTune): Half {
  return TUNES.indexOf(tune) % 2 === 0 ? 'learnt from' : 'kept back';
}

/** The tunes of one half, with all voices there are. */
export function hymnsIn(half: Half): TypedHymn[] {
  return TUNES.filter((tune) => halfOf(tune) === half).map((tune) => typedHymn(tune));
}
