import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readBrief } from '../../src/brief/brief.ts';
import { HELPS } from '../../src/brief/helps.ts';
import { readNotation } from '../../src/notation/index.ts';
import { openScore } from '../../src/open/open.ts';
import { readLink } from '../../src/set/link.ts';
import { partwise } from './run.ts';

const PIECE = 'fixtures/exercises/morning-walk.musicxml';

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'partwise-set-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

describe('partwise set', () => {
  it('writes brief and pupils’ files, and prints a link that holds the same', async () => {
    const out = join(folder, 'set');
    const page = 'https://music.example/partwise/';
    const { status, out: said } = await partwise([
      ...['set', PIECE, '-o', out, '--give', 'tune,closes', '--without', 'hints, playback'],
      ...['--least-length', '0:15', '--title', 'Walk', '--page', page],
    ]);
    expect(status).toBe(0);
    expect(said).toContain('Set without hints and playback.');
    const text = readFileSync(join(out, 'brief.txt'), 'utf8');
    const { brief, problems } = readBrief(text);
    expect(problems).toEqual([]);
    expect(brief).toMatchObject({
      task: 'add alto and tenor, and complete the bass',
      without: ['hints', 'playback'],
      leastSeconds: 15,
      score: { title: 'Walk' },
    });
    const pupil = readNotation(readFileSync(join(out, 'exercise.txt'), 'utf8'));
    expect(pupil.problems).toEqual([]);
    expect(pupil.score).toEqual(brief.score);
    const opened = openScore(readFileSync(join(out, 'exercise.musicxml')));
    expect(opened.ok && opened.score.voices).toEqual(brief.score.voices);
    const [link, , worksheet] = said.trimEnd().split('\n').slice(-3);
    const address = new URL(link!);
    expect(worksheet).toBe(`${page}desk/#/${address.hash.slice(1)}`);
    expect(address.href.startsWith(page)).toBe(true);
    const linked = readLink(address.hash.slice(1));
    expect(linked.ok && linked.exercises.map((exercise) => exercise.text)).toEqual([text]);

    const again = await partwise(['set', PIECE, '-o', out]);
    expect(again).toMatchObject({ status: 2, err: expect.stringContaining('is there already') });
    expect(readFileSync(join(out, 'brief.txt'), 'utf8')).toBe(text);
    // A brief can be set anew: what it says holds where nobody says otherwise.
    const anew = join(folder, 'anew');
    const sitting = await partwise(['set', join(out, 'brief.txt'), '-o', anew, '--controlled']);
    expect(sitting.out).toContain('Controlled sitting');
    expect(readBrief(readFileSync(join(anew, 'brief.txt'), 'utf8')).brief).toMatchObject({
      leastSeconds: 15,
      without: HELPS,
      score: brief.score,
    });
  }, 60_000);

  it.each([
    [['--give', 'melody'], '“melody” can’t be given'],
    [['--give', 'tune,bars=40'], 'There is no bar 40'],
    [['--without', 'answers'], '“answers” is no help'],
    [['--least-length', 'long'], 'minutes and seconds'],
    [['--profile', 'ours'], 'no profile called'],
  ])(
    'refuses %j in a sentence, and writes nothing',
    async (args, message) => {
      const out = join(folder, 'none');
      const { status, err } = await partwise(['set', PIECE, '-o', out, ...args]);
      expect(status).toBe(2);
      expect(err).toContain(message);
      expect(() => readFileSync(join(out, 'brief.txt'))).toThrow('ENOENT');
    },
    60_000,
  );
});
