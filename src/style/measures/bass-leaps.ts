/** Bass leaping. */

import { bassMoves } from '../bass-moves.ts';
import type { Measure } from '../measure.ts';
import { countedHere } from '../source.ts';

export const bassLeaps: Measure = {
  id: 'bass-leaps',
  name: 'Bass leaping',
  unit: '% of moves',
  definition: 'How many of the bass’s moves, repeated notes left out, are leaps of a fourth or more.',
  why: 'Leaps of a fourth and fifth carry the closes. Where they come all the time, every chord stands on its root and the bass is no line.',
  low: 'The bass hardly leaps. See that the closes have their roots.',
  high: 'The bass leaps very often. It does so where chord after chord stands on its root: try first inversions between them.',
  source: countedHere('0.34'),
  count: (music) => bassMoves(music, (size) => size >= 5),
};
