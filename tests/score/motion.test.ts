import { describe, expect, it } from 'vitest';
import { readNotation } from '../../src/notation/index.ts';
import {
  crossesFermata,
  melodyOf,
  motionOf,
  nextTone,
  PAIRS,
  perfectInterval,
  phraseBreaks,
  previousTone,
  stretchesWhere,
} from '../../src/score/motion.ts';
import { type Texture, textureOf } from '../../src/score/texture.ts';
import { CROTCHET } from '../../src/score/time.ts';

function texture(text: string): Texture {
  const { score, problems } = readNotation(text);
  expect(problems).toEqual([]);
  return textureOf(score);
}

describe('how two voices move', () => {
  const up = { direction: 'up' } as const;
  const down = { direction: 'down' } as const;
  const level = { direction: 'level' } as const;

  it('has four kinds, whichever is named first', () => {
    expect(motionOf(up, up)).toBe('similar');
    expect(motionOf(up, down)).toBe('contrary');
    expect(motionOf(level, down)).toBe('oblique');
    expect(motionOf(up, level)).toBe('oblique');
    expect(motionOf(level, level)).toBe('still');
  });

  it('is asked of six pairs', () => {
    expect(PAIRS.length).toBe(6);
    expect(new Set(PAIRS.map((pair) => pair.join(''))).size).toBe(6);
  });
});

describe('perfect intervals', () => {
  it.each([
    ['G4', 'C3', 'fifth'],
    ['C3', 'G4', 'fifth'],
    ['C5', 'C3', 'octave'],
    ['C4', 'C4', 'unison'],
    ['F4', 'B3', undefined],
    ['G#4', 'C4', undefined],
    ['B#4', 'C4', undefined],
    ['F4', 'C4', undefined],
  ])('%s with %s: %s', (a, b, expected) => {
    const { tones } = texture(`S: ${a} |\nB: ${b} |`);
    expect(perfectInterval(tones.S[0]!, tones.B[0]!)).toBe(expected);
  });
});

describe('lines', () => {
  const TEXT = `metre: 4/4
S: C5 r D5 E5! | F5 G5 A5 B5 |
B: C3 D3 E3 C3! | F3*4 |`;

  it('have no next note across a rest', () => {
    const { tones } = texture(TEXT);
    const t = texture(TEXT);
    expect(nextTone(t, t.tones.S[0]!)).toBeUndefined();
    expect(previousTone(t, t.tones.S[1]!)).toBeUndefined();
    expect(nextTone(t, t.tones.S[1]!)?.id).toBe(tones.S[2]!.id);
  });

  it('have their moves, and know which of them begins a phrase', () => {
    const t = texture(TEXT);
    const moves = melodyOf(t, 'B');
    expect(moves.map((move) => move.interval.steps)).toEqual([1, 1, -2, 3]);
    expect(moves.map((move) => move.acrossFermata)).toEqual([false, false, false, true]);
    expect([...phraseBreaks(t)]).toEqual([4 * CROTCHET]);
  });

  it('stay inside the phrase while the bass moves under a held soprano', () => {
    const t = texture(`metre: 4/4
S: C5*3! D5 |
B: C3! D3 E3 F3 |`);
    expect(t.transitions.map(crossesFermata)).toEqual([false, false, true]);
  });
});

describe('stretches', () => {
  it('join slices in which something goes on holding, and end at a rest', () => {
    const t = texture(`metre: 4/4
A: C4 C4 r C4 |
T: E4 D4 E4 E4 |`);
    const crossed = stretchesWhere(t, ['A', 'T'], (distance) => distance < 0);
    expect(crossed.map(({ from, until, widest, tones }) => [from, until, widest, tones.length])).toEqual([
      [0, 2 * CROTCHET, -4, 4],
      [3 * CROTCHET, 4 * CROTCHET, -4, 2],
    ]);
  });
});
