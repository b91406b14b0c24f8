/**
 * Progressions as every harmony textbook works them (from memory, in voicings of our own): the reading should name
 * them as a teacher would.
 */
import { describe, expect, it } from 'vitest';
import { cadenceWords } from '../../src/harmony/words/words.ts';
import { analyseText, numerals } from './reading.ts';

interface Case {
  readonly name: string;
  readonly text: string;
  readonly reads: string;
  readonly cadence?: string;
}

const CASES: readonly Case[] = [
  {
    name: 'primary triads',
    text: `key: C major
metre: 4/4
S: E5 F5 D5 E5! |
A: C5 C5 B4 C5! |
T: G4 A4 G4 G4! |
B: C4 F3 G3 C3! |`,
    reads: 'C major: I IV V I',
    cadence: 'perfect cadence',
  },
  {
    name: 'cadential six-four',
    text: `key: G major
metre: 4/4
S: G4 A4 B4 A4 | G4*4! |
A: D4 E4 G4 F#4 | D4*4! |
T: B3 C4 D4 C4 | B3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
    reads: 'G major: I ii6 I64 V7 I',
    cadence: 'perfect cadence',
  },
  {
    name: 'a six-four that passes off the beat inside one dominant',
    text: `key: F major
metre: 4/4
S: A4 G4 C5 Bb4 | A4*4! |
A: C4 D4 (E4 F4_) (F4 E4) | F4*4! |
T: F3 Bb3 (Bb3 A3) G3 | C4*4! |
B: F3 G3 C3 C3 | F2*4! |`,
    reads: 'F major: I ii V7 I',
    cadence: 'perfect cadence',
  },
  {
    name: 'Phrygian cadence',
    text: `key: A minor
metre: 4/4
S: A4 B4 C5 D5 | B4*4! |
A: E4 E4 E4 D4 | E4*4! |
T: C4 G#3 A3 A3 | G#3*4! |
B: A3 E3 A3 F3 | E3*4! |`,
    reads: 'A minor: i V i iv6 V',
    cadence: 'imperfect cadence (Phrygian)',
  },
  {
    name: 'interrupted cadence',
    text: `key: D major
metre: 4/4
S: F#4 G4 E4 D4! |
A: D4 D4 C#4 D4! |
T: A3 B3 A3 F#3! |
B: D3 G2 A2 B2! |`,
    reads: 'D major: I IV V vi',
    cadence: 'interrupted cadence',
  },
  {
    name: 'plagal cadence',
    text: `key: F major
metre: 4/4
S: A4 G4 F4 F4 | F4*2 F4*2! |
A: F4 E4 F4 F4 | D4*2 C4*2! |
T: C4 C4 C4 C4 | Bb3*2 A3*2! |
B: F3 C3 A2 F2 | Bb2*2 F2*2! |`,
    reads: 'F major: I V I6 I IV I',
    cadence: 'plagal cadence',
  },
  {
    name: 'tierce de Picardie',
    text: `key: E minor
metre: 4/4
S: E4 F#4 G4 F#4 | E4*4! |
A: B3 C4 B3 B3 | B3*4! |
T: G3 E3 E3 D#3 | G#3*4! |
B: E3 A2 B2 B2 | E2*4! |`,
    reads: 'E minor: i iiø65 i64 V I',
    cadence: 'perfect cadence with tierce de Picardie',
  },
  {
    name: 'falling fifths in a minor key',
    text: `key: A minor
metre: 4/4
S: C5 D5 B4 C5 | A4 B4 G#4 A4! |
A: E4 F4 D4 E4 | C4 D4 B3 C4! |
T: A3 A3 G3 G3 | F3 F3 E3 E3! |
B: A3 D3 G3 C3 | F3 B2 E3 A2! |`,
    reads: 'A minor: i iv V/III III VI iio V i',
    cadence: 'perfect cadence',
  },
  {
    name: 'the mediant of a minor key, touched in passing',
    text: `key: D minor
metre: 3/4
S: D5 C5 Bb4 | A4 G4 F4 | E4 F4 E4 | D4*3! |
A: F4 F4 F4 | F4 D4 D4 | D4 D4 C#4 | A3*3! |
T: A3 A3 Bb3 | C4 Bb3 A3 | G3 A3 A3 | F3*3! |
B: D3 F3 D3 | F3 G3 D3 | Bb2 F2 A2 | D2*3! |`,
    reads: 'D minor: i III VI6 III iv i iiø43 i6 V i',
    cadence: 'perfect cadence',
  },
  {
    name: 'secondary dominant',
    text: `key: C major
metre: 4/4
S: E5 D5 D5 C5 | B4*2 C5*2! |
A: C5 A4 B4 A4 | G4*2 G4*2! |
T: G4 F#4 G4 F4 | D4*2 E4*2! |
B: C4 D4 G3 F3 | G3*2 C3*2! |`,
    reads: 'C major: I V/V V IV V I',
    cadence: 'perfect cadence',
  },
  {
    name: 'suspension and passing notes make no chords',
    text: `key: G major
metre: 4/4
S: B4 C5 A4 G4 | A4 (B4 A4) G4*2! |
A: G4 (G4 F#4) F#4 E4 | E4 D4 D4*2! |
T: D4 E4 D4 (B3 C4) | C4 (G4 F#4) B3*2! |
B: G3 (C3 B2) D3 E3 | C3 D3 G2*2! |`,
    reads: 'G major: I IV V vi ii6 V I',
  },
  {
    name: 'German sixth',
    text: `key: A minor
metre: 4/4
S: A4 A4 G#4*2 | A4*4! |
A: E4 D#4 E4*2 | E4*4! |
T: C4 C4 B3*2 | C4*4! |
B: A3 F3 E3*2 | A2*4! |`,
    reads: 'A minor: i Ger65 V i',
  },
  {
    name: 'Neapolitan sixth',
    text: `key: C minor
metre: 4/4
S: C5 C5 Db5 B4 | C5*4! |
A: G4 Ab4 Ab4 G4 | G4*4! |
T: Eb4 F4 F4 D4 | Eb4*4! |
B: C4 F3 F3 G3 | C3*4! |`,
    reads: 'C minor: i iv N6 V i',
    cadence: 'perfect cadence',
  },
  {
    name: 'Neapolitan sixth in minims, with its third doubled',
    text: `key: E minor
metre: 4/2
S: B4 A4 F#4 G4! |
A: G4 F4 D#4 E4! |
T: E4 C4 B3 B3! |
B: E3 A3 B3 E3! |`,
    reads: 'E minor: i N6 V i',
    cadence: 'perfect cadence',
  },
  {
    name: 'modulation to the dominant',
    text: `key: G major
metre: 4/4
S: G4 A4 B4 G4 | A4*2 G4*2! | A4 B4 C#5 D5 | E5 C#5 D5*2! |
A: D4 F#4 G4 D4 | F#4*2 D4*2! | F#4 G4 G4 F#4 | B4 A4 F#4*2! |
T: B3 D4 D4 B3 | C4*2 B3*2! | D4 D4 E4 D4 | G4 E4 D4*2! |
B: G3 D3 G3 G3 | D3*2 G2*2! | D3 G3 A3 B3 | G3 A3 D3*2! |`,
    reads: 'G major: I V I V7 I D major: I IV V7 vi ii6 V I',
  },
];

describe('worked progressions', () => {
  it.each(CASES)('$name', ({ text, reads, cadence }) => {
    const analysis = analyseText(text);
    expect(numerals(analysis)).toBe(reads);
    const last = analysis.cadences.at(-1);
    if (cadence !== undefined) expect(last && cadenceWords(last).name).toBe(cadence);
  });
});
