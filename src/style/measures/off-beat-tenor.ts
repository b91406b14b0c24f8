/** Off-beat notes in the tenor. */
import type { Measure } from '../measure.ts';
import { offBeatNotes } from '../off-beat.ts';
import { countedHere } from '../source.ts';

export const offBeatTenor: Measure = {
  id: 'off-beat-tenor',
  name: 'Off-beat notes in the tenor',
  unit: 'a beat',
  definition: 'Notes that the tenor begins off the beat, for each beat.',
  why: 'The tenor is the hidden voice, and in the model it seldom stands still for long: in every fourth beat it has a quaver of its own.',
  low: 'The tenor moves on the beat only. Look where it leaps a third, or where the other voices stand still.',
  high: 'The tenor moves off the beat very often. See that it also rests on long notes, mostly where another voice moves.',
  source: countedHere('0.76'),
  count: (music) => offBeatNotes(music, 'T'),
};
