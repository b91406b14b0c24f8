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
    {
      name: 'inside the phrase the soprano leaps up from it to the third of the tonic: a query',
      text: `key: D major
metre: 4/4
S: A4 B4 C#5 F#5 | E5 C#5 D5*2! |
A: F#4 G4 E4 F#4 | G4 E4 F#4*2! |
T: D4 D4 A3 D4 | B3 A3 A3*2! |
B: D3 G3 A3 D3 | G3 A3 D3*2! |`,
      expect: [
        {
          bar: '1',
          beat: '3',
          voices: 'S',
          notes: 'S:C#5 F#5',
          severity: 'query',
          says: 'C#5 in the soprano is the leading note, but the soprano goes to F#5 instead of rising to the tonic.',
        },
      ],
    },
    {
      name: 'the tenor falls from it to the third of the tonic: a remark',
      text: `key: C major
metre: 4/4
S: C5 D5 D5 C5 | A4 B4 C5*2! |
A: G4 A4 G4 G4 | F4 G4 G4*2! |
T: E4 D4 B3 E3 | F3 D4 E4*2! |
B: C3 F3 G3 C3 | F3 G3 C3*2! |`,
      expect: [
        {
          bar: '1',
          beat: '3',
          voices: 'T',
          notes: 'T:B3 E3',
          severity: 'remark',
          says: 'B3 in the tenor is the leading note, but the tenor goes to E3 instead of rising to the tonic.',
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
