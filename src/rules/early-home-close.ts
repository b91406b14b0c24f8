import type { Analysis, Cadence, Phrase } from '../harmony/analysis.ts';
import { sameKey } from '../harmony/key.ts';
import { cadenceTones, closedPhrases, finalPhrase } from '../harmony/questions/closes.ts';
import { homeKey } from '../harmony/questions/home-key.ts';
import { printKey } from '../harmony/words/labels.ts';
import { placeAt, printPlace } from '../score/place.ts';
import { about } from './occurrence.ts';
import { defineRule, type Occurrence } from './rule.ts';

export const earlyHomeClose = defineRule({
  id: 'early-home-close',
  name: 'Home close too early and too often',
  family: 'cadences and phrases',
  statement:
    'Before the last phrase, two phrases running do not both end with a full perfect cadence in the home key.',
  why: 'A perfect cadence at home says that it is over; said twice running in the middle of the hymn, it stops the music and leaves nothing for the end to say.',
  hints: [
    'Compare the cadences of the two phrases: key, chords and the soprano note.',
    'Let one of them be imperfect or interrupted, or turn to a related key, if the melody allows.',
    'Form: vary the cadences, and keep the full close at home for the end.',
  ],
  source:
    'W. Piston, Harmony, chapter on cadences (from memory); how closes are spread over a chorale’s phrases: M. Boyd, Harmonizing “Bach” Chorales (from memory); R. Hutchinson, Music Theory for the 21st-Century Classroom, 2017, chapter 22 on modulation (open to all)',
  severity: 'query',
  weight: 3,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The first two phrases close alike, and the third is still to come.',
        text: `key: C major
metre: 4/4
S: E4 D4 C4*2! | F4 D4 C4*2! | E4 D4 C4*2! |
A: C4 B3 G3*2! | C4 B3 G3*2! | C4 B3 G3*2! |
T: G3 G3 E3*2! | A3 G3 E3*2! | G3 F3 E3*2! |
B: C3 G2 C3*2! | F2 G2 C3*2! | G2 G2 C3*2! |`,
      },
    ],
    right: [
      {
        caption: 'The second phrase stops on the dominant, and the close at home is kept for the end.',
        text: `key: C major
metre: 4/4
S: E4 D4 C4*2! | F4 E4 D4*2! | E4 D4 C4*2! |
A: C4 B3 G3*2! | C4 C4 B3*2! | C4 B3 G3*2! |
T: G3 G3 E3*2! | A3 G3 G3*2! | G3 F3 E3*2! |
B: C3 G2 C3*2! | F2 C3 G2*2! | G2 G2 C3*2! |`,
      },
    ],
  },
  check: (analysis) => {
    const phrases = closedPhrases(analysis);
    return phrases.slice(1).flatMap((phrase, i) => alike(analysis, phrases[i]!, phrase));
  },
});

function alike(analysis: Analysis, first: Phrase, second: Phrase): Occurrence[] {
  // Written-out repeats set aside, the last phrase may close as it likes.
  if (second === finalPhrase(analysis) || second.index !== first.index + 1) return [];
  if (second.index === analysis.phrases.length - 1) return [];
  const [a, b] = [closeAtHome(analysis, first), closeAtHome(analysis, second)];
  if (a === undefined || b === undefined) return [];
  const where = printPlace(placeAt(analysis.texture.score, b.at));
  return [
    about([...cadenceTones(analysis, a, ['S', 'B']), ...cadenceTones(analysis, b, ['S', 'B'])], {
      from: analysis.chords[a.approach]!.at,
      until: analysis.chords[b.goal]!.until,
      message: `Two phrases running close with a full perfect cadence in ${printKey(b.key)}, the second at ${where}, and the piece goes on.`,
    }),
  ];
}

function closeAtHome(analysis: Analysis, phrase: Phrase): Cadence | undefined {
  const cadence = phrase.cadence === undefined ? undefined : analysis.cadences[phrase.cadence];
  return cadence?.full && sameKey(cadence.key, homeKey(analysis)) ? cadence : undefined;
}
