import { unresolvedAugmentedSixth } from '../../src/rules/unresolved-augmented-sixth.ts';
import { testRule } from '../support/rules.ts';

testRule(unresolvedAugmentedSixth, {
  failing: [
    {
      name: 'the upper note falls by a third',
      text: `key: D minor
metre: 4/4
S: A4 G#4 E4*2 | F4*4! |
A: F4 E4 C#4*2 | D4*4! |
T: D4 D4 A3*2 | A3*4! |
B: D3 Bb2 A2*2 | D3*4! |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'SB',
          notes: 'S:G#4 E4 B:Bb2',
          severity: 'fault',
          says: 'The augmented sixth between soprano G#4 and bass Bb2 does not open to the octave: the soprano goes to E4.',
        },
      ],
    },
    {
      name: 'the lower note leaps away',
      text: `key: D minor
metre: 4/4
S: A4 G#4 A4*2 | A4*4! |
A: F4 E4 E4*2 | F4*4! |
T: D4 D4 E4*2 | D4*4! |
B: D3 Bb2 C#3*2 | D3*4! |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'SB',
          notes: 'S:G#4 B:Bb2 C#3',
          severity: 'fault',
          says: 'The augmented sixth between soprano G#4 and bass Bb2 does not open to the octave: the bass goes to C#3.',
        },
      ],
    },
    {
      name: 'the lower note falls a whole tone, as a seventh does',
      text: `key: A minor
metre: 4/4
S: C5 D#5 E5*2 | C5*4! |
A: A4 A4 A4*2 | A4*4! |
T: E4 C4 C4*2 | E4*4! |
B: A3 F3 Eb3*2 | A2*4! |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'SB',
          notes: 'S:D#5 B:F3 Eb3',
          severity: 'fault',
          says: 'The augmented sixth between soprano D#5 and bass F3 does not open to the octave: the bass goes to Eb3.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'it opens to the octave',
      text: `key: D minor
metre: 4/4
S: A4 G#4 A4*2 | A4*4! |
A: F4 E4 E4*2 | F4*4! |
T: D4 D4 C#4*2 | D4*4! |
B: D3 Bb2 A2*2 | D3*4! |`,
    },
    {
      name: 'a minor seventh sounds the same and is spelt otherwise',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 G4 F#4 | D4*4! |
T: D4 E4 D4 C4 | B3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
    },
  ],
});
