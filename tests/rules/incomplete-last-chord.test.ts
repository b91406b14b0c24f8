import { incompleteLastChord } from '../../src/rules/incomplete-last-chord.ts';
import { testRule } from '../support/rules.ts';

testRule(incompleteLastChord, {
  failing: [
    {
      name: 'without its fifth',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 G4 F#4 | G4*4! |
T: D4 E4 D4 C4 | B3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
      expect: [
        {
          bar: '2',
          beat: '1',
          voices: 'SATB',
          notes: 'S:G4 A:G4 T:B3 B:G2',
          severity: 'remark',
          says: 'The last chord has no fifth: G4 in the soprano, G4 in the alto, B3 in the tenor and G2 in the bass.',
        },
      ],
    },
    {
      name: 'without its third',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 G4 F#4 | D4*4! |
T: D4 E4 D4 D4 | D4*4! |
B: G3 C3 D3 D3 | G2*4! |`,
      expect: [
        {
          bar: '2',
          beat: '1',
          voices: 'SATB',
          notes: 'S:G4 A:D4 T:D4 B:G2',
          severity: 'fault',
          says: 'The last chord has no third: G4 in the soprano, D4 in the alto, D4 in the tenor and G2 in the bass.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'complete',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 G4 F#4 | D4*4! |
T: D4 E4 D4 C4 | B3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
    },
    {
      name: 'a chord inside the phrase may lack its fifth',
      text: `key: G major
metre: 4/4
S: B4 E5 B4 A4 | G4*4! |
A: G4 G4 G4 F#4 | D4*4! |
T: D4 G3 D4 C4 | B3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
    },
  ],
});
