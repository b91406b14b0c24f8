import { unresolvedLeadingNote } from '../../src/rules/unresolved-leading-note.ts';
import { testRule } from '../support/rules.ts';

testRule(unresolvedLeadingNote, {
  failing: [
    {
      name: 'the soprano leaps down from it',
      text: `key: G major
metre: 4/4
S: B4 G4 A4 F#4 | D4*4! |
A: D4 E4 D4 D4 | B3*4! |
T: G3 C4 F#3 A3 | G3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
      expect: [
        {
          bar: '1',
          beat: '4',
          voices: 'S',
          notes: 'S:F#4 D4',
          severity: 'fault',
          says: 'F#4 in the soprano is the leading note, but the soprano goes to D4 instead of rising to the tonic.',
        },
      ],
    },
    {
      name: 'the alto leaps down from it',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 G4 F#4 | B3*4! |
T: D4 E4 D4 A3 | G3*4! |
B: G3 C3 D3 D3 | G3*4! |`,
      expect: [
        {
          bar: '1',
          beat: '4',
          voices: 'A',
          notes: 'A:F#4 B3',
          severity: 'query',
          says: 'F#4 in the alto is the leading note, but the alto goes to B3 instead of rising to the tonic.',
        },
      ],
    },
    {
      name: 'the bass falls from it',
      text: `key: C major
metre: 4/4
S: E4 D4 E4 D4 | C4*4! |
A: C4 D4 C4 B3 | G3*4! |
T: G3 G3 G3 G3 | E3*4! |
B: C3 B2 G2 G2 | C3*4! |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'B',
          notes: 'B:B2 G2',
          severity: 'fault',
          says: 'B2 in the bass is the leading note, but the bass goes to G2 instead of rising to the tonic.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'it rises to the tonic',
      text: `key: C major
metre: 4/4
S: E4 F4 E4 D4 | C4*4! |
A: C4 C4 C4 B3 | G3*4! |
T: G3 A3 G3 G3 | E3*4! |
B: C3 F3 G3 G2 | C3*4! |`,
    },
    {
      name: 'in the alto it falls a third to complete the last chord',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 G4 F#4 | D4*4! |
T: D4 E4 D4 C4 | B3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
    },
    {
      name: 'a phrase stops on the dominant',
      text: `key: C major
metre: 4/4
S: E4 F4 E4 D4! | E4 F4 D4 C4! |
A: C4 C4 C4 B3! | C4 C4 B3 G3! |
T: G3 A3 G3 G3! | G3 A3 G3 E3! |
B: C3 F3 C3 G2! | C3 F3 G3 C3! |`,
    },
    {
      name: 'the next beat is still to be written',
      text: `key: G major
metre: 4/4
S: B4 G4 A4 F#4 | ?*4 |
A: D4 E4 D4 D4 | B3*4 |
T: G3 C4 F#3 A3 | G3*4 |
B: G3 C3 D3 D3 | G2*4 |`,
    },
  ],
});
