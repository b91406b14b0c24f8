import type { Analysis, Chord, Phrase } from '../harmony/analysis.ts';
import { closedPhrases, finalPhrase, lastChordOf } from '../harmony/questions/closes.ts';
import { dullDominants } from '../harmony/questions/dull-dominants.ts';
import { previousChord, voicings } from '../harmony/questions/voicing.ts';
import { numeral } from '../harmony/words/labels.ts';
import { fifthsPlace } from '../score/pitch.ts';
import { barAt, placeAt, printPlace } from '../score/place.ts';
import { beatLength } from '../score/time.ts';
import { about, openingTones } from './occurrence.ts';
import { defineRule, type Occurrence } from './rule.ts';

export const noCadence = defineRule({
  id: 'no-cadence',
  name: 'Phrase without a cadence',
  family: 'cadences and phrases',
  statement: 'Every phrase ends with a cadence.',
  why: 'The fermata is the comma of the verse: a cadence tells the singers that the line is over, and whether more is to come.',
  hints: [
    'Name the last two chords of the phrase.',
    'Make them one of the cadences: V–I, something–V, IV–I or V–VI, as the melody allows.',
    'Cadences: perfect, imperfect, plagal and interrupted.',
  ],
  source:
    'W. Piston, Harmony, chapter on cadences (from memory); M. Boyd, Harmonizing “Bach” Chorales (from memory), on cadences at the fermatas; R. Hutchinson, Music Theory for the 21st-Century Classroom, 2017, chapter 22 on modulation, for closes in other keys (open to all)',
  severity: 'query',
  weight: 8,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The first phrase stops on the submediant, after the supertonic.',
        text: `key: C major
metre: 4/4
S: E4 F4 F4 E4! | E4 D4 C4*2! |
A: C4 C4 D4 C4! | C4 B3 G3*2! |
T: G3 A3 A3 A3! | G3 G3 E3*2! |
B: C3 F3 D3 A2! | C3 G2 C3*2! |`,
      },
    ],
    right: [
      {
        caption: 'The first phrase stops with an imperfect cadence.',
        text: `key: C major
metre: 4/4
S: E4 F4 E4 D4! | E4 D4 C4*2! |
A: C4 C4 C4 B3! | C4 B3 G3*2! |
T: G3 A3 G3 G3! | G3 G3 E3*2! |
B: C3 F3 C3 G2! | G2 G2 C3*2! |`,
      },
    ],
  },
  check: (analysis) => closedPhrases(analysis).flatMap((phrase) => open(analysis, phrase)),
});

function open(analysis: Analysis, phrase: Phrase): Occurrence[] {
  // How the piece ends is weak-cadence's business.
  if (phrase.cadence !== undefined || phrase === finalPhrase(analysis)) return [];
  const last = lastChordOf(analysis, phrase);
  const before = last && previousChord(analysis, last.index);
  if (last === undefined || before === undefined || before.until <= phrase.from) return [];
  // An applied dominant and its goal close in the key of that goal.
  if (before.roman.applied !== undefined && before.roman.applied.degree === last.roman.degree) return [];
  const known = voicings(analysis);
  const unsure = isGuess(analysis, phrase);
  const where = printPlace(placeAt(analysis.texture.score, last.at));
  return [
    about(
      [...openingTones(known[before.index]!, ['S', 'B']), ...openingTones(known[last.index]!, ['S', 'B'])],
      {
        severity:
          unsure || fallsFifth(before, last) || wantsLeadingNote(analysis, before, last) ? 'remark' : 'query',
        from: before.at,
        until: last.until,
        message: `${unsure ? 'A phrase seems to end' : 'The phrase ends'} at ${where} with ${numeral(before.roman, before.key)}–${numeral(last.roman, last.key)}, which is no cadence.`,
      },
    ),
  ];
}

/** Nobody marked the end, and the note it was inferred from is no long one: that no cadence is there speaks against it. */
function isGuess({ texture }: Analysis, { end, goal, until }: Phrase): boolean {
  return end === 'inferred' && until - goal <= beatLength(barAt(texture.score, goal).metre);
}

/** With its seventh degree raised it would be a close: that it is not raised is unraised-leading-note's business. */
function wantsLeadingNote(analysis: Analysis, before: Chord, last: Chord): boolean {
  const told = dullDominants(analysis).some(({ goal, place }) => goal === last && place !== 'between tonics');
  return told || isMinorDominant(last) || (isMinorDominant(before) && last.roman.degree === 1);
}

function isMinorDominant({ key, roman, quality }: Chord): boolean {
  return key.mode === 'minor' && roman.degree === 5 && roman.applied === undefined && quality === 'minor';
}

/** Down a fifth to a major chord: weak, but the ear can take it for a close in the key of that chord. */
function fallsFifth(before: Chord, last: Chord): boolean {
  const falls = fifthsPlace(before.root) - fifthsPlace(last.root) === 1;
  return falls && before.quality === 'major' && last.quality === 'major' && last.roman.inversion === 0;
}
