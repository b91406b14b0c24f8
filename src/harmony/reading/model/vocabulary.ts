/** The chords a key may hold, by the root's distance from the tonic on the line of fifths. */
import { CHORD_TYPES } from '../../chord-types.ts';
import { numeral } from '../../words/labels.ts';
import { romanOf } from '../roman.ts';

/** Root's fifths from the tonic, then the chord types that stand there. */
const MAJOR = `
  0: M Mmaj7 M7 m +
  1: M M7 m m7 + o ø7
  2: m m7 M M7 o ø7 Fr
  3: m m7 M M7 o ø7
  4: m m7 M M7 o ø7 o7
  5: o ø7 o7 M M7 m
  6: o ø7 o7 It Ger
  7: o ø7 o7
  8: o ø7 o7
  9: o ø7 o7
  -1: M Mmaj7 M7 m m7
  -2: M Mmaj7 M7
  -3: M
  -4: M Mmaj7
  -5: M`;
const MINOR = `
  0: m m7 mmaj7 M M7
  1: m m7 M M7 + o ø7
  2: o ø7 m m7 M M7 Fr
  3: o ø7 o7 m
  4: o ø7 o7
  5: o ø7 o7
  6: o ø7 o7 It Ger
  7: o o7
  -1: m m7 M M7
  -2: M M7 m
  -3: M Mmaj7 M7 + +maj7
  -4: M Mmaj7 M7
  -5: M Mmaj7`;

export const MODES = ['major', 'minor'] as const;

const LOWEST = -12;
const SPAN = 30;
const TYPES = CHORD_TYPES.length;

/** 0 in every mode: a chord the key does not know. */
export const STRANGE = 0;

interface Entry {
  readonly offset: number;
  readonly type: number;
}

const ENTRIES: readonly (readonly Entry[])[] = [MAJOR, MINOR].map((text) =>
  text
    .trim()
    .split('\n')
    .flatMap((line) => {
      const [offset, types] = line.trim().split(': ') as [string, string];
      return types.split(' ').map((name) => ({
        offset: Number(offset),
        type: CHORD_TYPES.findIndex((type) => type.name === name),
      }));
    }),
);

/** Size of the larger vocabulary, STRANGE included: the stride of all tables. */
export const VOCABULARY = 1 + Math.max(...ENTRIES.map((entries) => entries.length));

const INDEX: readonly Int16Array[] = ENTRIES.map((entries) => {
  const table = new Int16Array(SPAN * TYPES);
  for (const [i, { offset, type }] of entries.entries()) table[(offset - LOWEST) * TYPES + type] = i + 1;
  return table;
});

/** The place of a chord in a mode's vocabulary, or STRANGE. `offset`: fifths from tonic to root. */
export function vocabularyIndex(mode: number, offset: number, type: number): number {
  const row = offset - LOWEST;
  return row < 0 || row >= SPAN ? STRANGE : INDEX[mode]![row * TYPES + type]!;
}

const C = { step: 'C', alteration: 0 } as const;

/** How the weight table calls a vocabulary's chords: `V7`, `viio7/V`, `strange`. Index for index. */
export const CHORD_NAMES: readonly (readonly string[])[] = ENTRIES.map((entries, mode) => {
  const key = { tonic: C, mode: MODES[mode]! };
  const names = entries.map(({ offset, type }) => {
    const plain = numeral(romanOf(key, offset, type, 0), key);
    // Major sevenths and augmented triads with a seventh need telling apart from the rest.
    return CHORD_TYPES[type]!.seventh === 'major' ? plain.replace('7', 'maj7') : plain;
  });
  const padded = ['strange', ...names];
  while (padded.length < VOCABULARY) padded.push(`unused ${padded.length}`);
  return padded;
});
