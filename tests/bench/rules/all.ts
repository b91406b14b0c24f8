/** Every planter, by family. A family's planters are one file; adding one is one line here. */
import { CADENCES } from './cadences.ts';
import { CHORDS } from './chords.ts';
import { CONSECUTIVES } from './consecutives.ts';
import { DISSONANCE } from './dissonance.ts';
import { MELODY } from './melody.ts';
import { NOTATION } from './notation.ts';
import type { Planter } from './planter.ts';
import { PROGRESSIONS } from './progressions.ts';
import { SPACING } from './spacing.ts';

export const PLANTERS: readonly Planter[] = [
  ...CONSECUTIVES,
  ...MELODY,
  ...SPACING,
  ...CHORDS,
  ...PROGRESSIONS,
  ...DISSONANCE,
  ...CADENCES,
  ...NOTATION,
];
