/** Notes under a wrong letter that nobody could mean (A flat for G sharp): what it makes of their lines says nothing more. */
import { intervalBetween } from '../../score/interval.ts';
import { type MelodicMove, melodyOf, nextTone } from '../../score/motion.ts';
import { remembered } from '../../score/remember.ts';
import { VOICES } from '../../score/score.ts';
import type { Texture, Tone } from '../../score/texture.ts';
import type { Analysis, Misspelling } from '../analysis.ts';
import { memberOf } from '../questions/members.ts';
import { chordAt } from '../questions/moments.ts';
import { belongsToKey } from '../questions/spelling.ts';
import { chordLedBy, reachesItsTonic } from './hearing.ts';

/**
 * The misspelt notes that sound as the third of a major chord or the root of a diminished one and lead on, up by
 * semitone themselves, or their chord to the one a fifth below; and those that chord and key have under the other name
 * alone. Worked out once.
 */
export const plainlyMisspelt: (analysis: Analysis) => ReadonlySet<Tone> = remembered(
  (analysis) =>
    new Set(
      analysis.misspelt.flatMap((misspelling) =>
        isLeadingNoteAsHeard(analysis, misspelling.tone) || isOfChordAndKey(analysis, misspelling)
          ? [misspelling.tone]
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

function isOfChordAndKey(analysis: Analysis, { tone, written }: Misspelling): boolean {
  const chord = chordAt(analysis, tone.at);
  return (
    chord !== undefined &&
    memberOf(chord, tone.pitch) !== undefined &&
    belongsToKey(tone.pitch, chord.key) &&
    !belongsToKey(written, chord.key)
  );
}

/** Every move of every voice, but those to or from such a note: their intervals are odd by the wrong letter. */
export function movesAsMeant(analysis: Analysis): MelodicMove[] {
  const misspelt = plainlyMisspelt(analysis);
  return VOICES.flatMap((voice) => melodyOf(analysis.texture, voice)).filter(
    ({ from, to }) => !misspelt.has(from) && !misspelt.has(to),
  );
}
