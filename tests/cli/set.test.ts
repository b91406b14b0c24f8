import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { readBrief } from '../../src/brief/brief.ts';
import { HELPS } from '../../src/brief/helps.ts';
import { readNotation } from '../../src/notation/index.ts';
import { openScore } from '../../src/open/open.ts';
import { CHORALE } from '../../src/profiles/profile.ts';
import { readLink } from '../../src/set/link.ts';
import { partwise } from './run.ts';

const PIECE = 'fixtures/exercises/morning-walk.musicxml';

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'partwise-set-'));
  // One test prints; the others are told that there is no browser.
  vi.stubEnv('CHROMIUM', join(folder, 'none'));
});
afterAll(() => {
  vi.unstubAllEnvs();
  rmSync(folder, { recursive: true });
});

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
    const [worksheet, , link] = said.trimEnd().split('\n').slice(-3);
    expect(said).toContain('There is no worksheet.pdf: no Chromium was found on this machine.');
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

  it('takes a profile of one’s own from its file, and says who must be given it', async () => {
    const file = join(folder, 'ours.json');
    const ours = { ...CHORALE, name: 'ours', rules: { 'parallel-fifths': { severity: 'query' } } };
    writeFileSync(file, JSON.stringify(ours));
    const out = join(folder, 'own');
    const { status, out: said } = await partwise(['set', PIECE, '-o', out, '--profile', file]);
    expect(status).toBe(0);
    expect(said.replaceAll(/\s+/g, ' ')).toContain('the pupils’ page checks by “chorale”');
    expect(readBrief(readFileSync(join(out, 'brief.txt'), 'utf8')).brief.profile).toBe('chorale');
    expect(JSON.parse(readFileSync(join(out, 'profile.json'), 'utf8'))).toEqual(ours);
  }, 60_000);

  it('says that words under the tune are in the MusicXML alone', async () => {
    const sung = join(folder, 'sung.musicxml');
    const music = readFileSync(PIECE, 'utf8');
    const lyric = '<lyric number="1"><syllabic>single</syllabic><text>Lo</text></lyric></note>';
    writeFileSync(sung, music.replace('</note>', lyric));
    const out = join(folder, 'words');
    const { status, out: said } = await partwise(['set', sung, '-o', out]);
    expect(status).toBe(0);
    expect(said.replaceAll(/\s+/g, ' ')).toContain('The words under the tune are in exercise.musicxml alone');
    expect(readFileSync(join(out, 'exercise.musicxml'), 'utf8')).toContain('<text>Lo</text>');
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
