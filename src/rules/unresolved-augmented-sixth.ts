import { listed } from '../english/words.ts';
import type { Analysis } from '../harmony/analysis.ts';
import { departure, resolutionOf } from '../harmony/questions/resolution.ts';
import { intervalBetween, intervalQuality, simple } from '../score/interval.ts';
import { PAIRS } from '../score/motion.ts';
import { printPitch } from '../score/pitch.ts';
import { VOICE_WORDS } from '../score/score.ts';
import { type Tone, toneIn, writtenPitch } from '../score/texture.ts';
import { about } from './occurrence.ts';
import { defineRule, type Occurrence } from './rule.ts';
import { named } from './wording.ts';

export const unresolvedAugmentedSixth = defineRule({
  id: 'unresolved-augmented-sixth',
  name: 'Augmented sixth unresolved',
  family: 'chords',
  statement: 'The two notes of an augmented sixth move outward by a semitone, to an octave.',
  why: 'The augmented sixth is made of two leading notes that pull apart; the octave they open onto is the only thing that explains it.',
  hints: [
    'Find the two voices that form the augmented sixth and follow each into the next chord.',
    'Let the upper note rise and the lower note fall, each by a semitone.',
    'Chromatic harmony: augmented sixths resolve outward to the octave of the dominant.',
  ],
  source:
    'W. Piston, Harmony, chapter on augmented sixth chords (from memory); R. Hutchinson, Music Theory for the 21st-Century Classroom, 2017, chapter 21 on augmented sixths (open to all)',
  severity: 'fault',
  weight: 6,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'G#, the upper note of the augmented sixth, falls by a third.',
        text: `key: D minor
metre: 4/4
S: A4 G#4 E4*2 | F4*4! |
A: F4 D4 C#4*2 | D4*4! |
T: D4 D4 A3*2 | A3*4! |
B: D3 Bb2 A2*2 | D3*4! |`,
      },
    ],
    right: [
      {
        caption: 'Both notes move outward, to the octave on the dominant.',
        text: `key: D minor
metre: 4/4
S: A4 G#4 A4*2 | A4*4! |
A: F4 E4 E4*2 | F4*4! |
T: D4 D4 C#4*2 | D4*4! |
B: D3 Bb2 A2*2 | D3*4! |`,
      },
    ],
  },
  check: (analysis) => sixths(analysis),
});

function sixths(analysis: Analysis): Occurrence[] {
  const { texture } = analysis;
  const seen = new Set<string>();
  const found: Occurrence[] = [];
  for (const slice of texture.slices) {
    for (const [a, b] of PAIRS) {
      const upper = toneIn(slice, a);
      const lower = toneIn(slice, b);
      if (!upper || !lower || !isAugmentedSixth(lower, upper)) continue;
      const id = upper.id + lower.id;
      if (seen.has(id)) continue;
      seen.add(id);
      found.push(...judge(analysis, upper, lower));
    }
  }
  return found;
}

/** An augmented sixth, or the diminished third that it makes upside down, by spelling. */
function isAugmentedSixth(lower: Tone, upper: Tone): boolean {
  const interval = intervalBetween(lower.pitch, upper.pitch);
  const { steps } = simple(interval);
  const quality = intervalQuality(interval);
  return (steps === 5 && quality === 'augmented') || (steps === 2 && quality === 'diminished');
}

function judge(analysis: Analysis, upper: Tone, lower: Tone): Occurrence[] {
  const { texture } = analysis;
  const { steps } = simple(intervalBetween(lower.pitch, upper.pitch));
  // In an augmented sixth the upper note rises; turned into a diminished third, the lower one does.
  const [rising, falling] = steps === 5 ? [upper, lower] : [lower, upper];
  const wrong: { tone: Tone; goesTo: Tone }[] = [];
  const up = departure(texture, rising);
  const down = departure(texture, falling);
  // The upper note may also sink to the seventh of the dominant.
  const sinks = up !== undefined && isSemitone(rising, up, -1);
  if (up !== undefined && !sinks && resolutionOf(texture, rising, 'up') === undefined)
    wrong.push({ tone: rising, goesTo: up });
  const opens = resolutionOf(texture, falling, 'down');
  // A whole tone down is how a seventh falls, not how this sixth opens.
  if (
    down !== undefined &&
    (opens === undefined || intervalBetween(falling.pitch, opens.pitch).semitones !== -1)
  )
    wrong.push({ tone: falling, goesTo: down });
  if (wrong.length === 0) return [];
  const words = listed(
    wrong.map(
      ({ tone, goesTo }) => `the ${VOICE_WORDS[tone.voice]} goes to ${printPitch(writtenPitch(goesTo))}`,
    ),
  );
  return [
    about([upper, lower, ...wrong.map(({ goesTo }) => goesTo)], {
      from: Math.max(upper.at, lower.at),
      until: Math.max(...wrong.map(({ goesTo }) => goesTo.until)),
      message: `The augmented sixth between ${named(upper)} and ${named(lower)} does not open to the octave: ${words}.`,
    }),
  ];
}

function isSemitone(from: Tone, to: Tone, semitones: number): boolean {
  const interval = intervalBetween(from.pitch, to.pitch);
  return interval.steps === 0 && interval.semitones === semitones;
}
