import { rootPositionsThroughout } from '../../src/rules/root-positions-throughout.ts';
import { testRule } from '../support/rules.ts';

const ROOTS = `key: G major
metre: 4/4
S: G4 A4 B4 G4 | C5 B4 A4*2! | B4 C5 D5 B4 | A4 B4 A4*2! | G4 A4 B4 C5 | B4 A4 G4*2! ||
A: D4 F#4 G4 E4 | E4 D4 F#4*2! | G4 G4 F#4 G4 | F#4 G4 F#4*2! | D4 F#4 G4 G4 | G4 F#4 D4*2! ||
T: B3 D4 D4 B3 | A3 B3 D4*2! | D4 E4 A3 D4 | D4 D4 D4*2! | B3 D4 D4 E4 | D4 D4 B3*2! ||
B: G2 D3 G3 E3 | A2 G2 D3*2! | G3 C3 D3 G3 | D3 G3 D3*2! | G2 D3 G3 C3 | D3 D3 G2*2! ||`;

/** Two of its chords over their thirds. */
const INVERTED = ROOTS.replace('B: G2 D3', 'B: G2 F#2').replace('D3*2! | G2 D3', 'D3*2! | B2 D3');

testRule(rootPositionsThroughout, {
  failing: [
    {
      name: 'three phrases over nothing but roots',
      text: ROOTS,
      parameters: { chords: 20 },
      expect: [
        {
          bar: '1',
          beat: '1',
          voices: 'B',
          notes: '',
          severity: 'query',
          says: 'Each of the 20 chords has its root in the bass, from beginning to end, cadential six-fours left aside.',
        },
      ],
    },
  ],
  passing: [
    { name: 'two chords of twenty inverted', text: INVERTED, parameters: { chords: 20 } },
    {
      name: 'too few chords to speak of a habit',
      parameters: { chords: 20 },
      text: ROOTS.split('\n')
        .map((line) => (/^[SATB]:/.test(line) ? `${line.split('|').slice(0, 2).join('|')}||` : line))
        .join('\n'),
    },
    {
      name: 'the bass of the last phrase still to be written',
      parameters: { chords: 20 },
      text: ROOTS.replace('G2 D3 G3 C3 | D3 D3 G2*2!', '? ? ? ? | ? ? ?*2'),
    },
  ],
});
