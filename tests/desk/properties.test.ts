/** What holds for any score that can be read, misfits, holes and odd notes included. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { alignBars } from '../../src/desk/align.ts';
import { notedBars, pitchCode, semitonesOf, stepsOf, transposed } from '../../src/desk/bar-notes.ts';
import { csvLine } from '../../src/desk/csv.ts';
import { excerptText } from '../../src/desk/excerpt.ts';
import { likenessPrint, likenessPrintSchema } from '../../src/desk/fingerprint.ts';
import { compareWithGiven } from '../../src/desk/given.ts';
import { comparable, likenessOf } from '../../src/desk/likeness.ts';
import { capitalised } from '../../src/english/words.ts';
import { readNotation } from '../../src/notation/index.ts';
import { type Pitch, STEPS } from '../../src/score/pitch.ts';
import { printBar } from '../../src/score/place.ts';
import { VOICES } from '../../src/score/score.ts';
import { anyScore } from '../support/scores.ts';

const RUNS = { numRuns: 60, seed: 7 };

describe('any score', () => {
  test('is untouched when compared with itself', () => {
    fc.assert(
      fc.property(anyScore, (score) => {
        const { departures, general, transposition } = compareWithGiven(score, score);
        expect({ departures, general, transposition }).toEqual({
          departures: [],
          general: [],
          transposition: undefined,
        });
      }),
      RUNS,
    );
  });

  test('has each of its bars answered by itself', () => {
    fc.assert(
      fc.property(anyScore, (score) => {
        const bars = notedBars(score);
        for (const { a, b } of alignBars(bars, bars, VOICES).bars) expect(a).toBe(b);
      }),
      RUNS,
    );
  });

  test('against any other: every departure is a sentence with a place, and nothing is thrown', () => {
    fc.assert(
      fc.property(anyScore, anyScore, (given, script) => {
        const { departures, bars, summary } = compareWithGiven(given, script);
        for (const { message, bar } of departures) {
          expect(message).toMatch(/^(Bar |The upbeat).*\.$/);
          expect(message).toContain(capitalised(printBar(bar)));
          expect(message).not.toMatch(/undefined|NaN/);
        }
        expect(bars.flatMap((compared) => compared.departures)).toEqual(departures);
        expect(summary).toMatch(/\.$/);
      }),
      RUNS,
    );
  });

  test('its print is of the promised shape, and likeness lies between nothing and all', () => {
    fc.assert(
      fc.property(anyScore, anyScore, (a, b) => {
        const print = likenessPrint(a);
        expect(likenessPrintSchema.parse(JSON.parse(JSON.stringify(print)))).toEqual(print);
        const own = likenessOf(comparable(print), comparable(print));
        expect(own.share === 1 || own.compared === 0).toBe(true);
        const { share } = likenessOf(comparable(print), comparable(likenessPrint(b)));
        expect(share).toBeGreaterThanOrEqual(0);
        expect(share).toBeLessThanOrEqual(1);
      }),
      RUNS,
    );
  });

  test('an excerpt can be read again', () => {
    fc.assert(
      fc.property(anyScore, fc.nat(20), fc.nat(3), (score, from, more) => {
        const first = from % score.bars.length;
        const last = Math.min(first + more, score.bars.length - 1);
        const { problems, score: read } = readNotation(excerptText(score, first, last));
        expect(problems).toEqual([]);
        expect(read.title).toBe('');
      }),
      RUNS,
    );
  });
});

describe('pitches as numbers', () => {
  const pitch: fc.Arbitrary<Pitch> = fc.record({
    step: fc.constantFrom(...STEPS),
    alteration: fc.integer({ min: -2, max: 2 }),
    octave: fc.integer({ min: 0, max: 9 }),
  });

  test('a pitch moved to another is the other, by spelling', () => {
    fc.assert(
      fc.property(pitch, pitch, (from, to) => {
        const by = pitchCode(to) - pitchCode(from);
        expect(transposed(from, by)).toEqual(to);
        expect(pitchCode(transposed(from, by))).toBe(pitchCode(to));
        expect(stepsOf(by) * 256 + semitonesOf(by)).toBe(by);
      }),
      { numRuns: 500, seed: 7 },
    );
  });
});

describe('any cell', () => {
  test('comes back from the table as it was, save for the sign that takes the sting out', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const line = csvLine([text, 'x']);
        const cell = /^(?:"((?:[^"]|"")*)"|([^",\r\n]*)),x\r\n$/s.exec(line);
        const read = (cell?.[1]?.replaceAll('""', '"') ?? cell?.[2])!;
        expect([text, `'${text}`]).toContain(read);
        expect(read).not.toMatch(/^\s*[=+\-@]/);
      }),
      { numRuns: 500, seed: 7 },
    );
  });
});
