import { describe, expect, test } from 'vitest';
import { readNotation } from '../../src/notation/index.ts';
import { printPitch } from '../../src/score/pitch.ts';
import { metricalStrength, placeAt, printPlace } from '../../src/score/place.ts';
import { sliceAt, textureOf, toneIn } from '../../src/score/texture.ts';
import { CROTCHET, crotchets } from '../../src/score/time.ts';

const texture = (text: string) => textureOf(readNotation(text).score);

describe('tones and slices', () => {
  const t = texture('S: C5*4 | (= B4) A4 r*2 ||\nB: C3 D3 E3*2 | F3*2 ?*2 ||');

  test('tied notes are one tone', () => {
    expect(
      t.tones.S.map((tone) => [
        printPitch(tone.pitch),
        crotchets(tone.at),
        crotchets(tone.until),
        tone.notes.length,
      ]),
    ).toEqual([
      ['C5', 0, 4.5, 2],
      ['B4', 4.5, 5, 1],
      ['A4', 5, 6, 1],
    ]);
  });

  test('a slice ends wherever anything begins or ends', () => {
    expect(t.slices.map((slice) => crotchets(slice.at))).toEqual([0, 1, 2, 4, 4.5, 5, 6]);
    expect(t.slices.map((slice) => slice.parts.S.kind)).toEqual([
      'tone',
      'tone',
      'tone',
      'tone',
      'tone',
      'tone',
      'rest',
    ]);
    expect(t.slices.at(-1)!.parts.B.kind).toBe('gap');
    expect(t.slices.at(-1)!.until).toBe(8 * CROTCHET);
  });

  test('a held tone is not struck again', () => {
    const held = t.transitions[2]!.moves.S!;
    expect([held.held, held.direction]).toEqual([true, 'level']);
    const step = t.transitions[3]!.moves.S!;
    expect([step.held, step.direction, step.interval]).toEqual([false, 'down', { steps: -1, semitones: -1 }]);
    expect(t.transitions[5]!.moves.S).toBeUndefined();
  });

  test('a slice is found by its time', () => {
    expect(toneIn(sliceAt(t, 3 * CROTCHET)!, 'B')?.id).toBe('B@20160');
    expect(sliceAt(t, 8 * CROTCHET)).toBeUndefined();
    expect(sliceAt(t, -1)).toBeUndefined();
  });

  test('a fermata in any voice marks the slice', () => {
    const slices = texture('S: C5*2 D5*2 |\nT: E4*2! F4*2 |').slices;
    expect(slices.map((slice) => slice.fermata)).toEqual([true, false]);
  });

  test('an empty score has no slices', () => {
    expect(texture('title: Nothing yet').slices).toEqual([]);
  });
});

describe('places', () => {
  test('bars and beats as a person says them', () => {
    const { score } = readNotation('upbeat: 1\nS: C5 | (C5 D5) (E5 F5 G5) C5*2 |');
    expect([0, 10_080, 15_120, 20_160, 23_520].map((at) => printPlace(placeAt(score, at)))).toEqual([
      'the upbeat, beat 4',
      'bar 1, beat 1',
      'bar 1, beat 1½',
      'bar 1, beat 2',
      'bar 1, beat 2⅓',
    ]);
  });

  test.each([
    ['4/4', [4, 1, 2, 1, 3, 1, 2, 1]],
    ['3/4', [4, 1, 2, 1, 2, 1]],
    ['2/2', [4, 0, 1, 0, 2, 0, 1, 0]],
    ['6/8', [4, 1, 1, 3, 1, 1]],
  ])('how strong the quavers of %s are', (metre, expected) => {
    const { score } = readNotation(
      `metre: ${metre}\nS: ${metre.endsWith('8') ? 'C5*6' : metre === '2/2' ? 'C5*2' : metre === '3/4' ? 'C5*3' : 'C5*4'} |`,
    );
    const bar = score.bars[0]!;
    const quavers = bar.duration / (CROTCHET / 2);
    expect(Array.from({ length: quavers }, (_, i) => metricalStrength(bar, (i * CROTCHET) / 2))).toEqual(
      expected,
    );
  });
});
