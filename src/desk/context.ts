/** What kind of place a finding is at, in terms of the key and the chords, so that like can be judged alike. */
import type { Analysis, Chord, Key } from '../harmony/analysis.ts';
import { degreeOf } from '../harmony/questions/degrees.ts';
import { chordAt, keyAt } from '../harmony/questions/moments.ts';
import { numeral } from '../harmony/words/labels.ts';
import type { Finding } from '../review/review.ts';
import { VOICES } from '../score/score.ts';
import type { Tone } from '../score/texture.ts';

/** The most tones and chords that a context tells; a finding about a whole phrase is told by its beginning. */
const MOST = 6;

/**
 * The kind of place: mode, chords, and each voice's degrees of the local key, as text.
 *
 * Two findings of one rule with the same context are the same thing to a musician: the same voices on the same
 * degrees over the same chords, whatever the key, bar, octave or rhythm.
 *
 * @example parallel fifths between tenor and bass from V to vi in C major: `major; V vi; T 2 3; B 5 6`
 */
export function contextOf(
  analysis: Analysis,
  finding: Pick<Finding, 'from' | 'until' | 'tones' | 'voices'>,
): string {
  const key = keyAt(analysis, finding.from);
  const chords = chordsUnder(analysis, finding);
  const parts = [
    key?.mode ?? 'no key',
    chords.map((chord) => numeral(chord.roman, chord.key)).join(' ') || 'no chord',
  ];
  for (const voice of VOICES) {
    const tones = finding.tones.filter((tone) => tone.voice === voice).slice(0, MOST);
    if (tones.length > 0)
      parts.push(`${voice} ${tones.map((tone) => degree(tone, keyAt(analysis, tone.at) ?? key)).join(' ')}`);
    else if (finding.voices.includes(voice)) parts.push(voice);
  }
  return parts.join('; ');
}

/** The chords that sound under the finding's tones where it has any, else from its beginning; each change once. */
function chordsUnder(
  analysis: Analysis,
  finding: Pick<Finding, 'from' | 'until' | 'tones'>,
): readonly Chord[] {
  const moments = finding.tones.length > 0 ? finding.tones.map((tone) => tone.at) : [finding.from];
  // A tone that was held from before is heard in the chord where the finding begins.
  const times = [...new Set(moments.map((at) => Math.max(at, finding.from)))].sort((a, b) => a - b);
  const chords: Chord[] = [];
  for (const at of times) {
    const chord = chordAt(analysis, at);
    if (chord !== undefined && !chords.includes(chord)) chords.push(chord);
  }
  return chords.slice(0, MOST);
}

function degree(tone: Tone, key: Key | undefined): string {
  if (key === undefined) return tone.pitch.step;
  const { degree, alteration } = degreeOf(tone.pitch, key);
  return `${alteration > 0 ? '#'.repeat(alteration) : 'b'.repeat(-alteration)}${degree}`;
}
