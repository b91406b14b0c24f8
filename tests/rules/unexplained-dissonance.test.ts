import { unexplainedDissonance } from '../../src/rules/unexplained-dissonance.ts';
import { testRule } from '../support/rules.ts';

testRule(unexplainedDissonance, {
  failing: [
    {
      name: 'while the alto is still to be written, which could make another chord: a remark',
      text: `key: C major
metre: 4/4
S: E5 F5 E5 D5 | C5*4! |
A: ? ? ? ? | ?*4 |
T: G4 B3 G4 G4 | E4*4! |
B: C3 C3 C3 G3 | C3*4! |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'STB',
          notes: 'S:F5 T:B3 B:C3',
          severity: 'remark',
          says: 'B3 in the tenor is foreign to the chord (I) and dissonant with soprano F5 and bass C3',
        },
      ],
    },
    {
      name: 'the alto leaps to it and away again',
      text: `key: C major
metre: 4/4
S: E4 G4 A4 G4 | G4*4! |
A: C4 F4 C4 B3 | C4*4! |
T: G3 E3 F3 D3 | E3*4! |
B: C3 C3 F2 G2 | C3*4! |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'SATB',
          notes: 'S:G4 A:F4 T:E3 B:C3',
          severity: 'fault',
          says: 'dissonant with soprano G4, tenor E3 and bass C3, and is no ornament that the style knows.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'a passing note on the half beat',
      text: `key: C major
metre: 4/4
S: E4 (F4 E4) E4 D4 | C4*4! |
A: C4 C4 C4 B3 | G3*4! |
T: G3 A3 G3 G3 | E3*4! |
B: C3 F3 G3 G2 | C3*4! |`,
    },
    {
      name: 'a suspension',
      text: `key: C major
metre: 4/4
S: E4 F4 D4*2 | C4*4! |
A: C4 C4 (C4 B3)*2 | G3*4! |
T: G3 A3 G3*2 | E3*4! |
B: C3 F3 G2*2 | C3*4! |`,
    },
    {
      name: 'every note belongs to its chord',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 G4 F#4 | D4*4! |
T: D4 E4 D4 C4 | B3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
    },
    {
      name: 'the bass leaps under a suspended ninth',
      text: `key: C major
metre: 4/4
S: E5 E5*3/2 D5/2 D5 | C5*4! |
A: G4 G4 A4 B4 | G4*4! |
T: C4 C4 F4 F4 | E4*4! |
B: C3 C4 D3 G3 | C3*4! |`,
    },
    {
      name: 'the bass leaps to the root of the seventh chord that the other voices stay on',
      text: `key: G major
metre: 4/4
S: B4 A4*2 A4 | G4*4! |
A: D4 E4*2 D4 | B3*4! |
T: G3 G3*2 F#3 | G3*4! |
B: G3 C3 A2 D3 | G2*4! |`,
    },
  ],
});
