import { describe, expect, it } from 'vitest';
import { printNotation, readNotation } from '../../src/notation/index.ts';
import { CROTCHET } from '../../src/score/time.ts';

const MUSIC =
  'key: C major\nmetre: 4/4\nupbeat: 1\nS: C5 | D5 E5 D5 C5 | B4*4 ||\nB: C3 | B2 C3 G2 A2 | G2*4 ||\n';

describe('figures in the notation', () => {
  it('stand at their bar and beat, wherever the line is written', () => {
    for (const text of [
      `figures: 0:4 6, 1:1+1/2 6/5, 2:1 #\n${MUSIC}`,
      `${MUSIC}figures: 2:1 #, 0:4 6\nfigures: 1:1+1/2 6/5\n`,
    ]) {
      const { score, problems } = readNotation(text);
      expect(problems).toEqual([]);
      expect(score.figures).toEqual([
        { at: 0, figures: ['6'] },
        { at: 1.5 * CROTCHET, figures: ['6', '5'] },
        { at: 5 * CROTCHET, figures: ['#'] },
      ]);
    }
  });
  it('are printed as they are read, over several lines where there are many', () => {
    const at = Array.from({ length: 30 }, (_, i) => `${1 + Math.floor(i / 4)}:${1 + (i % 4)} b7`);
    const music = `metre: 4/4\nB: ${'C3 C3 C3 C3 | '.repeat(8)}\n`;
    const { score } = readNotation(`figures: ${at.join(', ')}\n${music}`);
    expect(score.figures).toHaveLength(30);
    const text = printNotation(score);
    expect(text.match(/^figures:/gm)).toHaveLength(3);
    expect(readNotation(text).score).toEqual(score);
  });
  it.each(['6', '1:2', '1:2 six', '1:2 6,', '1:2 6//5', '1:2+3/2 6', '1:2+1/0 6', '1:2 6/5/4/3/2/1/6/5/4'])(
    'say what was expected where they can’t be read: %s',
    (value) => {
      const { problems } = readNotation(`figures: ${value}\n${MUSIC}`);
      expect(problems).toMatchObject([
        { line: 1, message: expect.stringContaining('such as "1:2 6, 2:1 6/5"') },
      ]);
    },
  );
  it('say where there is no such place', () => {
    for (const place of ['3:1', '2:5', '0:1', '1:0']) {
      const { problems, score } = readNotation(`${MUSIC}figures: ${place} 6\n`);
      expect(problems).toMatchObject([{ line: 6, message: expect.stringContaining('to put figures under') }]);
      expect(score.figures).toBeUndefined();
    }
  });
});
