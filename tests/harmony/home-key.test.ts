import { describe, expect, it } from 'vitest';
import type { Analysis, Key } from '../../src/harmony/analysis.ts';
import { homeKey } from '../../src/harmony/questions/home-key.ts';
import { printKey } from '../../src/harmony/words/labels.ts';
import { parseNoteName } from '../../src/score/pitch.ts';
import type { KeySignature } from '../../src/score/score.ts';

const key = (name: string): Key => {
  const [tonic, mode] = name.split(' ') as [string, Key['mode']];
  return { tonic: parseNoteName(tonic)!, mode };
};

/** The home key under a signature, where the music spends so many crotchets in each of these keys, one after another. */
function home(signature: KeySignature, ...spent: readonly [string, number][]): string {
  let at = 0;
  const keys = spent.map(([name, length]) => {
    const region = { key: key(name), from: at, until: at + length };
    at += length;
    return region;
  });
  const analysis = { texture: { score: { bars: [{ key: signature }] } }, keys } as unknown as Analysis;
  return printKey(homeKey(analysis));
}

describe('the home key', () => {
  it('is what the exercise states, whatever it does', () => {
    expect(home({ fifths: 0, mode: 'minor' }, ['C major', 40])).toBe('A minor');
    expect(home({ fifths: 1, mode: 'major' })).toBe('G major');
  });

  it.each<[string, number, string, [string, number][]]>([
    [
      'it ends where the signature says',
      1,
      'E minor',
      [
        ['G major', 30],
        ['E minor', 4],
      ],
    ],
    [
      'it ends in the dorian key of its signature',
      -1,
      'G minor',
      [
        ['D minor', 4],
        ['G minor', 4],
      ],
    ],
    [
      'it closes in the dominant, and is at home elsewhere',
      0,
      'C major',
      [
        ['C major', 20],
        ['G major', 8],
      ],
    ],
    [
      'it closes in the dominant of the relative minor',
      0,
      'A minor',
      [
        ['A minor', 12],
        ['C major', 9],
        ['E minor', 4],
      ],
    ],
    [
      'it has the signature of another mode throughout',
      0,
      'G major',
      [
        ['G major', 20],
        ['C major', 6],
        ['G major', 8],
      ],
    ],
    ['nothing is written that has a key', 2, 'D major', []],
  ])('where %s', (_, fifths, expected, spent) => {
    expect(home({ fifths }, ...spent)).toBe(expected);
  });
});
