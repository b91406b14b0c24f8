import type { Analysis } from '../harmony/analysis.ts';
import { doublingsOf } from '../harmony/doubling.ts';
import { type Voicing, voicings } from '../harmony/voicing.ts';
import { printNoteName } from '../score/pitch.ts';
import { about } from './occurrence.ts';
import { defineRule, type Occurrence } from './rule.ts';
import { inVoice, inWords } from './wording.ts';

export const doubledSeventh = defineRule({
  id: 'doubled-seventh',
  name: 'Seventh doubled',
  family: 'chords',
  statement: 'Only one voice has the seventh of a chord.',
  why: 'A seventh is a dissonance that has to fall by step: two voices with it can only fall together, in octaves, or leave one of them unresolved.',
  hints: [
    'Find the two voices that have the seventh in this chord.',
    'Keep it in the voice that reaches and leaves it by step, and give the other a member of the chord that is missing.',
    'Doubling: a note that has to move in one direction is not doubled.',
  ],
  source: 'W. Piston, Harmony, chapter on the dominant seventh (from memory)',
  severity: 'fault',
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'Alto and tenor both have F, the seventh of the dominant.',
        text: `key: C major
metre: 4/4
S: C5 B4 C5*2! |
A: E4 F4 E4*2! |
T: G3 F3 E3*2! |
B: C3 G2 C3*2! |`,
      },
    ],
    right: [
      {
        caption: 'The tenor keeps the root instead.',
        text: `key: C major
metre: 4/4
S: C5 B4 C5*2! |
A: E4 F4 E4*2! |
T: G3 G3 G3*2! |
B: C3 G2 C3*2! |`,
      },
    ],
  },
  check: (analysis) => voicings(analysis).flatMap((voicing) => doublings(analysis, voicing)),
});

function doublings(analysis: Analysis, voicing: Voicing): Occurrence[] {
  const { seventh } = voicing.chord.members;
  if (seventh === undefined) return [];
  return doublingsOf(analysis, voicing, seventh).map(({ from, until, tones }) =>
    about(tones, {
      from,
      until,
      message: `The seventh of the chord, ${printNoteName(seventh)}, is doubled: ${inWords(tones.map(inVoice))}.`,
    }),
  );
}
