import { straySixFour } from '../../src/rules/stray-six-four.ts';
import { testRule } from '../support/rules.ts';

testRule(straySixFour, {
  failing: [
    {
      name: 'in passing, where the reading hears another chord',
      text: `key: C major
metre: 4/4
S: G4 A4/2 G4/2 F4 E4 | E4*4! |
A: E4 F4/2 E4/2 D4 C4 | C4*4! |
T: C4 C4 B3 G3 | G3*4! |
B: C3 F3/2 G2/2 D3 E3 | C3*4! |`,
      expect: [
        {
          bar: '1',
          beat: '2½',
          voices: 'SATB',
          notes: 'S:G4 A:E4 T:C4 B:G2',
        },
      ],
    },
    {
      name: 'reached and left by leap',
      text: `key: C major
metre: 4/4
S: C5 D5 C5 B4 | C5*4! |
A: G4 F4 A4 G4 | G4*4! |
T: E4 D4 C4 D4 | E4*4! |
B: C3 A2 F3 G3 | C3*4! |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'SATB',
          notes: 'S:D5 A:F4 T:D4 B:A2',
          severity: 'fault',
          says: 'The chord at bar 1, beat 2, ii64, is a six-four that is neither cadential nor passing, nor over a pedal, nor part of a broken chord.',
        },
      ],
    },
    {
      name: 'a phrase stops on it',
      text: `key: C major
metre: 4/4
S: E4 F4 D4 E4! | E4 F4 D4 C4! |
A: C4 C4 B3 C4! | C4 C4 B3 G3! |
T: G3 A3 G3 C4! | G3 A3 G3 E3! |
B: C3 F3 G3 G3! | C3 F3 G3 C3! |`,
      expect: [
        {
          bar: '1',
          beat: '4',
          voices: 'SATB',
          notes: 'S:E4 A:C4 T:C4 B:G3',
          severity: 'fault',
          says: 'The phrase stops at bar 1, beat 4 on a six-four, I64.',
        },
      ],
    },
    {
      name: 'six-fours in a row',
      text: `key: C major
metre: 4/4
S: E5 E5 F5 E5 | D5*2 C5*2! |
A: G4 G4 A4 G4 | G4*2 E4*2! |
T: C4 C4 D4 C4 | B3*2 C4*2! |
B: C3 G3 A3 G3 | G3*2 C3*2! |`,
      expect: [
        {
          bar: '1',
          beat: '3',
          voices: 'SATB',
          notes: 'S:F5 A:A4 T:D4 B:A3',
          severity: 'remark',
          says: 'ii64, is a six-four that is neither cadential nor passing',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'cadential',
      text: `key: C major
metre: 4/4
S: E4 F4 E4 D4 | C4*4! |
A: C4 C4 C4 B3 | G3*4! |
T: G3 A3 G3 G3 | E3*4! |
B: C3 F3 G3 G2 | C3*4! |`,
    },
    {
      name: 'passing, the bass going through by step',
      text: `key: C major
metre: 4/4
S: C5 B4 C5 B4 | C5*4! |
A: G4 G4 G4 F4 | E4*4! |
T: E4 D4 C4 D4 | C4*4! |
B: C3 D3 E3 G3 | C3*4! |`,
    },
    {
      name: 'over a pedal',
      text: `key: C major
metre: 4/4
S: E4 F4 E4 D4 | C4*4! |
A: C4 C4 C4 B3 | G3*4! |
T: G3 A3 G3 G3 | E3*4! |
B: C3 C3 C3 G2 | C3*4! |`,
    },
    {
      name: 'the bass is still to be written',
      text: `key: C major
metre: 4/4
S: E4 F4 E4 D4 | C4*4! |
A: C4 C4 C4 B3 | G3*4! |
T: G3 A3 G3 G3 | E3*4! |
B: ? ? ? ? | ?*4 |`,
    },
    {
      name: 'IV and V7 over a held tonic',
      text: `key: C major
metre: 4/4
S: C5 C5 B4 C5 | C5 B4 C5*2! |
A: G4 F4 F4 E4 | A4 F4 E4*2! |
T: E4 A3 G3 G3 | F4 D4 C4*2! |
B: C3*4 | F3 G3 C3*2! |`,
    },
  ],
});
