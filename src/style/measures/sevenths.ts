/** Chords with sevenths. */

import { chordsThat } from '../chords-that.ts';
import type { Measure } from '../measure.ts';
import { countedHere } from '../source.ts';

export const sevenths: Measure = {
  id: 'sevenths',
  name: 'Chords with sevenths',
  unit: '% of chords',
  definition: 'How many of the chords have a seventh, on any degree.',
  why: 'Sevenths, on the dominant and above all on the second degree before a close, give the harmony its pull.',
  low: 'Few chords have a seventh. Look at the dominants, and at the chord before the dominant, where a voice could come down through it.',
  high: 'Very many chords have a seventh. See that each is prepared or passes, and comes down.',
  source: countedHere('0.36'),
  count: (music) => chordsThat(music, (chord) => chord.roman.seventh !== undefined),
};
