/** Scores to look at and to measure: simple and dense, each in our notation. Melodies and settings are our own. */
export const SCORES: Readonly<Record<string, string>> = {
  simple: `title: Plain chords
key: G major
metre: 4/4
tempo: 72
S: G4 A4 B4 G4 | C5 B4 A4*2! | B4 A4 G4 F#4 | G4*4! |
A: D4 F#4 G4 D4 | E4 G4 F#4*2! | G4 E4 D4 D4 | D4*4! |
T: B3 D4 D4 B3 | G3 D4 D4*2! | D4 C4 B3 A3 | B3*4! |
B: G3 D3 G2 G3 | C3 G3 D3*2! | G3 A3 B3 D3 | G2*4! |
`,
  faults: `title: Consecutives and a wide gap
key: G major
metre: 4/4
S: G4 A4 B4 G4 | C5 B4 A4*2! | B4 A4 G4 F#4 | G4*4! |
A: D4 E4 F#4 D4 | E4 G4 F#4*2! | G4 E4 D4 C4 | B3*4! |
T: B3 C4 D4 B3 | G3 G3 D3*2! | D4 C4 B3 A3 | D4*4! |
B: G3 A3 B3 G3 | C3 G2 D3*2! | G2 A2 B2 D3 | G2*4! |
`,
  seconds: `title: Seconds between voices
key: C major
metre: 4/4
S: G4 G4 A4*3/2 B4/2 | E5 F5*2 E5 | D5*3/2 C5/2 B4*2! |
A: F4 F4 G4 (G4 A4) | D5 E5*2 D5 | C5 B4 A4*2! |
T: C4 D4*3/2 C4/2 B3 | G3 A3*2 G3 | F3*3/2 G3/2 G3*2! |
B: B3 C4 B3 A3 | F3 G3*2 F3 | E3 F3 F3*2! |
`,
  crossing: `title: Crossed voices and unisons
key: F major
metre: 4/4
S: F4 E4 C4 F4 | G4*2 A4 G4 | F4*2 E4*2 | F4*4! |
A: A4 G4 F4 F4*3/2 A4/2 | B4 A4 G4 | F4 G4 G4*2 | F4*4! |
T: C4 C3 F3 A3 | B3*2 C4 C3 | D4*2 C4 Bb3 | A3*4! |
B: F3 E3 A3 A3 | G3*2 F3 C4 | A3*2 C3*2 | F2*4! |
`,
  accidentals: `title: Accidentals in both voices
key: A minor
metre: 4/4
S: A4 G#4 A4 B4 | C5 C#5 D5 D#5 | E5 F#5 G#5 A5 | A5*4! |
A: E4 E4 F#4 G#4 | A4 G4 F#4 F#4 | G#4 A4 B4 C#5 | C#5*4! |
T: C4 B3 C4 D4 | Eb4 E4 F4 F#4 | B3 C#4 D#4 E4 | E4*4! |
B: A3 D3 C#3 B2 | F#3 Bb3 Bb2 B2 | E3 D#3 C#3 B2 | A2*4! |
`,
  dotted: `title: Dotted notes against quavers
key: D major
metre: 4/4
S: F#5*3/2 E5/2 D5*3/2 C#5/2 | (B4 C#5) (D5 E5) F#5*3/2 E5/2 | E5*3/2 D5/4 C#5/4 D5*2! |
A: (A4 B4) (A4 G4) (F#4 G4) A4 | F#4*3/2 G4/2 (A4 B4) A4 | (B4 A4) (G4 A4) A4*2! |
T: D4*3/2 E4/2 (F#4 E4) (D4 E4) | (D4 C#4) B3 (D4 E4) D4 | (G3 A3) (B3 C#4/2 D4/2) F#3*2! |
B: (D3 E3) (F#3 G3) (A3 G3) F#3 | G3*3/2 F#3/2 (D3 C#3) D3 | (E3 F#3) (G3 A3) D3*2! |
`,
  ties: `title: Ties over the barline
key: Bb major
metre: 4/4
S: Bb4 A4 Bb4 C5 | = D5 Eb5*2 | D5 C5 Bb4 C5 | = Bb4 A4 F4 | G4*3 F4 | = F4 Eb4*2 | D4*4! |
A: F4 F4 F4 G4 | = F4 G4*2 | = A4 F4 G4 | = G4 F4 Eb4 | Db4*3 C4 | = Db4 C4*2 | Bb3*4! |
T: D4 C4 D4 Eb4 | = D4 Bb3*2 | = Eb4 D4 Eb4 | = D4 C4 A3 | Bb3*3 A3 | = Bb3 G3 A3 | F3*4! |
B: Bb3 F3 Bb2 C3 | = Bb2 Eb3*2 | F3 = Bb3 A3 | G3 = F3*2 | E3*3 F3 | = Bb2 C3 F3 | Bb2*4! |
`,
  flats: `title: Three flats in 3/2
key: Eb major
metre: 3/2
S: G4 Ab4 Bb4 | C5*2 Bb4 | Ab4*3/2 G4/2 F4 | Eb5*3! | (D5 Eb5) (F5 D5) Eb5 | Bb4*2 Ab4 | G4 F4*2 | Eb4*3! |
A: Eb4 Eb4 Eb4 | Eb4 Ab4 G4 | F4 (Eb4 D4) D4 | G4*3! | F4 Bb4 Bb4 | G4*2 F4 | Eb4 Eb4 D4 | Eb4*3! |
T: Bb3 C4 Bb3 | Ab3 C4 Eb4 | C4*3/2 Bb3/2 Ab3 | Bb3*3! | Bb3*2 (G3 Ab3) | Bb3 Eb4 C4 | Bb3 C4 Bb3/2 Ab3/2 | G3*3! |
B: Eb3 C3 G3 | Ab3*2 Eb3 | F3 G3 Bb2 | Eb3*3! | Bb2 D3 (Eb3 F3) | G3*2 Ab3 | Bb3 A2 Bb2 | Eb2*3! |
`,
  unfinished: `title: Half finished
key: D major
metre: 3/4
upbeat: 1
S: A4 | D5 C#5 B4 | A4*2 G4 | F#4 G4 E4 | D4*2! F#4 | G4 A4 B4 | A4*3 | B4 A4 G4 | F#4*2! |
A: F#4 | A4 A4 G4 | F#4*2 ? | ? ? ? | A3*2! ? |
T: D4 | F#4 E4 D4 | D4*2 ? | r*3 |
B: D3 | D3 A3 G3 | D3*2 E3 | F#3 E3 A2 | D3*2! ? |
`,
  minor: `title: Minor with raised leading notes
key: E minor
metre: 4/4
upbeat: 1
S: B4 | E5 D5 C5 B4 | A4*3/2 G4/2 F#4 B4 | G4 F#4 E4 D#4 | E4*3! |
A: G4 | G4 F#4 E4 D#4 | E4*3/2 E4/2 D#4 F#4 | E4 D#4 B3 B3 | B3*3! |
T: E4 | B3 B3 G3 F#3 | C4*3/2 B3/2 B3 D4 | B3 A3 G3 F#3 | G#3*3! |
B: E3 | E3 B2 C3 D#3 | (A2 B2) (C3 A2) B2 B3 | E3 B2 E3 B2 | E2*3! |
`,
  repeats: `title: Repeats, endings, changes
key: G major
metre: 4/4
S: |: G4 A4 B4 C5 | D5*2 B4*2 :|
A: |: D4 F#4 G4 G4 | A4*2 G4*2 :|
T: |: B3 D4 D4 E4 | F#4*2 D4*2 :|
B: |: G3 D3 G3 C3 | D3*2 G3*2 :|
key: Eb major
metre: 3/4
tempo: 54
S: Eb5 D5 C5 | Bb4*2 Ab4 | (G4 Ab4 Bb4) F4 F4 | Eb4*3! |
A: G4 F4 Eb4 | D4*2 F4 | Eb4 Eb4 D4 | Bb3*3! |
T: Bb3 Bb3 G3 | Bb3*2 Bb3 | Bb3 C4 Bb3 | G3*3! |
B: Eb3 Bb2 C3 | G3*2 D3 | Eb3 A2 Bb2 | Eb3*3! |
`,
  compound: `title: Six-eight
key: F major
metre: 6/8
S: F4 G4 A4 A4*2 G4 | F4*3 E4*3 | r*3 C5*3 | F4*6! |
A: C4 C4 C4 C4*3 | C4*3 C4*3 | A4*5 G4 | A3*6! |
T: A3 Bb3 C4 F3*2 C4 | A3*3 G3*3 | r*6 | C4*6! |
B: F3 E3 F3 F3*2 E3 | F3*3 C3*3 | F3*3 C3*3 | F2*6! |
`,
  endings: `title: First and second time
key: D minor
metre: 4/4
S: |: D5 C5 Bb4 A4 | A4 B4 C#5 D5 |
A: |: F4 E4 D4 E4 | F4 F4 E4 F4 |
T: |: A3 A3 G3 C4 | C4 D4 A3 A3 |
B: |: D3 A2 Bb2 C3 | F3 D3 A2 D3 |
ending: 1
S: E5*2 C#5*2! :|
A: E4*2 E4*2 :|
T: A3*2 A3*2 :|
B: C#3*2 A2*2 :|
ending: 2
S: E5*2 D5*2! |
A: (F4 E4) E4 F4*2 |
T: A3*2 A3*2 |
B: A2*2 D3*2 |
`,
  changes: `title: Keys and metres that change, also where a line ends
key: C major
metre: 4/4
S: C5 D5 E5 C5 | D5 B4 C5*2! |
A: G4 A4 G4 G4 | F4 G4 G4*2! |
T: E4 F4 C4 E4 | A3 D4 E4*2! |
B: C3 D3 E3 C3 | F3 G3 C3*2! |

key: A major
metre: 3/4
tempo: 90
S: E5 D5 C#5 | B4*3! |
A: A4 A4 A4 | G#4*3! |
T: C#4 D4 E4 | E4*3! |
B: A3 F#3 A3 | E3*3! |

key: Eb major
metre: 4/4
S: Eb5 D5 Eb5 F5 | G5*2 F5*2! |
A: G4 Ab4 G4 Bb4 | Bb4*2 Bb4*2! |
T: Bb3 Bb3 Bb3 D4 | Eb4*2 D4*2! |
B: Eb3 F3 Eb3 Bb2 | Eb3*2 Bb2*2! |

key: C minor
metre: 2/2
tempo: 144
S: Eb5 D5 | C5*2! |
A: G4 G4 | G4*2! |
T: C4 B3 | C4*2! |
B: C3 G3 | C3*2! |
`,
  shortBars: `title: Upbeat, split bar, half beats
key: Ab major
metre: 4/4
upbeat: 1
S: Eb5 | Ab4 Bb4 C5 Db5 | C5*5/2 Bb4/2 Bb4! Eb5 | Ab4*3/2 G4/4 F4/4 Eb4 Db5 | C5 Bb4 Ab4! |
A: C4 | (Eb4 F4) Eb4/2 Db4 Eb4/2 F4 | Eb4*2 Eb4/2 D4/2 Eb4 G4 | F4 Eb4 Eb4 F4 | Eb4 Db4 C4 |
T: Ab3 | C4 Bb3 Ab3 Ab3 | Ab3*2 G3/2 Ab3/2 G3 Bb3 | C4 Bb3 Ab3 Ab3 | Ab3 G3/2 F3/2 Eb3 |
B: Ab2 | Ab3 G3 Ab3 F3 | Ab3*2 Eb3 Eb3 Eb3 | F3 G3 Ab3 Bbb2 | Eb3 Eb3 Ab2 |
`,
};
