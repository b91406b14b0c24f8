import { listed } from '../english/words.ts';
import type { Analysis, Phrase } from '../harmony/analysis.ts';
import { hearingAt } from '../harmony/by-ear/hearing.ts';
import { finalPhrase, lastChordOf } from '../harmony/questions/closes.ts';
import { voicings } from '../harmony/questions/voicing.ts';
import { fifthsPlace, sameNoteName } from '../score/pitch.ts';
import { about, openingTones } from './occurrence.ts';
import { defineRule, type Occurrence } from './rule.ts';
import { inVoice } from './wording.ts';

export const noTierce = defineRule({
  id: 'no-tierce',
  name: 'Minor close without a tierce de Picardie',
  family: 'cadences and phrases',
  statement: 'Chorales in minor mostly end with a major chord, the tierce de Picardie.',
  why: 'To ears of that time the major third was the more perfect rest, so most minor chorales brighten at the very end; a minor close is possible, but it is the exception.',
  hints: [
    'Look at the third of the last chord.',
    'See whether raising it by a semitone suits the melody and the words.',
    'Cadences: the tierce de Picardie at the end of minor chorales.',
  ],
  source:
    'M. Boyd, Harmonizing “Bach” Chorales (from memory), on the tierce de Picardie; handbooks leave it to taste',
  severity: 'remark',
  weight: 1,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The last chord is minor.',
        text: `key: A minor
metre: 4/4
S: C5 D5 B4 B4 | A4*4! |
A: A4 A4 A4 G#4 | E4*4! |
T: E4 F4 E4 E4 | C4*4! |
B: A3 D3 E3 E3 | A2*4! |`,
      },
    ],
    right: [
      {
        caption: 'The last chord is major.',
        text: `key: A minor
metre: 4/4
S: C5 D5 B4 B4 | A4*4! |
A: A4 A4 A4 G#4 | E4*4! |
T: E4 F4 E4 E4 | C#4*4! |
B: A3 D3 E3 E3 | A2*4! |`,
      },
    ],
  },
  check: (analysis) => {
    const phrase = finalPhrase(analysis);
    return phrase === undefined ? [] : minorClose(analysis, phrase);
  },
});

function minorClose(analysis: Analysis, phrase: Phrase): Occurrence[] {
  const cadence = phrase.cadence === undefined ? undefined : analysis.cadences[phrase.cadence];
  if (cadence === undefined || (cadence.kind !== 'perfect' && cadence.kind !== 'plagal')) return [];
  // The third may be raised after the close.
  const goal = lastChordOf(analysis, phrase);
  if (cadence.key.mode !== 'minor' || goal === undefined) return [];
  // The reading may expect the major third so much that it holds the minor one for an ornament.
  const { third } = hearingAt(analysis.texture, goal.at)?.members ?? goal.members;
  const minor = fifthsPlace(third) === fifthsPlace(goal.root) - 3;
  const thirds = minor
    ? openingTones(voicings(analysis)[goal.index]!).filter((tone) => sameNoteName(tone.pitch, third))
    : [];
  if (thirds.length === 0) return [];
  return [
    about(thirds, {
      from: goal.at,
      until: goal.until,
      message: `The piece ends with a minor chord, its third being ${listed(thirds.map(inVoice))}; most chorales in minor end with a major one.`,
    }),
  ];
}
