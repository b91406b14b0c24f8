import type { Analysis, Chord } from '../harmony/analysis.ts';
import { numeral } from '../harmony/labels.ts';
import { isFleeting } from '../harmony/ornamental.ts';
import { tonesOf, voicings } from '../harmony/voicing.ts';
import { placeAt, printPlace } from '../score/place.ts';
import { about } from './occurrence.ts';
import { defineRule, type Occurrence } from './rule.ts';

export const diminishedRootPosition = defineRule({
  id: 'diminished-root-position',
  name: 'Diminished triad in root position',
  family: 'chords',
  statement: 'A diminished triad is used in first inversion.',
  why: 'In root position the diminished fifth stands on the bass, and the chord sounds thin and restless; in first inversion the bass is consonant with the other voices.',
  hints: [
    'Look at the bass note of this chord: it is the root of a diminished triad.',
    'Put the third of the chord in the bass, or use a dominant chord there.',
    'Choice of chords: the diminished triads (on the leading note, and on the supertonic in minor) go in first inversion.',
  ],
  source: 'W. Piston, Harmony, chapter on triads in first inversion (from memory)',
  severity: 'query',
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The second chord is a diminished triad on its root.',
        text: `key: A minor
metre: 4/4
S: C5 D5 D5 C5 | D5 B4 C5*2! |
A: A4 F4 E4 E4 | F4 E4 E4*2! |
T: E4 D4 B3 C4 | A3 G#3 A3*2! |
B: A2 B2 G#2 A2 | D3 E3 A2*2! |`,
      },
    ],
    right: [
      {
        caption: 'The same chord in first inversion.',
        text: `key: A minor
metre: 4/4
S: C5 D5 B4 C5 | D5 B4 C5*2! |
A: A4 B4 G#4 A4 | A4 G#4 A4*2! |
T: E4 F4 E4 E4 | F4 E4 E4*2! |
B: A2 D3 E3 A2 | D3 E3 A2*2! |`,
      },
    ],
  },
  check: (analysis) => analysis.chords.flatMap((chord) => rooted(analysis, chord)),
});

function rooted(analysis: Analysis, chord: Chord): Occurrence[] {
  const { roman } = chord;
  if (chord.quality !== 'diminished' || roman.seventh !== undefined || roman.inversion !== 0) return [];
  const voicing = voicings(analysis)[chord.index]!;
  if (!voicing.sure || isFleeting(analysis, chord)) return [];
  return [
    about(
      tonesOf(voicing, 'root').filter((tone) => tone.voice === 'B'),
      {
        from: chord.at,
        until: chord.until,
        message: `The diminished triad at ${printPlace(placeAt(analysis.texture.score, chord.at))}, ${numeral(roman, chord.key)}, has its root in the bass.`,
      },
    ),
  ];
}
