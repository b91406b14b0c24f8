/** Leading notes under a wrong letter (A flat for G sharp): what the letter makes of their lines says nothing more. */
import { type Interval, intervalBetween, intervalQuality } from '../../score/interval.ts';
import { type MelodicMove, nextTone } from '../../score/motion.ts';
import { sameNoteName } from '../../score/pitch.ts';
import { remembered } from '../../score/remember.ts';
import type { Tone } from '../../score/texture.ts';
import type { Analysis } from '../analysis.ts';
import { hearingAt } from './hearing.ts';

/**
 * The misspelt notes that sound as the third of a major chord or the root of a diminished one and rise by semitone:
 * nobody could mean the letter that stands there. Worked out once.
 */
export const misspeltLeadingNotes: (analysis: Analysis) => ReadonlySet<Tone> = remembered(
  (analysis) =>
    new Set(analysis.misspelt.flatMap(({ tone }) => (isLeadingNoteAsHeard(analysis, tone) ? [tone] : []))),
);

function isLeadingNoteAsHeard({ texture }: Analysis, tone: Tone): boolean {
  const heard = hearingAt(texture, tone.at);
  const next = nextTone(texture, tone);
  if (heard === undefined || next === undefined) return false;
  const { steps, semitones } = intervalBetween(tone.pitch, next.pitch);
  const leading = heard.quality === 'major' ? heard.members.third : heard.members.root;
  const can = heard.quality === 'major' || heard.quality === 'diminished';
  return can && steps === 1 && semitones === 1 && sameNoteName(leading, tone.pitch);
}

/** The interval is odd by the wrong letter of a leading note alone. */
export function isOddByLetter(analysis: Analysis, { from, to }: MelodicMove): boolean {
  const misspelt = misspeltLeadingNotes(analysis);
  if (misspelt.size === 0 || (!misspelt.has(from) && !misspelt.has(to))) return false;
  return isPlain(intervalBetween(from.pitch, to.pitch));
}

function isPlain(interval: Interval): boolean {
  const quality = intervalQuality(interval);
  return quality === 'perfect' || quality === 'major' || quality === 'minor';
}
