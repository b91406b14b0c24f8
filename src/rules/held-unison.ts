import { capitalised } from '../english/words.ts';
import { NEIGHBOURS, type Stretch, stretchesWhere } from '../score/motion.ts';
import { printPitch, samePitch } from '../score/pitch.ts';
import { barAt } from '../score/place.ts';
import { VOICE_WORDS } from '../score/score.ts';
import { sliceAt, type Texture, writtenPitch } from '../score/texture.ts';
import { beatLength } from '../score/time.ts';
import { defineRule, range } from './rule.ts';
import { beats, inOrder } from './wording.ts';

export const heldUnison = defineRule({
  id: 'held-unison',
  name: 'Unison held',
  family: 'spacing and range',
  statement: 'Two voices that meet on one note part again soon.',
  why: 'While two voices sing the same note there are only three parts. For a beat that is nothing; for longer the harmony sounds thin.',
  hints: [
    'Look at how long these two voices stay on the same note.',
    'Give one of them another note of the chord, or let it move away after a beat.',
    'Spacing: a unison between neighbours is for passing through.',
  ],
  source:
    'E. Aldwell and C. Schachter, Harmony and Voice Leading, on spacing and unisons (from memory); W. Piston allows a unison in passing',
  severity: 'query',
  weight: 3,
  parameters: {
    longest: range(
      2,
      [1, 16],
      'How many beats a unison may last and be worth no more than a remark; up to one beat it is nothing.',
    ),
  },
  examples: {
    wrong: [
      {
        caption: 'Alto and tenor sit on the same note for three beats.',
        text: `key: C major
metre: 4/4
S: G4 A4 G4 G4 | G4*4 |
A: C4 C4 C4 D4 | E4*4 |
T: C4*3 B3 | C4*4 |
B: E3 F3 E3 G3 | C3*4 |`,
      },
    ],
    right: [
      {
        caption: 'Alto and tenor meet for one beat and part again.',
        text: `key: C major
metre: 4/4
S: G4 A4 G4 G4 | G4*4 |
A: C4 C4 E4 D4 | E4*4 |
T: G3 C4 C4 B3 | C4*4 |
B: E3 F3 C3 G3 | C3*4 |`,
      },
    ],
  },
  check: ({ texture }, { longest }) =>
    NEIGHBOURS.flatMap((pair) => stretchesWhere(texture, pair, (distance) => distance === 0))
      .flatMap((stretch) => {
        const { metre } = barAt(texture.score, stretch.from);
        const length = stretch.until - stretch.from;
        if (length <= beatLength(metre)) return [];
        const [upper, lower] = stretch.pair;
        // Where they move on together, that is said as parallel unisons.
        const moves = stretch.tones.some(({ pitch }) => !samePitch(pitch, stretch.tones[0]!.pitch));
        const short = length <= longest * beatLength(metre) || moves || endsPhrase(texture, stretch);
        return [
          {
            ...(short ? { severity: 'remark' as const } : {}),
            voices: stretch.pair,
            from: stretch.from,
            until: stretch.until,
            tones: inOrder(stretch.tones),
            message: `${capitalised(VOICE_WORDS[upper])} and ${VOICE_WORDS[lower]} stay on the same note, ${notes(stretch)}, for ${beats(length, metre)}.`,
          },
        ];
      })
      .sort((a, b) => a.from - b.from),
});

/** A long last chord has nowhere to part to. */
function endsPhrase(texture: Texture, stretch: Stretch): boolean {
  const last = sliceAt(texture, stretch.until - 1);
  return last?.fermata === true || last?.rests === true;
}

function notes({ tones, pair }: Stretch): string {
  return [
    ...new Set(tones.filter((tone) => tone.voice === pair[0]).map((tone) => printPitch(writtenPitch(tone)))),
  ].join('–');
}
