import { voiceOverlap } from '../../src/rules/voice-overlap.ts';
import { testRule } from '../support/rules.ts';

testRule(voiceOverlap, {
  failing: [
    {
      name: 'the tenor leaps above the alto’s last note, by a tone: a remark',
      text: `key: F major
metre: 2/4
S: A4 Bb4 |
A: C4 F4 |
T: A3 D4 |
B: F3 Bb2 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'AT',
          notes: 'A:C4 F4 T:A3 D4',
          severity: 'remark',
          says: 'The tenor moves up to D4, above the C4 that the alto has just left.',
        },
      ],
    },
    {
      name: 'the bass leaps a fifth above the tenor’s last note: a query',
      text: `key: C major
metre: 2/4
S: G4 B4 |
A: C4 G4 |
T: E3 D4 |
B: C3 B3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'AT',
          notes: 'A:C4 G4 T:E3 D4',
          severity: 'remark',
          says: 'The tenor moves up to D4, above the C4 that the alto has just left.',
        },
        {
          bar: '1',
          beat: '1',
          voices: 'TB',
          notes: 'T:E3 D4 B:C3 B3',
          severity: 'query',
          says: 'The bass moves up to B3, above the E3 that the tenor has just left.',
        },
      ],
    },
    {
      name: 'the alto drops below the tenor’s last note',
      text: `key: C major
metre: 2/4
S: C5 A4 |
A: G4 C4 |
T: E4 A3 |
B: C3 F3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'AT',
          notes: 'A:G4 C4 T:E4 A3',
          severity: 'remark',
          says: 'The alto moves down to C4, below the E4 that the tenor has just left.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'to the same note that was left',
      text: `key: F major
metre: 2/4
S: A4 Bb4 |
A: C4 F4 |
T: A3 Bb3 |
B: F3 Bb2 |`,
    },
    {
      name: 'inside one chord',
      text: `key: C major
metre: 2/4
S: C5 E5 |
A: E4 G4 |
T: C4 E4 |
B: C3 C3 |`,
    },
    {
      name: 'while the other voice stays, it would be a crossing',
      text: `key: C major
metre: 2/4
S: C5 C5 |
A: E4 E4 |
T: G3 G4 |
B: C3 C3 |`,
    },
  ],
});
