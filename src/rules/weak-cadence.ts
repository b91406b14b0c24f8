import type { Analysis, Cadence, Phrase } from '../harmony/analysis.ts';
import { cadenceTones, closedPhrases, finalPhrase } from '../harmony/questions/closes.ts';
import { cadenceWords, inversionWords } from '../harmony/words/words.ts';
import { sameNoteName } from '../score/pitch.ts';
import { placeAt, printPlace } from '../score/place.ts';
import { stretchesWithin } from '../score/search.ts';
import { defineRule, type Occurrence, type Severity } from './rule.ts';
import { inOrder, voicesOf } from './wording.ts';

export const weakCadence = defineRule({
  id: 'weak-cadence',
  name: 'Weak cadence',
  family: 'cadences and phrases',
  statement:
    'The last phrase ends with a perfect cadence (or a plagal one) with both chords in root position.',
  why: 'The end of a hymn has to sound like an end: only dominant to tonic, with the roots in the bass, shuts the door. An inverted or open cadence leaves it ajar.',
  hints: [
    'Look at the last two chords and name them, with their inversions.',
    'Let the bass leap from the root of the dominant to the tonic, and fit the other voices above it.',
    'Cadences: the final cadence is perfect (now and then plagal), in root position.',
  ],
  source:
    'W. Piston, Harmony, chapter on cadences (from memory); M. Boyd, Harmonizing “Bach” Chorales (from memory), on the final cadence',
  severity: 'fault',
  weight: 9,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The last chord is in first inversion.',
        text: `key: G major
metre: 4/4
S: B4 C5 A4 A4 | G4*4! |
A: G4 G4 F#4 F#4 | D4*4! |
T: D4 E4 D4 D4 | D4*4! |
B: G3 C3 D3 C3 | B2*4! |`,
      },
      {
        caption: 'The last phrase ends on the dominant, with an imperfect cadence.',
        text: `key: C major
metre: 4/4
S: E4 F4 E4 D4 | D4*4! |
A: C4 C4 C4 C4 | B3*4! |
T: G3 A3 G3 A3 | G3*4! |
B: C3 F3 C3 F3 | G3*4! |`,
      },
    ],
    right: [
      {
        caption: 'Dominant to tonic, both with the root in the bass.',
        text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 G4 F#4 | D4*4! |
T: D4 E4 D4 C4 | B3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
      },
    ],
  },
  check: (analysis) => closedPhrases(analysis).flatMap((phrase) => judge(analysis, phrase)),
});

function judge(analysis: Analysis, phrase: Phrase): Occurrence[] {
  const final = phrase === finalPhrase(analysis);
  const cadence = phrase.cadence === undefined ? undefined : analysis.cadences[phrase.cadence];
  if (cadence === undefined) return final ? [withoutCadence(analysis, phrase)] : [];
  const verdict = final ? finalVerdict(analysis, cadence) : innerVerdict(analysis, cadence);
  if (verdict === undefined) return [];
  const tones = cadenceTones(analysis, cadence, ['S', 'B']);
  return [
    {
      severity: verdict.severity,
      voices: voicesOf(tones),
      from: analysis.chords[cadence.approach]!.at,
      until: analysis.chords[cadence.goal]!.until,
      tones: inOrder(tones),
      message: verdict.message,
    },
  ];
}

interface Verdict {
  readonly severity: Severity;
  readonly message: string;
}

function finalVerdict(analysis: Analysis, cadence: Cadence): Verdict | undefined {
  if (cadence.kind === 'imperfect' || cadence.kind === 'interrupted')
    return {
      severity: endsOnItsRoot(analysis, cadence) ? 'query' : 'fault',
      message: `The last phrase ends with an ${cadenceWords(cadence).name}, which does not sound like an end.`,
    };
  if (cadence.inverted) {
    const goal = analysis.chords[cadence.goal]!;
    return {
      severity: cadence.kind === 'plagal' && goal.roman.inversion === 0 ? 'remark' : 'fault',
      message: `The last phrase ends with a ${cadence.kind} cadence, weakened because ${invertedWords(analysis, cadence)}.`,
    };
  }
  // After a perfect cadence a plagal one can say Amen; alone it has nothing to confirm.
  if (cadence.kind === 'plagal' && analysis.cadences.length > 1 && !analysis.cadences.some(isPerfect))
    return {
      severity: 'query',
      message: 'The piece ends with a plagal cadence, and no phrase before it closes with a perfect one.',
    };
  if (cadence.kind === 'perfect' && !cadence.full)
    return {
      severity: 'remark',
      message:
        'The last cadence is perfect, but the soprano does not end on the tonic, so it sounds less final.',
    };
  return undefined;
}

function isPerfect({ kind }: Cadence): boolean {
  return kind === 'perfect';
}

/**
 * A major chord in root position under its own root in the melody: in the old modes (Phrygian, Mixolydian) tunes
 * close on what the ear of a later age takes for a dominant.
 */
function endsOnItsRoot(analysis: Analysis, cadence: Cadence): boolean {
  const goal = analysis.chords[cadence.goal]!;
  const soprano = cadenceTones(analysis, cadence, ['S']).at(-1);
  return (
    cadence.kind === 'imperfect' &&
    goal.roman.inversion === 0 &&
    soprano !== undefined &&
    sameNoteName(soprano.pitch, goal.root)
  );
}

function innerVerdict(analysis: Analysis, cadence: Cadence): Verdict | undefined {
  const where = printPlace(placeAt(analysis.texture.score, cadence.at));
  if (!cadence.inverted || cadence.kind === 'imperfect' || cadence.kind === 'interrupted') return undefined;
  // An inverted last chord is the business of inverted-phrase-end.
  if (analysis.chords[cadence.goal]!.roman.inversion > 0) return undefined;
  return {
    severity: 'remark',
    message: `The ${cadence.kind} cadence at ${where} is weak, because ${invertedWords(analysis, cadence)}.`,
  };
}

/** `its last chord is in first inversion`, `the chord before its last is in first inversion`, and the like. */
function invertedWords(analysis: Analysis, cadence: Cadence): string {
  const goal = analysis.chords[cadence.goal]!;
  const approach = analysis.chords[cadence.approach]!;
  if (goal.roman.inversion > 0) return `its last chord is in ${inversionWords(goal.roman.inversion)}`;
  return approach.roman.inversion > 0
    ? `the chord before its last is in ${inversionWords(approach.roman.inversion)}`
    : 'the chord before its last is only the leading-note chord';
}

function withoutCadence(analysis: Analysis, phrase: Phrase): Occurrence {
  const chords = stretchesWithin(analysis.chords, phrase.from, phrase.until).slice(-2);
  const from = chords[0]?.at ?? phrase.from;
  return {
    voices: ['S', 'B'],
    from,
    until: phrase.until,
    tones: inOrder(
      (['S', 'B'] as const).flatMap((voice) =>
        stretchesWithin(analysis.texture.tones[voice], from, phrase.until),
      ),
    ),
    message: 'The last phrase ends without a cadence: its last two chords do not close.',
  };
}
