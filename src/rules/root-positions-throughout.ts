import type { Analysis } from '../harmony/analysis.ts';
import { type Voicing, voicings } from '../harmony/questions/voicing.ts';
import { VOICES } from '../score/score.ts';
import { defineRule, type Occurrence, range } from './rule.ts';

export const rootPositionsThroughout = defineRule({
  id: 'root-positions-throughout',
  name: 'Root positions throughout',
  family: 'chords',
  statement: 'Some chords are inverted, so that the bass is a line and not only a row of roots.',
  why: 'A bass of nothing but roots leaps about like the left hand of a guitar book. Inversions let it move by step, keep the weight of root position for the cadences, and make consecutives rarer.',
  hints: [
    'Sing the bass alone from beginning to end: where does it leap, although the chords would let it step?',
    'Leave the cadences as they are, and look in mid-phrase for chords whose third could be the bass note.',
    'First inversions in mid-phrase; root positions at the cadences.',
  ],
  source: 'M. Boyd, Harmonizing “Bach” Chorales (from memory), on the bass as a melody',
  severity: 'query',
  weight: 4,
  parameters: {
    chords: range(24, [8, 100], 'From how many chords on a piece is asked.'),
  },
  examples: {
    wrong: [
      {
        caption: 'Twenty-four chords, every one over its root.',
        text: `key: C major
metre: 4/4
S: E4 F4 D4 E4 | E4 F4 D4 C4! | G4 G4 G4 A4 | G4 A4 A4 G4! | E4 F4 D4 E4 | E4 F4 D4 C4! ||
A: C4 C4 B3 C4 | C4 C4 B3 G3! | E4 D4 E4 F4 | E4 E4 F4 D4! | C4 C4 B3 C4 | C4 C4 B3 G3! ||
T: G3 A3 G3 G3 | A3 A3 G3 E3! | C4 B3 C4 C4 | C4 C4 C4 B3! | G3 A3 G3 G3 | A3 A3 G3 E3! ||
B: C3 F2 G2 C3 | A2 F2 G2 C3! | C3 G2 C3 F2 | C3 A2 F2 G2! | C3 F2 G2 C3 | A2 F2 G2 C3! ||`,
      },
    ],
    right: [
      {
        caption: 'Inversions make a line of the bass.',
        text: `key: C major
metre: 4/4
S: E4 D4 E4 F4 | E4 D4 C4*2! | E4 F4 G4 E4 | D4 D4 C4*2! ||
A: C4 B3 C4 C4 | C4 B3 G3*2! | C4 C4 C4 C4 | C4 B3 G3*2! ||
T: G3 G3 G3 A3 | G3 F3 E3*2! | G3 A3 G3 G3 | A3 G3 E3*2! ||
B: C3 G2 C3 F2 | G2 G2 C3*2! | C3 A2 E3 C3 | F2 G2 C3*2! ||`,
      },
    ],
  },
  check: (analysis, { chords }) => rootsOnly(analysis, chords),
});

/** So few may be inverted among many, before a bass is more than its roots. */
const SHARE = 0.05;

function rootsOnly(analysis: Analysis, fewest: number): Occurrence[] {
  const known = voicings(analysis);
  if (known.some(({ sure, written }) => !sure || written.length < VOICES.length)) return [];
  // A cadential six-four is part of its dominant.
  const asked = known.filter(({ chord }) => chord.sixFour !== 'cadential');
  const inverted = asked.filter(isInverted).length;
  if (asked.length < fewest || inverted > SHARE * asked.length) return [];
  const what =
    inverted === 0
      ? `Each of the ${asked.length} chords has its root in the bass`
      : `Of ${asked.length} chords all but ${inverted === 1 ? 'one' : inverted} have their root in the bass`;
  return [
    {
      ...(inverted === 0 ? {} : { severity: 'remark' as const }),
      voices: ['B'],
      from: analysis.chords[0]!.at,
      until: analysis.chords.at(-1)!.until,
      tones: [],
      message: `${what}, from beginning to end${asked.length < known.length ? ', cadential six-fours left aside' : ''}.`,
    },
  ];
}

function isInverted({ chord }: Voicing): boolean {
  return chord.roman.inversion > 0;
}
