import type { Analysis } from '../harmony/analysis.ts';
import { isPassingBy } from '../harmony/ornamental.ts';
import { isDominant, leadingNoteIn } from '../harmony/questions.ts';
import { type Voicing, voicings } from '../harmony/voicing.ts';
import { printNoteName, sameNoteName } from '../score/pitch.ts';
import { VOICES } from '../score/score.ts';
import { type Slice, type Tone, toneIn } from '../score/texture.ts';
import { defineRule, type Occurrence } from './rule.ts';
import { inOrder, inVoice, inWords, voicesOf } from './wording.ts';

export const doubledLeadingNote = defineRule({
  id: 'doubled-leading-note',
  name: 'Leading note doubled',
  family: 'chords',
  statement: 'Only one voice has the leading note of a dominant chord.',
  why: 'The leading note pulls so strongly to the tonic that two voices with it either move in octaves or leave one of them hanging; and it already sticks out of the chord when one voice sings it.',
  hints: [
    'Find the two voices that have the leading note in this chord.',
    'Keep it in one of them, the one that rises to the tonic most naturally, and let the other take the root or the fifth of the chord.',
    'Doubling: double the root, or the fifth, and never the leading note.',
  ],
  source: 'W. Piston, Harmony, chapter on the dominant and on doubling (from memory)',
  severity: 'fault',
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'Alto and tenor both have F#, the leading note of G.',
        text: `key: G major
metre: 4/4
S: B4 A4 A4*2 | G4*4! |
A: G4 E4 F#4*2 | G4*4! |
T: D4 C4 F#3*2 | B3*4! |
B: G3 C3 D3*2 | G2*4! |`,
      },
    ],
    right: [
      {
        caption: 'The tenor takes the root of the chord instead.',
        text: `key: G major
metre: 4/4
S: B4 A4 A4*2 | G4*4! |
A: G4 E4 F#4*2 | D4*4! |
T: D4 C4 D4*2 | B3*4! |
B: G3 C3 D3*2 | G2*4! |`,
      },
    ],
  },
  check: (analysis) => voicings(analysis).flatMap((voicing) => doublings(analysis, voicing)),
});

/** One occurrence for each stretch of a dominant chord in which two voices or more sound its leading note. */
function doublings(analysis: Analysis, voicing: Voicing): Occurrence[] {
  const { chord, slices } = voicing;
  const leading = isDominant(chord) ? leadingNoteIn(chord) : undefined;
  if (leading === undefined) return [];
  const found: { slice: Slice; until: number; tones: Tone[] }[] = [];
  for (const slice of slices) {
    const tones = VOICES.flatMap((voice) => {
      const tone = toneIn(slice, voice);
      return tone !== undefined && sameNoteName(tone.pitch, leading) && !isPassingBy(analysis.texture, tone)
        ? [tone]
        : [];
    });
    if (tones.length < 2) continue;
    const open = found.at(-1);
    if (open?.until === slice.at) {
      open.until = slice.until;
      open.tones.push(...tones);
    } else found.push({ slice, until: slice.until, tones });
  }
  return found.map(({ slice, until, tones }) => {
    const ordered = inOrder(tones);
    return {
      voices: voicesOf(ordered),
      from: slice.at,
      until,
      tones: ordered,
      message: `The leading note ${printNoteName(leading)} is doubled: ${inWords(ordered.map(inVoice))}.`,
    };
  });
}
