import { weakSixFour } from '../../src/rules/weak-six-four.ts';
import { testRule } from '../support/rules.ts';

testRule(weakSixFour, {
  failing: [
    {
      name: 'on the second beat, its dominant on the third',
      text: `key: C major
metre: 4/4
S: C5 C5 B4*2 | C5*4! |
A: A4 G4 G4*2 | G4*4! |
T: F4 E4 D4*2 | E4*4! |
B: F3 G3 G3*2 | C3*4! |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'SATB',
          notes: 'S:C5 A:G4 T:E4 B:G3',
          severity: 'fault',
          says: 'The cadential six-four in bar 1 stands on beat 2, and its dominant on beat 3, which is stronger.',
        },
      ],
    },
    {
      name: 'on the last beat, its dominant on the first of the next bar',
      text: `key: C major
metre: 4/4
S: C5 D5 C5 C5 | B4*2 C5*2! |
A: G4 A4 A4 G4 | G4*2 G4*2! |
T: E4 F4 F4 E4 | D4*2 E4*2! |
B: C3 D3 F3 G3 | G3*2 C3*2! |`,
      expect: [
        {
          bar: '1',
          beat: '4',
          voices: 'SATB',
          notes: 'S:C5 A:G4 T:E4 B:G3',
          severity: 'fault',
          says: 'The cadential six-four in bar 1 stands on beat 4, and its dominant on beat 1 of bar 2, which is stronger.',
        },
      ],
    },
    {
      name: 'left and taken up again, before a dominant whose third is suspended',
      text: `key: D major
metre: 4/4
S: G4 A4 A4 A4 | A4*2 F#4*2! |
A: E4 E4 F#4 F#4 | (E4 G4) (F#4 E4) D4*2! |
T: B3 C#4 (D4 A3) D4 | (D4 C#4) C#4 A3*2! |
B: E3 C#3 (A2 A3) A3 | A3 A2 D3*2! |`,
      expect: [
        {
          bar: '1',
          beat: '3',
          voices: 'SATB',
          notes: 'S:A4 A:F#4 T:D4 B:A2',
          severity: 'remark',
          says: 'What sounds at bar 1, beat 3 is a six-four before a dominant on a stronger beat.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'on the third beat, its dominant on the fourth',
      text: `key: C major
metre: 4/4
S: E4 F4 E4 D4 | C4*4! |
A: C4 C4 C4 B3 | G3*4! |
T: G3 A3 G3 G3 | E3*4! |
B: C3 F3 G3 G2 | C3*4! |`,
    },
    {
      name: 'in triple time on the second beat, its dominant on the third',
      text: `key: C major
metre: 3/4
S: F4 E4 D4 | C4*3! |
A: C4 C4 B3 | G3*3! |
T: A3 G3 G3 | E3*3! |
B: F3 G3 G2 | C3*3! |`,
    },
  ],
});
