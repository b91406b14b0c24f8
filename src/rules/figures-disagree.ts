import { listed } from '../english/words.ts';
import type { Analysis } from '../harmony/analysis.ts';
import { noteNameAtFifths, type Pitch, printNoteName, STEPS, type Step, stepIndex } from '../score/pitch.ts';
import { barAt, placeAt, printPlace } from '../score/place.ts';
import { type KeySignature, VOICES, type WrittenFigure } from '../score/score.ts';
import { isAllWritten, sliceAt, type Tone, toneIn } from '../score/texture.ts';
import { CROTCHET } from '../score/time.ts';
import { about } from './occurrence.ts';
import { defineRule, type Occurrence } from './rule.ts';
import { inVoice } from './wording.ts';

export const figuresDisagree = defineRule({
  id: 'figures-disagree',
  name: 'Figures and chord disagree',
  family: 'chords',
  statement: 'Where the exercise gives figures under the bass, every note they ask for is sung.',
  why: 'The figures are part of what was set: they name the chord and its dissonances, and a chord without the notes they ask for is another chord.',
  hints: [
    'Count the figured intervals up from the bass note, in the key of the signature, with the accidentals given.',
    'Give each of these notes to one of the upper voices.',
    'Figured bass: a figure asks for the note at that interval above the bass, in any octave.',
  ],
  source:
    'R. Hutchinson, Music Theory for the 21st-Century Classroom, 2017, chapter 16 on figured bass (open to all); C. P. E. Bach, Versuch über die wahre Art das Clavier zu spielen, part 2, 1762 (from memory)',
  severity: 'query',
  weight: 6,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The figure 6 under the second bass note asks for a sixth above it, and nobody sings it.',
        text: `key: G major
metre: 4/4
S: B4 B4 A4*2 | G4*4! |
A: D4 F#4 F#4*2 | D4*4! |
T: G3 D4 D4*2 | B3*4! |
B: G3 B2 D3*2 | G2*4! |`,
        figures: [{ at: CROTCHET, figures: ['6'] }],
      },
    ],
    right: [
      {
        caption: 'The alto has the sixth above the second bass note, as its figure 6 asks.',
        text: `key: G major
metre: 4/4
S: B4 B4 A4*2 | G4*4! |
A: D4 G4 F#4*2 | D4*4! |
T: G3 D4 D4*2 | B3*4! |
B: G3 B2 D3*2 | G2*4! |`,
        figures: [{ at: CROTCHET, figures: ['6'] }],
      },
    ],
  },
  check: (analysis) =>
    (analysis.texture.score.figures ?? []).flatMap((written) => compare(analysis, written)),
});

function compare(analysis: Analysis, { at, figures }: WrittenFigure): Occurrence[] {
  const { score } = analysis.texture;
  const slice = sliceAt(analysis.texture, at);
  const bass = slice && toneIn(slice, 'B');
  if (slice === undefined || bass === undefined) return [];
  // What is not written yet may still bring the note.
  if (!isAllWritten(slice)) return [];
  const sung = VOICES.flatMap((voice) => toneIn(slice, voice) ?? []);
  const missing = figures.flatMap((figure) => {
    const asked = askedFor(figure, bass.pitch, barAt(score, at).key);
    return asked === undefined || asked.some((name) => isSung(name, sung))
      ? []
      : [{ figure, note: asked[0]! }];
  });
  if (missing.length === 0) return [];
  const names = missing.map(({ figure, note }) => `${printNoteName(note)} (${figure})`);
  return [
    about(sung, {
      from: at,
      until: slice.until,
      message: `The figures ${figures.join(' ')} at ${printPlace(placeAt(score, at))} ask for ${listed(names)} above ${inVoice(bass)}, and nobody sings ${missing.length === 1 ? 'it' : 'them'}.`,
    }),
  ];
}

interface Asked {
  readonly step: Step;
  readonly alteration: number;
}

/**
 * The notes that satisfy a figure, the likeliest first: the letter at that interval, altered as the signature or the
 * sign says. A sharp or flat may be meant from the natural or from the signature's note. A sign alone is for the third.
 */
function askedFor(figure: string, bass: Pitch, key: KeySignature): Asked[] | undefined {
  const match = /^(##|#|bb|b|n)?(\d{1,2})?$/.exec(figure);
  if (!match || figure === '') return undefined;
  const [, sign, number] = match;
  const interval = number === undefined ? 3 : Number(number);
  if (interval < 1) return undefined;
  const step = STEPS[(stepIndex(bass.step) + interval - 1) % 7]!;
  const signed = [0, 1, 2, 3, 4, 5, 6]
    .map((i) => noteNameAtFifths(key.fifths - 1 + i))
    .find((name) => name.step === step)!.alteration;
  const shift = sign === undefined ? undefined : { '##': 2, '#': 1, b: -1, bb: -2, n: 0 }[sign];
  const alterations = shift === undefined ? [signed] : shift === 0 ? [0] : [shift, signed + shift];
  return alterations.map((alteration) => ({ step, alteration }));
}

function isSung({ step, alteration }: Asked, sung: readonly Tone[]): boolean {
  return sung.some(({ pitch }) => pitch.step === step && pitch.alteration === alteration);
}
