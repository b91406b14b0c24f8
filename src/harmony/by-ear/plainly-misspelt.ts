/** Notes under a wrong letter that nobody could mean (A flat for G sharp): what it makes of their lines says nothing more. */
import { type Interval, intervalBetween } from '../../score/interval.ts';
import { type MelodicMove, melodyOf, nextTone } from '../../score/motion.ts';
import { remembered } from '../../score/remember.ts';
import { VOICES } from '../../score/score.ts';
import type { Texture, Tone } from '../../score/texture.ts';
import type { Analysis } from '../analysis.ts';
import { memberOf } from '../questions/members.ts';
import { chordAt } from '../questions/moments.ts';
import { chordLedBy, reachesItsTonic } from './hearing.ts';

/**
 * The misspelt notes that sound as the third of a major chord or the root of a diminished one and lead on, up by
 * semitone themselves, or their chord to the one a fifth below; and those of any chord where a pupil misspells more
 * than one. Worked out once.
 */
export const plainlyMisspelt: (analysis: Analysis) => ReadonlySet<Tone> = remembered(
  (analysis) =>
    new Set(
      analysis.misspelt.flatMap(({ tone }) =>
        isLeadingNoteAsHeard(analysis, tone) || isHabit(analysis, tone) ? [tone] : [],
      ),
    ),
);

function isLeadingNoteAsHeard({ texture }: Analysis, tone: Tone): boolean {
  const heard = chordLedBy(texture, tone);
  return heard !== undefined && (reachesItsTonic(texture, heard, tone) || rises(texture, tone));
}

function rises(texture: Texture, tone: Tone): boolean {
  const next = nextTone(texture, tone);
  const way = next && intervalBetween(tone.pitch, next.pitch);
  return way?.steps === 1 && way.semitones === 1;
}

/** Another note is misspelt too: it is a habit, and the chord has both under their other names. */
function isHabit(analysis: Analysis, tone: Tone): boolean {
  const chord = chordAt(analysis, tone.at);
  const belongs = chord !== undefined && memberOf(chord, tone.pitch) !== undefined;
  return belongs && analysis.misspelt.length > 1;
}

/**
 * Every move of every voice, but those to or from such a note that rises or is one of several: their intervals are odd
 * by the wrong letter. What the letters of a single other one make is what the singer reads, but for a diminished
 * third, which nobody means.
 */
export function movesAsMeant(analysis: Analysis): MelodicMove[] {
  const plainly = plainlyMisspelt(analysis);
  const misspelt = new Set(analysis.misspelt.map(({ tone }) => tone));
  const isOdd = (tone: Tone, { steps, semitones }: Interval) =>
    (Math.abs(steps) === 2 && Math.abs(semitones) === 2 && misspelt.has(tone)) ||
    (plainly.has(tone) && (rises(analysis.texture, tone) || isHabit(analysis, tone)));
  return VOICES.flatMap((voice) => melodyOf(analysis.texture, voice)).filter(
    ({ from, to, interval }) => !isOdd(from, interval) && !isOdd(to, interval),
  );
}
