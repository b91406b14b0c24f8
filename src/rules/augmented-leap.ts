import { withArticle } from '../english/words.ts';
import { movesAsMeant } from '../harmony/by-ear/plainly-misspelt.ts';
import { intervalName, intervalQuality } from '../score/interval.ts';
import { printPitch } from '../score/pitch.ts';
import { VOICE_WORDS } from '../score/score.ts';
import { writtenPitch } from '../score/texture.ts';
import { defineRule } from './rule.ts';

export const augmentedLeap = defineRule({
  id: 'augmented-leap',
  name: 'Augmented leap',
  family: 'melody',
  statement: 'No voice leaps an augmented interval: a fourth, a fifth or any other.',
  why: 'Both notes of an augmented interval pull outwards, away from each other, so the line is hard to sing and stays open.',
  hints: [
    'Look at the two notes of the leap, and count the semitones as well as the staff places.',
    'Leap the other way round: the augmented interval turned over is a diminished one, which can be resolved inwards.',
    'Melody: avoid augmented intervals.',
  ],
  source: 'E. Aldwell and C. Schachter, Harmony and Voice Leading, on melodic intervals (from memory)',
  severity: 'fault',
  weight: 4,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The bass leaps up from the fourth degree to the leading note, an augmented fourth.',
        text: `key: C major
metre: 3/4
S: F4 G4 G4 | F4 E4*2 |
A: C4 D4 E4 | D4 C4*2 |
T: A3 G3 G3 | B3 C4*2 |
B: F2 B2 C3 | G2 C3*2 |`,
      },
    ],
    right: [
      {
        caption: 'The bass falls instead: a diminished fifth, which closes inwards to the tonic.',
        text: `key: C major
metre: 3/4
S: F4 G4 G4 | F4 E4*2 |
A: C4 D4 E4 | D4 C4*2 |
T: A3 G3 G3 | B3 C4*2 |
B: F3 B2 C3 | G2 C3*2 |`,
      },
    ],
  },
  check: (analysis) =>
    movesAsMeant(analysis)
      .filter(({ interval }) => {
        const steps = Math.abs(interval.steps);
        const quality = intervalQuality(interval);
        return steps > 1 && steps < 8 && (quality === 'augmented' || quality === 'doubly augmented');
      })
      .map(({ from, to, interval, acrossFermata }) => ({
        ...(acrossFermata ? { severity: 'remark' as const } : {}),
        voices: [from.voice],
        from: from.at,
        until: to.until,
        tones: [from, to],
        message: `The ${VOICE_WORDS[from.voice]} leaps ${interval.steps > 0 ? 'up' : 'down'} ${withArticle(intervalName(interval))}, ${printPitch(writtenPitch(from))} to ${printPitch(writtenPitch(to))}${acrossFermata ? ', to begin the next phrase' : ''}.`,
      }))
      .sort((a, b) => a.from - b.from),
});
