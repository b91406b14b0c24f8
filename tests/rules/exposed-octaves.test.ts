import { exposedOctaves } from '../../src/rules/exposed-octaves.ts';
import { testRule } from '../support/rules.ts';

testRule(exposedOctaves, {
  failing: [
    {
      name: 'both leap down to the same note',
      text: `key: C major
metre: 2/4
S: B4 G4 |
A: D4 D4 |
T: F3 D4 |
B: D3 G2 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'SB',
          notes: 'S:B4 G4 B:D3 G2',
          severity: 'query',
          says: 'Soprano and bass both move down into an octave, and the soprano leaps: B4–D3 to G4–G2 (soprano down a major third).',
        },
      ],
    },
    {
      name: 'both leap up',
      text: `key: C major
metre: 2/4
S: C5 F5 |
A: G4 A4 |
T: E4 C4 |
B: E3 F3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'SB',
          notes: 'S:C5 F5 B:E3 F3',
          severity: 'query',
          says: 'Soprano and bass both move up into an octave, and the soprano leaps: C5–E3 to F5–F3 (soprano up a perfect fourth).',
        },
      ],
    },
    {
      name: 'across the end of a phrase, a remark',
      text: `key: C major
metre: 4/4
S: C5 B4 C5! E4 |
A: E4 D4 E4! C4 |
T: G3 G3 E4! G3 |
B: E3 G3 A3! E3 |`,
      expect: [
        {
          bar: '1',
          beat: '3',
          voices: 'SB',
          notes: 'S:C5 E4 B:A3 E3',
          severity: 'remark',
          says: 'Soprano and bass both move down into an octave, and the soprano leaps: C5–A3 to E4–E3 (soprano down a minor sixth).',
        },
      ],
    },
    {
      name: 'from a note off the beat, a remark',
      text: `key: C major
metre: 2/4
S: (G4 A4) F4 |
A: E4 A3 |
T: C4 C4 |
B: (E3 C4) F3 |`,
      expect: [
        {
          bar: '1',
          beat: '1½',
          voices: 'SB',
          notes: 'S:A4 F4 B:C4 F3',
          severity: 'remark',
          says: 'Soprano and bass both move down into an octave, and the soprano leaps: A4–C4 to F4–F3 (soprano down a major third).',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'the soprano steps up to the tonic',
      text: `key: C major
metre: 2/4
S: B4 C5 |
A: D4 E4 |
T: G3 G3 |
B: G2 C3 |`,
    },
    {
      name: 'contrary motion',
      text: `key: C major
metre: 2/4
S: B4 G4 |
A: D4 D4 |
T: F3 D4 |
B: D3 G3 |`,
    },
  ],
});
