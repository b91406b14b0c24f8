/** Each measure on bars that were counted by hand. */
import { describe, expect, test } from 'vitest';
import { MEASURES } from '../../src/style/list.ts';
import type { Measure } from '../../src/style/measure.ts';
import { musicOf } from '../../src/style/music.ts';
import { analyseText } from '../harmony/reading.ts';

/** Two bars in C: beats 2 and 3 of bar 1 have quavers below the tune, the alto repeats its note twice. */
const WALK = `
key: C major
metre: 4/4

S: E5 D5 C5 D5 | E5*3! r ||
A: G4 G4 (E4 F4) G4 | G4*3! r ||
T: C4 (B3 A3) G3 B3 | C4*3! r ||
B: C3 G3 C4 G3 | C3*3! r ||
`;

/** A 4–3 over the dominant: the tenor holds C over G and lets it down to B. */
const HELD = `
key: C major
metre: 4/4

S: E5 D5 D5 D5 | C5*3! r ||
A: G4 F4 G4 G4 | E4*3! r ||
T: C4 A3 (C4 B3)*2 | G3*3! r ||
B: C3 F3 G3 G3 | C3*3! r ||
`.replace('T: C4 A3 (C4 B3)*2', 'T: C4 C4 C4 B3');

/** What was counted: measure, exercise, value. */
const COUNTED: readonly (readonly [string, string, number])[] = [
  // Eight beats, the last of them silent: seven are measured; quavers without the tune in two.
  ['movement-below-tune', WALK, (100 * 2) / 7],
  ['off-beat-tenor', WALK, 1 / 7],
  ['off-beat-bass', WALK, 0],
  // The tenor's A and the alto's F pass.
  ['ornaments', WALK, 2 / 7],
  ['suspensions', WALK, 0],
  // Alto G G E F G G: five moves, two of them to the same note.
  ['repeated-alto', WALK, 40],
  // Bass C G C G C: four moves, all of a fourth or more.
  ['bass-steps', WALK, 0],
  ['bass-leaps', WALK, 100],
  // Nine, seven; eight then seven (C over E and F); seven; nine for three beats, in semitones by quavers.
  ['soprano-to-alto', WALK, (9 * 2 + 7 * 2 + 8 + 7 + 7 * 2 + 9 * 6) / 14],
  // I V I V I.
  ['chords-per-beat', WALK, 5 / 7],
  ['inversions', WALK, 0],
  ['sevenths', WALK, 0],
  // Three tonics and two dominants.
  ['variety', WALK, -(0.6 * Math.log2(0.6) + 0.4 * Math.log2(0.4))],
  ['suspensions', HELD, 1],
];

describe('counted by hand', () => {
  test.each(COUNTED)('%s', (id, text, value) => {
    const measure = MEASURES.find((one) => one.id === id) as Measure;
    expect(measure.count(musicOf(analyseText(text))).value).toBeCloseTo(value, 10);
  });

  test('every measure has its bars', () => {
    expect([...new Set(COUNTED.map(([id]) => id))].sort()).toEqual(MEASURES.map(({ id }) => id).sort());
  });
});

describe('what is measured', () => {
  test('beats with something still to be written are left out', () => {
    const open = WALK.replace('T: C4 (B3 A3) G3 B3', 'T: C4 ? ? B3');
    expect(musicOf(analyseText(open)).beats).toHaveLength(5);
  });

  test('a beat in compound time is a dotted crotchet', () => {
    const text =
      'key: C major\nmetre: 6/8\n\nS: E5*3 D5*3 ||\nA: G4*3 G4*3 ||\nT: C4*3 B3*3 ||\nB: C3*3 G3*3 ||\n';
    expect(musicOf(analyseText(text)).beats).toHaveLength(2);
  });

  test.each(MEASURES)('$id is told in whole sentences that name no note', (measure) => {
    for (const text of [measure.definition, measure.why, measure.low, measure.high, measure.source]) {
      expect(text).toMatch(/^[A-Z].*\.$/s);
      expect(text).not.toMatch(/\b[A-G][#♯b♭]?\d\b/);
    }
  });
});
