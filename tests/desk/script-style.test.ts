/** Style on the desk: what is kept of a script, what a criterion cites, what a class has in common. */
import { describe, expect, test } from 'vitest';
import {
  classStyle,
  joinedStyle,
  type ScriptStyle,
  scriptStyle,
  styleAdvice,
  styleEvidence,
  styleTally,
} from '../../src/desk/script-style.ts';
import { analyseText } from '../harmony/reading.ts';
import { BLOCK_CHORDS } from '../support/block-chords.ts';

const block = scriptStyle(analyseText(BLOCK_CHORDS));

describe('a script', () => {
  test('keeps each measure in words, with advice where it lies outside', () => {
    expect(block['movement-below-tune']).toMatchObject({
      outside: 'low',
      advice: expect.stringContaining('room'),
    });
    expect(block['chords-per-beat']).not.toHaveProperty('advice');
  });

  test('advises a pupil on two of them at the most, with the figure', () => {
    const advice = styleAdvice(block);
    expect(advice).toHaveLength(2);
    expect(advice[0]).toMatch(/^Movement below the tune: 0 % of beats; .* room to walk\.$/);
    expect(styleAdvice({})).toEqual([]);
  });

  test('cites them for a criterion', () => {
    const { value, sentence } = styleEvidence(block);
    expect(value).toBe(Object.values(block).filter(({ outside }) => outside).length);
    expect(sentence).toMatch(/^\d+ of 13 counts of style lie .* Low: movement below the tune,/);
  });

  test('too short to tell keeps nothing, and says so', () => {
    const short = scriptStyle(analyseText(BLOCK_CHORDS.split('\n').slice(0, 9).join('\n')));
    expect(short).toEqual({});
    expect(styleEvidence(short).sentence).toMatch(/^Too short/);
  });
});

describe('a class', () => {
  const plain: ScriptStyle = { ornaments: { name: 'Notes outside the harmony', sentence: 'x' } };
  const low: ScriptStyle = { ornaments: { ...plain.ornaments!, outside: 'low' } };
  const sum = (styles: readonly ScriptStyle[]) => styles.map(styleTally).reduce(joinedStyle, {});

  test('has in common what two scripts and a third of them show', () => {
    expect(classStyle(sum([low, low, plain, plain, plain, plain]))).toEqual([
      'Notes outside the harmony: less than is usual in the model’s chorales, in 2 of the 6 scripts long enough to compare.',
    ]);
    expect(classStyle(sum([low, low, plain, plain, plain, plain, plain]))).toEqual([]);
    expect(classStyle(sum([low]))).toEqual([]);
  });

  test('scripts too short to tell do not count', () => {
    expect(classStyle(sum([low, low, {}, {}, {}, {}, {}]))).toEqual([
      'Notes outside the harmony: less than is usual in the model’s chorales, in 2 of the 2 scripts long enough to compare.',
    ]);
  });
});
