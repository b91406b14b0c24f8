import { doubledLeadingNote } from '../../src/rules/doubled-leading-note.ts';
import { testRule } from '../support/rules.ts';

testRule(doubledLeadingNote, {
  failing: [
    {
      name: 'soprano and tenor of a dominant, with the tonic to follow',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 F#4 | G4*4! |
A: G4 G4 G4 D4 | D4*4! |
T: D4 E4 D4 F#3 | G3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
      expect: [
        {
          bar: '1',
          beat: '4',
          voices: 'ST',
          notes: 'S:F#4 T:F#3',
          severity: 'fault',
          says: 'The leading note F# is doubled: F#4 in the soprano and F#3 in the tenor.',
        },
      ],
    },
    {
      name: 'in minor, the raised seventh in alto and bass',
      text: `key: A minor
metre: 4/4
S: C5 D5 B4 B4 | A4*4! |
A: A4 A4 G#4 G#4 | E4*4! |
T: E4 F4 E4 D4 | C4*4! |
B: A3 D3 G#3 E3 | A2*4! |`,
      expect: [
        {
          bar: '1',
          beat: '3',
          voices: 'AB',
          notes: 'A:G#4 B:G#3',
          severity: 'fault',
          says: 'The leading note G# is doubled: G#4 in the alto and G#3 in the bass.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'the leading note in one voice only',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 G4 F#4 | D4*4! |
T: D4 E4 D4 C4 | B3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
    },
    {
      name: 'a short passing note touches it while another voice holds it',
      text: `key: G major
metre: 4/4
S: B4 C5 A4 (G4 F#4) | G4*4! |
A: G4 G4 F#4 F#4 | D4*4! |
T: D4 E4 D4 C4 | B3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
    },
  ],
});
