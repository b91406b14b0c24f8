/** Bass moving by step. */

import { bassMoves } from '../bass-moves.ts';
import type { Measure } from '../measure.ts';
import { countedHere } from '../source.ts';

export const bassSteps: Measure = {
  id: 'bass-steps',
  name: 'Bass moving by step',
  unit: '% of moves',
  definition: 'How many of the bass’s moves, repeated notes left out, are steps.',
  why: 'A bass that walks by step is a second tune. In the model two moves of three are steps, and the leaps are kept for the closes and for changes of direction.',
  low: 'The bass mostly leaps. Chords in first inversion, and passing notes within thirds, let it walk.',
  high: 'The bass hardly ever leaps. The closes want roots, and a leap or two gives the line a shape.',
  source: countedHere('0.45'),
  count: (music) => bassMoves(music, (size) => size === 1 || size === 2),
};
