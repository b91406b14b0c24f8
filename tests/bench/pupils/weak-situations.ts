/**
 * Situations met in whole weak scripts, where something false was said or something plain left out. All are common
 * practice, no source; written for this bench, and asked as those of `situations.ts` are.
 */
import type { Situation } from './situations.ts';

const WORSE = ['fault', 'query'];

export const WEAK_SITUATIONS: readonly Situation[] = [
  {
    name: 'two voices misspelt in one chord are told as misspelt and nothing else',
    texts: [
      `key: E minor
metre: 4/4
S: E4 Gb4 G4 E4 | A4 G4 Gb4*2! | G4 Gb4 E4*2! ||
A: B3 Eb4 E4 B3 | E4 E4 Eb4*2! | E4 Eb4 B3*2! ||
T: G3 B3 B3 G3 | C4 B3 B3*2! | B3 A3 G3*2! ||
B: E3 B2 E3 E3 | C3 E3 B2*2! | B2 B2 E3*2! ||`,
    ],
    expect: [
      { rules: ['misspelt-note'], bar: '1', beat: 2, voices: ['S'] },
      { rules: ['misspelt-note'], bar: '1', beat: 2, voices: ['A'] },
      { rules: ['misspelt-note'], bar: '3', beat: 2, voices: ['S'] },
      { rules: ['misspelt-note'], bar: '3', beat: 2, voices: ['A'] },
    ],
    forbid: [
      { rules: ['unexplained'] },
      { rules: ['false-relation'] },
      { rules: ['missing-third'] },
      { rules: ['augmented', 'diminished'] },
      { rules: ['accidental-slip'] },
      { rules: ['stray-six-four'] },
      { rules: ['unraised'] },
    ],
    reads: [
      { bar: '1', beat: 2, numeral: 'V' },
      { bar: '2', beat: 3, numeral: 'V' },
    ],
  },
  {
    name: 'a misspelt leading note has its chord, and its line is no odd leap',
    texts: [
      `key: A minor
metre: 4/4
S: C5 D5 E5 C5 | B4 G#4 A4*2! ||
A: E4 A4 Ab4 A4 | E4 E4 E4*2! ||
T: A3 F4 E4 E4 | E4 D4 C4*2! ||
B: A2 D3 E3 A3 | Ab3 E3 A2*2! ||`,
    ],
    expect: [
      { rules: ['misspelt-note'], bar: '1', beat: 3, voices: ['A'] },
      { rules: ['misspelt-note'], bar: '2', beat: 1, voices: ['B'] },
    ],
    forbid: [{ rules: ['missing-third'] }, { rules: ['diminished-leap'] }, { rules: ['augmented'] }],
  },
  {
    name: 'two notes that never sound together make no consecutives',
    texts: [
      `key: D major
metre: 4/4
S: A4 C#5 D5*2 | B4 C#5 D5*2! ||
A: F#4 G4 F#4*2 | G4 G4 F#4*2! ||
T: D4 (E4 D4) A3*2 | E4 E4 D4*2! ||
B: D3 (A2 A3) D3*2 | G3 A3 D3*2! ||`,
    ],
    expect: [],
    forbid: [{ rules: ['parallel-fifths', 'parallel-octaves', 'parallel-unisons'], bar: '1' }],
  },
  {
    name: 'IV over the tonic that follows is no cadential six-four',
    texts: [
      `key: A major
metre: 3/4
upbeat: 1
S: A4 | C#5 B4 A4 | E5*2! D5 | C#5 B4 A4 | B4*2! ||
A: E4 | E4 E4 E4 | G#4*2! A4 | A4 G#4 A4 | G#4*2! ||
T: C#4 | A3 G#3 C#4 | B3*2! F#4 | E4 E4 E4 | E4*2! ||
B: A2 | A2 E3 A2 | E3*2! A2 | A2 B2 C#3 | E3*2! ||`,
    ],
    expect: [],
    forbid: [{ rules: ['weak-six-four'] }],
  },
  {
    name: 'a dominant with suspensions over its own bass: the bass is not foreign',
    texts: [
      `key: C major
metre: 4/4
S: E5 C5 C5 C5 | C5 B4 C5*2! ||
A: G4 A4 F4 E4 | F4 F4 E4*2! ||
T: C4 C4 A3 C4 | D4 D4 C4*2! ||
B: C3 F3 F3 A2 | G2 G2 C3*2! ||`,
    ],
    expect: [],
    forbid: [{ rules: ['unexplained'], severity: WORSE }],
  },
  {
    name: 'a suspended ninth that goes up over a leaping bass is told once, of the suspension',
    texts: [
      `key: C major
metre: 4/4
S: G4 B4 C5*2 | C5 B4 C5*2! ||
A: E4 D4 (D4 E4) E4 | F4 D4 E4*2! ||
T: C4 G3 G3*2 | A3 G3 G3*2! ||
B: C3 G2 C3*2 | F2 G2 C3*2! ||`,
    ],
    expect: [{ rules: ['upward-suspension'], bar: '1', beat: 3, voices: ['A'] }],
    forbid: [{ rules: ['unexplained'] }],
  },
  {
    name: 'what follows from an unraised leading note hangs on that note',
    texts: [
      `key: D minor
metre: 4/4
S: D5 C5 Bb4 A4! | F4 G4 E4 D4! ||
A: F4 E4 D4 E4! | D4 D4 C#4 D4! ||
T: A3 C4 D4 C4! | A3 Bb3 A3 F3! ||
B: D3 A2 G2 A2! | D3 G2 A2 D3! ||`,
    ],
    expect: [
      { rules: ['unraised'], severity: ['query'], bar: '1', beat: 4 },
      { rules: ['parallel-fifths'], severity: ['fault'], bar: '1', beat: 3, voices: ['A', 'B'] },
    ],
    forbid: [{ rules: ['unraised'], severity: ['fault'] }],
  },
  {
    name: 'a piece that ends with a close in the dominant has not come home',
    texts: [
      `key: C major
metre: 4/4
S: E4 F4 D4 C4! | B4 C5 A4 G4! | E4 F4 D4 E4! | B4 C5 A4 G4! ||
A: C4 C4 B3 G3! | D4 E4 D4 D4! | C4 C4 B3 C4! | D4 E4 D4 D4! ||
T: G3 A3 G3 E3! | G3 G3 F#3 B3! | G3 A3 G3 G3! | G3 G3 F#3 B3! ||
B: C3 F2 G2 C3! | G2 C3 D3 G2! | C3 F2 G2 C3! | G2 C3 D3 G2! ||`,
    ],
    expect: [{ rules: ['ends-in-another-key'], severity: ['query'], bar: '4', beat: 4 }],
    forbid: [],
  },
  {
    name: 'a phrase that stops on a six-four has no perfect cadence',
    texts: [
      `key: C major
metre: 4/4
S: E5 F5 D5 E5! | C5 D5 B4 C5! ||
A: G4 A4 G4 G4! | E4 F4 D4 E4! ||
T: C4 C4 B3 C4! | G3 A3 G3 G3! ||
B: C3 F3 G3 G3! | C3 F3 G3 C3! ||`,
    ],
    expect: [
      { rules: ['stray-six-four'], severity: ['fault'], bar: '1', beat: 4 },
      { rules: ['no-cadence'], bar: '1', beat: 4 },
    ],
    forbid: [],
  },
  {
    name: 'a quaver between two dominants is no step back',
    texts: [
      `key: C major
metre: 4/4
S: C5 (B4 A4) B4 C5 | A4 B4 C5*2! ||
A: E4 (D4 F4) D4 E4 | F4 F4 E4*2! ||
T: G3 (G3 C4) G3 G3 | D4 D4 C4*2! ||
B: C3 (G3 F3) G3 C3 | D3 G2 C3*2! ||`,
    ],
    expect: [],
    forbid: [{ rules: ['backward-step'] }],
  },
  {
    name: 'a seventh under a wrong letter, in the dominant of the subdominant, is told once',
    texts: [
      `key: C major
metre: 4/4
S: G4 C5 B4 C5 | C5 A#4 A4*2! | A4 D5 B4 C5! ||
A: E4 G4 G4 G4 | G4 G4 F4*2! | F4 F4 D4 E4! ||
T: C4 E4 D4 E4 | E4 E4 C4*2! | C4 A3 G3 G3! ||
B: C3 C4 G3 C3 | C3 C3 F3*2! | F3 D3 G3 C3! ||`,
    ],
    expect: [{ rules: ['misspelt-note'], bar: '2', beat: 2, voices: ['S'] }],
    forbid: [{ rules: ['unresolved'] }, { rules: ['diminished-leap'] }, { rules: ['no-cadence'] }],
    reads: [{ bar: '2', beat: 2, numeral: 'V7/IV' }],
  },
  {
    name: 'a piece with none but plagal cadences wants a perfect one',
    texts: [
      `key: C major
metre: 4/4
S: G4 A4 G4 G4 | A4 A4 G4*2! | C5 A4 C5 G4 | A4 F4 E4*2! ||
A: E4 F4 E4 E4 | F4 F4 E4*2! | G4 F4 G4 E4 | F4 C4 C4*2! ||
T: C4 C4 C4 C4 | C4 C4 C4*2! | E4 C4 E4 C4 | C4 A3 G3*2! ||
B: C3 F3 C3 C3 | F3 F3 C3*2! | C3 F3 C3 C3 | F3 F3 C3*2! ||`,
    ],
    expect: [{ rules: ['weak-cadence'], severity: ['query'], bar: '4', beat: 3 }],
    forbid: [],
  },
  {
    name: 'a minor chord of the key that a phrase closes in is no dominant of the home key',
    texts: [
      `key: A minor
metre: 4/4
S: A4 B4 G#4 A4! | B4 C5 B4 A4 | G4 F#4 E4*2! | A4 D5 B4 A4! ||
A: E4 F4 E4 E4! | G4 E4 E4 E4 | E4 D#4 B3*2! | E4 F4 E4 E4! ||
T: C4 D4 B3 C4! | D4 E4 E4 E4 | B3 B3 G3*2! | C4 A3 G#3 C4! ||
B: A2 D3 E3 A2! | G3 A3 G3 C3 | B2 B2 E3*2! | A2 D3 E3 A2! ||`,
    ],
    expect: [],
    forbid: [{ rules: ['unraised'] }],
  },
  {
    name: 'a pupil who writes flats for sharps throughout is told of letters alone',
    texts: [
      `key: E major
metre: 4/4
S: E4 F#4 G#4 E4 | F#4 G#4 F#4*2! | B4 A4 G#4 F#4 | E4 Eb4 E4*2! ||
A: B3 Eb4 E4 B3 | C#4 E4 Eb4*2! | E4 E4 E4 C#4 | B3 B3 B3*2! ||
T: Ab3 B3 B3 Ab3 | A3 B3 B3*2! | Ab3 A3 B3 A3 | Ab3 F#3 Ab3*2! ||
B: E3 B2 E3 E3 | F#3 E3 B2*2! | E3 C#3 E3 A2 | B2 B2 E3*2! ||`,
    ],
    expect: [
      { rules: ['misspelt-note'], bar: '1', beat: 1, voices: ['T'] },
      { rules: ['misspelt-note'], bar: '4', beat: 2, voices: ['S'] },
    ],
    forbid: [{ rules: ['augmented', 'diminished'] }, { rules: ['false-relation'] }, { rules: ['missing'] }],
  },
  {
    name: 'octaves do not follow from a wrong letter in them',
    texts: [
      `key: F major
metre: 4/4
S: F4 A4 A#4 A4 | G4 G4 F4*2! ||
A: C4 F4 F4 F4 | E4 E4 C4*2! ||
T: A3 C4 D4 C4 | C4 C4 A3*2! ||
B: F3 F3 A#2 A2 | C3 C3 F3*2! ||`,
    ],
    expect: [
      { rules: ['misspelt-note'], severity: ['query'], bar: '1', beat: 3, voices: ['B'] },
      { rules: ['parallel-octaves'], severity: ['fault'], bar: '1', beat: 4, voices: ['S', 'B'] },
    ],
    forbid: [{ rules: ['misspelt-note'], severity: ['fault'] }],
  },
  {
    name: 'iv and a tierce at the end of a piece in minor close it',
    texts: [
      `key: C minor
metre: 4/4
S: G4 C5 D5 Eb5 | D5 C5 B4 C5! | C5 D5 Eb5 D5 | C5 B4 C5*2! | Ab4 G4 F4 G4 | G4 F4 E4*2! ||
A: Eb4 G4 G4 G4 | G4 Ab4 G4 Eb4! | G4 G4 G4 F4 | Eb4 D4 E4*2! | F4 E4 C4 C4 | C4 C4 C4*2! ||
T: C4 Eb4 B3 C4 | B3 C4 D4 G3! | Eb4 B3 C4 G3 | G3 G3 G3*2! | C4 C4 Ab3 G3 | G3 Ab3 G3*2! ||
B: C3 C3 G3 C3 | G3 F3 G3 C3! | C3 G3 C3 B2 | C3 G2 C3*2! | F3 C3 F3 E3 | C3 F2 C3*2! ||`,
    ],
    expect: [],
    forbid: [{ rules: ['weak-cadence'], severity: WORSE }, { rules: ['ends-in-another-key'] }],
  },
];
