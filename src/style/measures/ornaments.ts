/** Ornaments: notes outside the harmony in the lower voices. */
import type { Measure } from '../measure.ts';
import { perOne } from '../share.ts';
import { countedHere } from '../source.ts';

export const ornaments: Measure = {
  id: 'ornaments',
  name: 'Notes outside the harmony',
  unit: 'a beat',
  definition:
    'Passing notes, neighbour notes, suspensions and the like in alto, tenor and bass, for each beat. A dissonance that nothing explains is not counted.',
  why: 'Passing and neighbour notes turn chords into lines; the model has one in nearly every second beat.',
  low: 'Nearly every note belongs to its chord. A third between two chord notes can be walked through; a repeated note can leave and come back.',
  high: 'Very many notes are foreign to their chords. See that the harmony is still clear on the beats.',
  source: countedHere('0.66'),
  count: (music) => {
    const where = music.analysis.ornaments
      .filter(({ voice, kind, at }) => voice !== 'S' && kind !== 'unclassified' && music.written(at))
      .map(({ at, until }) => ({ from: at, until }));
    return { value: perOne(where.length, music.beats.length), where };
  },
};
