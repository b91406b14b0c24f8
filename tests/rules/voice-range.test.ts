import { voiceRange } from '../../src/rules/voice-range.ts';
import { testRule } from '../support/rules.ts';

testRule(voiceRange, {
  failing: [
    {
      name: 'a tenor at B4',
      text: `key: G major
metre: 2/4
S: D5 D5 |
A: B4 B4 |
T: G4 B4 |
B: G3 G3 |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'T',
          notes: 'T:B4',
          severity: 'fault',
          says: 'B4 is too high for the tenor, which sings from C3 to G4.',
        },
      ],
    },
    {
      name: 'a tone above the comfortable range, a remark',
      text: `key: F major
metre: 2/4
S: C5 C5 |
A: F4 F4 |
T: A4 A3 |
B: F3 F3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'T',
          notes: 'T:A4',
          severity: 'remark',
          says: 'A4 is high for the tenor, which sings with ease from C3 to G4.',
        },
      ],
    },
    {
      name: 'a third below the comfortable range, but not out of reach: a remark',
      text: `key: C major
metre: 2/4
S: E4 E4 |
A: G3 C4 |
T: E3 G3 |
B: E3 C2 |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'B',
          notes: 'B:C2',
          severity: 'remark',
          says: 'C2 is low for the bass, which sings with ease from E2 to D4.',
        },
      ],
    },
    {
      name: 'the same with a narrower stretch: a query',
      text: `key: C major
metre: 2/4
S: E4 E4 |
A: G3 C4 |
T: E3 G3 |
B: E3 C2 |`,
      parameters: { stretch: 2 },
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'B',
          notes: 'B:C2',
          severity: 'query',
          says: 'C2 is low for the bass, which sings with ease from E2 to D4.',
        },
      ],
    },
    {
      name: 'neighbouring notes make one finding',
      text: `key: G major
metre: 3/4
S: B4 A4 B4 |
A: G3 F3 E3 |
T: D3 D3 D3 |
B: G2 D3 G2 |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'A',
          notes: 'A:F3 E3',
          severity: 'fault',
          says: 'F3 and E3 are too low for the alto, which sings from G3 to D5.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'the edges themselves: soprano C4 and G5',
      text: `key: C major
metre: 2/4
S: C4 G5 |
A: C4 D5 |
T: G3 B3 |
B: E3 G2 |`,
    },
    {
      name: 'alto G3 and D5',
      text: `key: G major
metre: 2/4
S: G4 D5 |
A: G3 D5 |
T: D3 G3 |
B: G2 B2 |`,
    },
    {
      name: 'tenor C3 and G4, bass E2 and D4',
      text: `key: G major
metre: 2/4
S: G4 B4 |
A: E4 G4 |
T: C3 G4 |
B: E2 D4 |`,
    },
  ],
});
