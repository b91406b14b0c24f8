import type { Analysis, Cadence, Chord } from '../harmony/analysis.ts';
import { sameKey } from '../harmony/key.ts';
import { cadenceTones } from '../harmony/questions/closes.ts';
import { isDominant } from '../harmony/questions/functions.ts';
import { plainDegree } from '../harmony/questions/progression.ts';
import { sameRoot, voicings } from '../harmony/questions/voicing.ts';
import { numeral } from '../harmony/words/labels.ts';
import { VOICES } from '../score/score.ts';
import { about, openingTones } from './occurrence.ts';
import { defineRule, type Occurrence } from './rule.ts';

export const missingPredominant = defineRule({
  id: 'missing-predominant',
  name: 'Cadence without a pre-dominant',
  family: 'cadences and phrases',
  statement:
    'A perfect cadence is prepared by a chord that leads to the dominant: ii, IV, vi, or a six-four over the dominant.',
  why: 'The dominant makes more of its arrival when another chord has pointed to it; straight from the tonic the cadence sounds short of breath.',
  hints: [
    'Look at the chord before the dominant of this cadence.',
    'Try the supertonic (in first inversion, say) or the subdominant there, if the melody note belongs to it.',
    'Cadences: pre-dominant, dominant, tonic.',
  ],
  source: 'E. Aldwell and C. Schachter, Harmony and Voice Leading, on chords that lead to V (from memory)',
  severity: 'remark',
  weight: 2,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The dominant of the cadence comes straight from the tonic.',
        text: `key: C major
metre: 4/4
S: E4 G4 E4 D4 | C4*4! |
A: C4 D4 C4 B3 | G3*4! |
T: G3 B3 G3 G3 | E3*4! |
B: C3 G2 C3 G2 | C3*4! |`,
      },
    ],
    right: [
      {
        caption: 'The supertonic in first inversion leads to the dominant.',
        text: `key: C major
metre: 4/4
S: E4 G4 F4 D4 | C4*4! |
A: C4 C4 D4 B3 | G3*4! |
T: G3 E3 A3 G3 | E3*4! |
B: C3 C3 F2 G2 | C3*4! |`,
      },
    ],
  },
  check: (analysis) => {
    const found = analysis.cadences.flatMap((cadence) => unprepared(analysis, cadence));
    return found.length > 0 && knowsTwoChords(analysis) ? [twoChords(analysis)] : found;
  },
});

/** So many chords are enough to expect a third kind. */
const MANY = 16;

/** From beginning to end nothing but tonic and dominant, in one key, every voice written. */
function knowsTwoChords(analysis: Analysis): boolean {
  const known = voicings(analysis);
  return (
    analysis.chords.length >= MANY &&
    analysis.keys.length === 1 &&
    known.every(({ sure, written }) => sure && written.length === VOICES.length) &&
    analysis.chords.every(
      (chord) => chord.roman.applied === undefined && (isDominant(chord) || plainDegree(chord.roman) === 1),
    )
  );
}

function twoChords(analysis: Analysis): Occurrence {
  const { chords } = analysis;
  return about([], {
    severity: 'query',
    from: chords[0]!.at,
    until: chords.at(-1)!.until,
    message: `All ${chords.length} chords of the piece are tonic or dominant: no other chord leads to a cadence, or gives the tune another colour.`,
  });
}

/** Degrees that lead to the dominant. */
const LEADING: ReadonlySet<number | undefined> = new Set([2, 4, 6]);

function unprepared(analysis: Analysis, cadence: Cadence): Occurrence[] {
  const dominant = analysis.chords[cadence.approach]!;
  if (cadence.kind !== 'perfect' || !isDominant(dominant)) return [];
  const before = chordBefore(analysis, dominant);
  if (before === undefined) return [];
  // One note more can make a chord of the sixth degree out of the tonic.
  const { sure, written } = voicings(analysis)[before.index]!;
  if (!sure || written.length < VOICES.length) return [];
  // In the turn to the key of the close its degree is another one.
  if (!sameKey(before.key, cadence.key)) return [];
  // Applied, special and altered chords point somewhere by themselves; a six-four leans on the dominant.
  const degree = plainDegree(before.roman);
  if (degree === undefined || LEADING.has(degree) || before.roman.inversion === 2) return [];
  if (degree === 1 && before.roman.seventh !== undefined) return [];
  return [
    about(
      [
        ...openingTones(voicings(analysis)[before.index]!, ['S', 'B']),
        ...cadenceTones(analysis, cadence, ['S', 'B']),
      ],
      {
        from: before.at,
        until: analysis.chords[cadence.goal]!.until,
        message: `The dominant of this cadence comes from ${numeral(before.roman, before.key)}, without a chord that leads to it.`,
      },
    ),
  ];
}

/** The chord before all the dominant chords of the cadence. */
function chordBefore(analysis: Analysis, dominant: Chord): Chord | undefined {
  let i = dominant.index - 1;
  while (i >= 0 && (sameRoot(analysis.chords[i]!, dominant) || isDominant(analysis.chords[i]!, true))) i--;
  const before = analysis.chords[i];
  return before !== undefined && analysis.chords[i + 1]!.at === before.until ? before : undefined;
}
