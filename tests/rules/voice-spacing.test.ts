import { voiceSpacing } from '../../src/rules/voice-spacing.ts';
import { testRule } from '../support/rules.ts';

testRule(voiceSpacing, {
  failing: [
    {
      name: 'a tenth between soprano and alto for two beats',
      text: `key: C major
metre: 3/4
S: E5 F5 E5 |
A: C4 D4 G4 |
T: G3 A3 C4 |
B: C3 D3 C3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'SA',
          notes: 'S:E5 F5 A:C4 D4',
          severity: 'query',
          says: 'Soprano and alto are a major tenth apart.',
        },
      ],
    },
    {
      name: 'a twelfth between alto and tenor for one beat, a remark',
      text: `key: C major
metre: 2/4
S: C5 B4 |
A: G4 G4 |
T: C3 D4 |
B: C3 G3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'AT',
          notes: 'A:G4 T:C3',
          severity: 'remark',
          says: 'Alto and tenor are a perfect twelfth apart.',
        },
      ],
    },
    {
      name: 'shorter than a beat, a remark',
      text: `key: C major
metre: 2/4
S: (E5 C5) B4 |
A: C4 D4 |
T: G3 G3 |
B: C3 G2 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'SA',
          notes: 'S:E5 A:C4',
          severity: 'remark',
          says: 'Soprano and alto are a major tenth apart.',
        },
      ],
    },
    {
      name: 'a tenth between alto and tenor for three beats, a query',
      text: `key: C major
metre: 3/4
S: C5 B4 C5 |
A: G4 F4 G4 |
T: E3 D3 E3 |
B: C3 G2 C3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'AT',
          notes: 'A:G4 F4 G4 T:E3 D3 E3',
          severity: 'query',
          says: 'Alto and tenor are a minor tenth apart.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'an octave exactly',
      text: `key: C major
metre: 2/4
S: C5 D5 |
A: C4 D4 |
T: C3 D3 |
B: C3 B2 |`,
    },
    {
      name: 'tenor and bass may be further apart',
      text: `key: C major
metre: 2/4
S: E5 D5 |
A: C5 B4 |
T: G4 G4 |
B: C3 G2 |`,
    },
  ],
});
