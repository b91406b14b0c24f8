import { harmonyHeldOver } from '../../src/rules/harmony-held-over.ts';
import { testRule } from '../support/rules.ts';

testRule(harmonyHeldOver, {
  failing: [
    {
      name: 'the subdominant comes on the last beat and stays',
      text: `key: G major
metre: 4/4
S: B4 G4 A4 G4 | G4 E4 F#4 A4 | G4*4! |
A: D4 D4 D4 E4 | E4 C4 D4 D4 | D4*4! |
T: G3 B3 F#3 C4 | C4 G3 A3 C4 | B3*4! |
B: G3 G3 D3 C3 | C3 C3 D3 D3 | G2*4! |`,
      expect: [
        {
          bar: '1',
          beat: '4',
          voices: 'B',
          notes: 'B:C3 C3',
          severity: 'query',
          says: 'The chord that begins at bar 1, beat 4 is held over the barline into bar 2.',
        },
      ],
    },
    {
      name: 'only the octave of the bass changes at the barline',
      text: `key: G major
metre: 4/4
S: B4 A4 B4 A4 | A4 C5 B4*2! |
A: G4 F#4 G4 F#4 | F#4 A4 G4*2! |
T: D4 D4 D4 D4 | D4 D4 D4*2! |
B: G3 D3 G3 D4 | D3 F#3 G3*2! |`,
      expect: [
        {
          bar: '1',
          beat: '4',
          voices: 'B',
          notes: 'B:D4 D3',
          severity: 'query',
          says: 'The chord that begins at bar 1, beat 4 is held over the barline into bar 2.',
        },
      ],
    },
    {
      name: 'the bass goes through a passing note to the next position: a remark',
      text: `key: A minor
metre: 4/4
S: B4 A4 B4 C5 | A4 G#4 A4*2! |
A: E4 E4 E4 A4 | E4 E4 E4*2! |
T: G#3 C4 G#3 E4 | A3 B3 C4*2! |
B: E3 A3 E3 (A2 B2) | C3 E3 A2*2! |`,
      expect: [
        {
          bar: '1',
          beat: '4',
          voices: 'B',
          notes: 'B:A2 C3',
          severity: 'remark',
          says: 'The chord that begins at bar 1, beat 4 is held over the barline into bar 2.',
        },
      ],
    },
    {
      name: 'three bars of two beats within two of three, as before a close: a remark',
      text: `key: G major
metre: 3/4
S: B4 C5 D5 | D5 C5*2 | B4*3! |
A: G4 A4 B4 | B4 A4 F#4 | G4*3! |
T: D4 E4 G4 | G4 E4 D4 | D4*3! |
B: G3 A3 G3 | G3 C3 D3 | G2*3! |`,
      expect: [
        {
          bar: '1',
          beat: '3',
          voices: 'B',
          notes: 'B:G3 G3',
          severity: 'remark',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'the harmony changes at the barline',
      text: `key: G major
metre: 4/4
S: B4 G4 A4 G4 | G4 E4 F#4 A4 | G4*4! |
A: D4 D4 D4 D4 | E4 C4 D4 D4 | D4*4! |
T: G3 B3 F#3 B3 | C4 G3 A3 C4 | B3*4! |
B: G3 G3 D3 G3 | C3 C3 D3 D3 | G2*4! |`,
    },
    {
      name: 'an upbeat with the harmony of the first bar',
      text: `key: G major
metre: 4/4
upbeat: 1
S: D5 | B4 C5 B4 A4 | G4*3! |
A: G4 | G4 G4 G4 F#4 | D4*3! |
T: B3 | D4 E4 D4 C4 | B3*3! |
B: G3 | G3 C3 D3 D3 | G2*3! |`,
    },
  ],
});
