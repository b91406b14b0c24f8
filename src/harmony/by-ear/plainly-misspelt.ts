/** Notes under a wrong letter that nobody could mean (A flat for G sharp): what it makes of their lines says nothing more. */
import { type Interval, intervalBetween } from '../../score/interval.ts';
import { type MelodicMove, melodyOf, nextTone } from '../../score/motion.ts';
import { sameNoteName } from '../../score/pitch.ts';
import { remembered } from '../../score/remember.ts';
import { VOICES } from '../../score/score.ts';
import type { Texture, Tone } from '../../score/texture.ts';
import type { Analysis } from '../analysis.ts';
import { leadingNoteIn } from '../questions/degrees.ts';
import { isDominant } from '../questions/functions.ts';
import { memberOf } from '../questions/members.ts';
import { chordAt } from '../questions/moments.ts';
import { chordLedBy, reachesItsTonic } from './hearing.ts';

/**
 * The misspelt notes that sound as the third of a major chord or the root of a diminished one and lead on, up by
 * semitone themselves, or their chord to the one a fifth below; those that a dominant has for its leading note or
 * seventh; and those of any chord where a pupil misspells more than one. Worked out once.
 */
export const plainlyMisspelt: (analysis: Analysis) => ReadonlySet<Tone> = remembered(
  (analysis) =>
    new Set(
      analysis.misspelt.flatMap(({ tone }) =>
        isLeadingNoteAsHeard(analysis, tone) || isOfDominant(analysis, tone) || isHabit(analysis, tone)
          ? [tone]
          : [],
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

function isOfDominant(analysis: Analysis, tone: Tone): boolean {
  const chord = chordAt(analysis, tone.at);
  if (chord === undefined || !isDominant(chord)) return false;
  const leading = leadingNoteIn(chord);
  const isSeventh = chord.quality === 'major' && memberOf(chord, tone.pitch) === 'seventh';
  return isSeventh || (leading !== undefined && sameNoteName(leading, tone.pitch));
}

/** Another note is misspelt too: it is a habit, and the chord has both under their other names. */
function isHabit(analysis: Analysis, tone: Tone): boolean {
  const chord = chordAt(analysis, tone.at);
  const belongs = chord !== undefined && memberOf(chord, tone.pitch) !== undefined;
  return belongs && analysis.misspelt.length > 1;
}

/**
 * Every move of every voice, but those to or from such a note: their intervals are odd by the wrong letter. A step
 * from letter to letter is what the singer reads, unless the note leads on or others are misspelt too; a diminished
 * third is no interval that anybody means.
 */
export function movesAsMeant(analysis: Analysis): MelodicMove[] {
  const plainly = plainlyMisspelt(analysis);
  const misspelt = new Set(analysis.misspelt.map(({ tone }) => tone));
  const isOdd = (tone: Tone, { steps, semitones }: Interval) =>
    (Math.abs(steps) === 2 && Math.abs(semitones) === 2 && misspelt.has(tone)) ||
    (plainly.has(tone) &&
      (Math.abs(steps) !== 1 || rises(analysis.texture, tone) || isHabit(analysis, tone)));
  return VOICES.flatMap((voice) => melodyOf(analysis.texture, voice)).filter(
    ({ from, to, interval }) => !isOdd(from, interval) && !isOdd(to, interval),
  );
}
