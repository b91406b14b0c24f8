/** Off-beat notes in the bass. */
import type { Measure } from '../measure.ts';
import { offBeatNotes } from '../off-beat.ts';
import { countedHere } from '../source.ts';

export const offBeatBass: Measure = {
  id: 'off-beat-bass',
  name: 'Off-beat notes in the bass',
  unit: 'a beat',
  definition: 'Notes that the bass begins off the beat, for each beat.',
  why: 'A bass in quavers walks to the next chord instead of jumping there; in the model every fourth beat has one.',
  low: 'The bass moves on the beat only. Look where it leaps a third, or where the other voices stand still.',
  high: 'The bass moves off the beat very often. See that it also rests on long notes, mostly where another voice moves.',
  source: countedHere('0.78'),
  count: (music) => offBeatNotes(music, 'B'),
};
