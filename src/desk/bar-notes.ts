/** The notes of a score bar by bar, as the desk compares them: what sounds, whatever it is tied from. */
import { type Pitch, STEPS, semitone, staffPlace } from '../score/pitch.ts';
import { type ByVoice, byVoice, type Score, VOICES, type VoiceName } from '../score/score.ts';
import type { Ticks } from '../score/time.ts';

/**
 * A pitch as one whole number in which differences are intervals: staff places times 256 plus semitones, so that
 * C4 to F#4 and C4 to Gb4 differ, and adding an interval's code transposes.
 */
export type PitchCode = number;
const STAFF = 256;

export function pitchCode(pitch: Pitch): PitchCode {
  return staffPlace(pitch) * STAFF + semitone(pitch);
}

/** The semitones in a code that is a difference (or a pitch): -128 to 127, enough for every pitch we read. */
export function semitonesOf(code: PitchCode): number {
  return code - STAFF * stepsOf(code);
}

/** The staff steps in a code that is a difference (or a pitch). */
export function stepsOf(code: PitchCode): number {
  return Math.floor((code + STAFF / 2) / STAFF);
}

/** One sound of one voice within one bar. Notes tied inside the bar are one. */
export interface BarNote {
  /** From the beginning of a full bar, so that an upbeat's crotchet in 4/4 stands at the fourth beat. */
  readonly onset: Ticks;
  readonly duration: Ticks;
  readonly pitch: Pitch;
  readonly code: PitchCode;
  /** It sounds on from the bar before: nothing is struck. */
  readonly held: boolean;
}

/** What is needed of a note to compare what sounds. */
export type Sounding = Pick<BarNote, 'onset' | 'duration' | 'code'>;

/** A bar of which only the sound is known. */
export interface SoundingBar {
  readonly notes: ByVoice<readonly Sounding[]>;
}

export interface NotedBar extends SoundingBar {
  readonly index: number;
  readonly number: string;
  readonly duration: Ticks;
  readonly notes: ByVoice<readonly BarNote[]>;
  /** How much each voice has not written yet. */
  readonly unwritten: ByVoice<Ticks>;
}

/** All bars of a score with their notes. */
export function notedBars(score: Score): NotedBar[] {
  const cursors = byVoice(() => 0);
  const heldOver = byVoice(() => false);
  return score.bars.map((bar) => {
    const unwritten = byVoice(() => 0);
    const notes = byVoice((voice): BarNote[] => {
      const found: BarNote[] = [];
      let held = heldOver[voice];
      let joined = held;
      for (;;) {
        const event = score.voices[voice][cursors[voice]];
        if (event === undefined || event.at >= bar.at + bar.duration) break;
        cursors[voice]++;
        if (event.kind === 'gap') unwritten[voice] += event.duration;
        if (event.kind !== 'note') {
          joined = held = false;
          continue;
        }
        const last = found.at(-1);
        if (joined && last !== undefined)
          found[found.length - 1] = { ...last, duration: last.duration + event.duration };
        else
          found.push({
            onset: event.at - bar.at + bar.offset,
            duration: event.duration,
            pitch: event.pitch,
            code: pitchCode(event.pitch),
            held,
          });
        held = false;
        joined = event.tied === true;
      }
      heldOver[voice] = joined;
      return found;
    });
    return { index: bar.index, number: bar.number, duration: bar.duration, notes, unwritten };
  });
}

/** How long two lines of one bar sound together, and how long the same pitch, the second transposed back by `by`. */
export function timeInCommon(
  a: readonly Sounding[],
  b: readonly Sounding[],
  by: PitchCode = 0,
): { readonly together: Ticks; readonly same: Ticks } {
  let together = 0;
  let same = 0;
  let i = 0;
  let j = 0;
  while (i < a.length && j < b.length) {
    const x = a[i]!;
    const y = b[j]!;
    const xEnd = x.onset + x.duration;
    const yEnd = y.onset + y.duration;
    const overlap = Math.min(xEnd, yEnd) - Math.max(x.onset, y.onset);
    if (overlap > 0) {
      together += overlap;
      if (x.code === y.code - by) same += overlap;
    }
    if (xEnd <= yEnd) i++;
    else j++;
  }
  return { together, same };
}

/** How long a line sounds. */
export function soundingTime(notes: readonly Sounding[]): Ticks {
  let time = 0;
  for (const note of notes) time += note.duration;
  return time;
}

/** How much of two bars is the same in some voices, 0 to 1; undefined where neither has a note there. */
export function likeBars(
  a: SoundingBar,
  b: SoundingBar,
  voices: readonly VoiceName[] = VOICES,
  by: PitchCode = 0,
): number | undefined {
  let common = 0;
  let most = 0;
  for (const voice of voices) {
    common += timeInCommon(a.notes[voice], b.notes[voice], by).same;
    most += Math.max(soundingTime(a.notes[voice]), soundingTime(b.notes[voice]));
  }
  return most === 0 ? undefined : common / most;
}

/** A pitch moved by an interval's code, spelt as the interval says. */
export function transposed(pitch: Pitch, by: PitchCode): Pitch {
  const place = staffPlace(pitch) + stepsOf(by);
  const octave = Math.floor(place / 7);
  const natural: Pitch = { step: STEPS[place - 7 * octave]!, alteration: 0, octave };
  return { ...natural, alteration: semitone(pitch) + semitonesOf(by) - semitone(natural) };
}
