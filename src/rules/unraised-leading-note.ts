import type { Analysis, Chord, Phrase } from '../harmony/analysis.ts';
import { closedPhrases, lastChordOf } from '../harmony/closes.ts';
import { previousChord, tonesOf, type Voicing, voicings } from '../harmony/voicing.ts';
import { fifthsPlace, printNoteName } from '../score/pitch.ts';
import { placeAt, printPlace } from '../score/place.ts';
import { about, openingTones } from './occurrence.ts';
import { defineRule, type Occurrence } from './rule.ts';
import { inVoice, inWords, sentence } from './wording.ts';

export const unraisedLeadingNote = defineRule({
  id: 'unraised-leading-note',
  name: 'Leading note not raised at a cadence',
  family: 'chords',
  statement: 'In a minor key the seventh degree is raised in the dominant of a cadence.',
  why: 'A tone below the tonic does not lead: without the raised semitone the cadence sounds like a folk song, not like a chorale, and the key is not confirmed.',
  hints: [
    'Look at the third of the chord before the last one of the phrase.',
    'Raise it by a semitone with an accidental, and check that no other voice has it unraised.',
    'Minor keys: the dominant of a cadence is major, with the raised seventh degree.',
  ],
  source: 'W. Piston, Harmony, chapter on the minor mode (from memory)',
  severity: 'fault',
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The dominant of the cadence has G where A minor asks for the raised seventh.',
        text: `key: A minor
metre: 4/4
S: A4 C5 B4 B4 | C5 B4 A4*2! |
A: E4 A4 G#4 E4 | A4 G4 E4*2! |
T: C4 E4 E4 G#3 | E4 E4 C4*2! |
B: A2 A2 E3 E3 | A2 E3 A2*2! |`,
      },
    ],
    right: [
      {
        caption: 'The seventh degree is raised, and leads up to the tonic.',
        text: `key: A minor
metre: 4/4
S: A4 C5 B4 B4 | C5 B4 A4*2! |
A: E4 A4 G#4 E4 | A4 G#4 A4*2! |
T: C4 E4 E4 G#3 | E4 D4 C4*2! |
B: A2 A2 E3 E3 | A2 E3 A2*2! |`,
      },
    ],
  },
  check: (analysis) => closedPhrases(analysis).flatMap((phrase) => unraised(analysis, phrase)),
});

function unraised(analysis: Analysis, phrase: Phrase): Occurrence[] {
  const goal = lastChordOf(analysis, phrase);
  const approach = goal && previousChord(analysis, goal.index);
  if (goal === undefined || approach === undefined || approach.at < phrase.from) return [];
  const voicing = voicings(analysis)[approach.index]!;
  const flat = seventhDegree(voicing, goal);
  if (flat === undefined) return [];
  const tones = flat === 'third' ? tonesOf(voicing, 'third') : tonesOf(voicing, 'root');
  if (tones.length === 0) return [];
  const where = printPlace(placeAt(analysis.texture.score, goal.at));
  return [
    about([...tones, ...openingTones(voicings(analysis)[goal.index]!, ['B'])], {
      severity: flat === 'third' ? 'fault' : 'query',
      from: approach.at,
      until: goal.until,
      message: sentence(
        `${inWords(tones.map(inVoice))} ${tones.length === 1 ? 'lies' : 'lie'} a tone below ${printNoteName(goal.root)}, where the phrase closes at ${where}: the seventh degree is not raised.`,
      ),
    }),
  ];
}

/** Which member of the approach is the unraised seventh degree of the minor chord that closes the phrase, if any. */
function seventhDegree({ chord }: Voicing, goal: Chord): 'third' | 'root' | undefined {
  if (goal.quality !== 'minor' || goal.roman.inversion !== 0) return undefined;
  const distance = fifthsPlace(chord.root) - fifthsPlace(goal.root);
  if (distance === 1 && chord.quality === 'minor') return 'third';
  return distance === -2 && chord.quality === 'major' ? 'root' : undefined;
}
