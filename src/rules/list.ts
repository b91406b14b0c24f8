/** Every rule, in the order in which they are listed to people: by family. Adding a rule touches its file and this list. */
import { barLength } from './bar-length.ts';
import { doubledLeadingNote } from './doubled-leading-note.ts';
import { emptyBeat } from './empty-beat.ts';
import { missingThird } from './missing-third.ts';
import { partialFermata } from './partial-fermata.ts';
import type { Rule } from './rule.ts';
import { unfinished } from './unfinished.ts';
import { unresolvedLeadingNote } from './unresolved-leading-note.ts';
import { unresolvedSeventh } from './unresolved-seventh.ts';
import { voicesEndApart } from './voices-end-apart.ts';
import { weakCadence } from './weak-cadence.ts';

export const RULES: readonly Rule[] = [
  // Consecutives
  // Melody
  // Spacing and range
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
