/**
 * Whole weak scripts as pupils of 16 to 18 hand them in, with what a strict but fair teacher marks in each, and the
 * cadences that she names. All are ours; what is marked is common practice, no source.
 */

export interface WholeScript {
  readonly name: string;
  readonly text: string;
  /** What is to be found: the beginning of a rule's id, bar and beat, and the voices: `parallel-fifths 2.1 AB`. */
  readonly marks: readonly string[];
  /** What may be told besides: true, and fair enough. The place may be left out. */
  readonly fair: readonly string[];
  /** Each phrase end: `4.3 perfect G major`. */
  readonly closes: readonly string[];
}

export const WHOLE_SCRIPTS: readonly WholeScript[] = [
  {
    name: 'D minor without raised sevenths, everything in parallel',
    text: `key: D minor
metre: 3/4
upbeat: 1
S: A4 | D5 C5 A4 | Bb4 A4! F4 | G4 A4 G4 | F4*2! A4 | C5 Bb4 A4 | G4 A4! A4 | D5 C5 A4 | G4 F4 E4 | D4*2! ||
A: F4 | F4 E4 E4 | D4 E4! D4 | D4 E4 E4 | D4*2! F4 | E4 G4 F4 | D4 E4! E4 | F4 E4 E4 | D4 D4 C4 | A3*2! ||
T: D4 | A3 C4 C4 | D4 C4! A3 | Bb3 C4 C4 | A3*2! C4 | C4 D4 C4 | Bb3 C4! C4 | A3 A3 C4 | Bb3 A3 A3 | F3*2! ||
B: D3 | D3 C3 A2 | G2 A2! D3 | G2 A2 C3 | D3*2! F3 | A3 G3 F3 | G3 A3! A3 | D3 A2 A2 | G2 A2 A2 | D3*2! ||`,
    marks: [
      'unraised-leading-note 2.2 T',
      'unraised-leading-note 3.3 T',
      'unraised-leading-note 6.2 T',
      'unraised-leading-note 8.3 A',
      'parallel-octaves 1.1 SB',
      'parallel-octaves 1.2 SB',
      'parallel-fifths 1.3 AB',
      'parallel-fifths 2.1 AB',
      'parallel-fifths 3.1 AB',
      'parallel-octaves 3.1 SB',
      'parallel-fifths 5.2 TB',
      'parallel-octaves 5.2 AB',
      'parallel-fifths 6.1 AB',
      'parallel-octaves 6.1 SB',
      'contrary-octaves 6.3 SB',
      'parallel-fifths 7.3 AB',
      'parallel-octaves 7.3 SB',
    ],
    fair: ['parallel-fifths 4.1 TB', 'parallel-octaves 4.1 AB', 'no-cadence', 'weak-cadence 8.3'],
    closes: [],
  },
  {
    name: 'C major to the dominant, and no way back',
    text: `key: C major
metre: 4/4
S: E4 F4 G4 E4 | A4 G4 G4*2! | G4 A4 B4 C5 | B4 A4 G4*2! | B4 C5 D5 B4 | A4 B4 A4*2! | G4 A4 B4 A4 | G4 F#4 G4*2! ||
A: C4 D4 D4 C4 | F4 E4 D4*2! | E4 F#4 G4 G4 | G4 F#4 D4*2! | G4 G4 A4 G4 | F#4 G4 F#4*2! | D4 F#4 G4 E4 | E4 D4 D4*2! ||
T: G3 A3 B3 G3 | C4 C4 B3*2! | C4 D4 D4 E4 | D4 D4 B3*2! | D4 E4 F#4 D4 | D4 D4 D4*2! | B3 D4 D4 C4 | B3 A3 B3*2! ||
B: C3 D3 G2 C3 | F3 C3 G3*2! | C3 D3 G3 C3 | D3 D3 G2*2! | G3 E3 D3 G3 | D3 G3 D3*2! | G3 D3 G3 A3 | E3 D3 G2*2! ||`,
    marks: [
      'parallel-fifths 1.1 TB',
      'parallel-octaves 1.1 AB',
      'parallel-fifths 1.4 TB',
      'parallel-octaves 1.4 AB',
      'parallel-octaves 3.1 TB',
      'parallel-fifths 3.1 SB',
      'parallel-fifths 8.1 TB',
      'parallel-octaves 8.1 AB',
      'ends-in-another-key 8.3',
    ],
    fair: ['parallel-fifths 3.1 ST'],
    closes: ['2.3 imperfect C major', '4.3 perfect G major', '6.3 imperfect G major', '8.3 perfect G major'],
  },
  {
    name: 'A major with six-fours as if they were any inversion',
    text: `key: A major
metre: 3/4
upbeat: 1
S: A4 | C#5 B4 A4 | E5*2! D5 | C#5 B4 A4 | B4*2! E5 | D5 C#5 B4 | C#5*2! A4 | B4 C#5 B4 | A4*2! ||
A: E4 | E4 E4 E4 | G#4*2! A4 | A4 G#4 A4 | G#4*2! G#4 | A4 A4 G#4 | A4*2! E4 | F#4 E4 G#4 | E4*2! ||
T: C#4 | A3 G#3 A3 | B3*2! F#4 | E4 E4 E4 | E4*2! E4 | F#4 E4 E4 | E4*2! C#4 | D4 C#4 B3 | C#4*2! ||
B: A2 | E3 B2 A2 | E3*2! A2 | A2 B2 C#3 | E3*2! B2 | A2 A2 B2 | E3*2! A2 | F#3 E3 E3 | A2*2! ||`,
    marks: [
      'stray-six-four 1.2',
      'stray-six-four 5.3',
      'stray-six-four 6.1',
      'stray-six-four 7.1',
      'missing-third 1.3',
      'parallel-octaves 1.2 SB',
      'parallel-octaves 7.1 AB',
      'parallel-octaves 7.2 ST',
    ],
    fair: ['parallel-octaves 1.3 SB', 'missing-root 7.2', 'no-cadence 6.1'],
    closes: ['2.1 imperfect A major', '4.1 imperfect A major', '8.1 perfect A major'],
  },
  {
    name: 'C major with suspensions on every beat, half of them resolved upward',
    text: `key: C major
metre: 4/4
S: G4 C5 B4 C5 | D5 C5 B4*2! | E5 D5 C5 B4 | C5 A4 G4*2! | G4 A4 B4 C5 | D5 B4 C5*2! | E5 C5 D5 C5 | C5 B4 C5*2! ||
A: E4 F4 D4 E4 | D4 E4 D4*2! | G4 G4 A4 (A4 G4) | A4 F#4 D4*2! | E4 (E4 F4) D4 (D4 E4) | (E4 D4) D4 E4*2! | G4 (G4 A4) F4 E4 | F4 F4 E4*2! ||
T: G3 A3 (A3 G3) C4 | (C4 B3) C4 C4 D4! | (D4 E4) D4 (D4 E4) E4 | (E4 F4) D4 B3*2! | (B3 C4) C4 (C4 B3) G3 | B3 B3 C4*2! | C4 C4 C4 C4 | D4 D4 C4*2! ||
B: C3 F3 G2 C3 | G2 A2 G2*2! | C3 B2 A2 E3 | F3 D3 G2*2! | C3 F3 G2 C3 | G2 G2 C3*2! | C3 F3 D3 A2 | G2 G2 C3*2! ||`,
    marks: [
      'upward-suspension 2.3 T',
      'upward-suspension 3.1 T',
      'upward-suspension 3.3 T',
      'upward-suspension 5.4 A',
      'upward-suspension 7.2 A',
      'anticipated-resolution 5.3 T',
      'anticipated-resolution 6.1 A',
      'doubled-leading-note 6.2',
      'parallel-octaves 6.2 ST',
      'false-relation 4.1.5',
      'parallel-fifths 1.1 SB',
      'parallel-fifths 2.1 AB',
      'parallel-fifths 2.2 AB',
      'parallel-fifths 3.4 SB',
      'parallel-fifths 4.1 SB',
    ],
    fair: [
      'seventh-leap 1.2 B',
      'seventh-leap 5.2 B',
      'parallel-fifths 2.3 AB',
      'parallel-fifths 4.1.5 ST',
      'parallel-octaves 4.1.5 TB',
      'parallel-octaves 1.3.5 TB',
      'parallel-octaves 3.1.5 ST',
      'doubled-leading-note 5.3.5',
    ],
    closes: ['2.3 imperfect C major', '4.3 imperfect C major', '6.3 perfect C major', '8.3 perfect C major'],
  },
  {
    name: 'B flat major with alto and tenor in each other’s place',
    text: `key: Bb major
metre: 4/4
S: Bb4 C5 D5 Bb4 | Eb5 D5 C5*2! | D5 C5 Bb4 A4 | Bb4 G4 F4*2! | F4 G4 A4 Bb4 | C5 D5 C5*2! | D5 Eb5 D5 C5 | Bb4 A4 Bb4*2! ||
A: D4 C4 Bb3 D4 | C4 Bb3 A3*2! | Bb3 C4 D4 C4 | D4 Bb3 Bb3*2! | Bb3 Bb3 C4 D4 | C4 Bb3 A3*2! | Bb3 C4 Bb3 A3 | D4 C4 Bb3*2! ||
T: F4 F4 F4 F4 | G4 F4 F4*2! | F4 F4 F4 F4 | F4 Eb4 D4*2! | D4 Eb4 Eb4 F4 | F4 F4 F4*2! | F4 G4 F4 F4 | F4 Eb4 D4*2! ||
B: Bb2 A2 Bb2 Bb2 | C3 D3 F3*2! | Bb2 A2 Bb2 F3 | D3 Eb3 Bb2*2! | Bb2 Eb3 F3 Bb2 | A2 Bb2 F3*2! | Bb2 C3 D3 F3 | F3 F3 Bb2*2! ||`,
    marks: [
      'voice-crossing 1.1 AT',
      'parallel-fifths 1.4 TB',
      'parallel-fifths 5.2 AB',
      'parallel-octaves 7.1 AB',
      'parallel-fifths 7.1 TB',
      'unresolved-seventh 5.3 T',
    ],
    fair: [
      'voice-spacing',
      'parallel-fifths 2.1 AT',
      'parallel-fifths 7.1 AT',
      'parallel-fifths 7.2 AT',
      'repeated-bass 7.4',
    ],
    closes: [
      '2.3 imperfect Bb major',
      '4.3 plagal Bb major',
      '6.3 imperfect Bb major',
      '8.3 perfect Bb major',
    ],
  },
  {
    name: 'G major over a bass that stands still',
    text: `key: G major
metre: 4/4
S: B4 A4 B4 C5 | D5 B4 A4*2! | B4 C5 D5 E5 | D5 C5 B4*2! | G4 A4 B4 G4 | A4 B4 A4*2! | B4 D5 C5 A4 | B4 A4 G4*2! ||
A: G4 F#4 G4 G4 | G4 G4 F#4*2! | G4 A4 G4 G4 | G4 F#4 G4*2! | D4 D4 D4 D4 | F#4 G4 F#4*2! | G4 G4 G4 F#4 | G4 F#4 D4*2! ||
T: D4 D4 D4 E4 | B3 D4 D4*2! | D4 E4 B3 C4 | B3 A3 D4*2! | B3 C4 B3 B3 | D4 D4 D4*2! | D4 B3 E4 C4 | D4 C4 B3*2! ||
B: G3 G3 G3 G3 | G3 G3 D3*2! | G3 G3 G3 G3 | G3 D3 G2*2! | G3 G3 G3 G3 | D3 D3 D3*2! | G3 G2 C3 D3 | D3 D3 G2*2! ||`,
    marks: ['repeated-bass 1.2 B', 'repeated-bass 3.2 B', 'unresolved-seventh 7.4 T', 'missing-third 5.2'],
    fair: ['contrary-fifths 4.2 TB', 'repeated-bass 5.2', 'repeated-bass 6.2', 'repeated-bass 7.4'],
    closes: ['2.3 imperfect G major', '4.3 perfect G major', '6.3 imperfect G major', '8.3 perfect G major'],
  },
  {
    name: 'E major with flats for sharps in the inner voices',
    text: `key: E major
metre: 4/4
S: E4 F#4 G#4 E4 | A4 G#4 F#4*2! | B4 A4 G#4 F#4 | E4 Eb4 E4*2! ||
A: B3 Eb4 E4 B3 | C#4 E4 Eb4*2! | E4 E4 E4 C#4 | B3 B3 B3*2! ||
T: Ab3 B3 B3 Ab3 | E3 B3 B3*2! | Ab3 A3 B3 A3 | Ab3 F#3 Ab3*2! ||
B: E3 B2 E3 E3 | A2 E3 B2*2! | E3 C#3 E3 A2 | B2 B2 E3*2! ||`,
    marks: [
      'misspelt-note 1.1 T',
      'misspelt-note 1.2 A',
      'misspelt-note 1.4 T',
      'misspelt-note 2.3 A',
      'misspelt-note 3.1 T',
      'misspelt-note 4.1 T',
      'misspelt-note 4.2 S',
      'misspelt-note 4.3 T',
      'parallel-fifths 2.1 TB',
      'contrary-octaves 1.4 SB',
    ],
    fair: ['parallel-fifths 2.3 SB'],
    closes: ['2.3 imperfect E major', '4.3 perfect E major'],
  },
  {
    name: 'D minor through F major, G minor and A minor',
    text: `key: D minor
metre: 4/4
S: D5 C5 Bb4 A4 | G4 G4 F4*2! | A4 Bb4 A4 G4 | Bb4 A4 G4*2! | Bb4 C5 D5 E5 | C5 B4 A4*2! | F4 A4 G4 F4 | E4 E4 D4*2! ||
A: F4 F4 G4 F4 | D4 E4 C4*2! | F4 G4 F#4 G4 | G4 F#4 D4*2! | G4 F4 F4 A4 | A4 G#4 E4*2! | D4 F4 G4 F4 | C#4 C#4 A3*2! ||
T: A3 C4 D4 C4 | Bb3 C4 A3*2! | C4 D4 D4 D4 | Bb3 A3 Bb3*2! | D4 C4 D4 E4 | E4 E4 C4*2! | A3 C4 C4 C4 | A3 G3 F#3*2! ||
B: D3 A2 G2 A2 | Bb2 C3 F3*2! | F3 G2 D3 Bb2 | Eb3 D3 G2*2! | G3 F3 D3 C3 | E3 E3 A2*2! | D3 F3 E3 F3 | A2 A2 D3*2! ||`,
    marks: [
      'parallel-octaves 2.1 TB',
      'contrary-octaves 3.1 AB',
      'contrary-fifths 3.1 TB',
      'seventh-leap 3.1 B',
      'parallel-octaves 4.1 ST',
      'parallel-fifths 4.1 TB',
      'parallel-fifths 5.1 TB',
      'parallel-octaves 5.1 AB',
      'missing-third 5.2',
      'parallel-octaves 5.2 ST',
      'parallel-octaves 5.3 ST',
      'parallel-fifths 7.1 TB',
      'parallel-octaves 7.1 AB',
      'parallel-unisons 7.3 SA',
      'missing-third 7.4',
      'false-relation 7.4',
    ],
    fair: ['exposed-fifths 3.4 SB', 'parallel-fifths 4.1 SB', 'diminished-leap 7.4 A'],
    closes: ['2.3 perfect F major', '4.3 perfect G minor', '6.3 perfect A minor', '8.3 perfect D minor'],
  },
  {
    name: 'a plain, good script in A minor',
    text: `key: A minor
metre: 3/4
upbeat: 1
S: A4 | C5 B4 A4 | G#4*2! B4 | C5 D5 C5 | B4*2! E5 | D5 C5 B4 | C5*2! C5 | D5 C5 B4 | C5 B4 B4 | A4*2! ||
A: E4 | A4 G#4 A4 | E4*2! E4 | E4 D4 E4 | G#4*2! G4 | G4 G4 G4 | G4*2! A4 | A4 A4 A4 | A4 G#4 G#4 | E4*2! ||
T: C4 | E4 E4 E4 | B3*2! G#3 | A3 A3 A3 | B3*2! C4 | B3 C4 D4 | E4*2! E4 | D4 E4 F4 | E4 E4 D4 | C4*2! ||
B: A2 | A3 E3 C3 | E3*2! E3 | A2 F3 C3 | E3*2! C3 | G3 E3 G3 | C3*2! A2 | F3 C3 D3 | E3 E3 E3 | A2*2! ||`,
    marks: [],
    fair: [],
    closes: ['2.1 imperfect A minor', '4.1 imperfect A minor', '6.1 perfect C major', '9.1 perfect A minor'],
  },
];
