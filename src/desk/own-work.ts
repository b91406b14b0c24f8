/**
 * What in a script is the pupil's own. Given notes are nobody's merit and nobody's fault; what is written beneath them
 * may be either.
 */
import type { Ornament } from '../harmony/analysis.ts';
import type { Review } from '../review/review.ts';
import { type Score, VOICES, type VoiceName } from '../score/score.ts';
import type { Ticks } from '../score/time.ts';
import { alignBars, transpositionBetween } from './align.ts';
import { notedBars, soundingTime } from './bar-notes.ts';

export interface OwnWork {
  /** The review without the ornaments and findings that are about given notes alone. */
  readonly review: Review;
  /** Share of what was to be written that is not written yet, 0 to 1. */
  readonly unwritten: number;
}

/** Takes the given notes out of a review; without a brief all is the pupil's own. Pure. */
export function ownWork(review: Review, brief?: Score): OwnWork {
  const { score, analysis } = review;
  if (brief === undefined) return { review, unwritten: unwrittenShare(score, 0) };
  const given = givenIn(score, brief);
  const isGiven = ({ voice, at }: { readonly voice: VoiceName; readonly at: Ticks }): boolean =>
    given.starts.has(placeKey(voice, at));
  const isOwn = ({ tone }: Ornament): boolean => !isGiven(tone);
  return {
    review: {
      ...review,
      analysis: { ...analysis, ornaments: analysis.ornaments.filter(isOwn) },
      findings: review.findings.filter(({ tones }) => tones.length === 0 || !tones.every(isGiven)),
    },
    unwritten: unwrittenShare(score, given.time),
  };
}

interface GivenNotes {
  /** Where given notes begin in the script: those that were changed are the pupil's own. */
  readonly starts: ReadonlySet<string>;
  /** How much of the script's bars the brief fills, over all voices. */
  readonly time: Ticks;
}

function givenIn(score: Score, brief: Score): GivenNotes {
  const [asked, written] = [notedBars(brief), notedBars(score)];
  const voices = VOICES.filter((voice) => asked.some((bar) => bar.notes[voice].length > 0));
  const by = transpositionBetween(asked, written, voices);
  const starts = new Set<string>();
  let time = 0;
  for (const { a, b } of alignBars(asked, written, voices, by).bars) {
    if (a === undefined || b === undefined) continue;
    const bar = score.bars[b]!;
    for (const voice of voices) {
      const notes = asked[a]!.notes[voice];
      time += soundingTime(notes);
      const sung = new Set(notes.map(({ onset, code }) => `${onset} ${code + by}`));
      for (const { onset, code, held } of written[b]!.notes[voice])
        if (!held && sung.has(`${onset} ${code}`)) starts.add(placeKey(voice, bar.at - bar.offset + onset));
    }
  }
  return { starts, time };
}

function placeKey(voice: VoiceName, at: Ticks): string {
  return `${voice}${at}`;
}

function unwrittenShare(score: Score, given: Ticks): number {
  let gaps = 0;
  let all = 0;
  for (const voice of VOICES)
    for (const { kind, duration } of score.voices[voice]) {
      all += duration;
      if (kind === 'gap') gaps += duration;
    }
  const own = all - given;
  return own <= 0 ? 1 : Math.min(1, gaps / own);
}
