/** Leading notes under a wrong letter (A flat for G sharp): what the letter makes of their lines says nothing more. */
import { type Interval, intervalBetween, intervalQuality } from '../../score/interval.ts';
import { type MelodicMove, melodyOf, nextTone } from '../../score/motion.ts';
import { remembered } from '../../score/remember.ts';
import { VOICES } from '../../score/score.ts';
import type { Texture, Tone } from '../../score/texture.ts';
import type { Analysis } from '../analysis.ts';
import { chordLedBy, reachesItsTonic } from './hearing.ts';

/**
 * The misspelt notes that sound as the third of a major chord or the root of a diminished one and lead on: up by
 * semitone themselves, or their chord to the one a fifth below. Nobody could mean the letter that stands there.
 * Worked out once.
 */
export const misspeltLeadingNotes: (analysis: Analysis) => ReadonlySet<Tone> = remembered(
  (analysis) =>
    new Set(analysis.misspelt.flatMap(({ tone }) => (isLeadingNoteAsHeard(analysis, tone) ? [tone] : []))),
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

/** Every move of every voice, but those whose interval is odd by the wrong letter alone of a leading note that rises. */
export function movesAsMeant(analysis: Analysis): MelodicMove[] {
  const { texture } = analysis;
  return VOICES.flatMap((voice) => melodyOf(texture, voice)).filter((move) => !isOddByLetter(analysis, move));
}

function isOddByLetter(analysis: Analysis, { from, to }: MelodicMove): boolean {
  const misspelt = misspeltLeadingNotes(analysis);
  const leading = [from, to].some((tone) => misspelt.has(tone) && rises(analysis.texture, tone));
  return leading && isPlain(intervalBetween(from.pitch, to.pitch));
}

function isPlain(interval: Interval): boolean {
  const quality = intervalQuality(interval);
  return quality === 'perfect' || quality === 'major' || quality === 'minor';
}
