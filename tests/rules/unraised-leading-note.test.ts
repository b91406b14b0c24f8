import { unraisedLeadingNote } from '../../src/rules/unraised-leading-note.ts';
import { testRule } from '../support/rules.ts';

testRule(unraisedLeadingNote, {
  failing: [
    {
      name: 'the alto has the natural seventh in the dominant of the last cadence',
      text: `key: A minor
metre: 4/4
S: C5 D5 C5 B4 | A4*4! |
A: A4 A4 A4 G4 | E4*4! |
T: E4 F4 E4 E4 | C4*4! |
B: A3 D3 E3 E3 | A2*4! |`,
      expect: [
        {
          bar: '1',
          beat: '4',
          voices: 'AB',
          notes: 'A:G4 B:A2',
          severity: 'fault',
          says: 'G4 in the alto lies a tone below A, where the phrase closes at bar 2, beat 1: the seventh degree is not raised.',
        },
      ],
    },
    {
      name: 'a tone below the tonic in the bass',
      text: `key: A minor
metre: 4/4
S: C5 D5 C5 B4 | A4*4! |
A: A4 A4 A4 G4 | E4*4! |
T: E4 F4 E4 D4 | C4*4! |
B: A3 D3 A3 G3 | A3*4! |`,
      expect: [
        {
          bar: '1',
          beat: '4',
          voices: 'AB',
          notes: 'A:G4 B:G3 A3',
          severity: 'fault',
          says: 'G4 in the alto and G3 in the bass lie a tone below A, where the phrase closes at bar 2, beat 1: the seventh degree is not raised.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'the seventh degree is raised',
      text: `key: A minor
metre: 4/4
S: C5 D5 C5 B4 | A4*4! |
A: A4 A4 A4 G#4 | E4*4! |
T: E4 F4 E4 D4 | C4*4! |
B: A3 D3 E3 E3 | A2*4! |`,
    },
    {
      name: 'in the middle of a phrase the natural seventh may fall',
      text: `key: A minor
metre: 4/4
S: C5 B4 A4 B4 | A4*4! |
A: A4 G4 F4 E4 | E4*4! |
T: E4 E4 C4 G#3 | A3*4! |
B: A3 E3 F3 E3 | A2*4! |`,
    },
  ],
});
