import type { Analysis } from '../harmony/analysis.ts';
import { doublingsOf } from '../harmony/doubling.ts';
import { diminishedTriadOf, type Voicing, voicings } from '../harmony/voicing.ts';
import { printNoteName } from '../score/pitch.ts';
import { about } from './occurrence.ts';
import { defineRule, type Occurrence } from './rule.ts';
import { inVoice, inWords } from './wording.ts';

export const doubledDiminishedRoot = defineRule({
  id: 'doubled-diminished-root',
  name: 'Root of a diminished triad doubled',
  family: 'chords',
  statement: 'In a diminished triad the third is doubled, not the root.',
  why: 'Root and fifth of a diminished triad rub against each other and want to move; only the third is at rest, so only the third bears doubling.',
  hints: [
    'Name the notes of the diminished triad and see which of them two voices share.',
    'Give one of these voices the third of the chord.',
    'Doubling: in diminished triads double the third, which is the bass note of the first inversion.',
  ],
  source: 'W. Piston, Harmony, chapter on triads in first inversion (from memory)',
  severity: 'query',
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'Soprano and tenor both have B, the root of the diminished triad.',
        text: `key: A minor
metre: 4/4
S: A4 B4 G#4*2 | A4*4! |
A: E4 F4 E4*2 | E4*4! |
T: C4 B3 B3*2 | C4*4! |
B: A2 D3 E3*2 | A2*4! |`,
      },
    ],
    right: [
      {
        caption: 'The third of the triad is doubled, in tenor and bass.',
        text: `key: A minor
metre: 4/4
S: A4 B4 G#4*2 | A4*4! |
A: E4 F4 E4*2 | E4*4! |
T: C4 D4 B3*2 | C4*4! |
B: A2 D3 E3*2 | A2*4! |`,
      },
    ],
  },
  check: (analysis) => voicings(analysis).flatMap((voicing) => doublings(analysis, voicing)),
});

function doublings(analysis: Analysis, voicing: Voicing): Occurrence[] {
  const triad = diminishedTriadOf(voicing);
  if (triad === undefined) return [];
  return doublingsOf(analysis, voicing, triad.root).map(({ from, until, tones }) =>
    about(tones, {
      from,
      until,
      message: `${printNoteName(triad.root)}, the root of a diminished triad, is doubled: ${inWords(tones.map(inVoice))}.`,
    }),
  );
}
