import { describe, expect, it } from 'vitest';
import { printNotation, readNotation } from '../../src/notation/index.ts';
import { excerpt, withTone } from '../../src/score/excerpt.ts';
import { parsePitch, printPitch } from '../../src/score/pitch.ts';
import { endOf, VOICES } from '../../src/score/score.ts';
import { textureOf } from '../../src/score/texture.ts';
import { CROTCHET } from '../../src/score/time.ts';

const TEXT = `key: C major
metre: 2/4
upbeat: 1
S: G4 | A4 B4 | C5*2 |
A: E4 | F4 F4 | E4*2 |
T: C4 | C4 D4_ | D4 C4 |
B: C3 | F3 G3 | C3*2 |`;

function score() {
  const { score: read, problems } = readNotation(TEXT);
  expect(problems).toEqual([]);
  return read;
}

describe('one tone at another pitch', () => {
  it('changes every note tied in it and nothing else', () => {
    const before = score();
    const tone = textureOf(before).tones.T[2]!;
    expect(tone.notes.length).toBe(2);
    const after = textureOf(withTone(before, tone, parsePitch('B3')!));
    expect(after.tones.T.map((t) => printPitch(t.pitch))).toEqual(['C4', 'C4', 'B3', 'C4']);
    expect(after.tones.S).toEqual(textureOf(before).tones.S);
    expect(printNotation(before)).toBe(printNotation(score()));
  });
});

describe('some bars of a score', () => {
  it('are a score that begins at 0, and say by how much they were moved', () => {
    const { score: part, shift } = excerpt(score(), 1, 2);
    expect(shift).toBe(CROTCHET);
    expect(part.bars.map((bar) => [bar.index, bar.at, bar.number])).toEqual([
      [0, 0, '1'],
      [1, 2 * CROTCHET, '2'],
    ]);
    expect(endOf(part)).toBe(4 * CROTCHET);
    for (const voice of VOICES) expect(part.voices[voice][0]?.at).toBe(0);
  });

  it('cut the ties that lead out of them', () => {
    const { score: part } = excerpt(score(), 0, 1);
    const last = part.voices.T.at(-1);
    expect(last?.kind === 'note' && last.tied).toBeFalsy();
    expect(textureOf(part).tones.T.length).toBe(3);
  });

  it('are refused where there are none', () => {
    expect(() => excerpt(score(), 7, 9)).toThrow('There are no bars 7 to 9.');
  });
});
