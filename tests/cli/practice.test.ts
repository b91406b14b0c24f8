import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readBrief } from '../../src/brief/brief.ts';
import { readLink } from '../../src/set/link.ts';
import { partwise } from './run.ts';

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'partwise-practice-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

describe('partwise practice', () => {
  it('writes exercises for rules that went wrong, says their seed and that they can be solved, and shows no answer', async () => {
    const args = [
      'practice',
      '--for',
      'unresolved-seventh, parallel-fifths',
      '--number',
      '2',
      '--seed',
      '21',
    ];
    const ran = await partwise([...args, '-o', join(folder, 'one')]);
    expect(ran.status).toBe(0);
    expect(ran.out).toContain('Seed 21:');
    expect(
      ran.out.replaceAll(/\s+/g, ' ').match(/It can be solved: 20 answers without fault or query/g),
    ).toHaveLength(2);
    expect(readdirSync(join(folder, 'one'))).toHaveLength(6);
    const briefs = [1, 2].map((i) => readFileSync(join(folder, 'one', `${i}.brief.txt`), 'utf8'));
    for (const text of briefs) {
      const { brief, problems } = readBrief(text);
      expect(problems).toEqual([]);
      expect(brief.score.voices.B.filter(({ kind }) => kind === 'note')).toHaveLength(1);
    }
    const address = new URL(ran.out.trimEnd().split('\n').at(-1)!);
    const link = readLink(address.hash.slice(1));
    expect(link.ok && link.exercises.map(({ text }) => text)).toEqual(briefs);
    await partwise([...args, '-o', join(folder, 'two')]);
    expect(readFileSync(join(folder, 'two', '2.brief.txt'), 'utf8')).toBe(briefs[1]);
  }, 60_000);

  it.each([
    [['--for', 'everything'], 'no practice for “everything”'],
    [['--for', 'unprepared-suspension'], 'no short exercises for'],
    [['--for', 'close', '--number', '7'], 'from 1 to 6'],
    [['--for', 'close', '--seed', 'x'], 'a whole number'],
  ])('refuses %j in a sentence', async (args, message) => {
    const { status, err } = await partwise(['practice', ...args, '-o', join(folder, 'none')]);
    expect(status).toBe(2);
    expect(err).toContain(message);
  });
});
