import { NEIGHBOURS, type Stretch, stretchesWhere } from '../score/motion.ts';
import { printPitch } from '../score/pitch.ts';
import { barAt, printBar } from '../score/place.ts';
import { VOICE_WORDS, type VoiceName } from '../score/score.ts';
import { type Texture, writtenPitch } from '../score/texture.ts';
import { beatLength } from '../score/time.ts';
import { defineRule, type Occurrence, range } from './rule.ts';
import { inOrder } from './wording.ts';

export const voiceCrossing = defineRule({
  id: 'voice-crossing',
  name: 'Crossed voices',
  family: 'spacing and range',
  statement: 'No voice goes below the voice under it.',
  why: 'When two voices change places the ear follows the wrong one: the tune or the bass seems to leap, and the parts can no longer be told apart.',
  hints: [
    'Look at which of these two voices is higher at this point: it should be the one printed first.',
    'Let the two voices exchange their notes, or move the lower one down within the chord.',
    'Part-writing: voices do not cross.',
  ],
  source:
    'E. Aldwell and C. Schachter, Harmony and Voice Leading, on voice crossing (from memory); the chorales let inner voices cross for a moment, and the tenor dip below a bass that was doubled an octave lower',
  severity: 'query',
  weight: 5,
  parameters: {
    bass: range(
      1,
      [0, 16],
      'How many beats tenor and bass may be crossed and be worth no more than a remark.',
    ),
    innerVoices: range(
      1,
      [0, 16],
      'How many beats alto and tenor may be crossed and be worth no more than a remark.',
    ),
  },
  examples: {
    wrong: [
      {
        caption: 'The alto sings above the soprano.',
        text: `key: C major
metre: 3/4
S: C5 B4 C5 |
A: E5 D5 E5 |
T: G4 G4 G4 |
B: C3 G3 C3 |`,
      },
    ],
    right: [
      {
        caption: 'Alto and tenor meet on one note, and do not cross.',
        text: `key: C major
metre: 3/4
S: C5 B4 C5 |
A: E4 G4 G4 |
T: E4 D4 E4 |
B: C3 G3 C3 |`,
      },
    ],
  },
  check: ({ texture }, { innerVoices, bass }) =>
    NEIGHBOURS.flatMap((pair) => stretchesWhere(texture, pair, (distance) => distance < 0))
      .map((stretch) => {
        const [upper, lower] = stretch.pair;
        const length = stretch.until - stretch.from;
        const beat = beatLength(barAt(texture.score, stretch.from).metre);
        // A crossed soprano hides the tune at once; the lower voices may change places for a moment.
        const passing = upper === 'S' ? length < beat : length <= (lower === 'B' ? bass : innerVoices) * beat;
        return {
          ...(passing ? { severity: 'remark' as const } : {}),
          voices: stretch.pair,
          from: stretch.from,
          until: stretch.until,
          tones: inOrder(stretch.tones),
          ...told(texture, stretch),
        };
      })
      .sort((a, b) => a.from - b.from),
});

/** So many notes of a voice can be named one by one. */
const NAMED = 6;
/** From so large a share of a voice's notes on, the two lines seem to have changed places. */
const EXCHANGED = 0.75;

function told(texture: Texture, stretch: Stretch): Pick<Occurrence, 'message' | 'hint'> {
  const [upper, lower] = stretch.pair;
  const [above, below] = [VOICE_WORDS[upper], VOICE_WORDS[lower]];
  const sung = stretch.tones.filter(({ voice }) => voice === lower);
  if (sung.length <= NAMED)
    return {
      message: `The ${below} goes above the ${above}: ${pitches(stretch, lower)} over ${pitches(stretch, upper)}.`,
    };
  const [from, until] = [stretch.from, stretch.until - 1].map((at) =>
    printBar(barAt(texture.score, at).number),
  );
  const where = from === until ? `in ${from}` : `from ${from} to ${until}`;
  const message = `The ${below} lies above the ${above} ${where}, for ${sung.length} notes.`;
  if (sung.length < EXCHANGED * texture.tones[lower].length) return { message };
  return {
    message,
    hint: `Were the ${above} and the ${below} written in each other’s place? Then exchange the two lines.`,
  };
}

function pitches({ tones }: Stretch, voice: VoiceName): string {
  return tones
    .filter((tone) => tone.voice === voice)
    .map((tone) => printPitch(writtenPitch(tone)))
    .join('–');
}
