import { missingThird } from '../../src/rules/missing-third.ts';
import { testRule } from '../support/rules.ts';

testRule(missingThird, {
  failing: [
    {
      name: 'a tonic with root and fifth only',
      text: `key: G major
metre: 4/4
S: D5 C5 B4 A4 | G4*4! |
A: G4 G4 G4 F#4 | D4*4! |
T: D4 E4 D4 C4 | B3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'SATB',
          notes: 'S:D5 A:G4 T:D4 B:G3',
          severity: 'fault',
          says: 'The chord on G has no third: D5 in the soprano, G4 in the alto, D4 in the tenor and G3 in the bass.',
        },
      ],
    },
    {
      name: 'the last chord without its third',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 G4 F#4 | D4*4! |
T: D4 E4 D4 C4 | G3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
      expect: [
        {
          bar: '2',
          beat: '1',
          voices: 'SATB',
          notes: 'S:G4 A:D4 T:G3 B:G2',
          severity: 'fault',
          says: 'The chord on G has no third: G4 in the soprano, D4 in the alto, G3 in the tenor and G2 in the bass.',
        },
      ],
    },
    {
      name: 'a fourth in its place that never falls to it',
      text: `key: G major
metre: 4/4
S: B4 C5 D5 A4 | B4*4! |
A: G4 G4 G4 G4 | G4*4! |
T: D4 E4 D4 D4 | D4*4! |
B: G3 C3 B2 D3 | G2*4! |`,
      expect: [{ bar: '1', beat: '4', voices: 'SATB', notes: 'S:A4 A:G4 T:D4 B:D3', severity: 'query' }],
    },
  ],
  passing: [
    {
      name: 'a 4–3 suspension: the third comes with the resolution',
      text: `key: G major
metre: 4/4
S: B4 C5 A4*2 | G4*4! |
A: G4 G4 (G4 F#4)*2 | D4*4! |
T: D4 E4 D4*2 | B3*4! |
B: G3 C3 D3*2 | G2*4! |`,
    },
    {
      name: 'the fifth is missing, the third is there',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 G4 F#4 | G4*4! |
T: D4 E4 D4 C4 | B3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
    },
    {
      name: 'two voices are still to be written',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: ? ? ? ? | ?*4 |
T: ? ? ? ? | ?*4 |
B: G3 C3 D3 D3 | G2*4! |`,
    },
    {
      name: 'the minor third sounds where the reading may expect a tierce',
      text: `key: A minor
metre: 3/4
upbeat: 1
S: E5 | C5 D5 B4 | A4*2! |
A: A4 | A4 A4 G#4 | A4*2! |
T: C4 | E4 F4 E4 | C4*2! |
B: A3 | A3 D3 E3 | A2*2! |`,
    },
    {
      name: 'the bass leaps from it to the root while the other voices hold the chord',
      text: `key: G major
metre: 4/4
S: B4 A4*2 A4 | G4*4! |
A: D4 E4*2 D4 | B3*4! |
T: G3 G3*2 F#3 | G3*4! |
B: G3 C3 A2 D3 | G2*4! |`,
    },
  ],
});
