/** The places a caret stops at: beats and the starts of notes, never off the paper. Pure questions of the score. */
import { barAt } from '../../src/score/place.ts';
import { endOf, type Score, VOICES, type VoiceName } from '../../src/score/score.ts';
import { beatLength, CROTCHET, scaleTicks, type Ticks } from '../../src/score/time.ts';
import { eventAt } from '../../src/writing/write.ts';
import type { BeatLength, Caret } from './page.ts';

/** The length chosen for the next note, in ticks, by the beat of the bar at `at` where it counts beats. */
export function chosenLength(score: Score, at: Ticks, length: BeatLength, dotted: boolean): Ticks {
  if (score.bars.length === 0) return 0;
  const beat = length.of === 'semibreve' ? 4 * CROTCHET : beatLength(barAt(score, at).metre);
  const plain = scaleTicks(beat, length.numerator, length.denominator) ?? beat;
  return dotted ? (scaleTicks(plain, 3, 2) ?? plain) : plain;
}

/** The caret kept within the score: at its end it stands in the bar that would come next. */
export function withinScore(score: Score, caret: Caret): Caret {
  return { voice: caret.voice, at: Math.min(Math.max(0, caret.at), endOf(score)) };
}

/**
 * The next place a caret stops at: a beat of the bar, or the start of a shorter note of this voice before that.
 * Every beat of a long note is a place, since one may want to write in the midst of it.
 */
export function nextPlace(score: Score, caret: Caret): Ticks {
  const end = endOf(score);
  if (caret.at >= end) return end;
  const bar = barAt(score, caret.at);
  const beat = beatLength(bar.metre);
  const into = caret.at - bar.at + bar.offset;
  const nextBeat = bar.at - bar.offset + (Math.floor(into / beat) + 1) * beat;
  const event = eventAt(score, caret.voice, caret.at);
  const afterEvent = event === undefined ? end : event.at + event.duration;
  return Math.min(nextBeat, Math.max(afterEvent, caret.at + 1), bar.at + bar.duration);
}

export function placeBefore(score: Score, caret: Caret): Ticks {
  if (caret.at <= 0) return 0;
  const just = caret.at - 1;
  const bar = barAt(score, just);
  const beat = beatLength(bar.metre);
  const into = just - bar.at + bar.offset;
  const lastBeat = bar.at - bar.offset + Math.floor(into / beat) * beat;
  const event = eventAt(score, caret.voice, just);
  return Math.max(lastBeat, event?.at ?? 0, bar.at);
}

/** The start of the next bar, or of this one (the one before, where the caret stands at its start). */
export function barPlace(score: Score, at: Ticks, direction: 1 | -1): Ticks {
  if (score.bars.length === 0) return 0;
  if (direction > 0) {
    const bar = barAt(score, at);
    return Math.min(endOf(score), bar.at + bar.duration);
  }
  return at <= 0 ? 0 : barAt(score, at - 1).at;
}

export function neighbourVoice(voice: VoiceName, direction: 1 | -1): VoiceName {
  const index = VOICES.indexOf(voice) + direction;
  return VOICES[Math.min(3, Math.max(0, index))]!;
}
