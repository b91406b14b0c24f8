import { tonesOf, type Voicing, voicings } from '../harmony/voicing.ts';
import { printNoteName } from '../score/pitch.ts';
import { about, openingTones } from './occurrence.ts';
import { defineRule, type Occurrence } from './rule.ts';
import { inVoice, inWords } from './wording.ts';

export const missingRoot = defineRule({
  id: 'missing-root',
  name: 'Root missing',
  family: 'chords',
  statement: 'Every chord has its root.',
  why: 'The root is what the chord is heard on; without it nobody can tell which chord is meant.',
  hints: [
    'Ask which chord you mean here, and which of its notes the four voices have.',
    'Give the root to the voice that doubles another note, best of all to the bass.',
    'Doubling and omission: only the fifth may be left out of a chord.',
  ],
  source: 'common practice, no source',
  severity: 'query',
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The dominant has only F# and A: its root is nowhere.',
        text: `key: G major
metre: 4/4
S: B4 C5 A4*2 | G4*4! |
A: G4 G4 F#4*2 | D4*4! |
T: D4 E4 A3*2 | B3*4! |
B: G3 C3 F#3*2 | G3*4! |`,
      },
    ],
    right: [
      {
        caption: 'The bass has the root of the dominant.',
        text: `key: G major
metre: 4/4
S: B4 C5 A4*2 | G4*4! |
A: G4 G4 F#4*2 | D4*4! |
T: D4 E4 D4*2 | B3*4! |
B: G3 C3 D3*2 | G2*4! |`,
      },
    ],
  },
  check: (analysis) => voicings(analysis).flatMap(lacking),
});

function lacking(voicing: Voicing): Occurrence[] {
  const { chord } = voicing;
  if (!voicing.complete || tonesOf(voicing, 'root').length > 0) return [];
  const tones = openingTones(voicing);
  return [
    about(tones, {
      from: chord.at,
      until: chord.until,
      message: `This reads as a chord on ${printNoteName(chord.root)}, but nobody sings ${printNoteName(chord.root)}: ${inWords(tones.map(inVoice))}.`,
    }),
  ];
}
