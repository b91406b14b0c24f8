import { describe, expect, it } from 'vitest';
import { printTempo } from '../../src/report/sentences.ts';

describe('the tempo', () => {
  it.each([
    [72, 4, 4, 'crotchet = 72'],
    [120, 3, 2, 'minim = 60'],
    [77, 2, 2, 'minim = 38.5'],
    [60, 3, 8, 'quaver = 120'],
    [72, 6, 8, 'dotted crotchet = 48'],
    [90, 6, 4, 'dotted minim = 30'],
    [80, 6, 1, 'crotchet = 80'],
  ])('of %i crotchets in %i/%i is told as %s', (crotchets, beats, unit, said) => {
    expect(printTempo(crotchets, { beats, unit })).toBe(said);
  });
});
