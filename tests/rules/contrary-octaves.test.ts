import { contraryOctaves } from '../../src/rules/contrary-octaves.ts';
import { testRule } from '../support/rules.ts';

testRule(contraryOctaves, {
  failing: [
    {
      name: 'V to I with the tonic on top, soprano up and bass down',
      text: `key: C major
metre: 2/4
S: G4 C5 |
A: D4 E4 |
T: B3 G3 |
B: G3 C3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'SB',
          notes: 'S:G4 C5 B:G3 C3',
          severity: 'fault',
          says: 'Soprano and bass move in octaves by contrary motion: G4–G3 to C5–C3.',
        },
      ],
    },
    {
      name: 'from a unison to an octave: a query with an inner voice',
      text: `key: C major
metre: 2/4
S: E4 G4 |
A: C4 G4 |
T: C4 G3 |
B: C3 E3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'AT',
          notes: 'A:C4 G4 T:C4 G3',
          severity: 'remark',
          says: 'Alto and tenor move in octaves by contrary motion: C4–C4 to G4–G3.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'the soprano keeps its note',
      text: `key: C major
metre: 2/4
S: G4 G4 |
A: D4 E4 |
T: B3 C4 |
B: G3 C3 |`,
    },
    {
      name: 'an octave and then a tenth',
      text: `key: C major
metre: 2/4
S: G4 E5 |
A: D4 C5 |
T: B3 G4 |
B: G3 C3 |`,
    },
  ],
});
