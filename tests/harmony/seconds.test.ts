/** Second readings: told of stretches, where they lie close, and as a teacher would tell them. */
import { describe, expect, it } from 'vitest';
import { analyse } from '../../src/harmony/analyse.ts';
import type { Analysis } from '../../src/harmony/analysis.ts';
import { isSureOfKey, secondOf } from '../../src/harmony/questions/seconds.ts';
import { numeral, printKey } from '../../src/harmony/words/labels.ts';
import { secondWords } from '../../src/harmony/words/seconds.ts';
import { DEFAULT_PROFILE } from '../../src/profiles/list.ts';
import { secondsByBar } from '../../src/report/chords.ts';
import { jsonReview } from '../../src/report/json.ts';
import { jsonReviewSchema } from '../../src/report/schema.ts';
import { reviewAnalysis } from '../../src/review/review.ts';
import { textureOf } from '../../src/score/texture.ts';
import { corpusPresent, readCorpus } from '../bench/harmony-corpus.ts';
import { transposed } from '../bench/pupils/transpose.ts';
import { analyseText, numerals } from './reading.ts';

/** The third phrase closes in A minor; its last chord, and the first of the next, may stand in either key. */
const EITHER_WAY = `key: C major
metre: 4/4
S: E5 D5 C5 B4 | A4 B4 C5! C5 | A4 G#4 A4 B4 | C5 B4 A4! C5 | D5 E5 D5 C5 | B4 B4 C5*2! |
A: G4 G4 G4 G4 | F4 G4 G4! E4 | E4 E4 E4 E4 | E4 E4 E4! E4 | F4 G4 F4 E4 | D4 G4 E4*2! |
T: C4 D4 E4 D4 | D4 D4 E4! A3 | C4 B3 C4 G#3 | A3 G#3 C4! C4 | A3 C4 A3 A3 | G3 D4 G3*2! |
B: C3 B2 C3 G3 | D3 G3 C3! A2 | A2 E3 A3 E3 | A2 E3 A2! A3 | D3 C3 D3 A2 | G2 G2 C3*2! |`;

function told(analysis: Analysis): string[] {
  return analysis.seconds.map((second) => secondWords(analysis, second, 'figures'));
}

describe('second readings', () => {
  it('are not told where nobody would doubt', () => {
    const analysis = analyseText(`key: C major
metre: 4/4
S: E5 F5 D5 E5! |
A: C5 C5 B4 C5! |
T: G4 A4 G4 G4! |
B: C4 F3 G3 C3! |`);
    expect(analysis.seconds).toEqual([]);
    for (const { sure } of analysis.chords) expect(sure).toBeGreaterThan(0.98);
  });

  it('are told of the stretch, from where to where, in the other key’s numerals', () => {
    const analysis = analyseText(EITHER_WAY);
    expect(numerals(analysis)).toContain('A minor: i V i V i V i C major: vi ii');
    expect(told(analysis)).toEqual(['also A minor: i–iv']);
    const review = reviewAnalysis(analysis, DEFAULT_PROFILE);
    expect(secondsByBar(review, 'figures')).toEqual(['bar 4, beat 4: also A minor: i–iv until bar 5']);
    expect(secondsByBar(review, 'capital letters')).toEqual([
      'bar 4, beat 4: also A minor: Im–IVm until bar 5',
    ]);
  });

  it('leave the key told with reserve where they lie, and without where nobody doubts', () => {
    const { chords, seconds } = analyseText(EITHER_WAY);
    expect(chords.slice(0, 4).every(isSureOfKey)).toBe(true);
    for (const { index } of seconds[0]!.chords) expect(isSureOfKey(chords[index]!)).toBe(false);
  });

  it('are none of whether a chord has its seventh', () => {
    const { seconds } = analyseText(`key: Ab major
metre: 4/4
S: Eb5 C5 F5 Bb4 | C5 Db5 Eb5 Db5 | C5*4! |
A: Eb4 Ab4 F4 Eb4 | Eb4 Bb4 Db5 Eb4 | C4*4! |
T: C4 Eb4 Db4 Bb3 | Ab3 F4 G4 G3 | Ab3*4! |
B: Ab3 C4 Bb3 G3 | Ab3 Bb2 Eb3 Eb3 | Ab2*4! |`);
    expect(seconds).toEqual([]);
  });

  it('stand in the JSON by chord and by key', () => {
    const review = reviewAnalysis(analyseText(EITHER_WAY), DEFAULT_PROFILE);
    const json = jsonReviewSchema.parse(jsonReview('either-way', review));
    const doubtful = json.chords.filter(({ otherwise }) => otherwise !== undefined);
    expect(doubtful.map(({ bar, key, numeral, otherwise }) => [bar, key, numeral, otherwise])).toEqual([
      ['4', 'C major', 'vi', { key: 'A minor', numeral: 'i' }],
      ['5', 'C major', 'ii', { key: 'A minor', numeral: 'iv' }],
    ]);
    for (const { sure } of json.chords) expect(sure).toBeLessThanOrEqual(1);
    expect(doubtful[0]!.sure).toBeLessThan(0.75);
    expect(json.keys.map(({ key, otherwise }) => [key, otherwise])).toEqual([
      ['C major', undefined],
      ['A minor', undefined],
      ['C major', [{ from: 15, until: 17, key: 'A minor', numerals: ['i', 'iv'] }]],
    ]);
  });

  it('are the same in every key', () => {
    const { score } = analyseText(EITHER_WAY).texture;
    const plain = analyse(textureOf(score));
    for (const fifths of [-5, -2, 1, 4]) {
      const moved = analyse(textureOf(transposed(score, fifths)));
      expect(moved.seconds.map(({ from, until, chords }) => [from, until, chords])).toEqual(
        plain.seconds.map(({ from, until, chords }) => [from, until, chords]),
      );
      for (const [i, { sure }] of moved.chords.entries()) expect(sure).toBeCloseTo(plain.chords[i]!.sure, 6);
    }
  });

  it.skipIf(!corpusPresent())('in the chorales name other keys or other chords, none of them twice', () => {
    for (const { texture } of readCorpus(['024', '066', '105', '227'])) {
      const analysis = analyse(texture);
      const met = new Set<number>();
      for (const { key, chords } of analysis.seconds)
        for (const { index, roman } of chords) {
          const first = analysis.chords[index]!;
          const [ours, other] = [
            `${numeral(first.roman, first.key)} ${printKey(first.key)}`,
            `${numeral(roman, key)} ${printKey(key)}`,
          ];
          expect(other).not.toBe(ours);
          if (printKey(key) === printKey(first.key)) continue;
          expect(met.has(index)).toBe(false);
          met.add(index);
          expect(secondOf(analysis, first)).toEqual({ key, roman });
        }
    }
  });
});
