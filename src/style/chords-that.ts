/** Chords of one kind among all. */
import type { Chord } from '../harmony/analysis.ts';
import type { Count, Music } from './measure.ts';
import { shareOf } from './share.ts';

export function chordsThat(music: Music, isOne: (chord: Chord) => boolean): Count {
  const chords = music.analysis.chords.filter((chord) => music.written(chord.at));
  const where = chords.filter(isOne).map(({ at, until }) => ({ from: at, until }));
  return { value: shareOf(where.length, chords.length), where };
}
