import { describe, expect, it } from 'vitest';
import { readNotation } from '../../src/notation/index.ts';
import { secondsOf, tempoMarks, tempoWithin } from '../../src/score/tempo.ts';

const score = (text: string) => readNotation(text).score;

describe('the tempo', () => {
  it('is marked where it changes, and nowhere twice', () => {
    const music = score('S: C5*4 |\ntempo: 60\nS: D5*4 |\ntempo: 60\nS: E5*4 |\ntempo: 90\nS: F5*4 |');
    expect(tempoMarks(music).map(({ bar, tempo }) => [bar.number, tempo])).toEqual([
      ['2', 60],
      ['4', 90],
    ]);
  });
  it('makes the piece last as long as each bar does', () => {
    expect(secondsOf(score('S: C5*4 |\ntempo: 120\nS: D5*4 |'), 60)).toBe(6);
    expect(secondsOf(score(''), 60)).toBe(0);
  });
  it('is held to a thousandth, within what anybody plays', () => {
    expect(tempoWithin(200 / 3)).toBe(66.667);
    expect([4.9, 1001, Number.NaN].map(tempoWithin)).toEqual([undefined, undefined, undefined]);
  });
});
