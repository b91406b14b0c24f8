/** Chords per beat: how fast the harmony changes. */
import type { Measure } from '../measure.ts';
import { perOne } from '../share.ts';
import { countedHere } from '../source.ts';

export const chordsPerBeat: Measure = {
  id: 'chords-per-beat',
  name: 'Pace of the harmony',
  unit: 'a beat',
  definition: 'Chords for each beat: a new root, quality or bass counts as a new chord.',
  why: 'In the model the harmony changes with nearly every note of the tune. A chord that lies longer loses the walking pace; one that changes on every quaver loses the ground.',
  low: 'The harmony changes seldom. Look where one chord lies under two or more notes of the tune.',
  high: 'The harmony changes very often. See whether some quavers would do better as passing notes over one chord.',
  source: countedHere('0.81'),
  count: (music) => {
    const where = music.analysis.chords
      .filter((chord) => music.written(chord.at))
      .map(({ at, until }) => ({ from: at, until }));
    return { value: perOne(where.length, music.beats.length), where };
  },
};
