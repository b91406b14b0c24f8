import type { Analysis, Chord, Key, Phrase } from '../harmony/analysis.ts';
import { sameKey } from '../harmony/key.ts';
import { finalPhrase, lastChordOf } from '../harmony/questions/closes.ts';
import { homeKey } from '../harmony/questions/home-key.ts';
import { voicings } from '../harmony/questions/voicing.ts';
import { printKey } from '../harmony/words/labels.ts';
import { fifthsPlace, sameNoteName } from '../score/pitch.ts';
import { about, openingTones } from './occurrence.ts';
import { defineRule, type Occurrence } from './rule.ts';

export const endsInAnotherKey = defineRule({
  id: 'ends-in-another-key',
  name: 'End in another key',
  family: 'cadences and phrases',
  statement: 'The piece ends in its own key, least of all in one that is new in the last phrase.',
  why: 'The keys of a chorale are a journey there and back. An end in a key that comes for the first time is no arrival: the ear still waits for the way home.',
  hints: [
    'Compare the key of the last cadence with the key in which the piece began, and with those of the cadences between.',
    'Find the note that turned the last phrase away, most often a sharp, flat or natural, and the chord it belongs to; then look for a chord of the home key there.',
    'Form: modulation within a phrase, and the return home at the end.',
  ],
  source:
    'M. Boyd, Harmonizing “Bach” Chorales (from memory), on planning the cadences; R. Hutchinson, Music Theory for the 21st-Century Classroom, 2017, chapter 22 on modulation (open to all)',
  severity: 'fault',
  weight: 6,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'Two phrases close in C major, and the last one in B flat major.',
        text: `key: C major
metre: 4/4
S: E4 D4 C4*2! | F4 E4 D4*2! | Eb4 Eb4 D4*2! |
A: C4 B3 G3*2! | C4 C4 B3*2! | Bb3 C4 Bb3*2! |
T: G3 G3 E3*2! | A3 G3 G3*2! | G3 A3 F3*2! |
B: C3 G2 C3*2! | F2 C3 G2*2! | G2 F2 Bb2*2! |`,
      },
    ],
    right: [
      {
        caption: 'The last phrase comes home.',
        text: `key: C major
metre: 4/4
S: E4 D4 C4*2! | F4 E4 D4*2! | E4 D4 C4*2! |
A: C4 B3 G3*2! | C4 C4 B3*2! | C4 B3 G3*2! |
T: G3 G3 E3*2! | A3 G3 G3*2! | G3 F3 E3*2! |
B: C3 G2 C3*2! | F2 C3 G2*2! | G2 G2 C3*2! |`,
      },
    ],
  },
  check: (analysis) => strayEnd(analysis),
});

/** A perfect close in a key that phrases before it reached already, where the exercise itself says that it is at home elsewhere. */
function awayFromHome(analysis: Analysis, phrase: Phrase | undefined, last: Chord): Occurrence[] {
  const cadence = phrase?.cadence === undefined ? undefined : analysis.cadences[phrase.cadence];
  const home = homeKey(analysis);
  const stated = analysis.texture.score.bars[0]?.key.mode !== undefined;
  if (!stated || cadence?.kind !== 'perfect' || sameKey(cadence.key, home)) return [];
  if (sameNoteName(last.root, home.tonic) || !sameKey(analysis.chords[0]!.key, home)) return [];
  return [
    about(openingTones(voicings(analysis)[last.index]!, ['S', 'B']), {
      severity: 'query',
      from: last.at,
      until: last.until,
      message: `The piece is in ${printKey(home)} and ends with a perfect cadence in ${printKey(cadence.key)}: it has not come home.`,
    }),
  ];
}

/** Phrases there must be before one can speak of a plan of keys. */
const FEWEST = 3;

function strayEnd(analysis: Analysis): Occurrence[] {
  const { chords, phrases, texture } = analysis;
  const phrase = finalPhrase(analysis);
  const last = phrase && lastChordOf(analysis, phrase);
  const first = chords[0];
  if (last === undefined || first === undefined || phrases.length < FEWEST) return [];
  const known: Key[] = [first.key];
  for (const earlier of phrases.slice(0, -1)) {
    const closing = lastChordOf(analysis, earlier);
    if (closing !== undefined) known.push(closing.key);
  }
  // What the exercise says of its mode settles the home key, whatever was read so far.
  if (texture.score.bars[0]?.key.mode !== undefined) known.push(homeKey(analysis));
  // On the tonic it began with, a tierce over it, whatever key the reading is in by then.
  if (sameNoteName(last.root, first.key.tonic) && last.roman.inversion === 0) return [];
  if (known.some((key) => sameKey(key, last.key))) return awayFromHome(analysis, phrase, last);
  return [
    about(openingTones(voicings(analysis)[last.index]!, ['S', 'B']), {
      // Old tunes in other modes end on the note that sounds as the dominant.
      ...(fifthsPlace(last.root) - fifthsPlace(first.key.tonic) === 1 ? { severity: 'query' as const } : {}),
      from: last.at,
      until: last.until,
      message: `The piece began in ${printKey(first.key)} and ends in ${printKey(last.key)}, a key in which no phrase before has closed.`,
    }),
  ];
}
