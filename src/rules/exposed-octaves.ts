import { exposed } from './exposed.ts';
import { defineRule } from './rule.ts';

export const exposedOctaves = defineRule({
  id: 'exposed-octaves',
  name: 'Exposed octaves',
  family: 'consecutives',
  statement: 'Soprano and bass do not move in the same direction into an octave when the soprano leaps.',
  why: 'The outer voices are heard most. When both jump the same way onto the same note, the chord sounds hollow there, as with parallel octaves.',
  hints: [
    'Look at soprano and bass alone: which way does each move into the second chord?',
    'Let the bass move against the soprano, or take another position of the chord; with the melody given, the bass is the one to change.',
    'Part-writing: exposed (hidden, or direct) octaves between the outer voices.',
  ],
  source:
    'E. Aldwell and C. Schachter, Harmony and Voice Leading, on hidden fifths and octaves (from memory)',
  disagreement:
    'J. J. Fux (Gradus ad Parnassum, 1725) forbids every movement in the same direction into an octave between two voices. S. Kostka and D. Payne, and E. Aldwell and C. Schachter, mind it between the outer voices alone, and where the soprano leaps; when the soprano steps they let it pass (both from memory). This rule asks what these two ask: a profile that takes it as a fault is as strict as they are, one that takes it as a query leaves room for the chorales, which have it now and then.',
  severity: 'query',
  weight: 4,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'Both outer voices leap down and land on the same note.',
        text: `key: G major
metre: 4/4
S: B4 G4 F#4 G4 |
A: E4 D4 D4 D4 |
T: G3 B3 A3 B3 |
B: E3 G2 D3 G2 |`,
      },
    ],
    right: [
      {
        caption: 'At the close the soprano steps up to the tonic while the bass leaps to it.',
        text: `key: C major
metre: 2/4
S: B4 C5 |
A: D4 E4 |
T: G3 G3 |
B: G2 C3 |`,
      },
    ],
  },
  check: (analysis) => exposed(analysis, 'octave'),
});
