import { describe, expect, it } from 'vitest';
import { capitalised, counted, listed, mixedNumber, withArticle } from '../../src/english/words.ts';

describe('English', () => {
  it('lists with commas and one and, none before it', () => {
    expect([[], ['a'], ['a', 'b'], ['a', 'b', 'c']].map((items) => listed(items))).toEqual([
      '',
      'a',
      'a and b',
      'a, b and c',
    ]);
    expect(listed(['a', 'b', 'c'], 'or')).toBe('a, b or c');
  });

  it('begins a sentence', () => {
    expect(['alto', '', 'échappée', '3 bars'].map(capitalised)).toEqual(['Alto', '', 'Échappée', '3 bars']);
  });

  it('counts', () => {
    expect([counted(1, 'bar'), counted(0, 'bar'), counted(2, 'query', 'queries')]).toEqual([
      '1 bar',
      '0 bars',
      '2 queries',
    ]);
    expect([withArticle('tenth'), withArticle('octave')]).toEqual(['a tenth', 'an octave']);
  });

  it('writes fractions with their signs where there is one', () => {
    expect([
      mixedNumber(2, 0, 1),
      mixedNumber(2, 1, 2),
      mixedNumber(3, 1, 6),
      mixedNumber(0, 1, 3),
      mixedNumber(0, 5, 6),
    ]).toEqual(['2', '2½', '3 1/6', '⅓', '5/6']);
  });
});
