import { movesAsMeant } from '../harmony/by-ear/plainly-misspelt.ts';
import { intervalQuality } from '../score/interval.ts';
import { printPitch } from '../score/pitch.ts';
import { VOICE_WORDS } from '../score/score.ts';
import { writtenPitch } from '../score/texture.ts';
import { defineRule } from './rule.ts';

export const augmentedStep = defineRule({
  id: 'augmented-step',
  name: 'Augmented second',
  family: 'melody',
  statement: 'No voice moves by an augmented second.',
  why: 'It looks like a step but is as wide as a minor third, and singers miss it. The chorales go round it, mostly where the sixth and seventh degrees meet in minor.',
  hints: [
    'Look at the two notes in this voice: they are neighbours on the stave, but one accidental pulls them apart.',
    'Come to the second note from the other side, or give this voice another note of one of the two chords.',
    'Melody: avoid augmented intervals; in minor, do not step between the sixth degree and the raised seventh.',
  ],
  source: 'E. Aldwell and C. Schachter, Harmony and Voice Leading, on melodic intervals (from memory)',
  severity: 'fault',
  weight: 5,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The alto goes from the sixth degree up to the raised seventh of A minor.',
        text: `key: A minor
metre: 3/4
S: D5 B4 C5 |
A: F4 G#4 A4 |
T: A3 E4 E4 |
B: D3 E3 A2 |`,
      },
    ],
    right: [
      {
        caption: 'The upper voices fall against the rising bass, and no voice has to go from F to G sharp.',
        text: `key: A minor
metre: 3/4
S: A4 G#4 A4 |
A: F4 E4 E4 |
T: D4 B3 C4 |
B: D3 E3 A2 |`,
      },
    ],
  },
  check: (analysis) =>
    movesAsMeant(analysis)
      .filter(({ interval }) => Math.abs(interval.steps) === 1 && isAugmented(intervalQuality(interval)))
      .map(({ from, to, interval, acrossFermata }) => ({
        ...(acrossFermata ? { severity: 'remark' as const } : {}),
        voices: [from.voice],
        from: from.at,
        until: to.until,
        tones: [from, to],
        message: `The ${VOICE_WORDS[from.voice]} moves ${interval.steps > 0 ? 'up' : 'down'} an augmented second, ${printPitch(writtenPitch(from))} to ${printPitch(writtenPitch(to))}${acrossFermata ? ', into the next phrase' : ''}.`,
      }))
      .sort((a, b) => a.from - b.from),
});

function isAugmented(quality: ReturnType<typeof intervalQuality>): boolean {
  return quality === 'augmented' || quality === 'doubly augmented';
}
