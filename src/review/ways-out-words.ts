/** How many ways out of a finding there are, in words. */
import { listed } from '../english/words.ts';
import { VOICE_WORDS, VOICES } from '../score/score.ts';
import type { Move, WaysOut } from './ways-out.ts';

const MOVE_WORDS: Readonly<Record<Move, string>> = {
  step: 'by step',
  leap: 'by leap',
  stay: 'by staying on the note before',
};

/** ` (1 by step, 1 by leap)`; ` (by step)` where they all do. */
function movesInWords(moves: Readonly<Record<Move, number>>, count: number): string {
  const told = (['step', 'stay', 'leap'] as const).filter((move) => moves[move] > 0);
  if (told.length === 0) return '';
  const words = told.map((move) => (moves[move] === count ? '' : `${moves[move]} `) + MOVE_WORDS[move]);
  return ` (${words.join(', ')})`;
}

/**
 * `There are 3 changes of a single note that would clear this: 2 in the tenor (1 by step, 1 by leap) and 1 in the bass
 * (by step).` No note is named.
 */
export function waysOutInWords({
  counts,
  moves,
  total,
}: Pick<WaysOut, 'counts' | 'moves' | 'total'>): string {
  if (total === 0) return 'No single note can be changed to clear this: it takes two or more together.';
  const parts = VOICES.filter((voice) => counts[voice] > 0).map(
    (voice) => `${counts[voice]} in the ${VOICE_WORDS[voice]}${movesInWords(moves[voice], counts[voice])}`,
  );
  const list = listed(parts);
  return total === 1
    ? `There is 1 change of a single note that would clear this: ${list}.`
    : `There are ${total} changes of a single note that would clear this: ${list}.`;
}
