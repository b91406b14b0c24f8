import { unfinished } from '../../src/rules/unfinished.ts';
import { testRule } from '../support/rules.ts';

testRule(unfinished, {
  failing: [
    {
      name: 'two beats of the alto and all the tenor are still to be written',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 ? ? F#4 | D4*4! |
T: ? ? ? ? | ?*4 |
B: G3 C3 D3 D3 | G2*4! |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'T',
          notes: '',
          severity: 'remark',
          says: 'The tenor is still to be written.',
        },
        {
          bar: '1',
          beat: '2',
          voices: 'A',
          notes: '',
          severity: 'remark',
          says: 'The alto is still to be written for 2 beats from bar 1, beat 2.',
        },
      ],
    },
    {
      name: 'alto and tenor rest together while the others sing',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 r F#4 | D4*4! |
T: D4 E4 r C4 | B3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
      expect: [
        {
          bar: '1',
          beat: '3',
          voices: 'AT',
          notes: '',
          severity: 'query',
          says: 'Alto and tenor rest for 1 beat from bar 1, beat 3 while other voices sing.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'all is written',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 G4 F#4 | D4*4! |
T: D4 E4 D4 C4 | B3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
    },
    {
      name: 'a breath in all the voices',
      text: `key: C major
metre: 4/4
S: E4 D4! r E4 | F4 D4 C4*2! |
A: C4 B3! r C4 | C4 B3 G3*2! |
T: G3 G3! r G3 | A3 G3 E3*2! |
B: C3 G2! r C3 | F3 G3 C3*2! |`,
    },
  ],
});
