import { voiceCrossing } from '../../src/rules/voice-crossing.ts';
import { testRule } from '../support/rules.ts';

testRule(voiceCrossing, {
  failing: [
    {
      name: 'tenor above alto, a remark for one beat',
      text: `key: C major
metre: 2/4
S: C5 B4 |
A: E4 D4 |
T: G4 G3 |
B: C3 G3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'AT',
          notes: 'A:E4 T:G4',
          severity: 'remark',
          says: 'The tenor goes above the alto: G4 over E4.',
        },
      ],
    },
    {
      name: 'alto above soprano, a query',
      text: `key: C major
metre: 2/4
S: E4 D4 |
A: G4 G4 |
T: C4 B3 |
B: C3 G3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'SA',
          notes: 'S:E4 D4 A:G4 G4',
          severity: 'query',
          says: 'The alto goes above the soprano: G4–G4 over E4–D4.',
        },
      ],
    },
    {
      name: 'bass above tenor, a remark for one beat',
      text: `key: C major
metre: 2/4
S: E4 D4 |
A: C4 B3 |
T: C3 G3 |
B: E3 G2 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'TB',
          notes: 'T:C3 B:E3',
          severity: 'remark',
          says: 'The bass goes above the tenor: E3 over C3.',
        },
      ],
    },
    {
      name: 'tenor above alto for four beats, a query',
      text: `key: C major
metre: 4/4
S: C5 C5 B4 C5 |
A: E4 F4 D4 E4 |
T: G4 A4 G4 G4 |
B: C3 F3 G3 C3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'AT',
          notes: 'A:E4 F4 D4 E4 T:G4 A4 G4 G4',
          severity: 'query',
          says: 'The tenor goes above the alto: G4–A4–G4–G4 over E4–F4–D4–E4.',
        },
      ],
    },
    {
      name: 'bass above tenor for three beats, a query',
      text: `key: C major
metre: 4/4
S: E4 D4 E4 E4 |
A: C4 B3 C4 G3 |
T: C3 B2 C3 G3 |
B: E3 D3 E3 C3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'TB',
          notes: 'T:C3 B2 C3 B:E3 D3 E3',
          severity: 'query',
          says: 'The bass goes above the tenor: E3–D3–E3 over C3–B2–C3.',
        },
      ],
    },
    {
      name: 'tenor and bass for more than a beat',
      text: `key: C major
metre: 4/4
S: C5 C5 B4 C5 |
A: G4 A4 G4 G4 |
T: E3 D3 D3 E4 |
B: C3 F3 G3 C3 |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'TB',
          notes: 'T:D3 D3 B:F3 G3',
          severity: 'query',
          says: 'The bass goes above the tenor: F3–G3 over D3–D3.',
        },
      ],
    },
    {
      name: 'two lines written in each other’s place, once and by their bars',
      text: `key: Bb major
metre: 4/4
S: Bb4 C5 D5 Bb4 | Eb5 D5 C5 C5 |
A: D4 C4 Bb3 D4 | C4 Bb3 A3 A3 |
T: F4 F4 F4 F4 | G4 F4 F4 F4 |
B: Bb2 A2 Bb2 Bb2 | C3 D3 F3 F3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'AT',
          notes: 'A:D4 C4 Bb3 D4 C4 Bb3 A3 A3 T:F4 F4 F4 F4 G4 F4 F4 F4',
          severity: 'query',
          says: 'The tenor lies above the alto from bar 1 to bar 2, for 8 notes.',
        },
      ],
    },
    {
      name: 'alto and tenor for more than a beat',
      text: `key: C major
metre: 4/4
S: G4 A4 G4 G4 | G4*4! |
A: E4 D4 C4/2 C4*3/2 | E4*4! |
T: C4 F4 E4/2 D4*3/2 | C4*4! |
B: C3 D3 E3 G2 | C3*4! |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'AT',
          notes: 'A:D4 C4 C4 T:F4 E4 D4',
          severity: 'query',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'on one note',
      text: `key: C major
metre: 2/4
S: C5 B4 |
A: E4 D4 |
T: E4 D4 |
B: C3 G3 |`,
    },
    {
      name: 'in turn, with a rest between',
      text: `key: C major
metre: 2/4
S: C5 B4 |
A: E4 r |
T: r G4 |
B: C3 G3 |`,
    },
  ],
});
