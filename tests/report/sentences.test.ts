import { describe, expect, it } from 'vitest';
import { beatsAMinute, countedBeat, printTempo } from '../../src/report/sentences.ts';
import { printBars } from '../../src/score/place.ts';

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

describe('bars in words', () => {
  it.each([
    [['3'], 'bar 3'],
    [['0'], 'the upbeat'],
    [['0', '3', '3', '5'], 'the upbeat and bars 3 and 5'],
    [['1', '2', '4', '5'], 'bars 1, 2 and 2 others'],
  ])('%j: %s', (numbers, said) => {
    expect(printBars(numbers, 2)).toBe(said);
  });
});

describe('the beat that is counted', () => {
  it.each([
    [4, 4, 'crotchet', 1],
    [3, 2, 'minim', 2],
    [6, 8, 'dotted crotchet', 1.5],
    [3, 8, 'quaver', 0.5],
  ])('in %i/%i is a %s', (beats, unit, name, crotchets) => {
    expect(countedBeat({ beats, unit })).toEqual({ name, crotchets });
    expect(beatsAMinute(60 * crotchets, { beats, unit })).toBe(60);
  });
});
