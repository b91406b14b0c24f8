import { PassThrough } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { askYesNo } from '../../src/cli/ask.ts';
import { createProgress } from '../../src/cli/progress.ts';
import { timeLeft } from '../../src/english/time-left.ts';

describe('how far something is', () => {
  const drawn = (isTTY: boolean, of: number | undefined) => {
    let now = 0;
    const written: string[] = [];
    const out = { isTTY, write: (more: string) => written.push(more) };
    const progress = createProgress('files', of, out, () => now);
    for (let done = 1; done <= 300; done++) {
      now += 100;
      progress.at(done);
    }
    progress.end();
    return written.join('');
  };

  it('with the time left, a line now and then where there is no terminal', () => {
    expect(drawn(false, 3_000).trim().split('\n')).toEqual([
      '100 of 3000 files, about 5 minutes left',
      '200 of 3000 files, about 5 minutes left',
      '300 of 3000 files, about 5 minutes left',
    ]);
    expect(drawn(false, undefined)).toContain('100 files\n');
  });

  it('in place on a terminal, and taken away at the end', () => {
    const text = drawn(true, 300);
    expect(text).toContain('\r\u001b[K150 of 300 files, about 15 seconds left');
    expect(text.endsWith('\r\u001b[K')).toBe(true);
    expect(text).not.toContain('\n');
  });

  it('says nothing of the time before it can be told', () => {
    expect([timeLeft(1, 100, 900), timeLeft(10, 10, 2_000), timeLeft(10, 600, 2_000)]).toEqual([
      '',
      'a few seconds left',
      'about 2 minutes left',
    ]);
  });
});

describe('a question', () => {
  it('is asked at a terminal alone', async () => {
    const asked = async (answer: string, isTTY: boolean) => {
      const terminal = {
        input: Object.assign(new PassThrough(), { isTTY }),
        output: Object.assign(new PassThrough(), { isTTY }),
      };
      terminal.input.write(answer);
      return askYesNo('Put it in its place?', terminal);
    };
    expect(await asked('y\n', true)).toBe(true);
    expect(await asked('\n', true)).toBe(false);
    expect(await asked('y\n', false)).toBeUndefined();
  });
});
