/** Movement below the tune: beats within which a lower voice begins a note while the soprano does not. */
import type { Measure } from '../measure.ts';
import { beatAt } from '../music.ts';
import { shareOf } from '../share.ts';
import { countedHere } from '../source.ts';

export const movementBelowTune: Measure = {
  id: 'movement-below-tune',
  name: 'Movement below the tune',
  unit: '% of beats',
  definition:
    'Beats in which alto, tenor or bass begins a note after the beat has begun, at a moment when the soprano begins none.',
  why: 'In the model the tune walks in crotchets and the lower voices keep the quavers going, one taking over from another. It is what makes four lines out of chords.',
  low: 'The lower voices mostly move with the tune, chord by chord. Look where one of them leaps a third or repeats a note: there is often room to walk.',
  high: 'Some lower voice moves nearly all the time. See that the quavers lead somewhere, and that one voice moves while others rest.',
  source: countedHere('0.87'),
  count: (music) => {
    const { tones } = music.analysis.texture;
    const tune = new Set(tones.S.map((tone) => tone.at));
    const moved = new Set(
      [...tones.A, ...tones.T, ...tones.B].flatMap((tone) => {
        const beat = tune.has(tone.at) ? undefined : beatAt(music.beats, tone.at);
        return beat === undefined || beat.from === tone.at ? [] : [beat];
      }),
    );
    const where = music.beats.filter((beat) => moved.has(beat));
    return { value: shareOf(where.length, music.beats.length), where };
  },
};
