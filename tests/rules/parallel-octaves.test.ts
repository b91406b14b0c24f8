import { parallelOctaves } from '../../src/rules/parallel-octaves.ts';
import { testRule } from '../support/rules.ts';

testRule(parallelOctaves, {
  failing: [
    {
      name: 'soprano and bass a step down (every textbook prints this)',
      text: `key: F major
metre: 2/4
S: D5 C5 |
A: F4 G4 |
T: A3 G3 |
B: D3 C3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'SB',
          notes: 'S:D5 C5 B:D3 C3',
          severity: 'fault',
          says: 'Soprano and bass move in parallel octaves: D5–D3 to C5–C3.',
        },
      ],
    },
    {
      name: 'alto and tenor by leap',
      text: `key: C major
metre: 2/4
S: G4 C5 |
A: C4 F4 |
T: C3 F3 |
B: E3 A2 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'AT',
          notes: 'A:C4 F4 T:C3 F3',
          severity: 'fault',
          says: 'Alto and tenor move in parallel octaves: C4–C3 to F4–F3.',
        },
      ],
    },
    {
      name: 'an octave that closes to a unison in the same direction',
      text: `key: C major
metre: 2/4
S: G4 A4 |
A: E4 F4 |
T: C4 D4 |
B: C3 D4 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'TB',
          notes: 'T:C4 D4 B:C3 D4',
          severity: 'fault',
          says: 'Tenor and bass move in parallel octaves: C4–C3 to D4–D4.',
        },
      ],
    },
    {
      name: 'I to IV with the root in the soprano',
      text: `key: C major
metre: 2/4
S: C5 F5 |
A: G4 A4 |
T: E4 C4 |
B: C3 F3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'SB',
          notes: 'S:C5 F5 B:C3 F3',
          severity: 'fault',
          says: 'Soprano and bass move in parallel octaves: C5–C3 to F5–F3.',
        },
      ],
    },
    {
      name: 'inner voices change position inside one chord: a remark',
      text: `key: C major
metre: 2/4
S: C5 C5 |
A: E4 G4 |
T: E3 G3 |
B: C3 C3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'AT',
          notes: 'A:E4 G4 T:E3 G3',
          severity: 'remark',
          says: 'Alto and tenor move in parallel octaves: E4–E3 to G4–G3, while the outer voices keep their notes and the chord stays the same.',
        },
      ],
    },
    {
      name: 'inside one chord, but the bass moves: a fault',
      text: `key: C major
metre: 2/4
S: G4 G4 |
A: C4 E4 |
T: G3 C4 |
B: C3 E3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'AB',
          notes: 'A:C4 E4 B:C3 E3',
          severity: 'fault',
          says: 'Alto and bass move in parallel octaves: C4–C3 to E4–E3.',
        },
      ],
    },
    {
      name: 'a neighbour note in the soprano does not hide them',
      text: `key: C major
metre: 3/4
S: (C5 B4) D5 E5 |
A: G4 G4 G4 |
T: E4 G4 G4 |
B: C3 D3 C3 |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'SB',
          notes: 'S:C5 D5 B:C3 D3',
          severity: 'fault',
          says: 'Soprano and bass move in parallel octaves: C5–C3 to D5–D3; the notes between only decorate them.',
        },
      ],
    },
    {
      name: 'a suspended ninth only holds them back',
      text: `key: C major
metre: 4/4
S: G4 E5*3/2 D5/2 B4 | C5*4! |
A: E4 G4 A4 G4 | G4*4! |
T: C4 C4 F4 D4 | E4*4! |
B: C3 E3 D3 G3 | C3*4! |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'SB',
          notes: 'S:E5 D5 B:E3 D3',
          severity: 'query',
          says: 'Soprano and bass move in parallel octaves: E5–E3 to D5–D3; the suspension only holds them back.',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'the bass leaps an octave under a repeated note',
      text: `key: C major
metre: 2/4
S: C5 C5 |
A: E4 E4 |
T: G3 G3 |
B: C3 C2 |`,
    },
    {
      name: 'an octave and then a tenth',
      text: `key: F major
metre: 2/4
S: D5 E5 |
A: F4 E4 |
T: A3 G3 |
B: D3 C3 |`,
    },
    {
      name: 'octaves on an augmented octave apart are none',
      text: `key: C major
metre: 2/4
S: C5 D5 |
A: G4 A4 |
T: E4 F4 |
B: C#3 D3 |`,
    },
    {
      name: 'both voices keep their notes',
      text: `key: C major
metre: 2/4
S: C5 C5 |
A: G4 E4 |
T: E4 G3 |
B: C3 C3 |`,
    },
  ],
});
