import { repeatedBass } from '../../src/rules/repeated-bass.ts';
import { testRule } from '../support/rules.ts';

testRule(repeatedBass, {
  failing: [
    {
      name: 'over the barline',
      text: `key: G major
metre: 2/4
S: B4 A4 | B4 G4 |
A: D4 D4 | D4 D4 |
T: G3 F#3 | G3 B3 |
B: G3 D3 | D3 G2 |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'B',
          notes: 'B:D3 D3',
          severity: 'query',
          says: 'The bass repeats D3 from a weak beat to a strong one.',
        },
      ],
    },
    {
      name: 'on to the third beat under another member of its chord, a remark',
      text: `key: G major
metre: 4/4
S: B4 A4 B4 G4 |
A: D4 D4 D4 D4 |
T: G3 F#3 G3 B3 |
B: G3 D3 D3 G2 |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'B',
          notes: 'B:D3 D3',
          severity: 'remark',
          says: 'The bass repeats D3 from a weak beat to a strong one.',
        },
      ],
    },
    {
      name: 'from the upbeat of a phrase, a remark',
      text: `key: G major
metre: 2/4
upbeat: 1
S: G4 | B4 A4 |
A: D4 | D4 D4 |
T: B3 | G3 F#3 |
B: G3 | G3 D3 |`,
      expect: [
        {
          bar: '0',
          beat: '2',
          voices: 'B',
          notes: 'B:G3 G3',
          severity: 'remark',
          says: 'The bass repeats G3 from a weak beat to a strong one, at the beginning of the phrase.',
        },
      ],
    },
    {
      name: 'on to the third beat as the root of its chord',
      text: `key: G major
metre: 4/4
S: B4 C5 G4 A4 | G4*4! |
A: D4 E4 E4 F#4 | D4*4! |
T: G3 G3 C4 D4 | B3*4! |
B: G3 C3 C3 D3 | G2*4! |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'B',
          notes: 'B:C3 C3',
          severity: 'query',
          says: 'The bass repeats C3 from a weak beat to a strong one.',
        },
      ],
    },
    {
      name: 'a bass that stands still for two bars, once',
      text: `key: G major
metre: 4/4
S: B4 A4 B4 C5 | D5 B4 A4*2! |
A: G4 F#4 G4 G4 | G4 G4 F#4*2! |
T: D4 D4 D4 E4 | B3 D4 D4*2! |
B: G3 G3 G3 G3 | G3 G3 D3*2! |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'B',
          notes: 'B:G3 G3 G3 G3',
          severity: 'query',
          says: 'The bass stands still: it strikes G3 4 times, and repeats it from a weak beat to a strong one twice.',
        },
      ],
    },
    {
      name: 'in a bar of the wrong length, whose strong beats nobody knows: remarks',
      text: `key: G major
metre: 4/4
S: B4 A4 B4 G4 G4 G4 | G4*4! |
A: D4 F#4 D4 D4 D4 D4 | D4*4! |
T: G3 A3 G3 B3 B3 B3 | B3*4! |
B: G3 D3 G2 D3 D3 G2 | G2*4! |`,
      expect: [
        {
          bar: '1',
          beat: '4',
          voices: 'B',
          notes: 'B:D3 D3',
          severity: 'remark',
        },
        {
          bar: '1',
          beat: '6',
          voices: 'B',
          notes: 'B:G2 G2',
          severity: 'remark',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'an octave lower',
      text: `key: G major
metre: 2/4
S: B4 A4 | B4 G4 |
A: D4 D4 | D4 D4 |
T: G3 F#3 | G3 B3 |
B: G3 D3 | D2 G2 |`,
    },
    {
      name: 'from a strong beat to a weak one',
      text: `key: G major
metre: 2/4
S: B4 B4 |
A: D4 D4 |
T: G3 G3 |
B: G3 G3 |`,
    },
    {
      name: 'a note held over the barline is not struck again',
      text: `key: G major
metre: 2/4
S: B4 A4 | B4 G4 |
A: D4 D4 | D4 D4 |
T: G3 F#3 | G3 B3 |
B: G3 D3_ | D3 G2 |`,
    },
  ],
});
