import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { openMarkingDesk } from '../../server/desk/marking-desk.ts';
import { readBrief } from '../../src/brief/brief.ts';
import { aimNamed } from '../../src/practice/aims.ts';
import { readLink } from '../../src/set/link.ts';
import { exerciseText } from '../support/exercises.ts';
import { partwise } from './run.ts';

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'partwise-practice-'));
  vi.stubEnv('CHROMIUM', join(folder, 'none'));
});
afterAll(() => {
  vi.unstubAllEnvs();
  rmSync(folder, { recursive: true });
});

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

  it('reads from a desk what went wrong in most scripts', async () => {
    const file = join(folder, 'desk.sqlite');
    const desk = await openMarkingDesk(file, { threads: 1, log: () => {} });
    const stack = desk.stackFor({ name: 'Autumn' });
    for (const name of ['4101.txt', '4102.txt'])
      await desk.takeIn(desk.desk.stack(stack), {
        file: name,
        content: new TextEncoder().encode(exerciseText('fault-consecutives')),
      });
    desk.stackFor({ name: 'Empty' });
    await desk.close();
    const practice = (...more: string[]) =>
      partwise(['practice', '--desk', file, '--number', '1', '--seed', '3', ...more]);
    const out = join(folder, 'class');
    const { status, out: said } = await practice('--stack', 'Autumn', '-o', out);
    expect(status).toBe(0);
    const words = said.replaceAll(/\s+/g, ' ');
    expect(words).toMatch(/^Autumn: Every script has a fault\. The commonest: .*, in 2 of 2 scripts\./);
    expect(words).toContain(`Practice 3.1: ${aimNamed('consecutives')!.name}`);
    for (const [args, message] of [
      [[], 'Say which stack with --stack: there is “Autumn” and “Empty”.'],
      [['--stack', 'Spring'], 'There is no such stack'],
      [['--stack', 'Empty'], 'There are no short exercises'],
    ] as const)
      expect(await practice(...args, '-o', out)).toMatchObject({
        status: 2,
        err: expect.stringContaining(message),
      });
    expect(await partwise(['practice', '--desk', 'none.sqlite', '-o', out])).toMatchObject({ status: 2 });
    expect((await partwise(['practice', '-o', out])).err).toContain('Say what to practise');
  }, 120_000);

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
