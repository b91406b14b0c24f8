import { capitalised, listed } from '../english/words.ts';
import type { Analysis, Phrase } from '../harmony/analysis.ts';
import { closedPhrases, lastChordOf } from '../harmony/questions/closes.ts';
import { type DullDominant, dullDominants } from '../harmony/questions/dull-dominants.ts';
import { departure } from '../harmony/questions/resolution.ts';
import { lastTone, previousChord, voicings } from '../harmony/questions/voicing.ts';
import { printKey } from '../harmony/words/labels.ts';
import { fifthsPlace, noteNameAtFifths, printNoteName, sameNoteName, staffPlace } from '../score/pitch.ts';
import { placeAt, printPlace } from '../score/place.ts';
import { VOICES } from '../score/score.ts';
import { about, besides, openingTones } from './occurrence.ts';
import { defineRule, type Occurrence } from './rule.ts';
import { inVoice } from './wording.ts';

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
  weight: 10,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The dominant of the cadence has G where A minor asks for the raised seventh.',
        text: `key: A minor
metre: 4/4
S: A4 C5 B4 B4 | C5 B4 A4*2! |
A: E4 A4 G#4 G#4 | A4 G4 E4*2! |
T: C4 E4 E4 D4 | C4 E4 C4*2! |
B: A2 A2 E3 E3 | A2 E3 A2*2! |`,
      },
    ],
    right: [
      {
        caption: 'The seventh degree is raised, and leads up to the tonic.',
        text: `key: A minor
metre: 4/4
S: A4 C5 B4 B4 | C5 B4 A4*2! |
A: E4 A4 G#4 G#4 | A4 G#4 A4*2! |
T: C4 E4 E4 D4 | C4 D4 C4*2! |
B: A2 A2 E3 E3 | A2 E3 A2*2! |`,
      },
    ],
  },
  check: (analysis) => {
    const found = dullDominants(analysis)
      .filter(({ key }) => key.mode === 'minor')
      .map((dominant) => unraised(analysis, dominant));
    const lowered = closedPhrases(analysis).flatMap((phrase) => loweredAgain(analysis, phrase));
    return besides(found, lowered);
  },
});

function unraised(analysis: Analysis, dominant: DullDominant): Occurrence {
  const { key, place, chord, goal, tones } = dominant;
  const are = tones.length === 1 ? 'is' : 'are';
  const where = printPlace(placeAt(analysis.texture.score, goal.at));
  const degree = `the seventh degree of ${printKey(key)}, not raised`;
  const { message, severity, hint } = (
    {
      'full close': {
        message: `a tone below ${printNoteName(key.tonic)}, where the phrase closes at ${where}: the seventh degree is not raised.`,
        // Before a major chord it may be an old mode and no minor key at all.
        severity: goal.quality === 'minor' ? 'fault' : 'query',
        hint: undefined,
      },
      'half close': {
        message: `${degree}, in the chord at ${where} on which the phrase stops: it stands where the dominant belongs.`,
        severity: 'query',
        hint: 'Look at the third of the chord on which the phrase stops: does it want to rise to the tonic?',
      },
      'between tonics': {
        message: `${degree}, between two tonic chords, where the dominant belongs.`,
        severity: 'query',
        hint: 'Look at the third of the chord between the two tonic chords: does it want to rise to the tonic?',
      },
    } as const
  )[place];
  const verb = place === 'full close' ? (tones.length === 1 ? 'lies' : 'lie') : are;
  const close = place === 'full close' ? openingTones(voicings(analysis)[goal.index]!, ['B']) : [];
  return about([...tones, ...close], {
    severity,
    from: chord.at,
    until: place === 'between tonics' ? chord.until : goal.until,
    message: capitalised(`${listed(tones.map(inVoice))} ${verb} ${message}`),
    ...(hint === undefined ? {} : { hint }),
  });
}

/** Raised at first and lowered again before the dominant is over, without going on down. */
function loweredAgain(analysis: Analysis, phrase: Phrase): Occurrence[] {
  const goal = lastChordOf(analysis, phrase);
  const approach = goal && previousChord(analysis, goal.index);
  if (goal === undefined || approach === undefined || approach.at < phrase.from) return [];
  if (goal.roman.inversion !== 0 || goal.quality !== 'minor') return [];
  if (fifthsPlace(approach.root) - fifthsPlace(goal.root) !== 1 || approach.quality === 'minor') return [];
  const natural = noteNameAtFifths(fifthsPlace(goal.root) - 2);
  const tones = VOICES.flatMap((voice) => {
    const tone = lastTone(voicings(analysis)[approach.index]!, voice);
    if (tone === undefined || !sameNoteName(tone.pitch, natural)) return [];
    const next = departure(analysis.texture, tone);
    const falls = next !== undefined && staffPlace(tone.pitch) - staffPlace(next.pitch) === 1;
    return falls ? [] : [tone];
  });
  if (tones.length === 0) return [];
  const where = printPlace(placeAt(analysis.texture.score, goal.at));
  return [
    about([...tones, ...openingTones(voicings(analysis)[goal.index]!, ['B'])], {
      severity: 'query',
      from: approach.at,
      until: goal.until,
      message: capitalised(
        `${listed(tones.map(inVoice))} ${tones.length === 1 ? 'lies' : 'lie'} a tone below ${printNoteName(goal.root)}, where the phrase closes at ${where}: the seventh degree is not raised.`,
      ),
    }),
  ];
}
