import { accidentalSlip } from '../../src/rules/accidental-slip.ts';
import { testRule } from '../support/rules.ts';

testRule(accidentalSlip, {
  failing: [
    {
      name: 'F natural in the dominant of G major',
      text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 G4 F4 | D4*4! |
T: D4 E4 D4 C4 | B3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
      expect: [
        {
          bar: '1',
          beat: '4',
          voices: 'A',
          notes: 'A:F4',
          severity: 'fault',
          says: 'F4 in the alto, in the chord before the close at bar 2, beat 1, where the dominant belongs, is a semitone lower than the seventh degree of G major.',
        },
      ],
    },
    {
      name: 'B natural in a tonic of B flat major',
      text: `key: Bb major
metre: 4/4
S: D4 Eb4 D4 C4 | B3*4! |
A: Bb3 Bb3 Bb3 A3 | F3*4! |
T: F3 G3 F3 F3 | D3*4! |
B: Bb2 Eb3 F3 F2 | Bb2*4! |`,
      expect: [
        {
          bar: '2',
          beat: '1',
          voices: 'S',
          notes: 'S:B3',
          severity: 'remark',
          says: 'was its accidental forgotten?',
        },
      ],
    },
    {
      name: 'F natural for F sharp, which with A sharp and C sharp sounds like E sharp',
      text: `key: B minor
metre: 4/4
S: B4 C#5 B4 A#4 | B4*4! |
A: F#4 F4 D4 F#4 | F#4*4! |
T: D4 C#4 F#4 C#4 | D4*4! |
B: B2 A#2 B2 F#3 | B2*4! |`,
      expect: [{ bar: '1', beat: '2', voices: 'A', notes: 'A:F4', says: 'was its accidental forgotten?' }],
    },
    {
      name: 'F natural in a dominant between tonics of G major',
      text: `key: G major
metre: 4/4
S: B4 A4 B4 C5 | B4 A4 G4*2! |
A: G4 F4 G4 G4 | G4 F#4 D4*2! |
T: D4 D4 D4 E4 | D4 D4 B3*2! |
B: G3 D3 G3 C3 | D3 D3 G2*2! |`,
      expect: [
        {
          bar: '1',
          beat: '2',
          voices: 'A',
          notes: 'A:F4',
          severity: 'query',
          says: 'F4 in the alto, between two tonic chords, where the dominant belongs, is a semitone lower than the seventh degree of G major.',
        },
      ],
    },
    {
      name: 'the third of the tonic, in a major key, a query',
      text: `key: E major
metre: 4/4
S: E4 F#4 G#4 A4 | B4 A4 G#4*2! | F#4 F#4 E4*2! |
A: B3 D#4 E4 E4 | G#4 F#4 E4*2! | C#4 D#4 B3*2! |
T: G3 B3 B3 C#4 | B3 B3 B3*2! | A3 B3 G#3*2! |
B: E3 B2 E3 A2 | E3 D#3 E3*2! | A2 B2 E3*2! |`,
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'T',
          notes: 'T:G3',
          severity: 'query',
          says: 'G3 in the tenor is natural, though the signature has G#, and E major does not have it: was its accidental forgotten?',
        },
      ],
    },
  ],
  passing: [
    {
      name: 'F natural as the seventh of a chord that leads to the subdominant',
      text: `key: G major
metre: 4/4
S: B4 B4 C5 A4 | G4*4! |
A: G4 G4 G4 F#4 | D4*4! |
T: D4 D4 G3 D4 | B3*4! |
B: G3 F3 E3 D3 | G2*4! |`,
    },
    {
      name: 'the raised seventh of C minor is a natural',
      text: `key: C minor
metre: 4/4
S: Eb4 F4 Eb4 D4 | C4*4! |
A: C4 C4 C4 B3 | G3*4! |
T: G3 Ab3 G3 G3 | Eb3*4! |
B: C3 F3 G3 G2 | C3*4! |`,
    },
    {
      name: 'the third of a tierce in G minor is a natural',
      text: `key: G minor
metre: 4/4
S: D5 C5 A4 G4! | Bb4 A4 A4 G4! |
A: G4 G4 F#4 D4! | G4 G4 F#4 D4! |
T: Bb3 Eb4 D4 B3! | D4 Eb4 D4 Bb3! |
B: G3 C3 D3 G2! | G3 C3 D3 G2! |`,
    },
    {
      name: 'the Neapolitan of E minor has an F natural',
      text: `key: E minor
metre: 4/4
S: B4 A4 F#4 G4! |
A: G4 F4 D#4 E4! |
T: E4 C4 B3 B3! |
B: E3 A3 B3 E3! |`,
    },
  ],
});
