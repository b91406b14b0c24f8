/** Suspensions in the lower voices. */
import type { Measure } from '../measure.ts';
import { perOne } from '../share.ts';
import { countedHere } from '../source.ts';

export const suspensions: Measure = {
  id: 'suspensions',
  name: 'Suspensions',
  unit: 'a phrase',
  definition: 'Suspensions in alto, tenor and bass for each phrase that is wholly written.',
  why: 'A note held over into a chord it does not belong to, and let down by step, is the strongest tension the style has. The model has one in every second phrase, most of them near the close.',
  low: 'Few notes are held over, or none. Look before the closes: where a voice comes down a step onto a strong beat, it might come later.',
  high: 'Very many notes are held over. Keep the suspension for the places that want weight, most of all the closes.',
  source: countedHere('0.64'),
  count: (music) => {
    const phrases = music.analysis.phrases.filter(
      ({ from, until }) => music.written(from) && music.written(until - 1),
    );
    const where = music.analysis.ornaments
      .filter(({ voice, kind, at }) => voice !== 'S' && kind === 'suspension' && music.written(at))
      .map(({ at, until }) => ({ from: at, until }));
    return { value: perOne(where.length, phrases.length), where };
  },
};
