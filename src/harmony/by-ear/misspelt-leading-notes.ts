/** Leading notes under a wrong letter (A flat for G sharp): what the letter makes of their lines says nothing more. */
import { type Interval, intervalBetween, intervalQuality } from '../../score/interval.ts';
import { type MelodicMove, nextTone } from '../../score/motion.ts';
import { fifthsPlace, sameNoteName } from '../../score/pitch.ts';
import { remembered } from '../../score/remember.ts';
import type { Texture, Tone } from '../../score/texture.ts';
import type { Analysis } from '../analysis.ts';
import { hearingAt } from './hearing.ts';

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
  const heard = hearingAt(texture, tone.at);
  if (heard?.quality !== 'major' && heard?.quality !== 'diminished') return false;
  const { root, third } = heard.members;
  if (!sameNoteName(heard.quality === 'major' ? third : root, tone.pitch)) return false;
  const goal = hearingAt(texture, heard.until);
  const leads = goal !== undefined && fifthsPlace(tone.pitch) - fifthsPlace(goal.members.root) === 5;
  return leads || rises(texture, tone);
}

function rises(texture: Texture, tone: Tone): boolean {
  const next = nextTone(texture, tone);
  const way = next && intervalBetween(tone.pitch, next.pitch);
  return way?.steps === 1 && way.semitones === 1;
}

/** The interval is odd by the wrong letter alone of a leading note that rises. */
export function isOddByLetter(analysis: Analysis, { from, to }: MelodicMove): boolean {
  const misspelt = misspeltLeadingNotes(analysis);
  const leading = [from, to].some((tone) => misspelt.has(tone) && rises(analysis.texture, tone));
  return leading && isPlain(intervalBetween(from.pitch, to.pitch));
}

function isPlain(interval: Interval): boolean {
  const quality = intervalQuality(interval);
  return quality === 'perfect' || quality === 'major' || quality === 'minor';
}
