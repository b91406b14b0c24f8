import { falseRelation } from '../../src/rules/false-relation.ts';
import { testRule } from '../support/rules.ts';

testRule(falseRelation, {
  failing: [
    {
      name: 'B in the soprano over B flat in the bass',
      text: `key: F major
metre: 4/4
S: A4 B4 A4 G4 | F4*4! |
A: F4 F4 F4 E4 | C4*4! |
T: C4 D4 C4 C4 | A3*4! |
B: F3 Bb2 F3 C3 | F2*4! |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'SB',
          notes: 'S:B4 B:Bb2',
          severity: 'query',
          says: 'B4 in the soprano and Bb2 in the bass sound together.',
        },
      ],
    },
    {
      name: 'C in the soprano, C sharp in the bass',
      text: `key: C major
metre: 3/4
S: C5 A4 A4 |
A: E4 E4 F4 |
T: G3 G3 F3 |
B: E3 C#3 D3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'SB',
          notes: 'S:C5 B:C#3',
          severity: 'query',
          says: 'C5 in the soprano is followed by C#3 in the bass.',
        },
      ],
    },
    {
      name: 'between inner voices, the first of them leaping',
      text: `key: C major
metre: 3/4
S: E5 E5 D5 |
A: C5 G4 A4 |
T: G4 C#4 D4 |
B: C3 A2 F2 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'AT',
          notes: 'A:C5 T:C#4',
          severity: 'query',
          says: 'C5 in the alto is followed by C#4 in the tenor.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'G flat for the F sharp of a dominant’s dominant, beside G',
      text: `key: C major
metre: 4/4
S: C5 D5 D5 C5! |
A: G4 A4 G4 G4! |
T: E4 Gb4 G4 E4! |
B: C3 D3 B2 C3! |`,
    },
    {
      name: 'the voice that has C goes to C sharp',
      text: `key: C major
metre: 3/4
S: G4 G4 A4 |
A: E4 E4 D4 |
T: C4 C#4 D4 |
B: C3 A2 F2 |`,
    },
    {
      name: 'C sharp doubled, and one of the two comes from C',
      text: `key: C major
metre: 3/4
S: C5 C#5 D5 |
A: G4 A4 A4 |
T: E4 E4 F4 |
B: C3 A2 D3 |`,
    },
    {
      name: 'in a new phrase',
      text: `key: C major
metre: 4/4
S: C5 B4 C5! A4 |
A: E4 D4 E4! E4 |
T: G3 G3 G3! G3 |
B: E3 G3 C3! C#3 |`,
    },
    {
      name: 'from the Neapolitan to the dominant',
      text: `key: E minor
metre: 4/4
S: B4 A4 F#4 G4! |
A: G4 F4 D#4 E4! |
T: E4 C4 B3 B3! |
B: E3 A3 B3 E3! |`,
    },
  ],
});
