/** What may be wrong with the hints of a review: each complaint a sentence, none where all is well. */
import { hintsFor } from '../../src/review/hints.ts';
import type { Review } from '../../src/review/review.ts';
import { voiceRange } from '../../src/rules/voice-range.ts';
import { printPitch } from '../../src/score/pitch.ts';
import { placeAt, printPlace } from '../../src/score/place.ts';
import { VOICE_WORDS, VOICES, type VoiceName } from '../../src/score/score.ts';

const PITCH = /\b[A-G](?:#{1,2}|b{1,2})?\d\b/g;
const SENTENCE = /^["'“‘A-Z0-9].*[.!?][)”’]?$/s;

/**
 * Each hint begins with the finding's place and voices; the note that is free to move belongs to a voice that is there
 * and isn't given; no hint and no message names a pitch that isn't written; no two findings have the same hints.
 */
export function hintFaults(
  { score, analysis, findings }: Review,
  given: readonly VoiceName[] = ['S'],
): string[] {
  const written = new Set(
    VOICES.flatMap((voice) =>
      score.voices[voice].flatMap((event) => (event.kind === 'note' ? [printPitch(event.pitch)] : [])),
    ),
  );
  const met = new Map<string, string>();
  return findings.flatMap((finding) => {
    const hints = hintsFor(analysis, finding, given);
    const all = hints.join(' ');
    const place = printPlace(placeAt(score, finding.from));
    const [, free] = /Free to move here is the (\w+)/.exec(hints[1]) ?? [];
    const mover = VOICES.find((voice) => VOICE_WORDS[voice] === free);
    // A voice's bounds are told where it leaves them, and are no notes to write.
    const told = finding.rule.id === voiceRange.id ? all : `${finding.message} ${all}`;
    const foreign = [...told.matchAll(PITCH)].filter(([pitch]) => !written.has(pitch));
    const twin = met.get(all);
    met.set(all, finding.id);
    const faults = [
      hints[0].toLowerCase().startsWith(place.toLowerCase()) ? '' : `the place, ${place}, is missing`,
      ...finding.voices.map((voice) =>
        hints[0].includes(VOICE_WORDS[voice]) ? '' : `the ${VOICE_WORDS[voice]} is missing`,
      ),
      ...hints.map((hint) => (SENTENCE.test(hint) ? '' : `“${hint}” is no sentence`)),
      mover !== undefined && given.includes(mover) ? `the given ${VOICE_WORDS[mover]} is to move` : '',
      ...foreign.map(([pitch]) => `${pitch} is written nowhere`),
      twin === undefined ? '' : `it reads like ${twin}`,
    ];
    return faults.filter((fault) => fault !== '').map((fault) => `${finding.id}: ${fault}`);
  });
}
