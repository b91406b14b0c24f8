import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { printNotation, readNotation } from '../../src/notation/index.ts';
import { anyScore, music } from '../support/scores.ts';

describe('the notation as a whole', () => {
  test('what is printed is read back as the same score', () => {
    fc.assert(
      fc.property(anyScore, (score) => {
        const reading = readNotation(printNotation(score));
        expect(reading.problems).toEqual([]);
        expect(music(reading.score)).toEqual(music(score));
      }),
      { numRuns: 1000 },
    );
  });

  test('whatever is typed, reading ends with a score and places that are in the text', () => {
    const scrap = fc.constantFrom(
      'S:',
      'A:',
      'key:',
      'C4',
      'F#',
      'H',
      '(',
      ')',
      '(C5 B4)',
      '*2',
      '/0',
      '/7',
      '=',
      'r',
      '?',
      '!',
      '_',
      '|',
      '|:',
      ':|',
      '\n',
      ' ',
      'upbeat: 1',
      'metre: 3/2',
    );
    fc.assert(
      fc.property(fc.array(fc.oneof(scrap, fc.string()), { maxLength: 60 }), (scraps) => {
        const text = scraps.join(' ');
        const lines = text.split(/\r\n|\r|\n/);
        for (const problem of readNotation(text).problems) {
          expect(problem.line).toBeGreaterThanOrEqual(1);
          expect(problem.line).toBeLessThanOrEqual(lines.length);
          expect(problem.column).toBeLessThanOrEqual(lines[problem.line - 1]!.length + 1);
        }
      }),
      { numRuns: 2000 },
    );
  });
});
