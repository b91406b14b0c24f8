import { capitalised, withArticle } from '../english/words.ts';
import { intervalBetween, intervalName } from '../score/interval.ts';
import { type Stretch, stretchesWhere } from '../score/motion.ts';
import { semitone } from '../score/pitch.ts';
import { barAt } from '../score/place.ts';
import { VOICE_WORDS } from '../score/score.ts';
import { beatLength, type Ticks } from '../score/time.ts';
import { defineRule, range } from './rule.ts';
import { inOrder } from './wording.ts';

export const voiceSpacing = defineRule({
  id: 'voice-spacing',
  name: 'Gap between upper voices',
  family: 'spacing and range',
  statement: 'Soprano and alto, and alto and tenor, are never more than an octave apart.',
  why: 'The upper three voices blend when they lie close together. With a hole of more than an octave between two of them, the one on the far side sounds left out.',
  hints: [
    'Look at how far apart these two voices are at this point.',
    'Bring the lower of them up or the upper of them down to the nearest other note of the chord.',
    'Spacing: no more than an octave between neighbours among the upper three voices; tenor and bass may be further apart.',
  ],
  source: 'E. Aldwell and C. Schachter, Harmony and Voice Leading, on spacing (from memory)',
  severity: 'query',
  weight: 5,
  parameters: {
    widest: range(12, [7, 24], 'The widest gap allowed, in semitones.'),
    slight: range(
      4,
      [0, 12],
      'A gap of one beat between soprano and alto that is wider by no more than this many semitones is only a remark, as is any shorter gap.',
    ),
    innerVoices: range(
      2,
      [0, 16],
      'How many beats a gap between alto and tenor may last and be worth no more than a remark.',
    ),
  },
  examples: {
    wrong: [
      {
        caption: 'More than an octave between soprano and alto.',
        text: `key: C major
metre: 3/4
S: E5 D5 E5 |
A: C4 B3 C4 |
T: G3 G3 G3 |
B: C3 G2 C3 |`,
      },
    ],
    right: [
      {
        caption: 'The upper three close together; the bass may lie as low as it likes.',
        text: `key: C major
metre: 3/4
S: E5 D5 E5 |
A: C5 B4 C5 |
T: G4 G4 G4 |
B: C3 G2 C3 |`,
      },
    ],
  },
  check: ({ texture }, { widest, slight, innerVoices }) => {
    const pairs = [
      ['S', 'A'],
      ['A', 'T'],
    ] as const;
    return pairs
      .flatMap((pair) => stretchesWhere(texture, pair, (distance) => distance > widest))
      .map((stretch) => {
        const beat = beatLength(barAt(texture.score, stretch.from).metre);
        return {
          ...(isSlight(stretch, widest + slight, beat, innerVoices) ? { severity: 'remark' as const } : {}),
          voices: stretch.pair,
          from: stretch.from,
          until: stretch.until,
          tones: inOrder(stretch.tones),
          message: `${capitalised(VOICE_WORDS[stretch.pair[0]])} and ${VOICE_WORDS[stretch.pair[1]]} are ${withArticle(widestInterval(stretch))} apart.`,
        };
      })
      .sort((a, b) => a.from - b.from);
  },
});

function isSlight(stretch: Stretch, widest: number, beat: Ticks, innerVoices: number): boolean {
  const length = stretch.until - stretch.from;
  // Under the tune a hole is heard at once; between the inner voices only when it stays.
  if (stretch.pair[0] !== 'S') return length <= innerVoices * beat;
  return length < beat || (length === beat && stretch.widest <= widest);
}

/** The widest interval of the stretch by name. */
function widestInterval({ tones, pair, widest }: Stretch): string {
  const upper = tones.filter((tone) => tone.voice === pair[0]);
  const lower = tones.filter((tone) => tone.voice === pair[1]);
  for (const high of upper) {
    for (const low of lower) {
      const together = high.at < low.until && low.at < high.until;
      if (together && semitone(high.pitch) - semitone(low.pitch) === widest)
        return intervalName(intervalBetween(low.pitch, high.pitch));
    }
  }
  return 'wide interval';
}
