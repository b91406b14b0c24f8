import type { Analysis, Chord } from '../harmony/analysis.ts';
import { nextChord, voicings } from '../harmony/voicing.ts';
import { sameNoteName } from '../score/pitch.ts';
import { barAt, metricalStrength, placeAt, printBeat } from '../score/place.ts';
import type { Ticks } from '../score/time.ts';
import { about, openingTones } from './occurrence.ts';
import { defineRule, type Occurrence } from './rule.ts';

export const weakSixFour = defineRule({
  id: 'weak-six-four',
  name: 'Cadential six-four on a weak beat',
  family: 'chords',
  statement: 'A cadential six-four stands on a stronger beat than the dominant it leads to.',
  why: 'The cadential six-four leans on the dominant like a suspension: it has to fall on the heavier beat, or the cadence limps.',
  hints: [
    'Find the beat on which the six-four stands and the beat on which the dominant follows.',
    'Move the six-four to the stronger beat, or put another chord before the dominant.',
    'Cadences: Ic–V falls strong to weak.',
  ],
  source: 'A. Butterworth, Harmony in Practice, on the cadential six-four (from memory)',
  severity: 'query',
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The six-four is on the second beat, its dominant on the stronger third.',
        text: `key: C major
metre: 4/4
S: C5 C5 B4*2 | C5*4! |
A: A4 G4 G4*2 | G4*4! |
T: F4 E4 D4*2 | E4*4! |
B: F3 G3 G3*2 | C3*4! |`,
      },
    ],
    right: [
      {
        caption: 'The six-four is on the third beat, its dominant on the weaker fourth.',
        text: `key: C major
metre: 4/4
S: C5*2 C5 B4 | C5*4! |
A: A4*2 G4 G4 | G4*4! |
T: F4*2 E4 D4 | E4*4! |
B: F3*2 G3 G3 | C3*4! |`,
      },
    ],
  },
  check: (analysis) => analysis.chords.flatMap((chord) => weak(analysis, chord)),
});

function weak(analysis: Analysis, chord: Chord): Occurrence[] {
  const voicing = voicings(analysis)[chord.index]!;
  const next = nextChord(analysis, chord.index);
  if (!voicing.sure || next === undefined || !leansOnDominant(chord, next)) return [];
  if (strength(analysis, chord.at) >= strength(analysis, next.at)) return [];
  const { score } = analysis.texture;
  const [here, there] = [placeAt(score, chord.at), placeAt(score, next.at)];
  const second =
    here.bar === there.bar
      ? `beat ${printBeat(there)}`
      : `beat ${printBeat(there)} of bar ${there.bar.number}`;
  return [
    about(openingTones(voicing), {
      from: chord.at,
      until: next.until,
      message: `The cadential six-four in bar ${here.bar.number} stands on beat ${printBeat(here)}, and its dominant on ${second}, which is stronger.`,
    }),
  ];
}

/** A tonic in second inversion whose bass stays and becomes the root of the dominant. */
function leansOnDominant(chord: Chord, next: Chord): boolean {
  const { roman } = chord;
  if (roman.inversion !== 2 || roman.seventh !== undefined) return false;
  if (chord.sixFour === 'pedal' || chord.sixFour === 'passing') return false;
  return sameNoteName(next.root, chord.bass) && next.roman.inversion === 0 && next.quality === 'major';
}

function strength(analysis: Analysis, at: Ticks): number {
  return metricalStrength(barAt(analysis.texture.score, at), at);
}
