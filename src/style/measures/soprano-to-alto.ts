/** The mean distance between soprano and alto. */
import { semitone } from '../../score/pitch.ts';
import { toneIn } from '../../score/texture.ts';
import type { Measure, Stretch } from '../measure.ts';
import { countedHere } from '../source.ts';

/** A fifth: beyond it a stretch is shown as wide. */
const WIDE = 7;

export const sopranoToAlto: Measure = {
  id: 'soprano-to-alto',
  name: 'Distance from soprano to alto',
  unit: 'semitones',
  definition: 'How far the alto lies below the soprano, averaged over the time both sound.',
  why: 'In the model the alto keeps close under the tune, mostly a third to a fifth below, so that the upper voices sound as one body.',
  low: 'The alto lies very close under the tune. See that the tenor has room, and that the voices do not cross.',
  high: 'The alto lies far below the tune. Try it nearer, and let the tenor come up too.',
  source: countedHere('0.53'),
  count: (music) => {
    let time = 0;
    let sum = 0;
    const where: Stretch[] = [];
    for (const slice of music.analysis.texture.slices) {
      const soprano = toneIn(slice, 'S');
      const alto = toneIn(slice, 'A');
      if (soprano === undefined || alto === undefined || !music.written(slice.at)) continue;
      const apart = semitone(soprano.pitch) - semitone(alto.pitch);
      time += slice.until - slice.at;
      sum += apart * (slice.until - slice.at);
      if (apart > WIDE) where.push({ from: slice.at, until: slice.until });
    }
    return { value: time === 0 ? undefined : sum / time, where };
  },
};
