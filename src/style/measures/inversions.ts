/** Chords in inversion. */

import { chordsThat } from '../chords-that.ts';
import type { Measure } from '../measure.ts';
import { countedHere } from '../source.ts';

export const inversions: Measure = {
  id: 'inversions',
  name: 'Chords in inversion',
  unit: '% of chords',
  definition: 'How many of the chords have another note than their root in the bass.',
  why: 'First inversions make the bass a line and keep root positions for where weight is wanted. In the model two chords of five are inverted.',
  low: 'Nearly every chord stands on its root. Try first inversions where the bass leaps from root to root.',
  high: 'Very many chords are inverted. The closes, and the beginnings of phrases, want roots.',
  source: countedHere('0.40'),
  count: (music) => chordsThat(music, (chord) => chord.roman.inversion !== 0),
};
