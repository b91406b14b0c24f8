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
    {
      name: 'v on which a phrase stops',
      text: `key: A minor
metre: 4/4
S: C5 A4 B4*2! | C5 D5 B4 A4! |
A: E4 D4 E4*2! | E4 F4 E4 E4! |
T: A3 A3 G3*2! | A3 A3 G#3 C4! |
B: A2 F3 E3*2! | A2 D3 E3 A2! |`,
      expect: [
        {
          bar: '1',
          beat: '3',
          voices: 'T',
          notes: 'T:G3',
          severity: 'query',
          says: 'G3 in the tenor is the seventh degree of A minor, not raised, in the chord at bar 1, beat 3 on which the phrase stops: it stands where the dominant belongs.',
        },
      ],
    },
    {
      name: 'v between tonics',
      text: `key: D minor
metre: 4/4
S: A4 D5 E5 F5 | G5 E5 D5*2! |
A: F4 A4 A4 A4 | Bb4 A4 A4*2! |
T: D4 F4 C4 D4 | D4 C#4 F4*2! |
B: D3 D3 A3 D4 | G3 A3 D3*2! |`,
      expect: [
        {
          bar: '1',
          beat: '3',
          voices: 'T',
          notes: 'T:C4',
          severity: 'query',
          says: 'C4 in the tenor is the seventh degree of D minor, not raised, between two tonic chords, where the dominant belongs.',
        },
      ],
    },
    {
      name: 'VII between tonics',
      text: `key: A minor
metre: 4/4
S: E5 C5 D5 C5 | D5 B4 A4*2! |
A: A4 A4 B4 A4 | A4 G#4 E4*2! |
T: C4 E4 D4 E4 | F4 E4 C4*2! |
B: A3 A3 G3 A3 | D3 E3 A2*2! |`,
      expect: [
        {
          bar: '1',
          beat: '3',
          voices: 'B',
          notes: 'B:G3',
          severity: 'query',
          says: 'G3 in the bass is the seventh degree of A minor, not raised, between two tonic chords, where the dominant belongs.',
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
    {
      name: 'V to vi at a pause in major',
      text: `key: C major
metre: 4/4
S: E5 D5 B4 C5! | A4 G4 G4*2! |
A: G4 A4 G4 E4! | F4 D4 E4*2! |
T: C4 A3 D4 C4! | C4 B3 C4*2! |
B: C3 F3 G3 A3! | F3 G3 C3*2! |`,
    },
    {
      name: 'I to ii at a pause in major',
      text: `key: C major
metre: 4/4
S: G4 A4 G4 F4! | E4 D4 C4*2! |
A: E4 F4 E4 D4! | C4 B3 G3*2! |
T: C4 C4 C4 A3! | G3 G3 E3*2! |
B: C3 F3 C3 D3! | G2 G2 C3*2! |`,
    },
  ],
});
