/** Every rule, in the order in which they are listed to people: by family. Adding a rule touches its file and this list. */

import { augmentedStep } from './augmented-step.ts';
import { barLength } from './bar-length.ts';
import { contraryFifths } from './contrary-fifths.ts';
import { contraryOctaves } from './contrary-octaves.ts';
import { doubledLeadingNote } from './doubled-leading-note.ts';
import { emptyBeat } from './empty-beat.ts';
import { exposedFifths } from './exposed-fifths.ts';
import { exposedOctaves } from './exposed-octaves.ts';
import { missingThird } from './missing-third.ts';
import { parallelFifths } from './parallel-fifths.ts';
import { parallelOctaves } from './parallel-octaves.ts';
import { parallelUnisons } from './parallel-unisons.ts';
import { partialFermata } from './partial-fermata.ts';
import type { Rule } from './rule.ts';
import { unequalFifths } from './unequal-fifths.ts';
import { unfinished } from './unfinished.ts';
import { unresolvedLeadingNote } from './unresolved-leading-note.ts';
import { unresolvedSeventh } from './unresolved-seventh.ts';
import { voiceCrossing } from './voice-crossing.ts';
import { voiceOverlap } from './voice-overlap.ts';
import { voiceRange } from './voice-range.ts';
import { voiceSpacing } from './voice-spacing.ts';
import { voicesEndApart } from './voices-end-apart.ts';
import { weakCadence } from './weak-cadence.ts';
import { wideLeap } from './wide-leap.ts';

export const RULES: readonly Rule[] = [
  // Consecutives
  parallelFifths,
  parallelOctaves,
  parallelUnisons,
  contraryFifths,
  contraryOctaves,
  unequalFifths,
  exposedFifths,
  exposedOctaves,
  // Melody
  augmentedStep,
  wideLeap,
  // Spacing and range
  voiceRange,
  voiceSpacing,
  voiceCrossing,
  voiceOverlap,
  // Chords
  missingThird,
  doubledLeadingNote,
  unresolvedLeadingNote,
  unresolvedSeventh,
  // Dissonance
  // Cadences and phrases
  weakCadence,
  // Rhythm and notation
  barLength,
  voicesEndApart,
  partialFermata,
  emptyBeat,
  unfinished,
];
