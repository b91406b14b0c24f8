import { misspeltNote } from '../../src/rules/misspelt-note.ts';
import { testRule } from '../support/rules.ts';

testRule(misspeltNote, {
  failing: [
    {
      name: 'a flat for the leading note of A minor',
      text: `key: A minor
metre: 4/4
S: C5 D5 C5 B4 | A4*4! |
A: A4 A4 A4 Ab4 | E4*4! |
T: E4 F4 E4 D4 | C4*4! |
B: A3 D3 E3 E3 | A2*4! |`,
      expect: [
        {
          bar: '1',
          beat: '4',
          voices: 'A',
          notes: 'A:Ab4',
          severity: 'query',
          says: 'Ab4 in the alto is spelt with the wrong letter for its chord and key (A minor).',
        },
      ],
    },
    {
      name: 'G flat for the leading note of G major',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 G4 Gb4 | D4*4! |
T: D4 E4 D4 C4 | B3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
      expect: [
        {
          bar: '1',
          beat: '4',
          voices: 'A',
          notes: 'A:Gb4',
          severity: 'query',
          says: 'Gb4 in the alto is spelt with the wrong letter for its chord and key (G major).',
        },
      ],
    },
    {
      name: 'F where F sharp minor has its leading note',
      text: `key: F# minor
metre: 4/4
S: A4 B4 G#4 F#4! |
A: F#4 F#4 F4 F#4! |
T: C#4 D4 C#4 A3! |
B: F#3 B2 C#3 F#2! |`,
      expect: [
        {
          bar: '1',
          beat: '3',
          voices: 'A',
          notes: 'A:F4',
          severity: 'query',
          says: 'F4 in the alto is spelt with the wrong letter for its chord and key (F# minor).',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'the leading note with its sharp',
      text: `key: A minor
metre: 4/4
S: C5 D5 C5 B4 | A4*4! |
A: A4 A4 A4 G#4 | E4*4! |
T: E4 F4 E4 D4 | C4*4! |
B: A3 D3 E3 E3 | A2*4! |`,
    },
    {
      name: 'a chromatic passing note that rises by its letter',
      text: `key: C major
metre: 4/4
S: C5 (C5 C#5) D5 B4 | C5*4! |
A: G4 G4 F4 F4 | E4*4! |
T: E4 E4 D4 D4 | C4*4! |
B: C3 A2 D3 G2 | C3*4! |`,
    },
  ],
});
