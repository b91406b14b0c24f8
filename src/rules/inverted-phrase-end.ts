import type { Analysis, Chord, Phrase } from '../harmony/analysis.ts';
import { hearingAt } from '../harmony/by-ear/hearing.ts';
import { closedPhrases, lastChordOf } from '../harmony/questions/closes.ts';
import { isDominant } from '../harmony/questions/functions.ts';
import { previousChord, sameRoot } from '../harmony/questions/voicing.ts';
import { numeral } from '../harmony/words/labels.ts';
import { inversionWords } from '../harmony/words/words.ts';
import { fifthsPlace, sameNoteName } from '../score/pitch.ts';
import { placeAt, printPlace } from '../score/place.ts';
import { sliceAt, type Tone, toneIn } from '../score/texture.ts';
import { about } from './occurrence.ts';
import { defineRule, type Occurrence } from './rule.ts';
import { inVoice } from './wording.ts';

export const invertedPhraseEnd = defineRule({
  id: 'inverted-phrase-end',
  name: 'Phrase ending on an inversion',
  family: 'cadences and phrases',
  statement: 'The last chord of a phrase is in root position.',
  why: 'A phrase comes to rest on a chord that stands firmly; an inversion leans forward and takes away the breath that the fermata gives.',
  hints: [
    'Look at the bass note under the fermata.',
    'Put the root of the chord in the bass, and see that the step before it still leads there.',
    'Cadences: both chords in root position, above all the last one.',
  ],
  source:
    'W. Piston, Harmony, chapter on cadences (from memory); M. Boyd, Harmonizing “Bach” Chorales (from memory)',
  severity: 'query',
  weight: 5,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The first phrase stops on a dominant in first inversion.',
        text: `key: C major
metre: 4/4
S: E4 F4 E4 D4! | E4 D4 C4*2! |
A: C4 C4 C4 D4! | C4 B3 G3*2! |
T: G3 A3 G3 G3! | G3 G3 E3*2! |
B: C3 F3 C3 B2! | G2 G2 C3*2! |`,
      },
    ],
    right: [
      {
        caption: 'The first phrase stops on a dominant in root position.',
        text: `key: C major
metre: 4/4
S: E4 F4 E4 D4! | E4 D4 C4*2! |
A: C4 C4 C4 B3! | C4 B3 G3*2! |
T: G3 A3 G3 G3! | G3 G3 E3*2! |
B: C3 F3 C3 G2! | G2 G2 C3*2! |`,
      },
    ],
  },
  check: (analysis) => closedPhrases(analysis).flatMap((phrase) => inverted(analysis, phrase)),
});

function inverted(analysis: Analysis, phrase: Phrase): Occurrence[] {
  const last = lastChordOf(analysis, phrase);
  const slice = sliceAt(analysis.texture, phrase.until - 1);
  const bass = slice && toneIn(slice, 'B');
  if (last === undefined || bass === undefined) return [];
  // It came to rest in root position, and only moved on under the fermata.
  const before = previousChord(analysis, last.index);
  const moved = before !== undefined && sameRoot(before, last) && before.roman.inversion === 0;
  if (last.roman.inversion === 0 || moved) return invertedAsHeard(analysis, phrase, bass);
  return [
    about([bass], {
      ...(phrase.cadence === undefined || leansOn(analysis, last) ? { severity: 'remark' as const } : {}),
      from: last.at,
      until: last.until,
      message: `The phrase ends at ${printPlace(placeAt(analysis.texture.score, last.at))} on ${numeral(last.roman, last.key)}, a chord in ${inversionWords(last.roman.inversion)}.`,
    }),
  ];
}

/**
 * A dominant that cannot rest (with a seventh, diminished, or of another degree), whose goal the next phrase begins
 * with: the pause is a breath within one thought.
 */
function leansOn(analysis: Analysis, { index, root, quality, roman }: Chord): boolean {
  const next = analysis.chords[index + 1];
  const restless = roman.seventh !== undefined || quality === 'diminished' || roman.applied !== undefined;
  if (next === undefined || !restless || !isDominant(analysis.chords[index]!)) return false;
  return fifthsPlace(next.root) === fifthsPlace(root) - (quality === 'diminished' ? 5 : 1);
}

/** By the notes alone an inversion, from the last note of the melody to the end, though the reading hears past it. */
function invertedAsHeard(analysis: Analysis, phrase: Phrase, bass: Tone): Occurrence[] {
  const { texture } = analysis;
  const end = sliceAt(texture, phrase.until - 1);
  const top = end && toneIn(end, 'S');
  const heard = hearingAt(texture, phrase.until - 1);
  if (top === undefined || heard === undefined || !sameNoteName(heard.bass, bass.pitch)) return [];
  if (sameNoteName(heard.bass, heard.members.root) || bass.at > top.at) return [];
  return [
    about([bass], {
      severity: 'remark',
      from: bass.at,
      until: phrase.until,
      message: `The phrase ends at ${printPlace(placeAt(texture.score, bass.at))} with ${inVoice(bass)}, which is not the root of the chord that sounds.`,
    }),
  ];
}
