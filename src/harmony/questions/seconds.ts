/** Second readings: which of them a chord belongs to. */
import { remembered } from '../../score/remember.ts';
import type { Analysis, Chord, Key, Roman } from '../analysis.ts';

/** A chord as a second reading has it. */
export interface SecondHearing {
  readonly key: Key;
  readonly roman: Roman;
}

/** How else a chord may be heard, where that lies close. */
export function secondOf(analysis: Analysis, chord: Chord): SecondHearing | undefined {
  return secondsByChord(analysis).get(chord.index);
}

const secondsByChord = remembered((analysis: Analysis) => {
  const hearings = new Map<number, SecondHearing>();
  for (const { key, chords } of analysis.seconds)
    for (const { index, roman } of chords) if (!hearings.has(index)) hearings.set(index, { key, roman });
  return hearings as ReadonlyMap<number, SecondHearing>;
});
