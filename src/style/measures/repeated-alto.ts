/** How often the alto repeats its note. */

import { semitone } from '../../score/pitch.ts';
import type { Measure } from '../measure.ts';
import { movesIn } from '../music.ts';
import { shareOf } from '../share.ts';
import { countedHere } from '../source.ts';

export const repeatedAlto: Measure = {
  id: 'repeated-alto',
  name: 'Repeated notes in the alto',
  unit: '% of moves',
  definition: 'How many of the alto’s moves, from each note to the next, go to the same note again.',
  why: 'The alto has the fewest places to go and is the first voice to stand still. In the model it repeats a note about every fifth time; much more, and it is no line.',
  low: 'The alto hardly ever repeats a note. That is no fault where the line sings.',
  high: 'The alto often repeats its note. Look where it could exchange notes with the tenor, or walk to the next chord.',
  source: countedHere('0.48'),
  count: (music) => {
    const moves = movesIn(music, 'A');
    const where = moves
      .filter(({ from, to }) => semitone(from.pitch) === semitone(to.pitch))
      .map(({ from, to }) => ({ from: from.at, until: to.until }));
    return { value: shareOf(where.length, moves.length), where };
  },
};
