import { parallelFifths } from '../../src/rules/parallel-fifths.ts';
import { testRule } from '../support/rules.ts';

testRule(parallelFifths, {
  failing: [
    {
      name: 'tenor and bass a step up (every textbook prints this)',
      text: `key: C major
metre: 2/4
S: C5 C5 |
A: E4 E4 |
T: G3 A3 |
B: C3 D3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'TB',
          notes: 'T:G3 A3 B:C3 D3',
          severity: 'fault',
          says: 'Tenor and bass move in parallel fifths: G3–C3 to A3–D3.',
        },
      ],
    },
    {
      name: 'outer voices, a twelfth apart, leaping',
      text: `key: C major
metre: 2/4
S: G4 C5 |
A: E4 A4 |
T: C4 E4 |
B: C3 F3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'SB',
          notes: 'S:G4 C5 B:C3 F3',
          severity: 'fault',
          says: 'Soprano and bass move in parallel fifths: G4–C3 to C5–F3.',
        },
      ],
    },
    {
      name: 'a twelfth and then a fifth, in the same direction',
      text: `key: C major
metre: 2/4
S: G4 D5 |
A: E4 B4 |
T: C4 G4 |
B: C3 G3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'ST',
          notes: 'S:G4 D5 T:C4 G4',
          severity: 'fault',
          says: 'Soprano and tenor move in parallel fifths: G4–C4 to D5–G4.',
        },
        {
          bar: '1',
          beat: '1',
          voices: 'SB',
          notes: 'S:G4 D5 B:C3 G3',
          severity: 'fault',
          says: 'Soprano and bass move in parallel fifths: G4–C3 to D5–G3.',
        },
      ],
    },
    {
      name: 'V to vi with the fifth above the bass (textbook case)',
      text: `key: C major
metre: 2/4
S: D5 E5 |
A: B4 C5 |
T: G4 A4 |
B: G3 A3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'ST',
          notes: 'S:D5 E5 T:G4 A4',
          severity: 'fault',
          says: 'Soprano and tenor move in parallel fifths: D5–G4 to E5–A4.',
        },
        {
          bar: '1',
          beat: '1',
          voices: 'SB',
          notes: 'S:D5 E5 B:G3 A3',
          severity: 'fault',
          says: 'Soprano and bass move in parallel fifths: D5–G3 to E5–A3.',
        },
      ],
    },
    {
      name: 'across the barline',
      text: `key: G major
metre: 2/4
S: D5 B4 | C5 B4 |
A: B4 E4 | D4 D4 |
T: G4 B3 | A3 G3 |
B: G3 E3 | D3 G3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'SB',
          notes: 'S:D5 B4 B:G3 E3',
          severity: 'fault',
          says: 'Soprano and bass move in parallel fifths: D5–G3 to B4–E3.',
        },
        {
          bar: '1',
          beat: '2',
          voices: 'TB',
          notes: 'T:B3 A3 B:E3 D3',
          severity: 'fault',
          says: 'Tenor and bass move in parallel fifths: B3–E3 to A3–D3.',
        },
      ],
    },
    {
      name: 'a passing note in the alto postpones them',
      text: `key: C major
metre: 3/4
S: G4 A4 G4 |
A: (C4 B3) D4 E4 |
T: E3 F3 G3 |
B: C3 F3 C3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'SA',
          notes: 'S:G4 A4 A:C4 D4',
          severity: 'query',
          says: 'Soprano and alto move in parallel fifths: G4–C4 to A4–D4; the notes between only decorate them.',
        },
      ],
    },
    {
      name: 'an anticipation in the soprano makes them off the beat',
      text: `key: C major
metre: 3/4
S: E5 (D5 C5) C5 |
A: C5 (G4 F4) E4 |
T: E4 B3 G3 |
B: C4 G3 C3 |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'SA',
          notes: 'S:D5 C5 A:G4 F4',
          severity: 'query',
          says: "Soprano and alto move in parallel fifths: D5–G4 to C5–F4; the soprano's C5 is an anticipation.",
        },
      ],
    },
    {
      name: 'across a fermata they are a query',
      text: `key: C major
metre: 4/4
S: G4 C5 B4! A4 |
A: E4 E4 D4! E4 |
T: C4 G3 G3! C4 |
B: C3 C3 G3! A3 |`,
      expect: [
        {
          bar: '1',
          beat: '3',
          voices: 'AB',
          notes: 'A:D4 E4 B:G3 A3',
          severity: 'query',
          says: 'Alto and bass move in parallel fifths: D4–G3 to E4–A3, across the end of a phrase.',
        },
      ],
    },
    {
      name: 'outer voices on successive beats, with a chord note between',
      text: `key: C major
metre: 3/4
S: G4 A4 B4 |
A: E4 F4 G4 |
T: C4 C4 D4 |
B: (C3 E3) D3 G3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'SB',
          notes: 'S:G4 A4 B:C3 D3',
          severity: 'query',
          says: 'Soprano and bass make fifths on successive beats: G4–C3 to A4–D3.',
        },
      ],
    },
    {
      name: 'a neighbour note in the soprano makes them: a fault, since the line turns on it',
      text: `key: A minor
metre: 4/4
S: C5 B4 (C5 B4) C5 | C5*4! |
A: E4 E4 E4 F4 | E4*4! |
T: A3 G#3 A3 A3 | G3*4! |
B: A2 E3 A2 F3 | C3*4! |`,
      expect: [
        {
          bar: '1',
          beat: '3½',
          voices: 'SA',
          notes: 'S:B4 C5 A:E4 F4',
          severity: 'fault',
          says: "Soprano and alto move in parallel fifths: B4–E4 to C5–F4; the soprano's B4 is a neighbour note (auxiliary).",
        },
      ],
    },
  ],
  passing: [
    {
      name: 'both voices repeat their notes',
      text: `key: C major
metre: 2/4
S: E4 E4 |
A: C4 C4 |
T: G3 G3 |
B: C3 C3 |`,
    },
    {
      name: 'one voice keeps its note',
      text: `key: C major
metre: 2/4
S: C5 C5 |
A: E4 F4 |
T: G3 F3 |
B: C3 C3 |`,
    },
    {
      name: 'a fifth and then a sixth',
      text: `key: C major
metre: 2/4
S: C5 B4 |
A: E4 D4 |
T: G3 B3 |
B: C3 D3 |`,
    },
    {
      name: 'a perfect fifth and then a diminished one',
      text: `key: C major
metre: 2/4
S: G4 F4 |
A: E4 D4 |
T: C4 B3 |
B: C3 G3 |`,
    },
    {
      name: 'an augmented fourth is no fifth',
      text: `key: C major
metre: 2/4
S: C5 B4 |
A: G4 F4 |
T: E4 D4 |
B: C3 G3 |`,
    },
    {
      name: 'both leap an octave: only the octave changes',
      text: `key: C major
metre: 2/4
S: E4 E4 |
A: C4 C4 |
T: G3 G2 |
B: C3 C2 |`,
    },
    {
      name: 'by contrary motion, which is another rule',
      text: `key: C major
metre: 2/4
S: E4 D4 |
A: C4 B3 |
T: G3 D3 |
B: C3 G3 |`,
    },
    {
      name: 'with a rest between',
      text: `key: C major
metre: 3/4
S: G4 r A4 |
A: E4 r F4 |
T: C4 r C4 |
B: C3 r D3 |`,
    },
  ],
});
