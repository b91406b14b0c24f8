/** Every rule, in the order in which they are listed to people: by family. Adding a rule touches its file and this list. */

import { accentedPassingConsecutives } from './accented-passing-consecutives.ts';
import { accidentalSlip } from './accidental-slip.ts';
import { anticipatedResolution } from './anticipated-resolution.ts';
import { augmentedLeap } from './augmented-leap.ts';
import { augmentedStep } from './augmented-step.ts';
import { backwardStep } from './backward-step.ts';
import { barLength } from './bar-length.ts';
import { circlingLine } from './circling-line.ts';
import { contraryFifths } from './contrary-fifths.ts';
import { contraryOctaves } from './contrary-octaves.ts';
import { diminishedLeap } from './diminished-leap.ts';
import { diminishedRootPosition } from './diminished-root-position.ts';
import { dividedVoice } from './divided-voice.ts';
import { doubledDiminishedRoot } from './doubled-diminished-root.ts';
import { doubledLeadingNote } from './doubled-leading-note.ts';
import { doubledSeventh } from './doubled-seventh.ts';
import { doubledThird } from './doubled-third.ts';
import { earlyHomeClose } from './early-home-close.ts';
import { emptyBeat } from './empty-beat.ts';
import { endsInAnotherKey } from './ends-in-another-key.ts';
import { exposedFifths } from './exposed-fifths.ts';
import { exposedOctaves } from './exposed-octaves.ts';
import { falseRelation } from './false-relation.ts';
import { figuresDisagree } from './figures-disagree.ts';
import { hammeredNote } from './hammered-note.ts';
import { harmonyHeldOver } from './harmony-held-over.ts';
import { heldUnison } from './held-unison.ts';
import { incompleteLastChord } from './incomplete-last-chord.ts';
import { invertedPhraseEnd } from './inverted-phrase-end.ts';
import { mediantOutOfPlace } from './mediant-out-of-place.ts';
import { minorScaleDegrees } from './minor-scale-degrees.ts';
import { missingPredominant } from './missing-predominant.ts';
import { missingRoot } from './missing-root.ts';
import { missingThird } from './missing-third.ts';
import { misspeltNote } from './misspelt-note.ts';
import { noCadence } from './no-cadence.ts';
import { noTierce } from './no-tierce.ts';
import { outlinedSeventh } from './outlined-seventh.ts';
import { parallelFifths } from './parallel-fifths.ts';
import { parallelOctaves } from './parallel-octaves.ts';
import { parallelUnisons } from './parallel-unisons.ts';
import { partialFermata } from './partial-fermata.ts';
import { repeatedBass } from './repeated-bass.ts';
import { rootPositionsThroughout } from './root-positions-throughout.ts';
import type { Rule } from './rule.ts';
import { seventhLeap } from './seventh-leap.ts';
import { straySixFour } from './stray-six-four.ts';
import { submediantOutOfPlace } from './submediant-out-of-place.ts';
import { supertonicOutOfPlace } from './supertonic-out-of-place.ts';
import { unequalFifths } from './unequal-fifths.ts';
import { unexplainedDissonance } from './unexplained-dissonance.ts';
import { unfinished } from './unfinished.ts';
import { unpreparedSeventh } from './unprepared-seventh.ts';
import { unpreparedSuspension } from './unprepared-suspension.ts';
import { unraisedLeadingNote } from './unraised-leading-note.ts';
import { unrecoveredLeap } from './unrecovered-leap.ts';
import { unresolvedAugmentedSixth } from './unresolved-augmented-sixth.ts';
import { unresolvedLeadingNote } from './unresolved-leading-note.ts';
import { unresolvedSeventh } from './unresolved-seventh.ts';
import { upwardSuspension } from './upward-suspension.ts';
import { voiceCrossing } from './voice-crossing.ts';
import { voiceOverlap } from './voice-overlap.ts';
import { voiceRange } from './voice-range.ts';
import { voiceSpacing } from './voice-spacing.ts';
import { voicesEndApart } from './voices-end-apart.ts';
import { weakCadence } from './weak-cadence.ts';
import { weakSixFour } from './weak-six-four.ts';
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
  augmentedLeap,
  diminishedLeap,
  seventhLeap,
  outlinedSeventh,
  unrecoveredLeap,
  falseRelation,
  hammeredNote,
  repeatedBass,
  circlingLine,
  // Spacing and range
  voiceRange,
  voiceSpacing,
  voiceCrossing,
  voiceOverlap,
  heldUnison,
  // Chords
  missingRoot,
  missingThird,
  doubledLeadingNote,
  doubledSeventh,
  doubledThird,
  doubledDiminishedRoot,
  diminishedRootPosition,
  rootPositionsThroughout,
  straySixFour,
  weakSixFour,
  backwardStep,
  mediantOutOfPlace,
  submediantOutOfPlace,
  supertonicOutOfPlace,
  unresolvedLeadingNote,
  unpreparedSeventh,
  unresolvedSeventh,
  unresolvedAugmentedSixth,
  minorScaleDegrees,
  unraisedLeadingNote,
  misspeltNote,
  figuresDisagree,
  // Dissonance
  unexplainedDissonance,
  unpreparedSuspension,
  upwardSuspension,
  anticipatedResolution,
  accentedPassingConsecutives,
  // Cadences and phrases
  noCadence,
  invertedPhraseEnd,
  weakCadence,
  incompleteLastChord,
  earlyHomeClose,
  endsInAnotherKey,
  missingPredominant,
  noTierce,
  // Rhythm and notation
  barLength,
  dividedVoice,
  voicesEndApart,
  harmonyHeldOver,
  partialFermata,
  emptyBeat,
  unfinished,
  accidentalSlip,
];
