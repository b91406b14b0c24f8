import { listed } from '../english/words.ts';
import type { Analysis } from '../harmony/analysis.ts';
import { hearings, isWritten } from '../harmony/by-ear/hearing.ts';
import { type Doubling, doublingsIn, doublingsOf } from '../harmony/questions/doubling.ts';
import { type Voicing, voicings } from '../harmony/questions/voicing.ts';
import { type NoteName, printNoteName } from '../score/pitch.ts';
import { about, besides } from './occurrence.ts';
import { defineRule, type Occurrence, type Severity } from './rule.ts';
import { inVoice } from './wording.ts';

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
  weight: 8,
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
  check: (analysis) =>
    besides(
      voicings(analysis).flatMap((voicing) => doublings(analysis, voicing)),
      hearings(analysis.texture)
        .filter(isWritten)
        .flatMap((heard) => {
          const { seventh } = heard.members;
          // The reading may hold one of the notes for an ornament; the ear has them side by side all the same.
          const found =
            seventh && heard.slices[0]!.strength >= 1 ? doublingsIn(analysis, heard, seventh) : [];
          return found.map((doubling) => doubledAs(seventh!, doubling, 'remark'));
        }),
    ),
});

function doublings(analysis: Analysis, voicing: Voicing): Occurrence[] {
  const { seventh } = voicing.chord.members;
  if (seventh === undefined || !voicing.settled) return [];
  return doublingsOf(analysis, voicing, seventh).map((doubling) => doubledAs(seventh, doubling));
}

function doubledAs(seventh: NoteName, { from, until, tones }: Doubling, severity?: Severity): Occurrence {
  return about(tones, {
    ...(severity === undefined ? {} : { severity }),
    from,
    until,
    message: `The seventh of the chord, ${printNoteName(seventh)}, is doubled: ${listed(tones.map(inVoice))}.`,
  });
}
