import { listed } from '../english/words.ts';
import type { Analysis } from '../harmony/analysis.ts';
import { doublingsOf } from '../harmony/questions/doubling.ts';
import { isDominant } from '../harmony/questions/functions.ts';
import { phraseAt } from '../harmony/questions/moments.ts';
import { isFleeting, isStepwise } from '../harmony/questions/ornamental.ts';
import { previousChord, type Voicing, voicings } from '../harmony/questions/voicing.ts';
import { previousTone } from '../score/motion.ts';
import { printNoteName, staffPlace } from '../score/pitch.ts';
import type { Tone } from '../score/texture.ts';
import { about } from './occurrence.ts';
import { defineRule, type Occurrence, type Severity } from './rule.ts';
import { inVoice } from './wording.ts';

export const doubledThird = defineRule({
  id: 'doubled-third',
  name: 'Third of a major chord doubled',
  family: 'chords',
  statement: 'The third of a major chord is doubled only where the lines ask for it.',
  why: 'The major third is the brightest note of the chord; sung by two voices it sticks out, and the chord loses its balance.',
  hints: [
    'Find the two voices that have the third of this chord.',
    'Let one of them take the root or the fifth, unless both move by step in opposite directions.',
    'Doubling: in major chords double the root first, then the fifth, and the third only for the sake of a good line.',
  ],
  source: 'A. Butterworth, Harmony in Practice, on doubling (from memory)',
  disagreement:
    'A. Butterworth (Harmony in Practice) would not have the third of a major chord doubled without a reason. W. Piston (Harmony) ranks root, fifth and third in that order and puts the line first. S. Kostka and D. Payne (Tonal Harmony) forbid no doubling in a first inversion but that of the leading note (all from memory). A profile that asks about it follows Piston, one that takes it as a fault follows Butterworth, and one that leaves it out follows neither: it is for exercises where other things come first.',
  severity: 'query',
  weight: 2,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'On the third beat soprano and tenor both leap to B, the third of the chord.',
        text: `key: G major
metre: 4/4
S: G4 G4 B4 A4 | G4*4! |
A: B3 C4 D4 D4 | B3*4! |
T: D3 E3 B3 F#3 | G3*4! |
B: G2 C3 G2 D3 | G2*4! |`,
      },
    ],
    right: [
      {
        caption: 'The tenor doubles the root instead.',
        text: `key: G major
metre: 4/4
S: G4 G4 B4 A4 | G4*4! |
A: B3 C4 D4 D4 | B3*4! |
T: D3 E3 G3 F#3 | G3*4! |
B: G2 C3 G2 D3 | G2*4! |`,
      },
    ],
  },
  check: (analysis) => voicings(analysis).flatMap((voicing) => doublings(analysis, voicing)),
});

function doublings(analysis: Analysis, voicing: Voicing): Occurrence[] {
  const { chord } = voicing;
  if (!voicing.settled || chord.quality !== 'major' || chord.roman.special !== undefined) return [];
  // In a dominant the third is the leading note, which has a rule of its own.
  if (isDominant(chord)) return [];
  return doublingsOf(analysis, voicing, chord.members.third).flatMap(({ from, until, tones }) => {
    const severity = gravity(analysis, voicing, tones);
    if (severity === undefined) return [];
    return [
      about(tones, {
        severity,
        from,
        until,
        message: `The third of a major chord, ${printNoteName(chord.members.third)}, is doubled: ${listed(tones.map(inVoice))}.`,
      }),
    ];
  });
}

/** How much a doubled major third matters; undefined where the lines give good cause for it. */
function gravity(analysis: Analysis, voicing: Voicing, tones: readonly Tone[]): Severity | undefined {
  const { chord } = voicing;
  const before = previousChord(analysis, chord.index);
  // V–VI: the leading note rises and the other upper voices fall, so the third comes to be doubled.
  if (before !== undefined && isDominant(before) && chord.roman.degree === 6) return undefined;
  const leaping = tones.filter((tone) => !isStepwise(analysis.texture, tone)).length;
  // In first inversion the third is the bass, and a line above it may well meet it.
  if (leaping === 0 || (chord.roman.inversion > 0 && leaping < tones.length)) return undefined;
  const opens = phraseAt(analysis, chord.at)?.from === chord.at;
  if (chord.roman.inversion > 0 || opens || isFleeting(analysis, chord)) return 'remark';
  return tones.every((tone) => isLeaptTo(analysis, tone)) ? 'query' : 'remark';
}

function isLeaptTo(analysis: Analysis, tone: Tone): boolean {
  const before = previousTone(analysis.texture, tone);
  return before !== undefined && Math.abs(staffPlace(before.pitch) - staffPlace(tone.pitch)) > 1;
}
