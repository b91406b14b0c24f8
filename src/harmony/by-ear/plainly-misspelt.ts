/** Notes under a wrong letter that nobody could mean (A flat for G sharp): what it makes of their lines says nothing more. */
import { intervalBetween } from '../../score/interval.ts';
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
 * seventh; and those of one chord that are misspelt together. Worked out once.
 */
export const plainlyMisspelt: (analysis: Analysis) => ReadonlySet<Tone> = remembered(
  (analysis) =>
    new Set(
      analysis.misspelt.flatMap(({ tone }) =>
        isLeadingNoteAsHeard(analysis, tone) || isOfDominant(analysis, tone) || isOneOfTwo(analysis, tone)
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

/** Another note that sounds with it is misspelt too, and both belong to the chord under their other names. */
function isOneOfTwo(analysis: Analysis, tone: Tone): boolean {
  const chord = chordAt(analysis, tone.at);
  if (chord === undefined || memberOf(chord, tone.pitch) === undefined) return false;
  return analysis.misspelt.some(
    ({ tone: other }) =>
      other.voice !== tone.voice &&
      other.at < tone.until &&
      tone.at < other.until &&
      memberOf(chord, other.pitch) !== undefined,
  );
}

/**
 * Every move of every voice, but those to or from such a note: their intervals are odd by the wrong letter. A step
 * from letter to letter is what the singer reads, unless the note leads on or another is misspelt with it.
 */
export function movesAsMeant(analysis: Analysis): MelodicMove[] {
  const misspelt = plainlyMisspelt(analysis);
  const isSung = (tone: Tone, step: boolean) =>
    !misspelt.has(tone) || (step && !rises(analysis.texture, tone) && !isOneOfTwo(analysis, tone));
  return VOICES.flatMap((voice) => melodyOf(analysis.texture, voice)).filter(({ from, to, interval }) => {
    const step = Math.abs(interval.steps) === 1;
    return isSung(from, step) && isSung(to, step);
  });
}
