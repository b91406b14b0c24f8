/** The bass's moves of one kind among all, repeated notes left out: counted alike for steps and leaps. */
import { semitone } from '../score/pitch.ts';
import type { Count, Music } from './measure.ts';
import { movesIn } from './music.ts';
import { shareOf } from './share.ts';

/** `isOne` is asked of each move's size in semitones. */
export function bassMoves(music: Music, isOne: (size: number) => boolean): Count {
  const moves = movesIn(music, 'B')
    .map(({ from, to }) => ({
      size: Math.abs(semitone(to.pitch) - semitone(from.pitch)),
      stretch: { from: from.at, until: to.until },
    }))
    .filter(({ size }) => size > 0);
  const where = moves.filter(({ size }) => isOne(size)).map(({ stretch }) => stretch);
  return { value: shareOf(where.length, moves.length), where };
}
