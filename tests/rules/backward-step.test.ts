import { backwardStep } from '../../src/rules/backward-step.ts';
import { testRule } from '../support/rules.ts';

testRule(backwardStep, {
  failing: [
    {
      name: 'the dominant turns back to the subdominant',
      text: `key: G major
metre: 4/4
S: B4 A4 C5 B4 | A4*2 G4*2! |
A: G4 F#4 G4 G4 | F#4*2 D4*2! |
T: D4 D4 E4 D4 | D4*2 B3*2! |
B: G3 D3 C3 G2 | D3*2 G2*2! |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'SB',
          notes: 'S:A4 C5 B:D3 C3',
          severity: 'query',
          says: 'V steps back to IV inside the phrase.',
        },
      ],
    },
    {
      name: 'the dominant decorated over its bass before it turns back',
      text: `key: C major
metre: 3/4
S: G4 A4 G4 | (A4 G4) E5 (D5 C5) | A4*2 G4 | F4 D4 C4! |
A: E4 F4 D4 | F4 C5 (B4 C5) | F4*2 E4 | C4 B3 G3! |
T: C4 C4 B3 | C4 G4 (F4 E4) | C4*2 C4 | A3 G3 E3! |
B: C3 F3 G3 | F3 (A3 G3) G3 | F3*2 C3 | F3 G3 C3! |`,
      expect: [
        {
          bar: '1',
          beat: '3',
          voices: 'SB',
          notes: 'S:G4 A4 B:G3 F3',
          severity: 'query',
          says: 'V steps back to IV inside the phrase.',
        },
        {
          bar: '2',
          beat: '3',
          voices: 'SB',
          notes: 'S:D5 A4 B:G3 F3',
          severity: 'remark',
          says: 'V7 steps back to IV inside the phrase.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'subdominant before dominant',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 G4 F#4 | D4*4! |
T: D4 E4 D4 C4 | B3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
    },
    {
      name: 'across a fermata anything may follow',
      text: `key: C major
metre: 4/4
S: E4 F4 E4 D4! | F4 E4 D4 C4! |
A: C4 C4 C4 B3! | C4 C4 B3 G3! |
T: G3 A3 G3 G3! | A3 G3 G3 E3! |
B: C3 F3 C3 G2! | F2 G2 G2 C3! |`,
    },
    {
      name: 'through an inversion, the bass stepping down',
      text: `key: G major
metre: 4/4
S: B4 A4 G4 B4 | A4*2 G4*2! |
A: G4 F#4 E4 G4 | F#4*2 D4*2! |
T: D4 D4 C4 D4 | D4*2 B3*2! |
B: G3 F#3 E3 D3 | D3*2 G2*2! |`,
    },
  ],
});
