import { once } from 'node:events';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { builtPage } from '../../src/cli/built-page.ts';
import { printFailure, printReview } from '../../src/cli/paper.ts';
import { plain } from '../../src/cli/plain.ts';
import { listen } from '../../src/cli/serve.ts';
import { readNotation } from '../../src/notation/index.ts';
import { DEFAULT_PROFILE } from '../../src/profiles/list.ts';
import { reviewScore } from '../../src/review/review.ts';
import { exerciseText } from '../support/exercises.ts';
import { everythingWrong } from '../support/worst-cases.ts';
import { startPartwise } from './run.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'partwise-start-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

describe('signs that steer a terminal', () => {
  it('are shown, not obeyed, in titles, names of files and complaints', () => {
    const text = exerciseText('morning-walk').replace('Morning walk', 'A\u001b]0;owned\u0007\u009b31m walk');
    const { score } = readNotation(text);
    const paper = printReview('b\u001b[2J.txt', reviewScore(score, DEFAULT_PROFILE), 'figures');
    const failure = printFailure('c\u001b[2J.txt', { message: 'It holds \u001b[31m.' });
    for (const printed of [paper, failure]) {
      expect(printed.replaceAll('\n', '')).not.toMatch(/\p{Cc}/u);
      expect(printed).toContain('␛');
    }
  });

  it('leave lines as they are', () => {
    expect(plain('one\ntwo\r')).toBe('one\ntwo␍');
  });
});

it('a port that is taken is said in a sentence, with a way on', async () => {
  const other = createServer().listen(0, '127.0.0.1');
  await once(other, 'listening');
  const { port } = other.address() as { port: number };
  await expect(listen({ port, host: '127.0.0.1' })).rejects.toThrow(
    `Port ${port} is taken, perhaps by another partwise. Choose another with --port ${port + 1}.`,
  );
  other.close();
});

it('answers what is under way when it is told to end, and then ends well', async () => {
  const serving = startPartwise(['serve', '--port', '0']);
  const address = /http:\/\/\S+/.exec(await serving.says(/The page is at/))![0];
  const review = (text: string) =>
    fetch(new URL('/api/reviews', address), {
      method: 'POST',
      headers: { 'content-type': 'text/plain' },
      body: text,
    });
  // The workers have started.
  expect((await review(exerciseText('morning-walk'))).status).toBe(200);
  const answer = review(everythingWrong(100));
  // It has been taken: a little later than it was sent.
  await new Promise((done) => setTimeout(done, 100));
  const status = serving.stop('SIGTERM');
  expect((await answer).status).toBe(200);
  expect(await status).toBe(0);
}, 120_000);

describe('the page', () => {
  it('is served as it was built where it is newer than what it is built from', async () => {
    for (const part of ['src', 'web', 'dist']) mkdirSync(join(folder, part));
    writeFileSync(join(folder, 'package.json'), '{}');
    writeFileSync(join(folder, 'web', 'main.ts'), '');
    writeFileSync(join(folder, 'dist', 'index.html'), 'as it is');
    // There is nothing to build it with here: an attempt would fail.
    await expect(builtPage(folder)).resolves.toBeUndefined();
  });
});
