import { minorScaleDegrees } from '../../src/rules/minor-scale-degrees.ts';
import { testRule } from '../support/rules.ts';

testRule(minorScaleDegrees, {
  failing: [
    {
      name: 'the raised sixth sinks back',
      text: `key: A minor
metre: 4/4
S: C5 D5 C5 B4 | A4*4! |
A: A4 F#4 E4 E4 | E4*4! |
T: E4 A3 A3 G#3 | A3*4! |
B: A3 D3 A2 E3 | A2*4! |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'A',
          notes: 'A:F#4 E4',
          severity: 'query',
          says: 'F#4 in the alto is the raised sixth degree of A minor, but the alto goes to E4 instead of on to the raised seventh.',
        },
      ],
    },
    {
      name: 'the raised seventh sinks when the dominant is over',
      text: `key: A minor
metre: 4/4
S: A4 G#4 F#4 E4 | F4 D4 C4*2! |
A: E4 E4 D4 C4 | C4 B3 A3*2! |
T: C4 B3 A3 A3 | A3 G#3 E3*2! |
B: A2 E3 D3 A2 | D3 E3 A2*2! |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'S',
          notes: 'S:G#4 F#4',
          severity: 'query',
          says: 'G#4 in the soprano is the raised seventh degree of A minor, but the soprano sinks to F#4 instead of rising to the tonic.',
        },
      ],
    },
    {
      name: 'the raised sixth sinks into a close on the tonic of the relative minor',
      text: `key: A major
metre: 4/4
S: A4 B4 C#5 E5 | D#5*2 C#5*2! | C#5 D5 B4 A4! |
A: E4 G#4 A4 F#4 | F#4*2 F#4*2! | A4 A4 G#4 E4! |
T: C#4 E4 E4 C#4 | B3*2 A#3*2! | E4 F#4 E4 C#4! |
B: A3 E3 A2 A#2 | B2*2 F#2*2! | A3 D3 E3 A2! |`,
      expect: [
        {
          bar: '2',
          beat: '1',
          voices: 'S',
          notes: 'S:D#5 C#5',
          severity: 'remark',
          says: 'D#5 in the soprano is the raised sixth degree of F# minor, but the soprano goes to C#5 instead of on to the raised seventh.',
        },
      ],
    },
    {
      name: 'the raised sixth struck twice before it falls is told once',
      text: `key: D minor
metre: 4/4
S: D5 B4 B4 A4 | G4 E4 D4*2! |
A: F4 G4 G4 F4 | D4 C#4 A3*2! |
T: A3 D4 D4 D4 | Bb3 A3 F3*2! |
B: D3 G3 G3 D3 | G2 A2 D3*2! |`,
      expect: [
        {
          bar: '1',
          beat: '3',
          voices: 'S',
          notes: 'S:B4 A4',
          severity: 'query',
          says: 'B4 in the soprano is the raised sixth degree of D minor, but the soprano goes to A4 instead of on to the raised seventh.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'the raised sixth leads on to the raised seventh',
      text: `key: A minor
metre: 4/4
S: C5 D5 B4 C5 | B4*2 A4*2! |
A: E4 F#4 G#4 A4 | G#4*2 E4*2! |
T: A3 A3 E4 E4 | D4*2 C4*2! |
B: A2 D3 E3 A2 | E3*2 A2*2! |`,
    },
    {
      name: 'the natural sixth falls',
      text: `key: A minor
metre: 4/4
S: C5 D5 C5 B4 | A4*4! |
A: A4 A4 A4 G#4 | E4*4! |
T: E4 F4 E4 D4 | C4*4! |
B: A3 D3 E3 E3 | A2*4! |`,
    },
  ],
});
