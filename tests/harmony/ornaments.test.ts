import { describe, expect, it } from 'vitest';
import { analyseText } from './reading.ts';

/** The ornaments as `S passing`, `T suspension 4–3`. */
function ornaments(text: string): string[] {
  return analyseText(text).ornaments.map(({ voice, kind, figures }) =>
    [voice, kind, figures].filter((part) => part !== undefined).join(' '),
  );
}

const G = 'key: G major\nmetre: 4/4\n';

/** One bar or two for each kind; the rest of the texture plain triads. Definitions: common practice, no source. */
const CASES: readonly (readonly [string, string, readonly string[]])[] = [
  [
    'passing note between two chord notes',
    `${G}S: B4 (B4 A4) G4*2! |\nA: G4 D4 D4*2! |\nT: D4 G3 B3*2! |\nB: G3 G3 G2*2! |`,
    ['S passing'],
  ],
  [
    'accented passing note',
    `${G}S: D5 (C5 B4) A4 G4! |\nA: G4 G4 F#4 D4! |\nT: B3 D4 D4 B3! |\nB: G3 G3 D3 G2! |`,
    ['S accented passing'],
  ],
  [
    'neighbour note',
    `${G}S: G4 (G4/2 A4/2) G4 G4! |\nA: D4 D4 D4 D4! |\nT: B3 B3 B3 B3! |\nB: G3 G3 G3 G2! |`.replaceAll(
      '/2',
      '',
    ),
    ['S neighbour'],
  ],
  [
    'suspension 4–3',
    `${G}S: B4 A4 A4*2 | B4*4! |\nA: G4 G4 F#4*2 | G4*4! |\nT: D4 D4 D4*2 | D4*4! |\nB: G3 D3 D3*2 | G2*4! |`,
    ['A suspension 4–3'],
  ],
  [
    'suspension 9–8',
    `${G}S: D5 D5 D5 D5! |\nA: F#4 G4 G4 G4! |\nT: A3 (A3 G3) B3 B3! |\nB: D3 G2 G2 G2! |`,
    ['T suspension 9–8'],
  ],
  [
    'suspension 7–6',
    `${G}S: G4 (G4 F#4) G4 G4! |\nA: D4 C4 D4 D4! |\nT: B3 C4 D4 B3! |\nB: G3 A3 B3 G3! |`,
    ['S suspension 7–6'],
  ],
  [
    'suspension in the bass',
    `${G}S: D5 D5 C5 B4! |\nA: G4 A4 A4 G4! |\nT: D4 D4 D4 D4! |\nB: G3 (G3 F#3) F#3 G3! |`,
    ['B suspension 2–3'],
  ],
  [
    'anticipation',
    `${G}S: B4 C5 (A4 G4) G4! |\nA: G4 E4 F#4 D4! |\nT: D4 C4 C4 B3! |\nB: G3 C3 D3 G2! |`,
    ['S anticipation'],
  ],
  [
    'échappée',
    `${G}S: G4 (B4 C5) A4 G4! |\nA: D4 D4 F#4 D4! |\nT: B3 G3 D4 B3! |\nB: G3 G3 D3 G2! |`,
    ['S échappée'],
  ],
  [
    'appoggiatura',
    `${G}S: G4 (C5 B4) A4 G4! |\nA: D4 D4 F#4 D4! |\nT: B3 G3 D4 B3! |\nB: G3 G3 D3 G2! |`,
    ['S appoggiatura'],
  ],
  [
    'changing notes',
    `${G}S: B4 (B4 C5 A4 B4) G4*2! |\nA: G4 G4 D4*2! |\nT: D4 D4 B3*2! |\nB: G3 G3 G2*2! |`,
    ['S changing notes', 'S changing notes'],
  ],
  [
    'plain chords have none',
    `${G}S: B4 C5 A4 G4! |\nA: G4 G4 F#4 D4! |\nT: D4 E4 D4 B3! |\nB: G3 C3 D3 G2! |`,
    [],
  ],
];

describe('ornaments', () => {
  it.each(CASES)('%s', (_, text, expected) => {
    expect(ornaments(text)).toEqual(expected);
  });

  it('tells a suspension with its preparation and resolution', () => {
    const [ornament] = analyseText(CASES[3]![1]).ornaments;
    expect(ornament?.preparation?.id).toBe('A@0');
    expect(ornament?.resolution?.id).toBe('A@20160');
  });
});
