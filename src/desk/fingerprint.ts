/** What is kept of a score to compare its added voices with other scripts': notes and nothing else. */
import * as z from 'zod';
import { byVoice, type Score } from '../score/score.ts';
import { type BarNote, notedBars, type Sounding, type SoundingBar } from './bar-notes.ts';

/** Notes one after the other, three numbers each: onset in ticks, duration in ticks, pitch code (see `pitchCode`). */
const line = z.array(z.number().int());

export const likenessPrintSchema = z.object({
  bars: z.array(
    z.object({
      number: z.string(),
      S: line,
      /** Left out where the brief gives notes for this voice in this bar. */
      A: line.optional(),
      T: line.optional(),
      B: line.optional(),
    }),
  ),
});
export type LikenessPrint = z.infer<typeof likenessPrintSchema>;
export type PrintedBar = LikenessPrint['bars'][number];

/** The voices that the pupil adds. */
export const ADDED = ['A', 'T', 'B'] as const;
export type AddedVoice = (typeof ADDED)[number];

/**
 * @param given the notes that the brief gives: bars of alto, tenor and bass in which it gives some are not compared
 */
export function likenessPrint(score: Score, given?: Score): LikenessPrint {
  const givenBars = given === undefined ? [] : notedBars(given);
  return {
    bars: notedBars(score).map((bar) => {
      const set = givenBars[bar.index];
      const printed: PrintedBar = { number: bar.number, S: numbers(bar.notes.S) };
      for (const voice of ADDED)
        if (set === undefined || set.notes[voice].length === 0) printed[voice] = numbers(bar.notes[voice]);
      return printed;
    }),
  };
}

function numbers(notes: readonly BarNote[]): number[] {
  return notes.flatMap((note) => [note.onset, note.duration, note.code]);
}

/** The bars of a print, to be compared. A voice that is left out has no notes. */
export function printedBars(print: LikenessPrint): SoundingBar[] {
  return print.bars.map((bar) => ({ notes: byVoice((voice) => sounds(bar[voice] ?? [])) }));
}

function sounds(line: readonly number[]): Sounding[] {
  const notes: Sounding[] = [];
  for (let i = 0; i + 2 < line.length; i += 3)
    notes.push({ onset: line[i]!, duration: line[i + 1]!, code: line[i + 2]! });
  return notes;
}
