/** Every measure, in the order in which they are shown: movement first, then the bass, then the chords. */
import type { Measure } from './measure.ts';
import { bassLeaps } from './measures/bass-leaps.ts';
import { bassSteps } from './measures/bass-steps.ts';
import { chordsPerBeat } from './measures/chords-per-beat.ts';
import { inversions } from './measures/inversions.ts';
import { movementBelowTune } from './measures/movement-below-tune.ts';
import { offBeatBass } from './measures/off-beat-bass.ts';
import { offBeatTenor } from './measures/off-beat-tenor.ts';
import { ornaments } from './measures/ornaments.ts';
import { repeatedAlto } from './measures/repeated-alto.ts';
import { sevenths } from './measures/sevenths.ts';
import { sopranoToAlto } from './measures/soprano-to-alto.ts';
import { suspensions } from './measures/suspensions.ts';
import { variety } from './measures/variety.ts';

export const MEASURES: readonly Measure[] = [
  movementBelowTune,
  offBeatTenor,
  offBeatBass,
  ornaments,
  suspensions,
  repeatedAlto,
  sopranoToAlto,
  bassSteps,
  bassLeaps,
  chordsPerBeat,
  inversions,
  sevenths,
  variety,
];
