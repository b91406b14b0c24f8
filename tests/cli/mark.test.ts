import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { zipSync } from 'fflate';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { filesIn } from '../../src/cli/mark-files.ts';
import { isStackOfFiles, unzipStack, ZIP_LIMITS } from '../../src/open/zip.ts';
import { exerciseText } from '../support/exercises.ts';
import { partwiseProcess as partwise, startPartwise } from './run.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'partwise-mark-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

const bytes = (text: string) => new TextEncoder().encode(text);

describe('partwise mark', () => {
  it('takes in a folder, a zip in it, folders in it; a bad file stops nothing; a second run goes on', async () => {
    writeFileSync(join(folder, '4001.txt'), exerciseText('morning-walk'));
    writeFileSync(join(folder, 'broken.musicxml'), '<score-partwise>');
    mkdirSync(join(folder, 'draft 2'));
    writeFileSync(join(folder, 'draft 2', '4001.txt'), exerciseText('kite-hill'));
    writeFileSync(join(folder, 'more.zip'), zipSync({ '4002.txt': bytes(exerciseText('lantern')) }));
    const book = join(folder, 'marks.csv');
    const first = await partwise(['mark', folder, '--csv', book]);
    expect(first.out).toMatch(/^3 new, 0 known already, 1 could not be read/);
    expect(first.err).toMatch(/^broken\.musicxml: /);
    expect(first.status).toBe(2);
    expect(readFileSync(book, 'utf8').trimEnd().split('\r\n')).toHaveLength(5);
    writeFileSync(join(folder, '4003.txt'), exerciseText('millstream'));
    const second = await partwise(['mark', folder, '--csv', book]);
    expect(second.out).toMatch(/^1 new, 4 known already, 0 could not be read/);
  }, 60_000);

  it('finds the brief beside the scripts, and reviews again with another profile', async () => {
    writeFileSync(join(folder, '4001.txt'), exerciseText('kite-hill').replace('S: Bb4 C5', 'S: Bb4 D5'));
    const brief = `task: add the lower voices\n${exerciseText('kite-hill').replaceAll(/^[ATB]:.*$/gm, '')}`;
    writeFileSync(join(folder, 'brief.txt'), brief);
    const everything = join(folder, 'all.json');
    await partwise(['mark', folder, '--json', everything]);
    const { scripts } = JSON.parse(readFileSync(everything, 'utf8')) as {
      scripts: { candidate: string; departures: string[] }[];
    };
    expect(scripts).toMatchObject([{ candidate: '4001', departures: [expect.stringMatching(/./)] }]);
    const again = await partwise(['mark', folder, '--profile', 'strict']);
    expect(again.out).toMatch(/^1 reviewed again/);
  }, 60_000);

  it('backs up and restores', async () => {
    writeFileSync(join(folder, '4001.txt'), exerciseText('kite-hill'));
    const copy = join(folder, 'copies', 'copy.sqlite');
    expect((await partwise(['mark', folder, '--backup', copy])).status).toBe(0);
    writeFileSync(join(folder, 'desk', 'desk.sqlite'), 'scribbled over '.repeat(1000));
    const damaged = await partwise(['mark', folder]);
    expect(damaged.status).toBe(2);
    expect(damaged.err).toMatch(/is damaged.*--restore/s);
    expect((await partwise(['mark', folder, '--restore', copy])).out).toMatch(/is kept as/);
    expect((await partwise(['mark', folder])).out).toMatch(/^0 new, \d+ known/);
  }, 60_000);

  it('takes in what comes while it watches, a broken file too, and nothing twice', async () => {
    writeFileSync(join(folder, '4001.txt'), exerciseText('kite-hill'));
    const book = join(folder, 'marks.csv');
    const watching = startPartwise(['mark', folder, '--watch']);
    try {
      await watching.says(/Watching the folder/);
      writeFileSync(join(folder, '4002.txt'), exerciseText('lantern'));
      writeFileSync(join(folder, '4003.musicxml'), '<score-partwise>');
      await watching.says(/1 new, 1 known already, 1 could not be read/);
      mkdirSync(join(folder, 'late'));
      writeFileSync(join(folder, 'late', '4004.txt'), exerciseText('millstream'));
      await watching.says(/1 new, 3 known already, 0 could not be read/);
    } finally {
      await watching.stop();
    }
    await partwise(['mark', folder, '--csv', book]);
    expect(readFileSync(book, 'utf8').trimEnd().split('\r\n')).toHaveLength(5);
  }, 60_000);

  it('says which folder can’t be read, and goes on with the rest', async () => {
    for (const name of ['a', 'b']) {
      mkdirSync(join(folder, name));
      writeFileSync(join(folder, name, `${name}.txt`), exerciseText('kite-hill'));
    }
    writeFileSync(join(folder, '4001.txt'), exerciseText('lantern'));
    const told: string[] = [];
    const read: string[] = [];
    for await (const { file } of filesIn(folder, new Set(), (text) => told.push(text))) {
      read.push(file);
      // Gone while the others are read, as a stick that is pulled out.
      if (read.length === 1) rmSync(join(folder, 'b'), { recursive: true });
    }
    expect(read).toEqual(['4001.txt', join('a', 'a.txt')]);
    expect(told).toEqual(['b: There is no such file. Look at the spelling and the folder.']);
  });

  it('asks for a passphrase before it opens to a network', async () => {
    writeFileSync(join(folder, '4001.txt'), exerciseText('kite-hill'));
    const { status, err } = await partwise(['mark', folder, '--serve', '--host', '0.0.0.0', '--port', '0']);
    expect(status).toBe(2);
    expect(err).toMatch(/passphrase/);
  }, 60_000);
});

describe('a zip of scripts', () => {
  it('is told from compressed MusicXML', () => {
    expect(isStackOfFiles(zipSync({ 'a.txt': bytes('x') }))).toBe(true);
    expect(isStackOfFiles(zipSync({ 'META-INF/container.xml': bytes('<container/>') }))).toBe(false);
    expect(isStackOfFiles(bytes('title: x'))).toBe(false);
  });

  it('leaves out folders and what systems add', () => {
    const zip = zipSync({ 'a/b.txt': bytes('x'), '__MACOSX/._b.txt': bytes('y'), 'a/.DS_Store': bytes('z') });
    expect(unzipStack(zip).files.map(({ name }) => name)).toEqual(['a/b.txt']);
  });

  it('a bomb is left out while unpacking, and the rest is taken', () => {
    const zip = zipSync({ 'bomb.txt': new Uint8Array(4 * ZIP_LIMITS.fileBytes), 'good.txt': bytes('x') });
    const { files, left } = unzipStack(zip);
    expect(files.map(({ name }) => name)).toEqual(['good.txt']);
    expect(left).toEqual([expect.stringMatching(/^bomb\.txt is larger than 8 MB/)]);
  });

  it('one that is cut off gives what came before, and never throws', () => {
    const zip = zipSync({ 'a.txt': bytes('x'.repeat(500)), 'b.txt': bytes('y'.repeat(500)) }, { level: 0 });
    for (let length = 0; length < zip.length; length += 37) {
      const { files, left } = unzipStack(zip.subarray(0, length));
      expect(files.length + left.length).toBeGreaterThan(0);
    }
  });
});
