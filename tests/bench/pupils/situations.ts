/**
 * Situations that a teacher judges at sight, written once in C major, A minor or another easy key, and asked in every
 * key and in crotchets, minims and quavers. All are common practice, no source; all are written for this bench.
 */
import type { Wanted } from './cases.ts';

export interface Situation {
  readonly name: string;
  /** Several voicings or metres of the same thing, in our notation. */
  readonly texts: readonly string[];
  readonly expect: readonly Wanted[];
  readonly forbid: readonly Wanted[];
  /** What the chord at a place is to be called, in figured numerals. */
  readonly reads?: readonly { readonly bar: string; readonly beat: number; readonly numeral: string }[];
}

const UNRAISED = 'unraised-leading-note';
const WORSE = ['fault', 'query'];

export const SITUATIONS: readonly Situation[] = [
  {
    name: 'a close on the minor tonic without its fifth is minor',
    texts: [
      `key: A minor
metre: 4/4
S: A4 A4 B4 A4! ||
A: E4 F4 E4 E4! ||
T: C4 D4 G#3 C4! ||
B: A2 D3 E3 A2! ||`,
      `key: A minor
metre: 4/4
S: C5 A4 B4 A4! ||
A: E4 F4 E4 C4! ||
T: A3 A3 G#3 A3! ||
B: A2 D3 E3 A2! ||`,
      `key: A minor
metre: 3/4
upbeat: 1
S: E5 | C5 D5 B4 | A4*2! ||
A: A4 | A4 A4 G#4 | A4*2! ||
T: C4 | E4 F4 E4 | C4*2! ||
B: A3 | A3 D3 E3 | A2*2! ||`,
    ],
    expect: [],
    forbid: [
      { rules: ['missing-third'] },
      { rules: ['incomplete-last-chord'], severity: ['fault'] },
      { rules: ['accidental-slip'] },
    ],
  },
  {
    name: 'a tierce without its fifth is a whole close',
    texts: [
      `key: A minor
metre: 4/4
S: A4 A4 B4 A4! ||
A: E4 F4 E4 C#4! ||
T: C4 D4 G#3 A3! ||
B: A2 D3 E3 A2! ||`,
      `key: A minor
metre: 4/4
S: C5 D5 B4 A4! ||
A: A4 A4 G#4 A4! ||
T: E4 F4 E4 C#4! ||
B: A2 D3 E3 A2! ||`,
    ],
    expect: [],
    forbid: [
      { rules: ['missing-third'] },
      { rules: ['incomplete-last-chord'], severity: ['fault'] },
      { rules: ['accidental-slip', 'misspelt'] },
      { rules: ['no-tierce'] },
    ],
    reads: [{ bar: '1', beat: 4, numeral: 'I' }],
  },
  {
    name: 'a tierce at a pause and the leading note before it are no forgotten accidentals',
    texts: [
      `key: G minor
metre: 4/4
S: D5 C5 A4 G4! | Bb4 A4 A4 G4! ||
A: G4 G4 F#4 D4! | G4 G4 F#4 D4! ||
T: Bb3 Eb4 D4 B3! | D4 Eb4 D4 Bb3! ||
B: G3 C3 D3 G2! | G3 C3 D3 G2! ||`,
      `key: G minor
metre: 4/4
S: D5 C5 A4 G4! | C5 D5 Eb5 D5 | Bb4 A4 G4*2! ||
A: G4 G4 F#4 D4! | Eb4 G4 G4 F#4 | G4 F#4 D4*2! ||
T: Bb3 Eb4 D4 B3! | G3 Bb3 C4 A3 | D4 D4 B3*2! ||
B: G3 C3 D3 G2! | C3 G2 C3 D3 | D3 D3 G2*2! ||`,
    ],
    expect: [],
    forbid: [
      { rules: ['accidental-slip'] },
      { rules: ['misspelt'] },
      { rules: [UNRAISED] },
      { rules: ['missing-third'] },
    ],
  },
  {
    name: 'V–vi at a pause in major lacks no sharp',
    texts: [
      `key: C major
metre: 4/4
S: E5 D5 B4 C5! | A4 G4 G4*2! ||
A: G4 A4 G4 E4! | F4 D4 E4*2! ||
T: C4 A3 D4 C4! | C4 B3 C4*2! ||
B: C3 F3 G3 A3! | F3 G3 C3*2! ||`,
      `key: C major
metre: 3/4
upbeat: 1
S: G4 | A4 C5 B4 | C5*2! B4 | C5 C5 B4 | C5*2! ||
A: E4 | F4 A4 G4 | E4*2! D4 | E4 A4 G4 | E4*2! ||
T: C4 | C4 D4 D4 | C4*2! G3 | C4 F4 D4 | C4*2! ||
B: C3 | F3 F3 G3 | A3*2! G3 | A3 F3 G3 | C3*2! ||`,
    ],
    expect: [],
    forbid: [
      { rules: [UNRAISED] },
      { rules: ['accidental-slip'] },
      { rules: ['minor-scale'] },
      { rules: ['no-tierce'] },
    ],
  },
  {
    name: 'I–ii at a pause in major lacks no sharp',
    texts: [
      `key: C major
metre: 4/4
S: E5 D5 E5 D5! | C5 B4 C5*2! ||
A: G4 G4 G4 A4! | G4 G4 G4*2! ||
T: C4 B3 C4 F4! | E4 D4 E4*2! ||
B: C3 G3 C3 D3! | E3 G3 C3*2! ||`,
      `key: C major
metre: 4/4
S: G4 A4 G4 F4! | E4 D4 C4*2! ||
A: E4 F4 E4 D4! | C4 B3 G3*2! ||
T: C4 C4 C4 A3! | G3 G3 E3*2! ||
B: C3 F3 C3 D3! | G2 G2 C3*2! ||`,
    ],
    expect: [],
    forbid: [{ rules: [UNRAISED] }, { rules: ['accidental-slip'] }, { rules: ['minor-scale'] }],
  },
  {
    name: 'v at a full close in minor',
    texts: [
      `key: A minor
metre: 4/4
S: C5 D5 B4 A4! ||
A: A4 A4 G4 E4! ||
T: E4 F4 E4 C4! ||
B: A3 D3 E3 A2! ||`,
      `key: A minor
metre: 4/4
S: C5 A4 B4 C5! ||
A: E4 F4 E4 E4! ||
T: A3 A3 G3 A3! ||
B: A2 D3 E3 A2! ||`,
    ],
    expect: [{ rules: [UNRAISED], severity: ['fault'], bar: '1', beat: 3 }],
    forbid: [{ rules: ['accidental-slip'] }, { rules: ['backward-step', 'mediant', 'submediant'] }],
  },
  {
    name: 'v at a half close in minor',
    texts: [
      `key: A minor
metre: 4/4
S: A4 D5 B4*2! | C5 D5 B4 A4! ||
A: E4 A4 G4*2! | E4 F4 E4 E4! ||
T: C4 D4 E4*2! | A3 A3 G#3 C4! ||
B: A2 F3 E3*2! | A2 D3 E3 A2! ||`,
      `key: A minor
metre: 3/4
S: A4 B4 C5 | D5 C5 B4! | C5 D5 B4 | A4*3! ||
A: E4 E4 E4 | F4 E4 E4! | E4 F4 E4 | E4*3! ||
T: C4 G#3 A3 | A3 A3 G3! | A3 A3 G#3 | C4*3! ||
B: A3 E3 A2 | D3 A2 E3! | A2 D3 E3 | A2*3! ||`,
    ],
    expect: [{ rules: [UNRAISED], severity: ['query'] }],
    forbid: [],
  },
  {
    name: 'v between tonics in minor',
    texts: [
      `key: A minor
metre: 4/4
S: E4 A4 B4 C5 | D5 B4 A4*2! ||
A: C4 E4 E4 E4 | F4 E4 E4*2! ||
T: A3 C4 G3 A3 | A3 G#3 C4*2! ||
B: A2 A2 E3 A3 | D3 E3 A2*2! ||`,
      `key: A minor
metre: 4/4
S: C5 A4 G4 A4 | D5 B4 A4*2! ||
A: E4 E4 E4 E4 | F4 E4 E4*2! ||
T: A3 C4 B3 C4 | A3 G#3 C4*2! ||
B: A2 A2 E3 A2 | D3 E3 A2*2! ||`,
    ],
    expect: [{ rules: [UNRAISED], severity: ['query'], bar: '1', beat: 3 }],
    forbid: [],
  },
  {
    name: 'VII where the dominant belongs, between tonics in minor',
    texts: [
      `key: A minor
metre: 4/4
S: E5 C5 D5 C5 | D5 B4 A4*2! ||
A: A4 A4 B4 A4 | A4 G#4 E4*2! ||
T: C4 E4 B3 E4 | F4 E4 C4*2! ||
B: A3 A3 G3 A3 | D3 E3 A2*2! ||`,
      `key: A minor
metre: 3/4
S: C5 D5 C5 | D5 B4 B4 | A4*3! ||
A: A4 B4 A4 | A4 G#4 G#4 | E4*3! ||
T: E4 B3 E4 | F4 E4 D4 | C4*3! ||
B: A3 G3 A3 | D3 E3 E3 | A2*3! ||`,
    ],
    expect: [{ rules: [UNRAISED], severity: ['query'], bar: '1', beat: 3 }],
    forbid: [],
  },
  {
    name: 'F natural in a dominant of G major',
    texts: [
      `key: G major
metre: 4/4
S: B4 A4 B4 C5 | B4 A4 G4*2! ||
A: G4 F4 G4 G4 | G4 F#4 D4*2! ||
T: D4 D4 D4 E4 | D4 D4 B3*2! ||
B: G3 D3 G3 C3 | D3 D3 G2*2! ||`,
      `key: G major
metre: 4/4
S: B4 A4 B4 C5 | A4*2 G4*2! ||
A: G4 D4 D4 E4 | D4*2 D4*2! ||
T: D4 F4 G3 G3 | F#4*2 B3*2! ||
B: G3 D3 G2 C3 | D3*2 G2*2! ||`,
    ],
    expect: [{ rules: ['accidental-slip', UNRAISED], severity: WORSE, bar: '1', beat: 2 }],
    forbid: [{ rules: ['false-relation'] }],
  },
  {
    name: 'a raised sixth that falls',
    texts: [
      `key: A minor
metre: 4/4
S: C5 D5 C5 B4 | A4*4! ||
A: E4 F#4 E4 E4 | E4*4! ||
T: A3 A3 A3 G#3 | C4*4! ||
B: A2 D3 A2 E3 | A2*4! ||`,
      `key: A minor
metre: 4/4
S: E5 F#5 E5 C5 | D5 B4 A4*2! ||
A: A4 A4 A4 A4 | A4 G#4 E4*2! ||
T: C4 D4 C4 E4 | F4 E4 C4*2! ||
B: A3 D3 A2 A3 | D3 E3 A2*2! ||`,
    ],
    expect: [{ rules: ['minor-scale-degrees'], severity: WORSE, bar: '1', beat: 2 }],
    forbid: [{ rules: ['accidental-slip'] }],
  },
  {
    name: 'a raised seventh that falls by step',
    texts: [
      `key: A minor
metre: 4/4
S: C5 B4 A4 B4 | A4*4! ||
A: A4 G#4 F4 E4 | E4*4! ||
T: E4 E4 D4 G#3 | A3*4! ||
B: A3 E3 D3 E3 | A2*4! ||`,
      `key: A minor
metre: 4/4
S: A4 G#4 F#4 E4 | F4 D4 C4*2! ||
A: E4 E4 D4 C4 | C4 B3 A3*2! ||
T: C4 B3 A3 A3 | A3 G#3 E3*2! ||
B: A2 E3 D3 A2 | D3 E3 A2*2! ||`,
    ],
    expect: [
      { rules: ['minor-scale-degrees', 'augmented-step', 'unresolved'], severity: WORSE, bar: '1', beat: 2 },
    ],
    forbid: [],
  },
  {
    name: 'IV and V7 over a held tonic',
    texts: [
      `key: C major
metre: 4/4
S: C5 C5 B4 C5 | C5 B4 C5*2! ||
A: G4 F4 F4 E4 | A4 F4 E4*2! ||
T: E4 A3 G3 G3 | F4 D4 C4*2! ||
B: C3*4 | F3 G3 C3*2! ||`,
      `key: C major
metre: 4/4
S: E5 F5 E5 D5 | C5 B4 C5*2! ||
A: G4 A4 G4 G4 | A4 F4 E4*2! ||
T: C4 C4 C4 B3 | C4 D4 G3*2! ||
B: C3 C3 C3 G3 | F3 G3 C3*2! ||`,
    ],
    expect: [],
    forbid: [{ rules: ['stray-six-four'] }, { rules: ['weak-six-four'] }, { rules: ['unexplained'] }],
  },
  {
    name: 'one misspelt leading note is told once',
    texts: [
      `key: A minor
metre: 4/4
S: C5 A4 B4 C5 | D5 B4 A4*2! ||
A: E4 F4 E4 E4 | F4 E4 E4*2! ||
T: A3 A3 Ab3 A3 | A3 G#3 C4*2! ||
B: A2 D3 E3 A2 | D3 E3 A2*2! ||`,
      `key: F# minor
metre: 4/4
S: A4 B4 G#4 F#4! ||
A: F#4 F#4 F4 F#4! ||
T: C#4 D4 C#4 A3! ||
B: F#3 B2 C#3 F#2! ||`,
    ],
    expect: [{ rules: ['misspelt-note'], bar: '1', beat: 3 }],
    forbid: [
      { rules: ['unexplained'] },
      { rules: ['false-relation'] },
      { rules: ['missing-third'] },
      { rules: ['accidental-slip'] },
      { rules: ['augmented', 'diminished'], bar: '1' },
      { rules: [UNRAISED] },
      { rules: ['unequal'] },
    ],
  },
  {
    name: 'a suspended ninth over a leaping bass',
    texts: [
      `key: C major
metre: 4/4
S: E5 D5 C5 B4 | C5*4! ||
A: G4 G4 E4 G4 | G4*4! ||
T: C4 B3*3/2 A3/2 D4 | E4*4! ||
B: C3 G3 A3 G3 | C3*4! ||`,
      `key: C major
metre: 4/4
S: G4 C5 C5 B4 | C5*4! ||
A: E4 G4*3/2 F4/2 D4 | E4*4! ||
T: C4 C4 A3 G3 | G3*4! ||
B: C3 E3 F3 G3 | C3*4! ||`,
      `key: C major
metre: 4/4
S: E5 E5*3/2 D5/2 D5 | C5*4! ||
A: G4 G4 A4 B4 | G4*4! ||
T: C4 C4 F4 F4 | E4*4! ||
B: C3 C4 D3 G3 | C3*4! ||`,
    ],
    expect: [],
    forbid: [
      { rules: ['unexplained'] },
      { rules: ['unprepared'] },
      { rules: ['anticipated'] },
      { rules: ['upward'] },
    ],
  },
  {
    name: 'octaves put off by a suspended ninth',
    texts: [
      `key: C major
metre: 4/4
S: C5 E5*3/2 D5/2 B4 | C5*4! ||
A: G4 G4 A4 G4 | G4*4! ||
T: E4 C4 F4 D4 | E4*4! ||
B: C3 E3 D3 G3 | C3*4! ||`,
    ],
    expect: [{ rules: ['parallel-octaves'], severity: WORSE, bar: '1', beat: 2, voices: ['S', 'B'] }],
    forbid: [],
  },
  {
    name: 'voices crossed for more than a beat',
    texts: [
      `key: C major
metre: 4/4
S: G4 F4 F4 E4 | D4 D4 C4*2! ||
A: E4 A4 A4 G4 | G4 B3 G3*2! ||
T: C4 C4 D4 C4 | B3 G3 E3*2! ||
B: C3 F3 D3 E3 | G3 G2 C3*2! ||`,
    ],
    expect: [{ rules: ['voice-crossing'], severity: WORSE, bar: '1', beat: 2, voices: ['S', 'A'] }],
    forbid: [],
  },
  {
    name: 'the Neapolitan sixth and the dominant after it',
    texts: [
      `key: E minor
metre: 4/4
S: B4 A4 F#4 G4! ||
A: G4 F4 D#4 E4! ||
T: E4 C4 B3 B3! ||
B: E3 A3 B3 E3! ||`,
      `key: A minor
metre: 4/4
S: E5 D5 B4 A4! ||
A: A4 Bb4 G#4 A4! ||
T: C4 F4 E4 C4! ||
B: A3 D3 E3 A2! ||`,
    ],
    expect: [],
    forbid: [
      { severity: ['fault'] },
      { rules: ['misspelt'] },
      { rules: ['accidental-slip'] },
      { rules: ['false-relation'] },
    ],
    reads: [{ bar: '1', beat: 2, numeral: 'N6' }],
  },
  {
    name: 'the diminished triad in root position inside a sequence of falling fifths',
    texts: [
      `key: C major
metre: 4/4
S: E5 C5 D5 B4 | C5 A4 B4 C5! ||
A: G4 A4 F4 G4 | E4 F4 G4 G4! ||
T: C4 C4 B3 B3 | A3 A3 D4 E4! ||
B: C3 F3 B2 E3 | A2 D3 G2 C3! ||`,
    ],
    expect: [],
    forbid: [{ rules: ['diminished-root-position'], severity: WORSE }, { severity: ['fault'] }],
  },
  {
    name: 'iiº in root position is no dominant',
    texts: [
      `key: A minor
metre: 4/4
S: A4 E4 B4 A4 | C5 F4 A4 G#4 | A4*4! ||
A: E4 C4 E4 E4 | E4 D4 E4 E4 | E4*4! ||
T: C4 A3 G#3 C4 | A3 B3 C4 B3 | C4*4! ||
B: A2 C3 E3 A3 | A2 B2 E3 E3 | A2*4! ||`,
      `key: A minor
metre: 3/4
S: A4 G#4 A4 | F4 E4 E4 | E4*3! ||
A: E4 E4 E4 | D4 C4 B3 | C4*3! ||
T: C4 B3 C4 | B3 A3 G#3 | A3*3! ||
B: A2 E3 A2 | B2 C3 E3 | A2*3! ||`,
    ],
    expect: [{ rules: ['diminished-root-position'] }],
    forbid: [{ rules: ['unresolved-seventh'] }, { rules: ['unresolved-leading'], bar: '2' }],
  },
  {
    name: 'I6 without its fifth has its root',
    texts: [
      `key: C major
metre: 4/4
S: C5 D5 C5 D5 | D5*2 C5*2! ||
A: G4 F4 E4 A4 | G4*2 E4*2! ||
T: E4 B3 C4 D4 | B3*2 C4*2! ||
B: C3 D3 E3 F3 | G3*2 C3*2! ||`,
      `key: C major
metre: 4/4
S: E5 D5 C5 D5 | B4*2 C5*2! ||
A: G4 G4 C4 F4 | D4*2 E4*2! ||
T: C4 B3 C4 A3 | G3*2 G3*2! ||
B: C3 G3 E3 F3 | G3*2 C3*2! ||`,
    ],
    expect: [],
    forbid: [{ rules: ['missing-root'] }],
  },
  {
    name: 'nothing is missing that the voice still to be written could sing',
    texts: [
      `key: C major
metre: 4/4
S: C5 D5 D5 C5! ||
A: G4 A4 G4 G4! ||
T: ? ? ? ? ||
B: C3 F3 G3 C3! ||`,
      `key: A minor
metre: 4/4
S: A4 B4 B4 A4! ||
A: E4 F4 E4 E4! ||
T: ? ? ? ? ||
B: A2 D3 E3 A2! ||`,
    ],
    expect: [],
    forbid: [
      { rules: ['missing'] },
      { rules: ['incomplete'] },
      { rules: ['unraised'] },
      { rules: ['unexplained'] },
      { rules: ['doubled'] },
    ],
  },
  {
    name: 'dominant sevenths that fall and leading notes that rise are left in peace',
    texts: [
      `key: C major
metre: 4/4
S: C5 D5 B4 C5! ||
A: G4 A4 F4 E4! ||
T: E4 D4 D4 C4! ||
B: C3 F3 G3 C3! ||`,
      `key: C major
metre: 4/4
S: C5 D5 B4 C5! ||
A: G4 A4 G4 G4! ||
T: E4 D4 (D4 F4) E4! ||
B: C3 F3 G3 C3! ||`,
    ],
    expect: [],
    forbid: [{ severity: ['fault'] }, { rules: ['unresolved'] }, { rules: ['unprepared'] }],
    reads: [{ bar: '1', beat: 4, numeral: 'I' }],
  },
  {
    name: 'a last chord that fills its bar alone ends the phrase before it',
    texts: [
      `key: C major
metre: 3/4
S: G4 G4 G4 | A4 G4*2 | G4*3 ||
A: E4 D4 C4 | C4 B3*2 | C4*3 ||
T: G3 G3 E3 | F3 D3*2 | E3*3 ||
B: C3 B2 C3 | F2 G2*2 | C3*3 ||`,
      `key: C major
metre: 3/4
S: G4 G4 G4 | A4 G4*2 | G4*3! ||
A: E4 D4 C4 | C4 B3*2 | C4*3! ||
T: G3 G3 E3 | F3 D3*2 | E3*3! ||
B: C3 B2 C3 | F2 G2*2 | C3*3! ||`,
    ],
    expect: [],
    forbid: [{ severity: WORSE }],
  },
  {
    name: 'a close on the minor tonic whose third is raised late is a close',
    texts: [
      `key: A minor
metre: 4/4
S: A4 A4 G#4 A4 | A4*4! ||
A: E4 F4 E4 E4 | E4*4! ||
T: C4 D4 B3 C4 | C#4*4! ||
B: A2 D3 E3 A2 | A2*4! ||`,
    ],
    expect: [],
    forbid: [{ rules: ['weak-cadence'] }, { rules: ['no-cadence'] }, { rules: ['no-tierce'] }],
  },
  {
    name: 'the leading note of an applied dominant is no accidental forgotten',
    texts: [
      `key: F major
metre: 4/4
S: F5 E5 D5 D5 | E5 E5 F5*2! ||
A: C5 C#5 A4 Bb4 | Bb4 C5 C5*2! ||
T: A4 A4 F4 G4 | G4 G4 A4*2! ||
B: F3 A3 D3 G3 | C4 C3 F3*2! ||`,
      `key: C major
metre: 4/4
S: G4 A4 A4 B4! | C5 C5 B4 C5! ||
A: E4 E4 F#4 G4! | G4 A4 G4 G4! ||
T: C4 C4 D4 D4! | E4 F4 D4 E4! ||
B: C3 A2 D3 G3! | C4 F3 G3 C3! ||`,
    ],
    expect: [],
    forbid: [{ severity: WORSE }, { rules: ['accidental-slip'] }, { rules: ['misspelt'] }],
  },
  {
    name: 'sevenths prepared and resolved over a bass that falls by fifths',
    texts: [
      `key: A minor
metre: 4/4
S: E5 D5 D5 C5 | C5 B4 B4 A4! ||
A: C5 C5 B4 B4 | A4 A4 G#4 E4! ||
T: A4 A4 G4 G4 | F4 F4 E4 C4! ||
B: A3 D3 G3 C3 | F3 B2 E3 A2! ||`,
    ],
    expect: [],
    forbid: [
      { severity: ['fault'] },
      { rules: ['unexplained'] },
      { rules: ['unprepared'] },
      { rules: ['unresolved-seventh'] },
    ],
  },
  {
    name: 'a tonic before the barline and a cadential six-four after it',
    texts: [
      `key: F major
metre: 3/4
S: A4 Bb4 C5 | A4*2 G4 | F4*3! ||
A: F4 F4 F4 | F4*2 E4 | C4*3! ||
T: C4 D4 C4 | C4*2 C4 | A3*3! ||
B: F3 Bb2 A2 | C3*2 C3 | F2*3! ||`,
    ],
    expect: [],
    forbid: [{ severity: WORSE }, { rules: ['harmony-held-over'] }],
    reads: [{ bar: '2', beat: 1, numeral: 'I64' }],
  },
  {
    name: 'a misspelt leading note that a line comes to by step is told once',
    texts: [
      `key: C minor
metre: 4/4
S: Eb5 D5 Cb5 C5! ||
A: G4 Ab4 G4 G4! ||
T: C4 C4 D4 Eb4! ||
B: C3 F3 G3 C3! ||`,
      `key: A minor
metre: 4/4
S: C5 B4 Ab4 A4! ||
A: E4 F4 E4 E4! ||
T: A3 A3 B3 C4! ||
B: A2 D3 E3 A2! ||`,
      `key: C major
metre: 4/4
S: C5 D5 D5 C5! ||
A: G4 A4 G4 G4! ||
T: E4 Gb4 G4 E4! ||
B: C3 D3 B2 C3! ||`,
    ],
    expect: [{ rules: ['misspelt-note'] }],
    forbid: [
      { rules: ['augmented'] },
      { rules: ['false-relation'] },
      { rules: ['unexplained'] },
      { rules: ['missing'] },
      { rules: [UNRAISED] },
      { rules: ['accidental-slip'] },
    ],
  },
  {
    name: 'a note and its own sharp or flat at the same time',
    texts: [
      `key: F major
metre: 4/4
S: A4 B4 A4 G4 | F4*4! ||
A: F4 F4 F4 E4 | C4*4! ||
T: C4 D4 C4 C4 | A3*4! ||
B: F3 Bb2 F3 C3 | F2*4! ||`,
    ],
    expect: [{ rules: ['false-relation'], severity: WORSE, bar: '1', beat: 2, voices: ['S', 'B'] }],
    forbid: [],
  },
  {
    name: 'a misspelt leading note in an inner voice that falls to the fifth is told once',
    texts: [
      `key: F# minor
metre: 3/4
S: C#5 B4 A4 | A4 G#4*2 | F#4*3! ||
A: A4 G#4 F#4 | F#4 F4*2 | C#4*3! ||
T: F#4 D4 C#4 | D4 C#4*2 | A#3*3! ||
B: F#3 B2 F#3 | B2 C#3*2 | F#2*3! ||`,
      `key: E minor
metre: 4/4
S: G4 A4 F#4 E4! ||
A: E4 E4 Eb4 B3! ||
T: B3 C4 B3 G3! ||
B: E3 A2 B2 E3! ||`,
    ],
    expect: [{ rules: ['misspelt-note'] }],
    forbid: [
      { rules: ['false-relation'] },
      { rules: ['unexplained'] },
      { rules: ['missing'] },
      { rules: [UNRAISED] },
      { rules: ['accidental-slip'] },
    ],
  },
  {
    name: 'a leading note held back over the last tonic is a retardation',
    texts: [
      `key: F major
metre: 4/4
S: C5 Bb4 G4*2 | A4*4! ||
A: F4 F4 E4_*2 | E4 F4*3! ||
T: A3 D4 C4*2 | C4*4! ||
B: F3 Bb2 C3*2 | F2*4! ||`,
    ],
    expect: [],
    forbid: [
      { severity: WORSE },
      { rules: ['unresolved'] },
      { rules: ['unexplained'] },
      { rules: ['upward-suspension'] },
    ],
  },
  {
    name: 'IV over a dominant that lies on as a pedal',
    texts: [
      `key: C major
metre: 4/4
S: E5 D5 C5 B4 | C5*4! ||
A: C5 B4 A4 G4 | G4*4! ||
T: C4 D4 F4 F4 | E4*4! ||
B: C4 G3*3 | C3*4! ||`,
    ],
    expect: [],
    forbid: [
      { severity: WORSE },
      { rules: ['unexplained'] },
      { rules: ['stray'] },
      { rules: ['backward-step'] },
    ],
  },
];
