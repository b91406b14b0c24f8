/** Second readings: which of them a chord belongs to. */
import { remembered } from '../../score/remember.ts';
import type { Analysis, Chord, Key, Roman } from '../analysis.ts';

/**
 * From so great a likelihood on a key is told without reserve: of that, 97 % of the time is read so by people, on
 * chorales the weights had not seen (`npm run bench:harmony`).
 */
const SURE = 0.95;

/** True where the key of a chord is told without reserve; else people may hear another. */
export function isSureOfKey({ sure }: Chord): boolean {
  return sure >= SURE;
}

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
