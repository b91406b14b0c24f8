import { tonesOf, type Voicing, voicings } from '../harmony/voicing.ts';
import { printNoteName } from '../score/pitch.ts';
import { VOICES } from '../score/score.ts';
import { toneIn } from '../score/texture.ts';
import { defineRule, type Occurrence } from './rule.ts';
import { inOrder, inVoice, inWords } from './wording.ts';

export const missingThird = defineRule({
  id: 'missing-third',
  name: 'Third missing',
  family: 'chords',
  statement: 'Every chord has its third.',
  why: 'The third makes a chord major or minor; without it the chord sounds bare and hollow, like music of another age.',
  hints: [
    'Name the notes of this chord and see which member nobody sings.',
    'Give the third to a voice that doubles the root or the fifth, where it can reach it by a small movement.',
    'Doubling and omission: the fifth may be left out, the third may not.',
  ],
  source: 'W. Piston, Harmony, chapter on triads in four parts (from memory)',
  severity: 'fault',
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The second chord has only D and A.',
        text: `key: G major
metre: 4/4
S: B4 A4 G4*2 | G4*4! |
A: D4 D4 E4 F#4 | D4*4! |
T: G3 A3 B3 A3 | B3*4! |
B: G3 D3 E3 D3 | G2*4! |`,
      },
    ],
    right: [
      {
        caption: 'The alto has the third of the second chord.',
        text: `key: G major
metre: 4/4
S: B4 A4 G4*2 | G4*4! |
A: D4 F#4 E4 F#4 | D4*4! |
T: G3 A3 B3 A3 | B3*4! |
B: G3 D3 E3 D3 | G2*4! |`,
      },
    ],
  },
  check: (analysis) => voicings(analysis).flatMap(lacking),
});

function lacking(voicing: Voicing): Occurrence[] {
  const { chord, slices } = voicing;
  if (!voicing.complete || tonesOf(voicing, 'third').length > 0) return [];
  const first = slices[0]!;
  const tones = inOrder(VOICES.flatMap((voice) => toneIn(first, voice) ?? []));
  return [
    {
      voices: [...VOICES],
      from: chord.at,
      until: chord.until,
      tones,
      message: `The chord on ${printNoteName(chord.root)} has no third: ${inWords(tones.map(inVoice))}.`,
    },
  ];
}
