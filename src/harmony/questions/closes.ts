/** How phrases close: questions about phrase ends and cadences. */
import { remembered } from '../../score/remember.ts';
import { VOICES, type VoiceName } from '../../score/score.ts';
import { stretchesWithin } from '../../score/search.ts';
import { isAllWritten, type Tone, toneIn } from '../../score/texture.ts';
import type { Analysis, Cadence, Chord, Phrase } from '../analysis.ts';
import { voicings } from './voicing.ts';

/**
 * The phrases whose end is written: they stop at a fermata, in the last bar or where the rhythm comes to rest, and
 * at least three voices, the bass among them, are there for their last two chords. Worked out once.
 */
export const closedPhrases: (analysis: Analysis) => readonly Phrase[] = remembered((analysis) =>
  analysis.phrases.filter((phrase) => isClosed(analysis, phrase)),
);

function isClosed(analysis: Analysis, phrase: Phrase): boolean {
  if (phrase.end === 'unfinished') return false;
  const last = lastChordOf(analysis, phrase);
  if (last === undefined || last.until < phrase.until) return false;
  const before = analysis.chords[last.index - 1];
  if (before === undefined || isCutOff(analysis, before, last)) return false;
  return [last, before].every((chord) => voicings(analysis)[chord.index]!.sure);
}

/** Between two chords something is still to be written: the first does not lead to the second. */
function isCutOff({ texture }: Analysis, before: Chord, last: Chord): boolean {
  return stretchesWithin(texture.slices, before.until, last.at).some(
    (slice) => slice.until > before.until && slice.at < last.at && !isAllWritten(slice),
  );
}

/** The last phrase, if its end is written. */
export function finalPhrase(analysis: Analysis): Phrase | undefined {
  const last = closedPhrases(analysis).at(-1);
  return last === analysis.phrases.at(-1) ? last : undefined;
}

/** The chord that sounds when a phrase ends. */
export function lastChordOf(analysis: Analysis, phrase: Phrase): Chord | undefined {
  return stretchesWithin(analysis.chords, phrase.from, phrase.until).at(-1);
}

/** What these voices sing last in a cadence's approach and first in its goal, by voice and then in time. */
export function cadenceTones(
  analysis: Analysis,
  cadence: Cadence,
  voices: readonly VoiceName[] = VOICES,
): Tone[] {
  const approach = voicings(analysis)[cadence.approach]?.slices.at(-1);
  const goal = voicings(analysis)[cadence.goal]?.slices[0];
  return voices.flatMap((voice) =>
    [approach, goal].flatMap((slice) => (slice && toneIn(slice, voice)) ?? []),
  );
}
