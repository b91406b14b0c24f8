import type { Analysis, Chord, Phrase } from '../harmony/analysis.ts';
import { closedPhrases, lastChordOf } from '../harmony/questions/closes.ts';
import { departure } from '../harmony/questions/resolution.ts';
import { lastTone, previousChord, tonesOf, type Voicing, voicings } from '../harmony/questions/voicing.ts';
import { fifthsPlace, noteNameAtFifths, printNoteName, sameNoteName, staffPlace } from '../score/pitch.ts';
import { placeAt, printPlace } from '../score/place.ts';
import { VOICES } from '../score/score.ts';
import type { Tone } from '../score/texture.ts';
import { about, openingTones } from './occurrence.ts';
import { defineRule, type Occurrence, type Severity } from './rule.ts';
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
  const { tones, severity } = unraisedTones(analysis, approach, goal);
  if (tones.length === 0) return [];
  const where = printPlace(placeAt(analysis.texture.score, goal.at));
  return [
    about([...tones, ...openingTones(voicings(analysis)[goal.index]!, ['B'])], {
      severity,
      from: approach.at,
      until: goal.until,
      message: sentence(
        `${inWords(tones.map(inVoice))} ${tones.length === 1 ? 'lies' : 'lie'} a tone below ${printNoteName(goal.root)}, where the phrase closes at ${where}: the seventh degree is not raised.`,
      ),
    }),
  ];
}

interface Unraised {
  readonly tones: readonly Tone[];
  readonly severity: Severity;
}

/** The tones of the approach that are the unraised seventh degree of the chord that closes the phrase. */
function unraisedTones(analysis: Analysis, chord: Chord, goal: Chord): Unraised {
  const voicing = voicings(analysis)[chord.index]!;
  const none: Unraised = { tones: [], severity: 'fault' };
  if (goal.roman.inversion !== 0 || (goal.quality !== 'minor' && goal.quality !== 'major')) return none;
  const distance = fifthsPlace(chord.root) - fifthsPlace(goal.root);
  if (distance === 1 && chord.quality === 'minor') {
    // Before a major chord it may be an old mode and no minor key at all.
    const severity = goal.quality === 'minor' ? 'fault' : 'query';
    return { tones: tonesOf(voicing, 'third'), severity };
  }
  if (goal.quality !== 'minor') return none;
  if (distance === -2 && chord.quality === 'major')
    return { tones: tonesOf(voicing, 'root'), severity: 'query' };
  // Raised at first and lowered again before the chord is over, without going on down.
  const tones = distance === 1 ? loweredAgain(analysis, voicing, goal) : [];
  return { tones, severity: 'query' };
}

function loweredAgain(analysis: Analysis, voicing: Voicing, goal: Chord): Tone[] {
  const natural = noteNameAtFifths(fifthsPlace(goal.root) - 2);
  return VOICES.flatMap((voice) => {
    const tone = lastTone(voicing, voice);
    if (tone === undefined || !sameNoteName(tone.pitch, natural)) return [];
    const next = departure(analysis.texture, tone);
    const falls = next !== undefined && staffPlace(tone.pitch) - staffPlace(next.pitch) === 1;
    return falls ? [] : [tone];
  });
}
