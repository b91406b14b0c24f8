import { describe, expect, it } from 'vitest';
import { level, sharpest, weighted } from '../support/sound/loudness.ts';

const RATE = 48_000;
const tone = (hertz: number, seconds = 1) =>
  Float32Array.from({ length: RATE * seconds }, (_, i) => 0.5 * Math.sin((2 * Math.PI * hertz * i) / RATE));

describe('loudness', () => {
  // IEC 61672-1, table of frequency weightings, A (from memory).
  it.each([
    [63, -26.2],
    [125, -16.1],
    [250, -8.6],
    [500, -3.2],
    [1000, 0],
    [2000, 1.2],
    [4000, 1],
  ])('weighs a tone of %i Hz by %f dB', (hertz, decibels) => {
    const plain = tone(hertz);
    expect(level(weighted(plain, RATE), RATE) - level(plain, RATE)).toBeCloseTo(decibels, 0);
  });

  it('tells a note broken off from one that dies away', () => {
    const smooth = tone(200);
    const broken = Float32Array.from(smooth);
    broken.fill(0, 24_060);
    expect(sharpest(smooth, RATE, [0.5])).toBeLessThan(1.1);
    expect(sharpest(broken, RATE, [24_060 / RATE])).toBeGreaterThan(5);
  });
});
